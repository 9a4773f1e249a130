// What stands in a database as JSON: read as it was written, brought up to date from older forms, refused in a sentence from newer ones.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { option, reading } from '../../src/engine/answers.ts'
import { unsettled } from '../../src/server/settings.ts'
import { type Body, UnreadableBody } from '../../src/stores/bodies/body.ts'
import { checkBody } from '../../src/stores/bodies/check.ts'
import { findingBody } from '../../src/stores/bodies/finding.ts'
import { stateBody } from '../../src/stores/bodies/release-state.ts'
import { historyBody, settingsBody } from '../../src/stores/bodies/settings.ts'
import { waitingBody } from '../../src/stores/bodies/waiting-outcome.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { begin, type Finding, untouched } from '../../src/trends/findings/finding.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { testSeal } from './test-seal.ts'

const check: Check = {
  id: 'a',
  revision: 3,
  server: 'here',
  holder: 'ada',
  mode: 'full',
  cells: 2,
  family: null,
  packs: [{ id: 'any-cell', version: '1.0.0', digest: 'sha256:aa' }],
  day: '2026-11-25',
  answers: { legs: option('four'), mass: { ...reading(44.7, 0.1), how: 'typed' }, ring: { kind: 'cant-tell' } },
  trail: ['legs', 'mass'],
  saidBy: { legs: 'ben' },
  pending: { ring: option('whole') },
  tools: ['scale'],
  consents: { unwrap: true },
  phase: { is: 'second-look', question: 'mass', answer: reading(44) },
  leaves: 'declined',
  custody: {
    starter: 'ben',
    from: 'ben',
    offer: { to: { to: 'role', role: 'r' }, until: 5 },
    helpRequest: { question: 'mass', words: 'which one?', where: null },
    closing: { by: 'cleo', at: 6 },
    pair: true,
    shares: true,
    history: [{ by: 'ben', did: 'offered', at: 4, to: { to: 'anyone' }, why: 'no scale' }],
  },
  startedAt: 1,
  expiresAt: 9,
}
const rise = { family: 'harrow', rule: null, week: '2026-W40', standsOut: true }
const finding: Finding = {
  ...begin({ key: 'rise harrow', family: 'harrow', week: '2026-W40', parts: [{ is: 'rise', rise }] }, 'f1', 'here'),
  told: true,
  state: 'warned',
  warning: { channel: 'c', text: 'look', posted: true, message: 'm' },
  post: { channel: 'c', message: 'm' },
  withdrawal: { channel: 'c', text: 'before', posted: true, message: 'm', why: 'sorry' },
  decisions: [
    { by: 'ada', at: 1, did: 'put-off', why: '2026-W42', before: untouched, undone: { by: 'ben', at: 2, why: '' } },
    { by: 'ada', at: 3, did: 'warned', why: 'look', before: untouched, undone: null },
  ],
}
const pattern: Finding['parts'][0] = {
  is: 'pattern',
  pattern: {
    family: 'harrow-30',
    items: ['rule:four-legs', 'answer:legs=four', 'bought:market'],
    ...{ recent: 10, recentOf: 20, earlier: 0, earlierOf: 30, growth: null },
  },
}
const state = {
  first: '2026-W10',
  families: {
    'harrow-30': { opened: '2026-W12', cells: { 'verdict:open': { shown: 5, counted: 7, through: '2026-W12' } } },
  },
  series: { 'harrow-30/': { statistic: 1.5, since: '2026-W11' } },
  rises: [{ family: 'harrow-30', rule: 'four-legs', week: '2026-W12', standsOut: false }],
}
const settings = {
  ...unsettled('here'),
  moderatorRoles: ['r'],
  reminders: { hours: 6, role: 'r' },
  forumOffers: [{ forum: 'f', tags: ['t', 'u'] }],
  links: [{ id: 'l', url: 'https://shop.example', title: 'A shop', addedAt: 1, reviewedAt: 2 }],
}

const history = {
  changes: [
    {
      ...{ revision: 2, by: 'ada', at: 5, undoes: 1 },
      ...{ was: { language: null }, is: { language: 'de' } },
      links: [{ at: 0, was: null, is: settings.links[0] }],
    },
  ],
}

const all: readonly (readonly [string, Body<never>, object])[] = [
  ['a check', checkBody as unknown as Body<never>, check],
  ['a finding', findingBody as unknown as Body<never>, finding],
  ['a pattern', findingBody as unknown as Body<never>, { ...finding, parts: [...finding.parts, pattern] }],
  ['a state', stateBody as unknown as Body<never>, state],
  ['settings', settingsBody as unknown as Body<never>, settings],
  ['a history', historyBody as unknown as Body<never>, history],
  ['an outcome', waitingBody as unknown as Body<never>, base],
]

