// The bot was away for weeks: what it missed is told in order once it is back, one post a finding, and what has gone quiet meanwhile says so.
import { afterEach, beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const week = 7 * 24 * 3600_000
const scope = { kind: 'server', server: demoServer.server.id } as const
let room: TestRoom
/** How much later than now the room is, in ms. */
let later = 0
beforeEach(async () => {
  later = 0
  room = await openRoom(services => ({ ...services, now: () => services.now() + later }), englishServer)
  await seedPractice(room.services)
}, 60_000)
afterEach(() => room.close())
const look = () => lookForWork({ ...room.job, services: room.services })
const posts = (): SeenMessage[] =>
  room.standIn
    .as('Tomas')
    .sees(demoReportsChannel)
    .filter(one => /Something new|Gone quiet/.test(text(one)))

test('a finding that went quiet while the bot was away: its one post says so as soon as it is back', async () => {
  await look()
  const [before] = posts()
  expect(text(before as SeenMessage)).toMatch(/Something new/)
  // For a while its weeks are recent still; then come eight without it.
  later = 19 * week
  await look()
  expect(posts().map(one => one.id)).toEqual([before?.id])
  expect(text(posts()[0] as SeenMessage)).toMatch(/Gone quiet/)
  expect(await room.services.trends.releases.unread()).toEqual([])
})

test('sixty weeks closed at once: one post, told since the week in which it was first noticed, each notice marked in the chart', async () => {
  await look()
  expect(posts()).toHaveLength(1)
  const { findings, releases } = room.services.trends
  const noticed: string[] = []
  for (const one of await releases.weeks(scope)) {
    const read = readRelease((await releases.bytes(scope, one)) ?? '')
    if (read.ok && read.release.rises.some(rise => rise.week === one)) noticed.push(one)
  }
  expect(noticed.length).toBeGreaterThan(2)
  expect((await findings.of(scope.server)).map(one => one.week)).toEqual([noticed[0]])
  const said = posts()[0]?.attachments[0]?.description ?? ''
  for (const one of noticed) expect(said).toContain(one.slice(5))
})
