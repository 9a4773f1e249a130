// A family as one file: what leaves the server and what is taken from a stranger's file, checked before anything is made of it.
import { z } from 'zod'
import type { FactProblem } from '../facts/fact-problems.ts'
import { type Facts, factsSchema, type Told } from '../facts/facts-schema.ts'
import { settleFacts } from '../facts/settle-facts.ts'
import { nameProblems, readsLikeLink, tidyName } from '../names.ts'

/** The format of the file; a newer one says so and is not guessed at. */
export const fileFormat = 1
/** A file is at most so many bytes, so many levels deep, and has so many entries at one level. */
export const fileLimits = { bytes: 64 * 1024, depth: 10, entries: 400, features: 25 }

export type FamilyFile = { readonly family: Facts }
export type ImportProblem =
  | FactProblem
  | { readonly code: 'newer-format'; readonly format: number; readonly known: number }
  | { readonly code: 'too-deep'; readonly most: number }
  | { readonly code: 'too-many-entries'; readonly most: number }
  | { readonly code: 'too-many-features'; readonly most: number; readonly have: number }
  | { readonly code: 'not-a-family' }
  | { readonly code: 'words-with-link'; readonly words: string }

export type Importing =
  | { readonly ok: true; readonly facts: Facts }
  | { readonly ok: false; readonly problems: readonly ImportProblem[] }

/** What of a family leaves: its facts, without references, people, photographs, or what a finding was called here. */
export function exported(facts: Facts): Record<string, unknown> {
  const { identity, fakes, ...rest } = settleFacts(facts)
  return {
    'cellwary-family': fileFormat,
    ...rest,
    identity,
    fakes: fakes.map(({ finding: _, ...fake }) => fake),
  }
}

const head = z.object({ 'cellwary-family': z.int() })

/** Takes in what a file held, as plain data. `id`: the new family's own; what the file calls it counts for nothing here. */
export function imported(data: unknown, id: string): Importing {
  const refuse = (...problems: ImportProblem[]): Importing => ({ ok: false, problems })
  const opened = head.safeParse(data)
  if (!opened.success || typeof data !== 'object' || data === null) return refuse({ code: 'not-a-family' })
  const format = opened.data['cellwary-family']
  if (format !== fileFormat) return refuse({ code: 'newer-format', format, known: fileFormat })
  const shape = tooBig(data, 0)
  if (shape) return refuse(shape)
  const { 'cellwary-family': _, ...rest } = data as Record<string, unknown>
  const traits = (rest as { traits?: unknown }).traits
  const have = typeof traits === 'object' && traits !== null ? Object.keys(traits).length : 0
  if (have > fileLimits.features) return refuse({ code: 'too-many-features', most: fileLimits.features, have })
  const read = factsSchema.safeParse(rest)
  if (!read.success)
    return refuse(
      ...read.error.issues
        .slice(0, 5)
        .map((issue): ImportProblem => ({ code: 'shape', at: issue.path.join('.') || '(top)', says: issue.message })),
    )
  const facts = settleFacts({ ...read.data, identity: { ...tidied(read.data.identity), id } })
  const texts = textsOf(facts)
  const problems: ImportProblem[] = [
    ...[facts.identity.name, facts.identity.maker, ...facts.identity.alsoCalled].flatMap(nameProblems),
    ...texts
      .filter(readsLikeLink)
      .map((words): ImportProblem => ({ code: 'words-with-link', words: words.slice(0, 80) })),
  ]
  return problems.length > 0 ? refuse(...problems) : { ok: true, facts }
}

const tidied = (identity: Facts['identity']): Facts['identity'] => ({
  ...identity,
  name: tidyName(identity.name) || identity.name,
  maker: tidyName(identity.maker) || identity.maker,
  alsoCalled: identity.alsoCalled.map(tidyName).filter(Boolean),
})

function tooBig(value: unknown, depth: number): ImportProblem | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  if (depth > fileLimits.depth) return { code: 'too-deep', most: fileLimits.depth }
  const inner = Object.values(value)
  if (inner.length > fileLimits.entries) return { code: 'too-many-entries', most: fileLimits.entries }
  for (const one of inner) {
    const found = tooBig(one, depth + 1)
    if (found) return found
  }
  return undefined
}

/** Every text that people will read. */
export function textsOf({ traits, fakes }: Facts): string[] {
  const said = (told: Told | undefined): string[] =>
    told === undefined
      ? []
      : typeof told === 'string'
        ? [told]
        : [told.en, told.de, told.es].filter(one => one !== undefined)
  return [
    ...Object.values(traits).flatMap(trait => [...trait.against, ...trait.remarks].flatMap(entry => said(entry.says))),
    ...fakes.flatMap(fake => [fake.title, ...said(fake.says)]),
  ]
}
