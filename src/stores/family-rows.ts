// Families between their rows and what the rooms use: every body is read by its schema at this border.
import { z } from 'zod'
import { factsSchema } from '../families/facts/facts-schema.ts'
import type { ServerFamily, Version } from '../families/family.ts'
import { referenceSchema } from '../families/strength/references.ts'

const deed = { by: z.string(), at: z.number(), why: z.string() }
const familyBody = z.object({
  draft: factsSchema.nullable(),
  review: z.object({ ...deed, digest: z.string() }).nullable(),
  retired: z.object({ ...deed, successor: z.string().nullable() }).nullable(),
  madeBy: z.string(),
  madeAt: z.number(),
})
const versionBody = z.object({ facts: factsSchema, at: z.number(), why: z.string(), undoes: z.int().nullable() })

export const writeFamily = ({ draft, review, retired, madeBy, madeAt }: ServerFamily): string =>
  JSON.stringify({ draft, review, retired, madeBy, madeAt })

type Row = {
  id: string
  server: string
  state: string
  head: number
  revision: number
  body: string
  changed_by: string
}

export function readFamily(row: Row): ServerFamily {
  const body = familyBody.parse(JSON.parse(row.body))
  return {
    ...{ id: row.id, server: row.server, state: row.state as ServerFamily['state'] },
    ...{ head: Number(row.head), revision: Number(row.revision), changedBy: row.changed_by },
    ...body,
  }
}

export const writeVersion = ({ facts, at, why, undoes }: Version): string => JSON.stringify({ facts, at, why, undoes })

type VersionRow = { family: string; number: number; digest: string; body: string; by: string; agreed_by: string | null }

export function readVersion(row: VersionRow): Version {
  const body = versionBody.parse(JSON.parse(row.body))
  return {
    ...{ family: row.family, number: Number(row.number), digest: row.digest },
    ...{ by: row.by, agreedBy: row.agreed_by },
    ...body,
  }
}

export const readReference = (body: string) => referenceSchema.parse(JSON.parse(body))

const photoBody = z.object({
  feature: z.string(),
  option: z.string(),
  genuine: z.boolean(),
  alt: z.string(),
  by: z.string(),
  at: z.number(),
})
export const readPhoto = (body: string) => photoBody.parse(JSON.parse(body))

const namedSchema = z.object({
  name: z.string(),
  maker: z.string(),
  alsoCalled: z.array(z.string()),
  format: z.string(),
  digest: z.string().nullable(),
  successor: z.string().nullable(),
})
export type Named = z.infer<typeof namedSchema>
export const readNamed = (text: string): Named => namedSchema.parse(JSON.parse(text))

/** What lists show of a family: of the version in force, or of its draft before the first. */
export function namedOf(family: ServerFamily, inForce: Version | undefined, before: Named | undefined): Named {
  const identity = inForce?.facts.identity ?? (family.head === 0 ? family.draft?.identity : undefined)
  const known = identity ?? before
  return {
    name: known?.name ?? family.id,
    maker: known?.maker ?? '',
    alsoCalled: [...(known?.alsoCalled ?? [])],
    format: known?.format ?? '',
    digest: inForce?.digest ?? before?.digest ?? null,
    successor: family.retired?.successor ?? null,
  }
}
