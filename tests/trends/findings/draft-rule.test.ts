// The draft of a rule speaks the language it is handed, and is YAML whatever its words are.
import { expect, test } from 'vitest'
import { parseDocument } from 'yaml'
import { draftRule } from '../../../src/trends/findings/draft-rule.ts'
import { begin } from '../../../src/trends/findings/finding.ts'

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
