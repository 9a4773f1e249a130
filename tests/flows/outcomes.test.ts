// What a finished check leaves for the counts, through the real client: who leaves something, when, and who does not.
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Services } from '../../src/discord/services.ts'
import { countedOf, forgetCountedOf } from '../../src/discord/trends/counted-of.ts'
import { settleFinished } from '../../src/jobs/settle-finished.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { answer, closeAll, correctLast, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const server = '900000000000000100'
const day = 24 * 3600_000
const { room, wren } = useRoom(() => openRoom(services => ({ ...services, now: () => now })))
let now = Date.now()
beforeEach(() => settings({}))
afterEach(async () => {
  for (const name of ['Wren', 'Ilse', 'Tomas', 'Odalys']) {
    await closeAll(room.standIn.as(name))
    await room.services.trends.optOuts.remove(room.standIn.as(name).id)
    await forgetCountedOf(room.services, room.standIn.as(name).id)
  }
})

/** What a moderator decides; counting is on unless a test says otherwise. */
async function settings(more: Partial<Parameters<Services['servers']['save']>[0]>): Promise<void> {
  const before = await room.services.servers.load(server)
  await room.services.servers.save({
    ...before,
    outcomes: true,
    pooling: false,
    ...more,
    revision: before.revision + 1,
  })
}

/** What the four of them have left, counted or waiting for others. */
async function kept(): Promise<readonly Outcome[]> {
  const theirs = ['Wren', 'Ilse', 'Tomas', 'Odalys'].map(name => countedOf(room.services, room.standIn.as(name).id))
  return (await Promise.all(theirs)).flat()
}

/** A quick way to a verdict: the person stops after the first answers. */
async function verdict(name: string, options: Record<string, string | number> = {}): Promise<SeenMessage> {
  const person = room.standIn.as(name)
  const asked = await unsureUntil(person, await startCheck(person, options), /./)
  return pressed(person, await answer(person, asked, 'A · '), '.finish')
}
const close = (name: string, message: SeenMessage) => pressed(room.standIn.as(name), message, '.close')

test('a closed check leaves its verdict and answers, under a pseudonym, and no more', async () => {
  const shown = await verdict('Wren', { cells: 8, family: 'brindlewick-rook' })
  expect(text(shown)).toMatch(/counted without your name/)
  expect(await kept()).toEqual([])
  await close('Wren', shown)
  const [outcome, ...more] = await kept()
  expect(more).toEqual([])
  expect(outcome).toMatchObject({
    server,
    pooled: null,
    family: 'brindlewick-rook',
    verdict: 'open',
    fired: [],
    bought: 'not-said',
    packs: [{ id: 'any-cell' }, { id: 'paper-harbour' }],
  })
  expect(JSON.stringify(outcome)).not.toContain(wren().id)
  expect(JSON.stringify(outcome)).not.toContain('Wren')
})

test('a check that is closed on the way to a verdict leaves nothing', async () => {
  const person = wren()
  await pressed(person, await pressed(person, await startCheck(person), 'Pause'), '.close')
  await startCheck(person)
  await person.run('check close')
  expect(await kept()).toEqual([])
})

test('the command closes like the button', async () => {
  await verdict('Wren')
  await wren().run('check close')
  expect(await kept()).toHaveLength(1)
})

test('a person counts once for a family in a quarter, and once in the pool', async () => {
  await settings({ pooling: true })
  for (let i = 0; i < 2; i++) await close('Wren', await verdict('Wren'))
  await close('Wren', await verdict('Wren', { family: 'brindlewick-rook' }))
  const outcomes = await kept()
  expect(outcomes.map(one => one.family).sort()).toEqual(['brindlewick-rook', null])
  const [one, other] = outcomes
  expect(one?.reporter).toBe(other?.reporter)
  expect(one?.pooled).toMatch(/^[0-9a-f]{64}$/)
  expect(one?.pooled).not.toBe(one?.reporter)
})

test('nothing is counted on a server that has not asked for it, nor of moderators', async () => {
  await settings({ outcomes: false })
  const shown = await verdict('Wren')
  expect(text(shown)).not.toMatch(/counted/)
  await close('Wren', shown)
  await settings({ moderatorRoles: ['900000000000000202'] })
  for (const name of ['Tomas', 'Ilse']) await close(name, await verdict(name))
  expect(await kept()).toEqual([])
})

test('one check can be left out, and that stays so though the person corrects it', async () => {
  const person = wren()
  const declined = await pressed(person, await verdict('Wren'), 'Leave it out of the counts')
  expect(text(declined)).toMatch(/left out of the counts/)
  expect(buttons(declined).map(one => one.label)).not.toContain('Leave it out of the counts')
  const again = await pressed(person, await correctLast(person, declined), '.finish')
  expect(text(again)).toMatch(/left out of the counts/)
  await close('Wren', again)
  now += 3 * day
  expect(await settleFinished(room.services)).toBe(0)
  expect(await kept()).toEqual([])
})

test('a person can leave all of theirs out, and have deleted what was counted', async () => {
  const person = wren()
  await close('Wren', await verdict('Wren'))
  const asked = await person.run('check counting')
  if (asked.kind !== 'message') throw new Error('no message')
  expect(text(asked.message)).toMatch(/Your checks are counted/)
  const out = await pressed(person, asked.message, 'Do not count my checks')
  expect(text(out)).toMatch(/Your checks are not counted/)
  await close('Wren', await verdict('Wren', { family: 'brindlewick-rook' }))
  expect(await kept()).toHaveLength(1)
  const deleted = await pressed(person, out, 'Delete what was counted from my checks')
  expect(text(deleted)).toMatch(/one record|1 record of yours was deleted/)
  expect(await kept()).toEqual([])
  await pressed(person, deleted, 'Count my checks again')
  await close('Wren', await verdict('Wren'))
  expect(await kept()).toHaveLength(1)
})

test('a verdict that nobody touches for two days is counted as it stands; its buttons still work, and it counts once', async () => {
  const person = wren()
  const shown = await verdict('Wren')
  const tomas = await verdict('Tomas')
  now += 2 * day - 3600_000
  expect(await settleFinished(room.services)).toBe(0)
  now += 2 * 3600_000
  expect(await settleFinished(room.services)).toBe(2)
  expect(await kept()).toHaveLength(1)
  await close('Tomas', tomas)
  const corrected = await correctLast(person, shown)
  await close('Wren', await pressed(person, corrected, '.finish'))
  // A quarter later the same check would be somebody else's, for all its pseudonym tells.
  expect(await kept()).toHaveLength(1)
})

test('a verdict that is settled after its pack was taken away is not counted, and says so in the log', async () => {
  await verdict('Wren', { family: 'brindlewick-rook' })
  now += 3 * day
  const families = { ...room.services.families, programOf: async () => undefined }
  room.log.length = 0
  expect(await settleFinished({ ...room.services, families })).toBe(1)
  expect(await kept()).toEqual([])
  expect(room.log.join()).toContain('of other packs was not counted')
})

test('a check closes though its outcome cannot be made, and the log says why', async () => {
  const broken: Services = {
    ...room.services,
    trends: { ...room.services.trends, reporterOf: async () => Promise.reject(new Error('no key')) },
  }
  await verdict('Wren')
  now += 3 * day
  room.log.length = 0
  expect(await settleFinished(broken)).toBe(1)
  expect(room.log.join()).toContain('an outcome could not be made')
})

test('two clicks that close one check leave one outcome', async () => {
  const person = wren()
  const shown = await verdict('Wren')
  await Promise.all([press(person, shown, '.close'), press(person, shown, '.close')])
  expect(await kept()).toHaveLength(1)
})
