// What `/privacy` says in figures is what the program does, in every language; what it says in words has its tests, named here.
import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { lifetime } from '../../src/check/check.ts'
import { leastKeepWeeks, mostKeepWeeks } from '../../src/server/settings.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import { outcomeShape } from '../../src/trends/outcome.ts'
import { privacy as de } from '../../src/words/de/privacy.ts'
import { privacy as en } from '../../src/words/en/privacy.ts'
import { privacy as es } from '../../src/words/es/privacy.ts'

const root = resolve(import.meta.dirname, '../..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')
const hour = 3600_000
const week = 7 * 24 * hour

/** A claim, where it is made, and the test that holds it: a file, and a part of the test's name. */
const held: readonly (readonly [keyof typeof en, RegExp, string, string])[] = [
  [
    'privacy.checks',
    /what you answered is deleted at once/,
    'tests/contracts/check-store.test.ts',
    'a closed check is small, and gone a day after',
  ],
  ['privacy.checks', /within eight days/, 'tests/faults/traces.test.ts', 'closed, counted and expired, leave nothing'],
  [
    'privacy.checks',
    /After an outage/,
    'tests/bin/clock-guard.test.ts',
    'a bot that was away for a week deletes nothing at once',
  ],
  [
    'privacy.checks',
    /who had it, who helped/,
    'tests/contracts/traces.test.ts',
    'a person leaves the checks of others',
  ],
  [
    'privacy.drafts',
    /at most six hours/,
    'tests/stores/private-files.test.ts',
    'a draft that has expired is swept out of the files',
  ],
  [
    'privacy.counts',
    /only where those who manage a server have turned it on/,
    'tests/flows/outcomes.test.ts',
    'nothing is counted on a server that has not asked for it',
  ],
  [
    'privacy.counts',
    /under a code instead of your name/,
    'tests/flows/outcomes.test.ts',
    'under a pseudonym, and no more',
  ],
  [
    'privacy.counts',
    /no figures, and no answer that hardly anybody/,
    'tests/stores/coarser-outcomes.test.ts',
    'an answer stands in none until five',
  ],
  ['privacy.counts', /at least five accounts/, 'tests/trends/audit/audit.test.ts', 'no one to four people are pinned'],
  [
    'privacy.counts',
    /key to the code is destroyed/,
    'tests/stores/epoch-keys.test.ts',
    'the keys of epochs that are over are destroyed',
  ],
  ['privacy.decisions', /as a code of your id/, 'tests/flows/privacy.test.ts', 'deleting does not undo a no'],
  [
    'privacy.server',
    /are deleted/,
    'tests/contracts/traces.test.ts',
    'a server that leaves takes all of its own along',
  ],
  [
    'privacy.sure',
    /deleted at once/,
    'tests/faults/forgotten.test.ts',
    'a person who wants to be forgotten is, to the byte',
  ],
  ['privacy.sure', /overwritten a little later/, 'tests/stores/private-files.test.ts', 'as soon as they are through'],
  [
    'privacy.sure',
    /goes back to them without your answers/,
    'tests/contracts/traces.test.ts',
    'goes back to them without a single answer',
  ],
  ['privacy.sure', /your name is deleted/, 'tests/contracts/traces.test.ts', 'a moderator loses their name'],
  ['privacy.stays', /numbers already published/, 'tests/bin/weekly-job.test.ts', 'what is frozen stays as it is'],
]

test.each(held)('%s: %s', (key, claim, file, name) => {
  expect(en[key]).toMatch(claim)
  expect(read(file)).toContain(name)
})

describe.each([
  ['en', en, /two weeks after your last step/, /half a year to five years/, /five accounts/, /six hours/],
  [
    'de',
    de,
    /zwei Wochen nach deinem letzten Schritt/,
    /halben Jahr bis zu fünf Jahren/,
    /fünf Konten/,
    /sechs Stunden/,
  ],
  ['es', es, /dos semanas (tras|después de) tu último paso/, /medio año a cinco años/, /cinco cuentas/, /seis horas/],
] as const)('%s', (_, words, checks, kept, accounts, drafts) => {
  test('says the figures that the program has', () => {
    expect([words['privacy.short'], lifetime]).toEqual([expect.stringMatching(checks), 2 * week])
    expect([words['privacy.counts'], leastKeepWeeks, mostKeepWeeks]).toEqual([expect.stringMatching(kept), 26, 260])
    expect([words['privacy.counts'], minimumReporters]).toEqual([expect.stringMatching(accounts), 5])
    expect(words['privacy.drafts']).toMatch(drafts)
  })
})

test('nothing waits for an answer for longer than six hours', () => {
  const files = readdirSync(join(root, 'src/discord'), { recursive: true, encoding: 'utf8' }).filter(one =>
    one.endsWith('.ts'),
  )
  const texts = files.map(one => read(join('src/discord', one)))
  const names = new Set(
    texts.flatMap(text => [...text.matchAll(/drafts\.keep\([^)]*, (\w+)\)/g)].map(match => match[1] ?? '')),
  )
  expect(names.size).toBeGreaterThan(1)
  for (const name of names) {
    const written = texts.flatMap(text => new RegExp(`const ${name} = ([\\d_ *]+)$`, 'm').exec(text)?.[1] ?? [])
    expect(written.length, name).toBeGreaterThan(0)
    for (const one of written) {
      const ms = one
        .replaceAll('_', '')
        .split('*')
        .reduce((product, factor) => product * Number(factor), 1)
      expect(ms, name).toBeLessThanOrEqual(6 * hour)
    }
  }
})

test('an outcome has no field that is not said', () => {
  expect(Object.keys(outcomeShape.unwrap().shape).sort()).toEqual(
    ['bought', 'family', 'fired', 'options', 'packs', 'pooled', 'reporter', 'server', 'verdict', 'week'].sort(),
  )
})
