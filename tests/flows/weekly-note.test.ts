// The weekly note: one quiet post a week where it is wanted, once however many processes look and start anew, in fives, and pinging nobody.
import { afterEach, beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { ServerSettings } from '../../src/server/settings.ts'
import { graceMs } from '../../src/trends/closing.ts'
import { weekOf, weekStart } from '../../src/trends/week.ts'
import { draftOf, named } from '../families/made-families.ts'
import { caution, pressed } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const week = 7 * 24 * 3600_000
const server = demoServer.server.id
let room: TestRoom
/** How much later than now the room is, in ms. */
let later = 0
const look = (holder = 'one') => lookForWork({ ...room.job, services: room.services, holder })
const tomas = () => room.standIn.as('Tomas')
const notes = (): SeenMessage[] =>
  tomas()
    .sees(demoReportsChannel)
    .filter(one => /The week of|Die Woche vom/.test(text(one)))
/** How often the bot has asked Discord to post something there: a second time is not even tried. */
const asked = () => room.standIn.journal.filter(one => one.method === 'POST' && one.path === toReports).length
const toReports = `/channels/${demoReportsChannel}/messages`
const settle = async (change: Partial<ServerSettings>) => {
  const { revision, ...settings } = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, ...change, revision: revision + 1 })
}
beforeEach(async () => {
  // Well after the week was counted, whenever the test runs.
  later = weekStart(weekOf(Date.now())) + graceMs + 3600_000 - Date.now() + week
  room = await openRoom(services => ({ ...services, now: () => services.now() + later }), englishServer)
}, 60_000)
afterEach(() => room.close())

test('is posted once for a week, by whoever looks first, and again for the next; nobody is pinged', async () => {
  await seedPractice(room.services)
  await look()
  expect(notes()).toEqual([])
  await settle({ weeklyNote: true })
  const before = asked()
  const draft = { ...draftOf(server, named('f-aaaaaa', 'Larkmoor *x*')), state: 'in-review' as const }
  await room.services.families.store.create(draft, 'larkmoor')
  await Promise.all([look('one'), look('two'), look('three')])
  await look('four')
  expect(notes()).toHaveLength(1)
  expect(asked() - before).toBe(1)
  const [note] = notes() as [SeenMessage]
  expect(text(note)).toMatch(/This week:[\s\S]*In numbers:[\s\S]*How sure:[\s\S]*What to do:[\s\S]*\d+ checks so far/)
  expect(text(note)).toMatch(/Findings:\*\* 1 waits for a decision/)
  expect(text(note)).toContain('Larkmoor \\*x\\*')
  expect(text(note)).toMatch(/1 was last looked at more than half a year ago/)
  expect(text(note)).toMatch(/go up in fives/)
  expect(text(note)).toMatch(caution)
  for (const [, number] of text(note).matchAll(/: (\d+)(?:, | \(|$)/gm)) expect(Number(number) % 5).toBe(0)
  expect(note.pinged).toEqual({ everyone: false, people: [], roles: [] })
  expect(text(await pressed(tomas(), note, 'All findings'))).toMatch(/Findings of this server/)
  const links = buttons(note).find(one => one.label === 'Manage the links')
  expect(text(await pressed(tomas(), note, links?.customId ?? ''))).toMatch(/Looking after the links/)
  expect(notes()).toHaveLength(1)
  later += week
  await settle({ language: 'de' })
  await Promise.all([look('one'), look('two')])
  expect(notes()).toHaveLength(2)
  expect(text(notes().find(one => /Die Woche vom/.test(text(one))) as SeenMessage)).toMatch(/Funde:\*\*/)
}, 120_000)

test('a server that counts nothing hears what waits; turned off, without a channel, or where everybody reads, there is none', async () => {
  const on = { weeklyNote: true, reportsChannel: demoReportsChannel }
  await settle({ ...on, weeklyNote: false })
  await look()
  await settle({ ...on, reportsChannel: null })
  await look()
  await settle({ ...on, reportsChannel: '900000000000000301' })
  await look()
  expect(
    tomas()
      .sees('900000000000000301')
      .filter(one => /The week of/.test(text(one))),
  ).toEqual([])
  expect(notes()).toEqual([])
  await settle(on)
  await look()
  expect(notes()).toHaveLength(1)
  expect(text(notes()[0] as SeenMessage)).toMatch(/Nothing was counted for this week[\s\S]*none waits for a decision/)
})

test('what Discord does not take is not posted a second time, and the next week comes', async () => {
  await settle({ weeklyNote: true, reportsChannel: demoReportsChannel })
  room.standIn.faults.answerNext({ match: /messages$/, status: 403, code: 50013 })
  await look()
  await look()
  expect(notes()).toEqual([])
  expect(asked()).toBe(1)
  expect(room.log.some(line => /no weekly note/.test(line))).toBe(true)
  later += week
  await look()
  expect(notes()).toHaveLength(1)
})
