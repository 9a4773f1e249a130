// Nobody's help is worked out from what moderators see of it week after week, nor who said no: random streams, audited by linear programming.
//
// CELLWARY_AUDIT_STREAMS (npm run audit-streams) says how many; without it a few, so that the ordinary run stays short.
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { expect, test } from 'vitest'
import { type HelpCounted, helperStep, helpersOver, shownHelp } from '../../../src/server/helper-log.ts'
import { audit } from './audit.ts'
import type { Kind } from './streams.ts'
import type { Puzzle, Statement, World } from './worlds.ts'

const streams = Number(process.env['CELLWARY_AUDIT_STREAMS'] ?? 400)

/** How often each helper has helped, week by week. A helper stands in the audit where a place stands in others. */
type HelpStream = { readonly helpers: readonly Kind[]; readonly weeks: number; readonly truth: World }

function randomHelp(seed: number): HelpStream {
  const random = xoroshiro128plus(seed * 2 + 1)
  const int = (least: number, most: number) => uniformInt(random, least, most)
  const helpers = ['ada', 'ben', 'cem', 'dov']
    .slice(0, int(1, 4))
    .map((bought): Kind => ({ verdict: 'open', fired: [], bought }))
  const weeks = int(2, helpersOver + 6)
  const busy = [0, 0, 0, 1, 1, 2, 3, 4, 5, 9, 14]
  const truth = Array.from({ length: weeks * helpers.length }, () => busy[int(0, busy.length - 1)] ?? 0)
  return { helpers, weeks, truth }
}

/** What the store sums up for a look in the week after `week`. */
const sumsIn = ({ helpers, truth }: HelpStream, week: number): HelpCounted[] =>
  helpers.map(({ bought: person }, h) => ({
    person,
    count: truth.reduce((sum, n, i) => {
      const at = Math.floor(i / helpers.length)
      return i % helpers.length === h && at <= week && at > week - helpersOver ? sum + n : sum
    }, 0),
  }))

/** What who looks every week takes from it: so often and fewer than five more; who is not there, fewer than five. */
function seenIn(stream: HelpStream, show: (sums: readonly HelpCounted[]) => HelpCounted[], step: number): Statement[] {
  return Array.from({ length: stream.weeks }, (_, now) => {
    const shown = new Map(show(sumsIn(stream, now)).map(one => [one.person, one.count]))
    return stream.helpers.map(({ bought }): Statement => {
      const least = shown.get(bought) ?? 0
      const group = (kind: Kind, week: number) => kind.bought === bought && week <= now && week > now - helpersOver
      return { group, least, most: least + step - 1 }
    })
  }).flat()
}

const puzzleOf = ({ helpers: kinds, weeks }: HelpStream, statements: readonly Statement[]): Puzzle => ({
  kinds,
  weeks,
  statements,
})

test(`what moderators see of helpers pins nobody to one to four questions, in any week, in ${streams} streams`, () => {
  let shown = 0
  let asked = 0
  for (let seed = 1; seed <= streams; seed++) {
    const stream = randomHelp(seed)
    const statements = seenIn(stream, shownHelp, helperStep)
    shown += statements.filter(one => one.least > 0).length
    const found = audit(puzzleOf(stream, statements), stream.truth, seed)
    asked += found.quantities
    expect({ seed, pinned: found.pinned, undecided: found.undecided }).toEqual({ seed, pinned: [], undecided: 0 })
  }
  expect(shown).toBeGreaterThan(streams)
  expect(asked).toBeGreaterThan(streams * 20)
}, 3_600_000)

test('who said no is seen as who has helped little: the others stand as they would without them', () => {
  for (let seed = 1; seed <= streams; seed++) {
    const stream = randomHelp(seed)
    const sums = sumsIn(stream, stream.weeks - 1)
    const [first] = sums
    if (!first) continue
    const others = shownHelp(sums).filter(one => one.person !== first.person)
    // Their counts are gone, or fewer than five: the list is one and the same.
    expect(shownHelp(sums.slice(1))).toEqual(others)
    for (let count = 0; count < helperStep; count++)
      expect(shownHelp([{ ...first, count }, ...sums.slice(1)])).toEqual(others)
  }
})

test('the audit finds the leak where counts are exact from five on', () => {
  const exact = (sums: readonly HelpCounted[]) => sums.filter(one => one.count >= helperStep)
  let leaking = 0
  for (let seed = 1; seed <= 20; seed++) {
    const stream = randomHelp(seed)
    const exactly = seenIn(stream, exact, helperStep).map(one => (one.least > 0 ? { ...one, most: one.least } : one))
    if (audit(puzzleOf(stream, exactly), stream.truth, seed, 1).pinned.length > 0) leaking++
  }
  expect(leaking).toBeGreaterThan(10)
})
