// How rules count together: summaries and their algebra, groups that share no question, and what is settled beside what cannot matter any more.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { always, never, openFormulas } from '../../../src/engine/outlook/formulas.ts'
import { busiest, itemOf, literalsOf, restrict, split, variablesOf } from '../../../src/engine/outlook/groups.ts'
import { openPartitions } from '../../../src/engine/outlook/partitions.ts'
import {
  certainly,
  combine,
  convolve,
  convolveInto,
  danger,
  doubtful,
  nothing,
  ruledOut,
  summaryCount,
  summaryOf,
  verdictOf,
  verdictRows,
  zeros,
} from '../../../src/engine/outlook/summaries.ts'
import { allButOne, openViews, TooTangled } from '../../../src/engine/outlook/views.ts'
import { verdicts } from '../../../src/ground/verdicts.ts'

const all = Array.from({ length: summaryCount }, (_, i) => i)

describe('summaries', () => {
  test('are eleven: three that decide, and four sums, each met or not', () => {
    expect(summaryCount).toBe(11)
    expect([0, 1, 2, 3].flatMap(score => [summaryOf(score, false), summaryOf(score, true)])).toEqual(all.slice(3))
    expect([summaryOf(4, true), summaryOf(9, false)]).toEqual([doubtful, doubtful])
    expect(nothing).toBe(summaryOf(0, true))
  })
  test('combine in any order, with nothing changing nothing and the worst deciding', () => {
    for (const a of all) {
      expect(combine(a, nothing)).toBe(a)
      for (const b of all) {
        expect(combine(a, b)).toBe(combine(b, a))
        if (Math.min(a, b) < 3) expect(combine(a, b)).toBe(Math.min(a, b))
        for (const c of all) expect(combine(combine(a, b), c)).toBe(combine(a, combine(b, c)))
      }
    }
    expect(combine(summaryOf(1, true), summaryOf(2, true))).toBe(summaryOf(3, true))
    expect(combine(summaryOf(1, true), summaryOf(1, false))).toBe(summaryOf(2, false))
    expect(combine(summaryOf(2, true), summaryOf(2, false))).toBe(doubtful)
  })
  test('amount to a verdict: nothing found only of a known family with everything met', () => {
    expect([danger, ruledOut, doubtful].map(one => verdictOf(one, true))).toEqual(['danger', 'ruled-out', 'doubtful'])
    expect([danger, ruledOut, doubtful].map(one => verdictOf(one, false))).toEqual(['danger', 'ruled-out', 'doubtful'])
    for (const score of [0, 3]) {
      expect(verdictOf(summaryOf(score, true), true)).toBe('nothing-found')
      expect(verdictOf(summaryOf(score, false), true)).toBe('open')
      expect(verdictOf(summaryOf(score, true), false)).toBe('open')
    }
  })
  const chances = fc
    .array(fc.integer({ min: 0, max: 3 }), { minLength: summaryCount, maxLength: summaryCount })
    .filter(list => list.some(one => one > 0))
    .map(list => list.map(one => one / list.reduce((sum, each) => sum + each, 0)))
  test('by chance combine as each of the one with each of the other', () => {
    fc.assert(
      fc.property(chances, chances, fc.boolean(), (a, b, known) => {
        const sum = zeros(summaryCount)
        for (const i of all) for (const j of all) sum[combine(i, j)]! += a[i]! * b[j]!
        const both = convolve(a, b)
        for (const i of all) expect(both[i]).toBeCloseTo(sum[i]!, 12)
        const twice = [...both]
        convolveInto(twice, a, b, 0.5)
        for (const i of all) expect(twice[i]).toBeCloseTo(1.5 * sum[i]!, 12)
        const rows = verdictRows(b, known)
        for (const i of all)
          for (const [v, verdict] of verdicts.entries())
            expect(rows[i * verdicts.length + v]).toBeCloseTo(
              all.reduce((some, j) => some + (verdictOf(combine(i, j), known) === verdict ? b[j]! : 0), 0),
              12,
            )
      }),
    )
    expect(convolve(certainly(nothing), certainly(doubtful))).toEqual(certainly(doubtful))
    expect(certainly(2)).toEqual([0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0])
  })
  test('all but one of several, each beside what is settled', () => {
    fc.assert(
      fc.property(fc.array(chances, { maxLength: 4 }), parts => {
        const settled = certainly(summaryOf(1, true))
        const rests = allButOne(parts, settled)
        expect(rests).toHaveLength(parts.length)
        for (const [i, rest] of rests.entries()) {
          const plain = parts.filter((_, j) => j !== i).reduce((sum, part) => convolve(sum, part), settled)
          for (const at of all) expect(rest[at]).toBeCloseTo(plain[at]!, 12)
        }
      }),
    )
  })
})

const formulas = openFormulas()
const at = (variable: number, ...holds: number[]) => formulas.literal(variable, Uint8Array.from(holds))
const [a, b, c] = [at(1, 0, 1), at(2, 0, 1), at(3, 0, 1)]

