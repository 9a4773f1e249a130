// The pool of servers, for moderators of servers that are in it: never of which server, never of so few that one could be worked out.
import { beforeAll, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { unsettled } from '../../src/server/settings.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { caution, messageOf, postButton, press, pressed } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'

const here = demoServer.server.id
const others = ['910000000000000100', '920000000000000100']
const week = weekPlus(weekOf(Date.now()), -1)
const { room, tomas, wren } = useRoom(inEnglish)
beforeAll(async () => {
  let person = 1
  const record = async (server: string, people: number) => {
    for (let i = 0; i < people; i++, person++)
      await room.services.trends.outcomes.record({
        ...base,
        server,
        week,
        family: 'brindlewick-rook',
        reporter: person.toString(16).padStart(64, '0'),
        pooled: (person + 1000).toString(16).padStart(64, '0'),
      })
  }
  await record(here, 6)
  await record(others[0]!, 7)
  await record(others[1]!, 8)
  await settle(here, true)
  await settle(others[0]!, true)
  await lookForWork({ ...room.job, services: room.services })
}, 60_000)

async function settle(server: string, pooling: boolean): Promise<void> {
  const { revision } = await room.services.servers.load(server)
  await room.services.servers.save({ ...unsettled(server), outcomes: true, pooling, revision: revision + 1 })
}
const open = async (): Promise<SeenMessage> => messageOf(await tomas().run('trends'))

test('two servers are no pool to be shown: each could take its own counts off', async () => {
  const message = await open()
  expect(text(message)).toMatch(/5 checks so far/)
  const refused = text(messageOf(await press(tomas(), message, 'All servers that pool')))
  expect(refused).toMatch(/fewer than 3 servers pool their counts/)
})

test('of three or more it is shown, names no server, and leads back to the own counts', async () => {
  await settle(others[1]!, true)
  let pool = await pressed(tomas(), await open(), 'All servers that pool')
  expect(text(pool)).toMatch(/Checks counted on all servers that pool/)
  expect(text(pool)).toMatch(/20 checks so far/)
  expect(text(pool)).toMatch(caution)
  for (const what of ['families', 'rises', 'patterns']) {
    pool = await pressed(tomas(), pool, `.${what}`)
    expect(text(pool)).toMatch(/on all servers that pool/)
  }
  const csv = messageOf(await press(tomas(), pool, '.csv'))
  expect(csv.attachments[0]?.name).toBe(`pooled-checks-${week}.csv`)
  const content = await (await fetch(csv.attachments[0]?.url ?? '')).text()
  expect(content).not.toMatch(/\d{17}/)
  expect(text(await pressed(tomas(), pool, 'This server alone'))).toMatch(/5 checks so far/)
})

test('a server that does not pool has no such button, and an old one is answered', async () => {
  const id = encodeTrends({ is: 'pool', week, what: 'overview' })
  await settle(here, false)
  expect(buttons(await open()).map(one => one.label)).not.toContain('All servers that pool')
  const refused = messageOf(await tomas().click(await postButton(room.standIn, id), id))
  expect(text(refused)).toMatch(/Only servers that pool their counts see the pool’s/)
  await settle(here, true)
})

test('nobody but moderators sees it', async () => {
  const id = encodeTrends({ is: 'pool', week, what: 'json' })
  const reply = messageOf(await wren().click(await postButton(room.standIn, id), id))
  expect(text(reply)).toMatch(/Only moderators/)
  expect(reply.attachments).toEqual([])
})
