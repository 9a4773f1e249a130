// Outcomes: what stays of a finished check once everything that could tell who made it is gone. The one shape they have.
import { z } from 'zod'
import type { OptionId, QuestionId } from '../engine/answers.ts'
import { verdicts } from '../ground/verdicts.ts'
import { digest, name, pseudonym, version } from './names.ts'
import { isWeek } from './week.ts'

/** Stands in counts and releases for a cell whose family is not known; no family may be called so. */
export const unknownFamily = 'unknown'

const stamp = z.strictObject({ id: name, version, digest }).readonly()

/**
 * One contribution: no id of a person or message, no name, text, file or picture, and no time finer than a week. A field it does not
 * know is a fault too: it could hold what must not be kept.
 */
export const outcomeShape = z
  .strictObject({
    server: z.string().min(1),
    /** While it waits its person's pseudonym on this server in the week's epoch; once it is counted, their code there for its family. */
    reporter: pseudonym,
    /** The same across pooling servers; null where the server does not pool. */
    pooled: pseudonym.nullable(),
    week: z.string().refine(isWeek),
    family: name.refine(family => family !== unknownFamily).nullable(),
    verdict: z.enum(verdicts),
    /** Rules that fired, sorted, each once. No figure is kept: what one was too much or too little for stands here. */
    fired: z.array(name).readonly(),
    /** How it looks: of all its answers those that patterns and back-tests ask about, and none that hardly anybody gave. */
    options: z.record(name, name).readonly(),
    /** Where it was bought: a category, never a shop. */
    bought: name,
    packs: z.array(stamp).min(1).readonly(),
  })
  .readonly()

export type PackStamp = z.infer<typeof stamp>
export type Outcome = z.infer<typeof outcomeShape>

/** `field`: the first that holds what it may not hold. The value is not repeated: it may be what must not be written down. */
export type OutcomeRefusal = { readonly code: 'not-an-outcome'; readonly field: string }
export type ReadOutcome =
  | { readonly ok: true; readonly outcome: Outcome }
  | { readonly ok: false; readonly refusal: OutcomeRefusal }

/** Checks every field of what is to be kept, or was. */
export function readOutcome(value: unknown): ReadOutcome {
  const read = outcomeShape.safeParse(value)
  if (read.success) return { ok: true, outcome: read.data }
  const [issue] = read.error.issues
  const field = issue?.code === 'unrecognized_keys' ? issue.keys[0] : issue?.path[0]
  return { ok: false, refusal: { code: 'not-an-outcome', field: String(field ?? '') } }
}

/** An item of a pattern: a failed check, an answer, or where the cell was bought. */
export type Item = `rule:${string}` | `answer:${string}=${string}` | `bought:${string}`

/** The items a check brings into the search for patterns: its failed checks, its answers, and where the cell was bought. */
export function itemsOf({ fired, options, bought }: Pick<Outcome, 'fired' | 'options' | 'bought'>): Item[] {
  return [
    ...ruleItems(fired),
    ...Object.entries(options).map(([question, option]) => answerItem(question, option)),
    `bought:${bought}`,
  ]
}

export const isRuleItem = (item: Item): boolean => item.startsWith('rule:')
export const ruleItems = (fired: Outcome['fired']): Item[] => fired.map((rule): Item => `rule:${rule}`)
export const answerItem = (question: QuestionId, option: OptionId): Item => `answer:${question}=${option}`
