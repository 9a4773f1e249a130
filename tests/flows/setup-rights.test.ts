// Nobody changes a server's set-up who may not: random people with random rights press random buttons, old ones and from elsewhere.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { demoForum, demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeSetup, type SetupAct } from '../../src/custom-ids/setup-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import type { Scenario } from '../../src/practice/scenario.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { type ServerSettings, unsettled } from '../../src/server/settings.ts'
import { parts } from '../../src/server/setup-part.ts'
import { attic, castOf, elsewhereWith } from './attic.ts'
import { finalOf, messageOf, press } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'
import { wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
/** Discord's permissions: who has the first two may manage the server; the others are much, but not that. */
const roles = {
  manages: { id: '900000000000000211', bits: 1n << 5n },
  administers: { id: '900000000000000212', bits: 1n << 3n },
  /** Named as moderators; kicks, bans, manages channels, roles and messages. */
  moderates: { id: '900000000000000213', bits: (1n << 1n) | (1n << 2n) | (1n << 4n) | (1n << 28n) | (1n << 13n) },
  posts: { id: '900000000000000214', bits: (1n << 17n) | (1n << 40n) },
} as const
type RoleName = keyof typeof roles
const managing: readonly RoleName[] = ['manages', 'administers']

const before: ServerSettings = {
  ...unsettled(server),
  revision: 3,
  outcomes: true,
  pooling: true,
  language: 'de',
  moderatorRoles: [roles.moderates.id],
  reportsChannel: demoReportsChannel,
  reviewChannel: demoReportsChannel,
  helperRoles: [roles.posts.id],
  forumOffers: [{ forum: demoForum, tags: ['900000000000000990', '900000000000000991'] }],
}

type Cast = readonly { readonly has: readonly RoleName[]; readonly managesAttic: boolean }[]
const scenarioOf = (cast: Cast): Scenario => {
  const people = castOf(cast.map(({ has }) => has.map(one => roles[one].id)))
  return {
    ...englishServer,
    roles: Object.entries(roles).map(([name, { id, bits }]) => ({ id, name, permissions: String(bits) })),
    people,
    elsewhere: elsewhereWith(people, at => cast[at]?.managesAttic === true),
  }
}

const channels = [demoReportsChannel, '900000000000000301', demoForum]
const snowflakes = fc.constantFrom(...channels, '900000000000000999')
const acts: fc.Arbitrary<{ readonly act: SetupAct; readonly type: number; readonly values: readonly string[] }> =
  fc.oneof(
    fc.record({
      act: fc.constantFrom<SetupAct>(...parts.map(what => ({ is: 'see', what }) as const), { is: 'begin' }),
      type: fc.constant(2),
      values: fc.constant([]),
    }),
    fc.record({
      act: fc.constantFrom<SetupAct>(
        { is: 'outcomes', on: false },
        { is: 'outcomes', on: true },
        { is: 'pooling', on: false },
        { is: 'reports', channel: 'none' },
        { is: 'review', channel: 'none' },
        { is: 'moderators', roles: 'none' },
        { is: 'forum', forum: 'none' },
        { is: 'forum', forum: 'gone' },
        { is: 'untag', forum: demoForum },
        { is: 'helpers', roles: 'none' },
        { is: 'ping', roles: 'none' },
        { is: 'note', on: true },
        { is: 'history', page: 1 },
        { is: 'undo', of: 2 },
        { is: 'undone', of: 3 },
        { is: 'ask-weeks' },
        { is: 'fewer', weeks: 30 },
        { is: 'fewer', weeks: 7 },
      ),
      type: fc.constant(2),
      values: fc.constant([]),
    }),
    fc.record({
      act: fc.constantFrom<SetupAct>(
        { is: 'reports', channel: 'chosen' },
        { is: 'review', channel: 'chosen' },
        { is: 'forum', forum: 'chosen' },
      ),
      type: fc.constant(8),
      values: fc.tuple(fc.constantFrom(...channels)),
    }),
    fc.record({
      act: snowflakes.map((channel): SetupAct => ({ is: 'reports', channel })),
      type: fc.constant(2),
      values: fc.constant([]),
    }),
    fc.record({
      act: fc.constant<SetupAct>({ is: 'moderators', roles: 'chosen' }),
      type: fc.constant(6),
      values: fc.tuple(fc.constantFrom(server, ...Object.values(roles).map(({ id }) => id))),
    }),
    fc.record({
      act: fc.constant<SetupAct>({ is: 'language' }),
      type: fc.constant(3),
      values: fc.tuple(fc.constantFrom('es', 'xx')),
    }),
  )
const presses = fc.record({
  who: fc.nat(3),
  what: acts,
  revision: fc.constantFrom('now', 'now', 'old', 'next'),
  where: fc.constantFrom('server', 'server', 'direct', 'elsewhere'),
})
type Press = typeof presses extends fc.Arbitrary<infer One> ? One : never

const cast = fc.array(
  fc.record({
    has: fc.uniqueArray(fc.constantFrom(...(Object.keys(roles) as RoleName[])), { maxLength: 2 }),
    managesAttic: fc.boolean(),
  }),
  { minLength: 4, maxLength: 4 },
)
const places = { server: '900000000000000301', direct: 'direct', elsewhere: attic.channel } as const

/** Presses it on a private message of the person's own, as somebody could who makes up what a client sends. */
async function forge(person: Person, { what, revision, where }: Press, now: number): Promise<Reply> {
  const seen = messageOf(await person.run('check list', {}, { channel: places[where] }))
  const at = revision === 'now' ? now : revision === 'old' ? Math.max(0, now - 1) : now + 1
  const custom_id = encodeSetup({ revision: at, act: what.act })
  const options = what.values.map(value => ({ label: value, value }))
  const part = { type: what.type, custom_id, id: 1, ...(what.type === 3 && { options }) }
  const forged: SeenMessage = { ...seen, components: [part] }
  if (what.type !== 2) return person.choose(forged, custom_id, what.values, { stale: true })
  const reply = await person.click(forged, custom_id, { stale: true })
  return reply.kind === 'modal' ? person.submit(reply.modal, { weeks: '60' }) : reply
}

async function walk(room: TestRoom, rights: Cast, steps: readonly Press[]): Promise<void> {
  const { servers } = room.services
  for (const step of steps) {
    const was = await servers.load(server)
    const may = step.where === 'server' && (rights[step.who]?.has ?? []).some(one => managing.includes(one))
    const said = await finalOf(await forge(room.standIn.as(`P${step.who}`), step, was.revision))
    const is = await servers.load(server)
    if (!may) {
      const why =
        step.where === 'elsewhere' ? /The bot is not a member of this server/ : /Only people who may manage this server/
      expect(text(said)).toMatch(why)
      expect(text(said)).not.toMatch(/of 10\)|How this server is set up|What was changed/)
    }
    // The form that is opened asks on the settings as they stand then.
    if (!may || (step.revision !== 'now' && step.what.act.is !== 'ask-weeks')) expect(is).toEqual(was)
    expect(said.onlyFor).not.toBeNull()
    expect(is.revision - was.revision).toBeLessThanOrEqual(1)
    expect(is.moderatorRoles).not.toContain(server)
    expect(is.pooling && !is.outcomes).toBe(false)
    expect([104, 30]).toContain(is.keepWeeks)
    expect([null, demoReportsChannel]).toContain(is.reportsChannel)
    expect((await servers.load(attic.id)).revision).toBe(1)
  }
}

