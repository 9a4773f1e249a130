// Reminders through the real client: once for each wait, by one process of many, with a ping only where a server turned it on; and nobody is named.
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { demoBotRole, demoReportsChannel, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import type { Services } from '../../src/discord/services.ts'
import { remind } from '../../src/jobs/remind.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { Reminders } from '../../src/server/settings.ts'
import { closeAll, finalOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const server = '900000000000000100'
const hour = 3600_000
/** Where the bot may mention every role. */
const scenario = {
  ...englishServer,
  roles: englishServer.roles.map(role =>
    role.id === demoBotRole ? { ...role, permissions: String(1n << 17n) } : role,
  ),
}
const { room, wren, tomas } = useRoom(() =>
  openRoom(services => ({ ...services, now: () => Date.now() + ahead }), scenario),
)
let ahead = 0
beforeAll(async () => {
  await seedPractice(room.services)
}, 60_000)
beforeEach(async () => {
  await wants({ hours: 6, role: null })
  await stuck()
})
afterEach(() => closeAll(wren()))

async function wants(reminders: Reminders | null): Promise<void> {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, reminders, revision: settings.revision + 1 })
}
async function stuck(): Promise<void> {
  const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  await finalOf(await wren().submit(form.modal, { why: 'hm' }))
  await room.services.queue.idle()
}
const job = (holder = 'one', services: Services = room.services) => ({ services, leases: room.job.leases, holder })
const said = (): SeenMessage[] =>
  tomas()
    .sees(demoReportsChannel)
    .filter(one => /Somebody is waiting/.test(text(one)))
const plea = (): SeenMessage =>
  tomas()
    .sees(demoReportsChannel)
    .findLast(one => buttons(one).some(button => button.label === 'I will look at it')) as SeenMessage

test('said once after the time that was set, with the way to it and without a name; nobody is pinged', async () => {
  const before = said().length
  ahead += 5 * hour
  expect(await remind(job())).toBe(0)
  ahead += 2 * hour
  expect(await remind(job())).toBe(1)
  // After a restart, and by another process, too.
  expect([await remind(job('two')), await remind(job('three'))]).toEqual([0, 0])
  expect(said()).toHaveLength(before + 1)
  const last = said().at(-1)
  expect(text(last as SeenMessage)).toMatch(/1 check has waited for longer than 6 hours/)
  expect(text(last as SeenMessage)).toContain(
    `https://discord.com/channels/${server}/${demoReportsChannel}/${plea().id}`,
  )
  expect(text(last as SeenMessage)).not.toContain(wren().id)
  expect(last?.pinged).toEqual({ people: [], roles: [], everyone: false })
})

test('a new wait of the same check is another one; two processes at once say it once', async () => {
  ahead += 7 * hour
  expect(await remind(job())).toBe(1)
  await pressed(tomas(), plea(), 'I will look at it')
  ahead += 5 * hour
  // Whoever has said that they look at it has as long again.
  expect(await remind(job())).toBe(0)
  ahead += 2 * hour
  const both = await Promise.all([remind(job('one')), remind(job('two'))])
  expect(both.toSorted()).toEqual([0, 1])
})

test('a role is pinged where a server turned it on; one that is gone pings nobody, and a sentence says so', async () => {
  await wants({ hours: 6, role: demoWardens })
  ahead += 7 * hour
  await remind(job())
  expect(said().at(-1)?.pinged.roles).toEqual([demoWardens])
  await closeAll(wren())
  await stuck()
  await wants({ hours: 6, role: '900000000000000299' })
  ahead += 7 * hour
  expect(await remind(job())).toBe(1)
  expect(said().at(-1)?.pinged.roles).toEqual([])
  expect(text(said().at(-1) as SeenMessage)).toMatch(/role that was to be pinged is gone/)
})

test('where nothing was turned on nothing is said; what could not be posted is tried again, what was cut off is not said twice', async () => {
  ahead += 7 * hour
  const before = said().length
  await wants(null)
  expect(await remind(job())).toBe(0)
  await wants({ hours: 6, role: null })
  const shut = { ...room.services, posts: { ...room.services.posts, post: async () => ({ is: 'forbidden' }) as const } }
  expect(await remind(job('one', shut))).toBe(0)
  expect(said()).toHaveLength(before)
  const dying = {
    ...room.services,
    posts: { ...room.services.posts, post: () => room.services.posts.post('900000000000000001', {} as never, 'x') },
    notices: { ...room.services.notices, drop: () => Promise.reject(new Error('killed')) },
  }
  await remind(job('one', dying as unknown as Services))
  expect(await remind(job('two'))).toBe(0)
  expect(said()).toHaveLength(before)
})

test('a check that is closed is waited for no longer', async () => {
  await closeAll(wren())
  ahead += 7 * hour
  expect(await remind(job())).toBe(0)
})
