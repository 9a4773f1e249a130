// A finding in words: how sure and what chance it would take go by one grade, two of one model read apart, and what is cut is cut at whole reasons.
import { describe, expect, test } from 'vitest'
import { openPrograms } from '../../src/engine/programs.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { begin, type Finding, type Found } from '../../src/trends/findings/finding.ts'
import type { Item } from '../../src/trends/outcome.ts'
import { sayFinding, sayFindingTitle, sayNews } from '../../src/words/finding-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { shorten } from '../../src/words/shorten.ts'
import { openTrendNames } from '../../src/words/trend-names.ts'

const week = '2026-W48'
const family = 'brindlewick-rook'
const programs = openPrograms((await installedPacks(undefined)).packs)
const reasons = (programs.programFor(family, '2026-11-30')?.rules ?? []).map(one => one.id).slice(0, 6)
const [first = '', second = ''] = reasons
const bought: Item = 'bought:market'

const rise = (rule: string | null, standsOut: boolean): Found => ({
  is: 'rise',
  rise: { family, rule, week, standsOut },
})
const pattern = (items: readonly Item[], earlierOf = 200): Found => ({
  is: 'pattern',
  pattern: { family, items, recent: 10, recentOf: 40, earlier: 5, earlierOf, growth: 3 },
})
const finding = (...parts: readonly Found[]): Finding => begin({ key: 'k', family, week, parts }, 'id', 'server')
const together = pattern([`rule:${first}`, `rule:${second}`, bought])

describe.each(languages)('in %s', language => {
  const say = sayIn(language)
  const names = openTrendNames(say, programs, '2026-11-30')
  const lines = (one: Finding) => sayFinding(say, names, one, week).map(({ text }) => text)

  test('what it would take to be chance follows from how sure it is', () => {
    const graded = {
      both: finding(rise(first, true), together),
      rise: finding(rise(first, true)),
      pattern: finding(rise(first, false), together),
      little: finding(rise(first, false)),
    }
    for (const [grade, one] of Object.entries(graded)) {
      const [, sure, , noise] = lines(one)
      expect(sure).toContain(say(`finding.sure.${grade as keyof typeof graded}`))
      expect(noise).toContain(say(`finding.noise.${grade as keyof typeof graded}`))
    }
    const noises = Object.values(graded).map(one => lines(one)[3])
    expect(new Set(noises).size).toBe(4)
  })

  test('two findings of one model have two titles', () => {
    const [a, b] = [first, second].map(rule => sayFindingTitle(say, names, finding(rise(rule, true)), week))
    expect(a).not.toBe(b)
    expect(a).toContain(names.family(family))
  })

  test('numbers say of which checks they are, and among how many, where that is shown', () => {
    const [, , many] = lines(finding(together))
    expect(many).toContain(names.item(family, bought))
    expect(many).toContain(shorten(names.rule(family, first), 52))
    expect(many).toMatch(/\b200\b.*\b205\b/)
    expect(lines(finding(pattern([`rule:${first}`], 0)))[2]).not.toMatch(/\b0\b/)
  })

  test('news that is too long keeps whole reasons, says how many more there are, and where the cells were bought', () => {
    const long = finding(...reasons.map(rule => rise(rule, true)), together)
    for (const most of [320, 400, 700]) {
      const said = sayNews(say, names, long, most)
      expect(said.length).toBeLessThanOrEqual(most)
      expect(said).toContain(names.item(family, bought))
      const quoted = reasons.map(rule => names.rule(family, rule).replace(/\.(?=.$)/u, ''))
      const whole = quoted.filter(one => said.includes(one)).length
      const short = reasons.filter(rule => said.includes(shorten(names.rule(family, rule), 52))).length
      const left = reasons.length - Math.max(whole, short)
      expect(Math.max(whole, short)).toBeGreaterThan(0)
      if (left > 0) expect(said).toContain(say('list.rest', { count: left }))
    }
    expect(sayNews(say, names, long)).not.toContain('…')
  })

  test('the five sentences stay within what they are given', () => {
    const long = finding(...reasons.map(rule => rise(rule, true)), together)
    const said = sayFinding(say, names, long, week, 2250).map(one => `**${one.label}** ${one.text}`)
    expect(said.join('\n').length).toBeLessThanOrEqual(2250)
  })
})

test('a shortened text ends at the end of a word and is closed as it was opened', () => {
  expect(shorten('“Four legs, not three.”', 40)).toBe('“Four legs, not three.”')
  expect(shorten('“Four legs, not three.”', 14)).toBe('“Four legs…”')
  expect(shorten('Four legs, not three', 13)).toBe('Four legs…')
  expect([...shorten(`“${'x'.repeat(60)}”`, 20)]).toHaveLength(20)
})
