// By what a version of a family is known: a hash over its facts in one order, the same on every machine.
import canonicalize from 'canonicalize'
import type { Facts } from '../facts/facts-schema.ts'
import { settleFacts } from '../facts/settle-facts.ts'

/** SHA-256 (FIPS 180-4) as lower-case hex; handed in, since a platform has it already. */
export type Sha256 = (text: string) => string

/** Grows when derivation makes other rules of the same facts, so that no verdict is named by a digest that judged otherwise. */
const derivation = 1

/** The facts as one text, whatever order they were written in (canonical JSON, RFC 8785). */
export const canonicalFacts = (facts: Facts): string => canonicalize(settleFacts(facts)) ?? ''

export const factsDigest = (facts: Facts, sha256: Sha256): string =>
  `sha256:${sha256(`${derivation}\n${canonicalFacts(facts)}`)}`
