// What kind of week it was, in words: in every language what is new, the numbers, how sure and what to do, in this order; no two kinds read alike.
import { describe, expect, test } from 'vitest'
import { openPrograms } from '../../src/engine/programs.ts'
import { type KindOfWeek, kindOfWeek, type WeekKind, weekKinds } from '../../src/trends/kind-of-week.ts'
import { sayWeek } from '../../src/words/dates.ts'
import { sayKindOfWeek } from '../../src/words/kind-of-week-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { openTrendNames } from '../../src/words/trend-names.ts'
import { many, type Told, weekly } from '../trends/weekly.ts'

const found: Told = { rises: ['rook'] }
const ends: Readonly<Record<WeekKind, readonly Told[]>> = {
  new: [found],
  again: [found, found],
  recent: [found, {}],
  alone: [{ spikes: ['rook'] }],
  chance: many(4, { failed: 10 }),
  over: [found, ...many(9)],
  growth: many(4, { checks: 40, failed: 10 }),
  ordinary: [{}],
}
const weekOf = (kind: WeekKind): KindOfWeek => {
  const week = kindOfWeek(weekly([...many(40), ...ends[kind]]))
  if (week?.kind !== kind) throw new Error(`${kind} is told as ${week?.kind}`)
  return week
}

describe.each(languages)('in %s', language => {
  const say = sayIn(language)
  const names = openTrendNames(say, openPrograms([]), '2026-11-30')
  const said = (week: KindOfWeek | undefined) => sayKindOfWeek(say, names, week)

  test('each kind has its four sentences, and none reads like another', () => {
    const all = weekKinds.map(kind => said(weekOf(kind)))
    const labels = [say('week.label'), say('week.numbers.label'), say('finding.sure.label', { quiet: 'no' })]
    for (const one of all) {
      expect(one.map(({ label }) => label)).toEqual([...labels, say('finding.next.label')])
      for (const { text } of one) expect(text).not.toMatch(/undefined|NaN|\{/)
      // With its head and its lists it has to fit a message.
      expect(one.map(({ text }) => text).join('\n').length).toBeLessThan(1200)
    }
    expect(new Set(all.map(([what]) => what?.text)).size).toBe(weekKinds.length)
  })

  test('the numbers are those of the releases, with the share that failed', () => {
    const [, numbers] = said(weekOf('chance'))
    for (const number of [80, 40, 20]) expect(numbers?.text).toMatch(new RegExp(`\\b${number}\\b`))
    expect(numbers?.text).toMatch(/50\s?%.*25\s?%/s)
  })

  test('what lies within the usual is told by its range alone', () => {
    const [, numbers] = said(weekOf('ordinary'))
    expect(numbers?.text).not.toMatch(/%/)
    expect(numbers?.text).toMatch(/\b20\b/)
  })

  test('a share that was rarely so large is called unusual, and no number of stretches speaks against chance', () => {
    const sure = (...past: readonly Told[]) => {
      const week = kindOfWeek(weekly([...past, ...many(4, { failed: 10 })]))
      expect(week?.kind).toBe('chance')
      return said(week)[2]?.text ?? ''
    }
    const often = sure(...many(50), ...many(6, { failed: 10 }))
    const never = sure(...many(56))
    expect(often).not.toBe(never)
    expect(never).toContain(say('week.sure.chance', { things: 0, few: 'yes', times: 0, of: 0 }))
    expect(often).toMatch(/\b3\b.*\b49\b/)
  })

  test('what is over is said with the week in which it was found last, also where something else comes first', () => {
    const week = kindOfWeek(weekly([...many(40), found, ...many(5), ...many(4, { failed: 10 })]))
    const last = sayWeek(say, '2026-W41')
    expect(said(weekOf('over'))[0]?.text).toContain(last)
    expect(said(week)[0]?.text).toContain(last)
    expect(said(week)[0]?.text).toContain(say('week.is.chance'))
  })

  test('too early to judge, it says so and nothing else', () => {
    expect(said(undefined)).toEqual([{ label: say('week.label'), text: say('week.too-early') }])
  })
})