describe.each(all)('%s', (_, body, value) => {
  const text = body.write(value as never)
  const changed = (change: object) => JSON.stringify({ ...JSON.parse(text), ...change })

  test('reads as it was written, whole', () => {
    expect(body.read(text)).toEqual(value)
  })

  test('of a newer form is refused in a sentence that says what to do, and never read by half', () => {
    expect(() => body.read(changed({ v: 7 }))).toThrow(/version 7.*up to \d.*start that one/)
    const out: Error[] = []
    expect(body.readAll([changed({ v: 7 }), text], error => out.push(error))).toEqual([value])
    expect(out).toHaveLength(1)
  })

  test('with a field that is missing, strange or of another kind is refused by the name of the field, not its content', () => {
    for (const field of Object.keys(value).filter(
      name => !['leaves', 'saidBy', 'custody', 'pending', 'tools'].includes(name),
    )) {
      const odd = { [field]: { secret: 'words of ada' } }
      expect(() => body.read(changed(odd)), field).toThrow(UnreadableBody)
      expect(() => body.read(changed(odd)), field).toThrow(new RegExp(field))
      expect(() => body.read(changed(odd)), field).not.toThrow(/words of ada/)
    }
    expect(() => body.read(changed({ stray: 1 }))).toThrow(UnreadableBody)
    for (const broken of ['', '[]', 'null', '{"a":', '7', changed({ v: -1 }), changed({ v: 'two' })])
      expect(() => body.read(broken), broken).toThrow(UnreadableBody)
  })
})

test('a check of version 0.1.0 is brought up to date: what moderators are asked was called a plea', () => {
  const { custody, ...rest } = check
  const { helpRequest, ...others } = custody ?? { helpRequest: undefined }
  const old = JSON.stringify({ ...rest, custody: { ...others, plea: helpRequest } })
  expect(checkBody.read(old)).toEqual(check)
  expect(checkBody.read(JSON.stringify(rest))).toEqual(rest)
})

test('settings from before something could be decided hold as before any decision', () => {
  const { keepWeeks: _added, ...old } = settings
  expect(settingsBody.read(JSON.stringify(old))).toEqual(settings)
})

test('offers in one forum under one tag, as versions before wrote them, are the first of several; so in the history', () => {
  const one = { forum: 'f', tag: 't' }
  const offers = [{ forum: 'f', tags: ['t'] }]
  const old = (forumOffers: unknown) => settingsBody.read(JSON.stringify({ ...settings, forumOffers })).forumOffers
  expect(old(one)).toEqual(offers)
  expect(old(null)).toEqual([])
  const [change] = history.changes
  const changes = [{ ...change, was: { forumOffers: null }, is: { forumOffers: one } }]
  expect(historyBody.read(JSON.stringify({ changes })).changes).toMatchObject([
    { was: { forumOffers: [] }, is: { forumOffers: offers } },
  ])
  // What is not named in a change stays unnamed.
  expect(historyBody.read(JSON.stringify(history)).changes[0]?.was).toEqual({ language: null })
})

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    const left: Error[] = []
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())

    test('what cannot be read of one is refused by itself; lists go on without it, and say so', async () => {
      const { db } = opened
      const leftOut = (error: Error) => void left.push(error)
      const checks = openCheckStore(db, testSeal, leftOut)
      const now = 100
      for (const id of ['a', 'b'])
        await checks.create({ ...check, id, phase: { is: 'done' }, expiresAt: now + 1 }, `opens ${id}`)
      const findings = openFindingLog(db, leftOut)
      await findings.add('here', [finding, { ...finding, key: 'other' }], () => `f${left.length++}`)
      const servers = openSettingsStore(db, leftOut)
      for (const server of ['here', 'there']) await servers.save({ ...settings, server, revision: 1 })
      left.length = 0
      await db.updateTable('checks').set({ body: '{"v":9}' }).where('id', '=', 'a').execute()
      await db.updateTable('findings').set({ body: '{"v":9}' }).where('key', '=', 'other').execute()
      await db.updateTable('servers').set({ body: '{"v":9}' }).where('id', '=', 'there').execute()

      await expect(checks.load('a')).rejects.toThrow(/A check in the database.*version 9/)
      expect((await checks.heldBy('ada', now)).map(one => one.id)).toEqual(['b'])
      expect((await checks.finished(now + 1, 10)).map(one => one.id)).toEqual(['b'])
      expect((await findings.due('here', '2026-W50')).map(one => one.key)).toEqual(['rise harrow'])
      await expect(servers.load('there')).rejects.toThrow(/The settings of a server.*version 9/)
      expect((await servers.all()).map(one => one.server)).toEqual(['here'])
      expect(left.map(error => error.message)).toEqual(Array(4).fill(expect.stringMatching(/version 9/)))
      const releases = openReleaseLog(db)
      await releases.freeze({ kind: 'pool' }, '2026-W10', '{}', state)
      await db.updateTable('releases').set({ state: '{"v":9}' }).execute()
      expect(await releases.latest({ kind: 'pool' })).toEqual({ week: '2026-W10', state: null })
      // Nothing of it was changed by being read.
      expect((await db.selectFrom('checks').select('body').where('id', '=', 'a').executeTakeFirst())?.body).toBe(
        '{"v":9}',
      )
    })
  })
