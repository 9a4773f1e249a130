// The draft of a rule speaks the language it is handed, and is YAML whatever its words are.
import { expect, test } from 'vitest'
import { parse, parseDocument } from 'yaml'
import type { Program } from '../../../src/engine/compile.ts'
import type { Condition } from '../../../src/engine/conditions.ts'
import { draftRule, itemsOf } from '../../../src/trends/findings/draft-rule.ts'
import { begin, type Found } from '../../../src/trends/findings/finding.ts'

const finding = begin(
  {
    key: 'k',
    family: 'rook',
    week: '2026-W40',
    parts: [{ is: 'pattern', pattern: { family: 'rook', items: ['answer:legs=four'] } as never }],
  },
  'f1234567',
  's',
)
const words = {
  draft: 'Ein Entwurf: er zählt nichts.',
  care: 'Mit Bedacht.',
  family: 'Gefunden unter: rook',
  cases: 'Fälle.',
  says: '“So” steht es hier: #1',
  seen: 'Gesehen in der Woche vom 28.09.–04.10.2026 (W40).',
}

test('all of its sentences are those it was handed, and the rule holds what was found', () => {
  const drafted = draftRule(finding, undefined, words)
  const { errors, contents } = parseDocument(drafted)
  expect(errors).toEqual([])
  expect(contents?.toJSON()).toMatchObject({
    sources: { 'seen-here': { text: words.seen } },
    rules: [{ says: words.says, when: { legs: 'four' } }],
  })
  const comments = drafted.split('\n').filter(line => /^# [^ ]+ /.test(line) && !/^# (cases|- name):?/.test(line))
  for (const one of [words.draft, words.care, words.family]) expect(comments).toContain(`# ${one}`)
  expect(drafted).toContain(`# ${words.cases}`)
  expect(drafted).not.toMatch(/draft|counts|Found|Write|Choose/i)
})

const rose = (rule: string | null): Found => ({
  is: 'rise',
  rise: { family: 'rook', rule, week: '2026-W40', standsOut: true },
})
const together = (...items: string[]): Found => ({ is: 'pattern', pattern: { family: 'rook', items } as never })
const of = (...parts: Found[]) => ({ ...finding, parts })
const program = (rules: Readonly<Record<string, Condition>>) =>
  ({ rules: Object.entries(rules).map(([id, when]) => ({ id, when })) }) as unknown as Program
const drafted = (found: Found, rules: Readonly<Record<string, Condition>> = {}) =>
  parse(draftRule(of(found), program(rules), words)) as { rules: { when: unknown }[] }
const whenOf = (found: Found, rules: Readonly<Record<string, Condition>> = {}) => drafted(found, rules).rules[0]?.when

test('what it is of: all that goes together, each once; where nothing does, the failed checks that rise', () => {
  expect(itemsOf(of(rose('torn'), together('rule:torn', 'answer:legs=four'), together('rule:torn')))).toEqual([
    'rule:torn',
    'answer:legs=four',
  ])
  expect(itemsOf(of(rose('torn'), rose(null), rose('faded'), rose('torn')))).toEqual(['rule:torn', 'rule:faded'])
  expect(itemsOf(of(rose(null)))).toEqual([])
})

const is = (question: string, ...options: string[]): Condition => ({ op: 'is', question, options })
test.each<[string, Condition, unknown]>([
  ['one answer', is('legs', 'four'), { legs: 'four' }],
  ['one of several', is('legs', 'three', 'four'), { legs: ['three', 'four'] }],
  ['unless one', { op: 'unless', question: 'legs', options: ['four'] }, { legs: { unless: 'four' } }],
  ['unless several', { op: 'unless', question: 'legs', options: ['a', 'b'] }, { legs: { unless: ['a', 'b'] } }],
  ['too little', { op: 'below', question: 'mass', limit: 40 }, { mass: { below: 40 } }],
  ['too much', { op: 'above', question: 'mass', limit: 50 }, { mass: { above: 50 } }],
  ['not', { op: 'not', of: is('legs', 'four') }, { not: { legs: 'four' } }],
  ['all', { op: 'all', of: [is('legs', 'a'), is('wrap', 'b')] }, { all: [{ legs: 'a' }, { wrap: 'b' }] }],
  ['any', { op: 'any', of: [is('legs', 'a'), is('wrap', 'b')] }, { any: [{ legs: 'a' }, { wrap: 'b' }] }],
])('a failed check stands in the draft as packs write its condition: %s', (_, when, written) => {
  expect(whenOf(together('rule:torn'), { other: is('other', 'x'), torn: when })).toEqual(written)
})

test('several things are asked for together; where it was bought, and a rule that is no more, give no condition', () => {
  expect(
    whenOf(together('rule:torn', 'answer:legs=four', 'bought:market', 'rule:gone'), { torn: is('wrap', 'torn') }),
  ).toEqual({ all: [{ wrap: 'torn' }, { legs: 'four' }] })
  expect(whenOf(together('bought:market'), { market: is('wrap', 'torn') })).toEqual({ all: [] })
})

test('the rule is weak, named after its week and its finding, and its three cases stand below it as comments', () => {
  const text = draftRule(of(together('answer:legs=four', 'answer:wrap=torn')), undefined, words)
  expect(parse(text)).toEqual({
    sources: { 'seen-here': { kind: 'common-practice', text: words.seen } },
    rules: [
      {
        id: 'seen-in-2026-w40-f123',
        kind: 'sign',
        strength: 'weak',
        when: { all: [{ legs: 'four' }, { wrap: 'torn' }] },
        says: words.says,
        source: ['seen-here'],
      },
    ],
  })
  const name = 'seen-in-2026-w40-f123'
  const cases = text.slice(text.indexOf('# cases:')).replaceAll(/^# /gm, '')
  expect(parse(cases)).toEqual({
    cases: [
      { name: `${name} fires`, answers: { legs: 'four', wrap: 'torn' }, fires: [name] },
      { name: `${name} stays quiet`, answers: {}, quiet: [name] },
      { name: `${name} unknown`, answers: {}, unknown: [name] },
    ],
  })
  expect(text).toMatch(/[^\n]\n$/)
})

test('answers that make a case fire are no conditions of conditions', () => {
  const both: Condition = { op: 'all', of: [is('legs', 'a'), is('wrap', 'b')] }
  const text = draftRule(of(together('rule:torn', 'answer:cap=red')), program({ torn: both }), words)
  expect(text).toContain('answers:\n#       cap: red')
})

test('a part that has no items beside failed checks is no condition', () => {
  expect(whenOf(rose('torn'), { torn: is('wrap', 'torn') })).toEqual({ wrap: 'torn' })
})
