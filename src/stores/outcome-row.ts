// Outcomes as rows: what is counted by in columns, lists and maps as JSON; a damaged row is read as none.
import { epochOf } from '../trends/epoch.ts'
import { isName } from '../trends/names.ts'
import { type Outcome, readOutcome, unknownFamily } from '../trends/outcome.ts'
import type { OutcomeRow } from './tables.ts'

export function rowOf(outcome: Outcome): OutcomeRow {
  const { server, reporter, pooled, week, family, verdict, bought, fired, options, packs } = outcome
  return {
    server,
    epoch: epochOf(week),
    family: family ?? unknownFamily,
    reporter,
    pooled,
    week,
    verdict,
    bought,
    fired: JSON.stringify(fired),
    options: JSON.stringify(options),
    packs: JSON.stringify(packs.map(({ id, version, digest }) => ({ id, version, digest }))),
  } satisfies OutcomeRow & Record<keyof Outcome, unknown>
}

/** The outcome of a row, every field checked; undefined if the row is damaged. */
export function outcomeOf({ epoch, fired, options, packs, ...row }: OutcomeRow): Outcome | undefined {
  const [firedRead, optionsRead, packsRead] = [fired, options, packs].map(parsed)
  const whole = {
    ...row,
    family: row.family === unknownFamily ? null : row.family,
    fired: firedRead,
    options: optionsRead,
    packs: packsRead,
  } satisfies Record<keyof Outcome, unknown>
  const read = readOutcome(whole)
  return read.ok && epochOf(row.week) === epoch ? read.outcome : undefined
}

/** The key of the table, so that going on after an outcome finds its place at once. */
export const handleOf = ({ server, epoch, family, reporter }: OutcomeRow): string =>
  [server, epoch, family, reporter].join(' ')

/** JSON that may be damaged; undefined if it is none. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** A stored list of rules; undefined if it is damaged. */
export function firedIn(text: string): readonly string[] | undefined {
  const list = parsed(text)
  return Array.isArray(list) && list.every(isName) ? list : undefined
}
