// Families, versions and reference cells as tests make them.

import { createHash } from 'node:crypto'
import { factsDigest } from '../../src/families/derive/facts-digest.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import type { ServerFamily, Version } from '../../src/families/family.ts'
import type { Reference } from '../../src/families/strength/references.ts'
import { unnamedFamilies } from './known-families.ts'

export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')
export const someFacts = unnamedFamilies['unnamed-18650-c'] as Facts

export const named = (id: string, name: string, facts: Facts = someFacts): Facts => ({
  ...facts,
  identity: { ...facts.identity, id, name },
})

export const draftOf = (server: string, facts: Facts, more: Partial<ServerFamily> = {}): ServerFamily => ({
  ...{ id: facts.identity.id, server, state: 'draft', revision: 1, head: 0 },
  ...{ draft: facts, review: null, retired: null, changedBy: `made-${facts.identity.id}`, madeBy: '11', madeAt: 1000 },
  ...more,
})

export const versionOf = (facts: Facts, number: number, more: Partial<Version> = {}): Version => ({
  ...{ family: facts.identity.id, number, facts, digest: factsDigest(facts, sha256) },
  ...{ by: '11', agreedBy: '22', at: 2000 + number, why: 'counted on 5 cells', undoes: null },
  ...more,
})

export const referenceOf = (id: string, more: Partial<Reference> = {}): Reference => ({
  ...{
    id,
    looks: { legs: 'three' },
    how: 'maker',
    order: id,
    week: '2026-W45',
    by: id,
    acceptedBy: '11',
    state: 'accepted',
  },
  ...more,
})
