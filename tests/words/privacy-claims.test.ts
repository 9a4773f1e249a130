// What `/privacy` says in figures is what the program does, in every language; what it says in words has its tests, named here.
import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { lifetime } from '../../src/check/check.ts'
import { leastKeepWeeks, mostKeepWeeks } from '../../src/server/settings.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import { outcomeShape } from '../../src/trends/outcome.ts'
import { privacy as de } from '../../src/words/de/privacy.ts'
import { families } from '../../src/words/en/families.ts'
import { privacy as en } from '../../src/words/en/privacy.ts'
import { privacy as es } from '../../src/words/es/privacy.ts'

const root = resolve(import.meta.dirname, '../..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')
const hour = 3600_000
const week = 7 * 24 * hour

/** Words that only name a thing or a button. */
const names = /\.name$|^privacy\.(page\..*|title|show|delete|help-out|help-in|sure\.(title|yes|no))$/

const said = { ...en, 'privacy.families': families['privacy.families'] }
type Key = keyof typeof said

const flow = 'tests/flows/privacy.test.ts'
const traces = 'tests/contracts/traces.test.ts'
const gone = ['tests/faults/traces.test.ts', 'closed, counted and expired, leave nothing'] as const
const nameGone = [traces, 'a moderator loses their name'] as const
/** What is not the bot's to hold: what Discord and the people who run the bot do. */
const others = null