describe('groups', () => {
  test('share no question: what hangs together by a third is one', () => {
    const items = [itemOf('weak', c), itemOf('hazard', a), itemOf('must', formulas.and([b, a])), itemOf('weak', b)]
    const { settled, groups } = split(formulas, items)
    expect(settled).toBe(nothing)
    expect(groups).toHaveLength(2)
    const by = (group: readonly number[]) => variablesOf(formulas, group)
    expect(groups.map(by)).toEqual([[3], [1, 2]])
    for (const group of groups) expect(group).toEqual([...group].sort((x, y) => x - y))
    const joined = split(formulas, [
      itemOf('weak', a),
      itemOf('weak', b),
      itemOf('weak', c),
      itemOf('must', formulas.or([a, b, c])),
    ])
    expect(joined.groups.map(by)).toEqual([[1, 2, 3]])
  })
  test('are settled as far as they are decided: what holds counts, what is met counts nothing, what is not met keeps it open', () => {
    const settledOf = (...items: number[]) => split(formulas, items).settled
    expect(settledOf()).toBe(nothing)
    expect(settledOf(itemOf('hazard', always))).toBe(danger)
    expect(settledOf(itemOf('must', always))).toBe(ruledOut)
    expect(settledOf(itemOf('weak', always), itemOf('moderate', always))).toBe(summaryOf(3, true))
    expect(settledOf(itemOf('strong', always))).toBe(doubtful)
    expect(settledOf(itemOf('hazard', never), itemOf('must', never), itemOf('strong', never))).toBe(nothing)
    expect(settledOf(itemOf('enough', always))).toBe(nothing)
    expect(settledOf(itemOf('enough', never))).toBe(summaryOf(0, false))
    expect(settledOf(itemOf('enough', never), itemOf('weak', always))).toBe(summaryOf(1, false))
  })
  test('leave out what can matter no more beside what is settled', () => {
    const open = [itemOf('hazard', a), itemOf('must', a), itemOf('weak', b), itemOf('enough', c)]
    const left = (...settled: number[]) =>
      split(formulas, [...open, ...settled])
        .groups.flat()
        .sort((x, y) => x - y)
    const sorted = (...items: number[]) => items.sort((x, y) => x - y)
    expect(left()).toEqual(sorted(...open))
    expect(left(itemOf('hazard', always))).toEqual([])
    expect(left(itemOf('must', always))).toEqual(sorted(open[0]!))
    expect(left(itemOf('strong', always))).toEqual(sorted(open[0]!, open[1]!))
    expect(left(itemOf('enough', never))).toEqual(sorted(open[0]!, open[1]!, open[2]!))
    expect(left(itemOf('enough', never), itemOf('weak', always))).toEqual(sorted(open[0]!, open[1]!, open[2]!))
    expect(left(itemOf('weak', always))).toEqual(sorted(...open))
  })
  test('with one answer fixed keep how each of their rules counts', () => {
    const items = [itemOf('strong', formulas.and([a, b])), itemOf('enough', a)]
    expect(restrict(formulas, items, 1, 1)).toEqual([itemOf('strong', b), itemOf('enough', always)])
    expect(restrict(formulas, items, 1, 0)).toEqual([itemOf('strong', never), itemOf('enough', never)])
  })
  test('know the question that most of their rules read, the first of those alike, and the literals over each', () => {
    const other = at(2, 1, 0)
    const items = [itemOf('weak', c), itemOf('weak', formulas.and([a, b])), itemOf('must', other)]
    expect(busiest(formulas, items)).toBe(2)
    expect(busiest(formulas, [itemOf('weak', c), itemOf('weak', a)])).toBe(3)
    expect(literalsOf(formulas, items, 2)).toEqual(new Set([b, other]))
    expect(literalsOf(formulas, items, 9)).toEqual(new Set())
    expect(variablesOf(formulas, items)).toEqual([1, 2, 3])
  })
})

describe('views', () => {
  const partitions = openPartitions()
  const open = (most = 100) => openViews(formulas, partitions, () => [0.25, 0.75], most)
  test('have the chances of a group, and what each answer to each of its questions leads to', () => {
    const view = open().viewOf([itemOf('strong', formulas.and([a, b]))])
    expect(view.chances[doubtful]).toBeCloseTo(0.5625, 12)
    expect(view.chances[nothing]).toBeCloseTo(0.4375, 12)
    expect(view.whatIfs.map(one => one.variable).sort()).toEqual([1, 2])
    for (const { partition, classes } of view.whatIfs) {
      expect([...partition.classOf]).toEqual([0, 1])
      expect(classes.map(one => one[doubtful])).toEqual([0, 0.75])
    }
  })
  test('put answers together that lead to the same', () => {
    const three = openViews(formulas, partitions, () => [0.2, 0.3, 0.5], 9)
    const [whatIf] = three.viewOf([itemOf('must', at(8, 1, 0, 1))]).whatIfs
    expect([...(whatIf?.partition.classOf ?? [])]).toEqual([0, 1, 0])
    expect(whatIf?.classes.map(one => one[ruledOut])).toEqual([1, 0])
  })
  test('are made once, as many as are allowed, and again where there were too many', () => {
    const group = [itemOf('strong', formulas.and([a, b, c]))]
    const views = open()
    expect(views.viewOf(group)).toBe(views.viewOf(group))
    const capped = open()
    expect(() => capped.within(2, () => capped.viewOf(group))).toThrow(TooTangled)
    expect(capped.within(3, () => capped.viewOf(group)).chances[doubtful]).toBeCloseTo(0.421875, 12)
    // Outside it there is no end.
    const again = open()
    expect(() => again.within(0, () => again.viewOf(group))).toThrow(TooTangled)
    expect(again.viewOf(group).chances[doubtful]).toBeCloseTo(0.421875, 12)
    const forgetful = open(2)
    const view = (formula: number) => forgetful.viewOf([itemOf('weak', formula)])
    const [first, second] = [view(a), view(b)]
    expect([view(a), view(b)].map((one, i) => one === [first, second][i])).toEqual([true, true])
    const third = view(c)
    expect([view(c) === third, view(a) === first, view(c) === third]).toEqual([true, false, true])
    expect(forgetful.viewOf(group).chances).toEqual(views.viewOf(group).chances)
  })
})