test('whoever presses whatever from wherever: only who may manage the server changes it, and only what they saw', async () => {
  await fc.assert(
    fc.asyncProperty(cast, fc.array(presses, { minLength: 6, maxLength: 14 }), async (rights, steps) => {
      const room = await openRoom(undefined, scenarioOf(rights))
      try {
        await room.services.servers.save({ ...before, revision: 1 })
        await room.services.servers.save({ ...before, revision: 2 })
        await room.services.servers.save(before)
        await room.services.servers.save({ ...unsettled(attic.id), revision: 1, moderatorRoles: [roles.moderates.id] })
        await walk(room, rights, steps)
      } finally {
        await room.close()
      }
    }),
    { numRuns: 25 },
  )
}, 120_000)

test('who loses the right while a form or a menu is open changes nothing any more', async () => {
  const room = await openRoom(undefined, englishServer)
  const warden = wardenOf(room)
  const form = await press(warden.person, await warden.open('keeping'), 'Change the number')
  const menu = await warden.open('language')
  if (form.kind !== 'modal') throw new Error('no form')
  room.standIn.removeRole('900000000000000201')
  const refused = [
    messageOf(await warden.person.submit(form.modal, { weeks: '60' })),
    await warden.choose(menu, ['de']),
    await warden.press(menu, 'Overview'),
  ]
  for (const one of refused) expect(text(one)).toMatch(/Only people who may manage this server/)
  expect((await warden.settings()).revision).toBe(0)
  await room.close()
})
