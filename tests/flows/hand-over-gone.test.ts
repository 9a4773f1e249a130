// What a check is handed over with goes meanwhile: a role, a right, a channel, a message. The check is never lost with it.
import { afterEach, beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import type { Check } from '../../src/check/check.ts'
import type { Services } from '../../src/discord/services.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, press, pressed, settled, untouched } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const questions = '900000000000000301'
const workbench = '900000000000000302'
const keepers = '900000000000000202'
let room: TestRoom
const wren = () => room.standIn.as('Wren')
const ilse = () => room.standIn.as('Ilse')
const tomas = () => room.standIn.as('Tomas')
/** What another process does to a check just before this one saves it. */
let faster: (before: Check) => Promise<unknown>
beforeEach(async () => {
  faster = async () => undefined
  room = await openRoom(
    services => ({
      ...services,
      checks: {
        ...services.checks,
        save: (async (check, ...more) => {
          await faster(check)
          return services.checks.save(check, ...more)
        }) satisfies Services['checks']['save'],
      },
    }),
    englishServer,
  )
  await seedPractice(room.services)
}, 60_000)
afterEach(() => room.close())

async function latest(person: Person, channel: string, words: RegExp): Promise<SeenMessage> {
  await room.services.queue.idle()
  return person.sees(channel).findLast(one => !one.private && words.test(text(one))) as SeenMessage
}
const panel = (person: Person, channel = questions) => latest(person, channel, /A cell to check/)
const helpRequest = () => latest(tomas(), demoReportsChannel, /stuck on a question/)

async function stuck(channel = questions): Promise<SeenMessage> {
  const question = messageOf(await wren().run('check start', { depth: 'full' }, { channel }))
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  return finalOf(await wren().submit(form.modal, { why: 'hm' }))
}

test('a role that is deleted: nobody can take it any more, and whoever offered it takes it back', async () => {
  const waiting = messageOf(await wren().run('check start', { depth: 'full', for: keepers }, { channel: questions }))
  room.standIn.removeRole(keepers)
  expect(text(await pressed(ilse(), await panel(ilse()), 'Take it'))).toMatch(/meant for somebody else/)
  expect(text(await pressed(wren(), waiting, 'Take it back'))).toMatch(untouched)
})

test('a moderator who loses the right between the question and the answer: nothing is answered', async () => {
  await stuck()
  const queue = messageOf(await tomas().run('check waiting', {}, { channel: questions }))
  const question = await pressed(tomas(), queue, 'See it')
  room.standIn.removeRole(demoWardens)
  expect(text(await pressed(tomas(), question, '.unsure'))).toMatch(/Only the person who has this check/)
  const [check] = await room.services.checks.heldBy(wren().id, room.services.now())
  expect(check?.trail).toEqual([])
  expect(check?.custody?.helpRequest).toBeDefined()
})

test('the channel in which it was asked is deleted: the moderator is told that nobody could be', async () => {
  await stuck(workbench)
  const question = await pressed(tomas(), await helpRequest(), 'Answer for them')
  room.standIn.removeChannel(workbench)
  expect(text(await settled(room, await pressed(tomas(), question, '.unsure')))).toMatch(
    /could not reach <@900000000000000401>/,
  )
  expect(text(messageOf(await wren().run('check resume', {}, { channel: questions })))).toMatch(/1 answered/)
})

test('the channel in which it was offered is deleted: it is still offered, and the list shows it', async () => {
  await wren().run('check start', { depth: 'full', for: ilse().id }, { channel: workbench })
  await room.services.queue.idle()
  room.standIn.removeChannel(workbench)
  const list = messageOf(await ilse().run('check list', {}, { channel: questions }))
  const progress = await pressed(ilse(), list, 'See 1')
  expect(text(await pressed(ilse(), progress, 'Take it'))).toMatch(untouched)
  await room.services.queue.idle()
  const [check] = await room.services.checks.heldBy(ilse().id, room.services.now())
  expect(await room.services.notices.of(check?.id ?? '')).toEqual([])
})

test('the channel of moderators is deleted: whoever asks is told that it waits in the list of moderators', async () => {
  room.standIn.removeChannel(demoReportsChannel)
  await stuck()
  const queue = messageOf(await tomas().run('check waiting', {}, { channel: questions }))
  expect(text(queue)).toMatch(/stuck since/)
})

test('a moderator may not see the bot’s panel any more: a check that was taken goes on', async () => {
  await tomas().run('check start', { depth: 'full', for: wren().id }, { channel: workbench })
  const question = await pressed(wren(), await panel(wren(), workbench), 'Take it')
  room.standIn.changeRights(workbench, { forbid: [{ who: 'bot', what: ['view'] }] })
  const back = await pressed(wren(), question, 'Ask or hand over')
  const form = await press(wren(), back, 'Give it back')
  if (form.kind !== 'modal') throw new Error('no form')
  expect(text(messageOf(await wren().submit(form.modal, { why: 'no time' })))).toMatch(/has the check/)
  expect(text(messageOf(await tomas().run('check resume', {}, { channel: questions })))).toMatch(untouched)
})

test.each([
  ['is shown to nobody who held it before', () => ilse().id, /Only the person who has this check/],
  ['is shown as it stands to whoever still holds it', () => wren().id, /answers are kept until/],
] as const)('a check that somebody else changes while it is resumed %s', async (_then, holder, words) => {
  const first = messageOf(await wren().run('check start', { depth: 'full' }, { channel: questions }))
  await pressed(wren(), first, 'Pause')
  faster = async ({ id }) => {
    faster = async () => undefined
    const found = (await room.services.checks.load(id))?.check as Check
    const changed = { ...found, holder: holder(), revision: found.revision + 1 }
    expect(await room.services.checks.save(changed, found.revision, 'the other process')).toBe('saved')
  }
  expect(text(messageOf(await wren().run('check resume', {}, { channel: questions })))).toMatch(words)
})