/** A claim, where it is made, and the test that holds it: a file, and a part of the test's name. Of every sentence some part stands here. */
const held: readonly (readonly [Key, RegExp, string, string] | readonly [Key, RegExp, null])[] = [
  ['privacy.short', /two weeks after the last step/, ...gone],
  ['privacy.short', /nothing with your id on it is kept for longer/, ...gone],
  ['privacy.checks', /your Discord id, the server, when you began/, traces, 'a person sees all of theirs, closed'],
  ['privacy.checks', /deleted two weeks after/, 'tests/contracts/check-store.test.ts', 'purges expired checks'],
  ['privacy.checks', /answers are sealed/, 'tests/contracts/closing.test.ts', 'its person can still go on with it'],
  [
    'privacy.checks',
    /whoever runs the bot can open them/,
    'tests/contracts/closing.test.ts',
    'its person can still go on with it',
  ],
  ['privacy.checks', /in back-ups too/, 'tests/stores/not-joined.test.ts', 'a back-up holds no answer'],
  [
    'privacy.checks',
    /three weeks after the last step at the latest/,
    'tests/bin/keys-let-go.test.ts',
    'the key of a seal is there for as long as a check lives',
  ],
  [
    'privacy.checks',
    /what you answered is deleted at once/,
    'tests/contracts/check-store.test.ts',
    'a closed check is small, and gone a day after',
  ],
  ['privacy.checks', /within eight days/, 'tests/bin/keys-let-go.test.ts', 'a closed check is gone within eight days'],
  [
    'privacy.checks',
    /After an outage/,
    'tests/bin/clock-guard.test.ts',
    'a bot that was away for a week deletes nothing at once',
  ],
  ['privacy.checks', /who had it, who helped/, traces, 'a person leaves the checks of others'],
  [
    'privacy.checks',
    /are removed when the question is answered/,
    'tests/flows/second-opinion.test.ts',
    'with the answer they are gone',
  ],
  [
    'privacy.drafts',
    /for six hours/,
    'tests/words/privacy-claims.test.ts',
    'nothing waits for an answer for longer than six hours',
  ],
  [
    'privacy.drafts',
    /within the hour, or when the bot next starts/,
    'tests/bin/clock-guard.test.ts',
    'what somebody typed goes by its own time',
  ],
  [
    'privacy.drafts',
    /read and not kept/,
    'tests/flows/log.test.ts',
    'by a restarted bot just as well, and not for long',
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
    /another one for each model/,
    'tests/stores/families-apart.test.ts',
    'no code stands in two outcomes',
  ],
  [
    'privacy.counts',
    /no figures, and no answer that hardly anybody/,
    'tests/stores/coarser-outcomes.test.ts',
    'an answer stands in none until five',
  ],
  ['privacy.counts', /may still find it/, 'tests/trends/alone.test.ts', 'test('],
  ['privacy.counts', /Until five people of the server/, 'tests/stores/few-a-week.test.ts', 'with %i a week'],
  ['privacy.counts', /when the quarter ends is deleted/, 'tests/stores/few-a-week.test.ts', 'those of two quarters'],
  ['privacy.counts', /at least five accounts/, 'tests/trends/audit/audit.test.ts', 'no one to four people are pinned'],
  [
    'privacy.counts',
    /holds four of them knows what came from the fifth/,
    'tests/bin/weekly-job.test.ts',
    'somebody with four accounts',
  ],
  [
    'privacy.counts',
    /key to the code is destroyed/,
    'tests/stores/epoch-keys.test.ts',
    'the keys of epochs that are over are destroyed',
  ],
  ['privacy.counts', /how long this is kept/, 'tests/bin/weekly-job.test.ts', 'outcomes by what their server keeps'],
  ['privacy.decisions', /as a code of your id/, flow, 'deleting does not undo a no'],
  ['privacy.decisions', /until the bot leaves the server/, traces, 'a server that leaves takes all of its own along'],
  ['privacy.decisions', /for a year at most/, 'tests/server/history.test.ts', 'none longer than a year'],
  ['privacy.server', /are deleted/, traces, 'a server that leaves takes all of its own along'],
  ['privacy.server', /for several servers together stay/, traces, 'nothing of another server or of the pool'],
  ['privacy.server', /name no server and no person/, 'tests/bin/weekly-job.test.ts', 'names none'],
  ['privacy.not', /your name, your messages, and files/, flow, 'neither their name nor what they wrote nor a file'],
  ['privacy.not', /are kept by Discord/, others],
  ['privacy.not', /may keep back-ups/, others],
  ['privacy.shown', /Everything that is kept under your id/, flow, 'is shown everything as a file'],
  [
    'privacy.sure',
    /deleted at once/,
    'tests/faults/forgotten.test.ts',
    'a person who wants to be forgotten is, to the byte',
  ],
  ['privacy.sure', /overwritten a little later/, 'tests/stores/private-files.test.ts', 'as soon as they are through'],
  ['privacy.sure', /goes back to them without your answers/, traces, 'goes back to them without a single answer'],
  ['privacy.sure', /your name is deleted/, ...nameGone],
  ['privacy.sure', /cannot be undone/, traces, 'the second time there is nothing left to take'],
  ['privacy.stays', /numbers already published/, 'tests/bin/weekly-job.test.ts', 'what is frozen stays as it is'],
  ['privacy.stays', /dropped by one/, 'tests/trends/audit/audit.test.ts', 'no shown number falls'],
  ['privacy.stays', /that stays, too/, flow, 'deleting does not undo a no'],
  ['privacy.stays', /for 90 days/, 'tests/contracts/erasures.test.ts', 'after ninety days nothing of it is left'],
  ['privacy.deleted', /^Deleted: /, flow, 'deletes all of it'],
  ['privacy.helped', /for eight weeks/, 'tests/contracts/helper-log.test.ts', 'goes when it is old'],
  [
    'privacy.helped',
    /in steps of five/,
    'tests/contracts/helper-log.test.ts',
    'moderators see steps of five from five on',
  ],
  [
    'privacy.helped',
    /what was counted is deleted/,
    'tests/contracts/helper-log.test.ts',
    'is not counted of whoever says no',
  ],
  [
    'privacy.families',
    /Which versions, reference cells and photos/,
    'tests/contracts/family-store.test.ts',
    'who has their name taken out',
  ],
  [
    'privacy.families',
    /takes your name and your reasons away/,
    'tests/contracts/family-store.test.ts',
    'who has their name taken out',
  ],
]

test.each(held)('%s: %s', (...[key, claim, file, name]) => {
  expect(said[key]).toMatch(claim)
  if (file) expect(read(file)).toContain(name)
})

test('every sentence has its test, and what has none is a name or a button', () => {
  const keys = Object.keys({ ...en, ...families }).filter(key => key.startsWith('privacy.') && !names.test(key))
  for (const key of keys as Key[])
    for (const sentence of said[key].split(/(?<=\.) (?=[A-Z])/))
      expect(
        held.filter(([of, claim]) => of === key && claim.test(sentence)),
        `${key}: ${sentence}`,
      ).not.toEqual([])
})

describe.each([
  ['en', en, /two weeks after the last step/, /half a year to five years/, /five accounts/, /six hours/],
  ['de', de, /zwei Wochen nach dem letzten Schritt/, /halben Jahr bis zu fünf Jahren/, /fünf Konten/, /sechs Stunden/],
  ['es', es, /dos semanas tras el último paso/, /medio año a cinco años/, /cinco cuentas/, /seis horas/],
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
