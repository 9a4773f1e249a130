// The back-test: how many checks of closed weeks a new version would judge otherwise, in three words and no number.
//
// It is a question about other people's checks, so it is held like a release: closed weeks only, a fixed half of them that nobody can
// choose, at least twenty, and a border between the words that nobody knows, so that a count padded with one's own checks up to a
// border does not tell whether one more is there.
import type { Program } from '../../engine/compile.ts'
import { judgeAgain } from '../../engine/judge-again.ts'
import type { Outcome } from '../../trends/outcome.ts'
import type { Tested } from '../family-store.ts'

export type HowMany = 'few' | 'some' | 'many'
export type BackTest =
  | { readonly ok: true; readonly change: HowMany }
  | { readonly ok: false; readonly why: 'too-few-checks' | 'too-often' }

/** Fewer checks than this are not looked at. */
export const leastOutcomes = 20
/** Trials a server has in a week. */
export const trialsPerWeek = 6
/** Up to these counts, before the hidden shift of the border. */
const borders = { few: 5, some: 20 }
const widestShift = 3

/** Whether an outcome is in the half that is looked at: its reporter's pseudonym is a keyed hash already, so nobody chooses. */
export const inHalf = ({ reporter }: Pick<Outcome, 'reporter'>): boolean =>
  Number.parseInt(reporter.slice(-1), 16) % 2 === 0

/**
 * `outcomes`: those of closed weeks, of one family. `before`: the program they were judged by, undefined for a first version;
 * `hidden`: a keyed hash of what is asked, hex, which shifts the borders.
 */
export function backTest(
  outcomes: readonly Tested[],
  before: Program | undefined,
  after: Program,
  hidden: string,
): BackTest {
  const half = outcomes.filter(inHalf)
  if (half.length < leastOutcomes) return { ok: false, why: 'too-few-checks' }
  const changed = half.filter(one => {
    const now = judgeAgain(after, one).verdict
    const was = before ? judgeAgain(before, one).verdict : 'open'
    return now !== was
  }).length
  return { ok: true, change: inWords(changed, hidden) }
}

/** The same question about the same weeks has the same border. */
export function inWords(count: number, hidden: string): HowMany {
  const shift = ((Number.parseInt(hidden.slice(0, 6), 16) || 0) % (2 * widestShift + 1)) - widestShift
  if (count < borders.few + Math.max(shift, -2)) return 'few'
  return count <= borders.some + shift ? 'some' : 'many'
}
