// The bot in direct messages, and brought along to a server where it is no member: everything private works, nothing of a server's does.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { languages } from '../../src/answers/entry.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeBuying, placeOf } from '../../src/custom-ids/buying-id.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { unsettled } from '../../src/server/settings.ts'
import { weekOf } from '../../src/trends/week.ts'
import { caution, closeAll, finalOf, messageOf, pressed, unsureUntil } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const attic = { id: '900000000000000800', channel: '900000000000000801' }
const places = [
  ['direct messages', 'direct'],
  ['a server where the bot is no member', attic.channel],
] as const

let room: TestRoom
beforeAll(async () => {
  const [wren, ilse] = [englishServer.people[0], englishServer.people[1]]
  room = await openRoom(undefined, {
    ...englishServer,
    elsewhere: {
      id: attic.id,
      name: 'Attic Radio',
      locale: 'de',
      channel: { id: attic.channel, name: 'attic-chatter' },
      people: [wren?.id ?? '', ilse?.id ?? ''],
      managers: [wren?.id ?? ''],
    },
  })
  // Left over from another time: it must count for nothing while the bot is no member.
  await room.services.servers.save({
    ...unsettled(attic.id),
    revision: 1,
    language: 'es',
    outcomes: true,
    moderatorRoles: [],
    links: [{ id: 'l1', url: 'https://attic.example/', title: 'Attic shop', addedAt: 1, reviewedAt: 1 }],
  })
  // As when the bot starts.
  const answers = await room.services.answers()
  for (const language of languages) answers.lookUp('', [language])
})
afterAll(() => room.close())
/** Wren has installed the bot for herself, and manages the other server. */
const wren = () => room.standIn.as('Wren')

describe.each(places)('in %s', (_, channel) => {
  const run = (path: string, options: Record<string, string | number | boolean> = {}): Promise<Reply> =>
    wren().run(path, options, { channel })
  const seen = async (path: string, options: Record<string, string | number | boolean> = {}): Promise<SeenMessage> => {
    const message = await finalOf(await run(path, options))
    expect(message.onlyFor).toBe(wren().id)
    expect(text(message)).not.toMatch(/went wrong on the bot’s side/)
    return message
  }

  test('what needs no server is offered, and what needs one is not', () => {
    const offered = new Set(
      wren()
        .commands({ channel })
        .map(one => one.path.split(' ')[0]),
    )
    for (const name of ['check', 'claim', 'log', 'ask', 'buying', 'privacy']) expect(offered).toContain(name)
    for (const name of ['trends', 'setup']) expect(offered).not.toContain(name)
  })

  test('a check goes from its first question to its verdict, in private, and belongs to no server', async () => {
    const first = await pressed(wren(), await seen('check start'), 'Quick')
    expect(first.onlyFor).toBe(wren().id)
    const [held] = await room.services.checks.heldBy(wren().id, Date.now())
    expect(held?.server).toBeNull()
    const verdict = await unsureUntil(wren(), first, /^## (Undecided|Nothing found|Doubtful)/m)
    expect(verdict.onlyFor).toBe(wren().id)
    expect(text(verdict)).toMatch(caution)
    expect(text(verdict)).not.toMatch(/counted without your name/)
    await closeAll(wren())
    const { services } = room
    const week = weekOf(services.now())
    const who = { server: attic.id, user: wren().id, week, pooling: true }
    const { reporter, pooled } = await services.trends.reporterOf(who)
    expect(await services.trends.outcomes.of([reporter, pooled ?? reporter])).toEqual([])
  })

  test.each<[string, Record<string, string | number | boolean>]>([
    ['check list', {}],
    ['check counting', {}],
    ['claim', { text: '18650 9900mAh' }],
    ['ask', { question: 'what is a rewrap' }],
    ['buying', {}],
    ['privacy', {}],
  ])('/%s answers in private', async (path, options) => {
    const message = await seen(path, options)
    expect(text(message)).not.toMatch(/Attic shop/)
    // Nothing to show to everybody there, and nothing for moderators.
    const ids = buttons(message).map(one => one.customId ?? '')
    expect(ids.filter(id => /\.post\b|^cl1|^cs1/.test(id))).toEqual([])
  })

  test('handing a check over says kindly that it takes a server, and opens none', async () => {
    const refused = await seen('check start', { anyone: true })
    expect(text(refused)).toMatch(/only in the server it was started in/)
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toEqual([])
  })

  test('whoever manages the other server sets nothing up and sees no release there', async () => {
    for (const path of ['setup', 'trends']) {
      const refused = messageOf(await wren().run(path, {}, { channel, anyway: true }))
      expect(text(refused)).toMatch(
        /Only (people who may manage|moderators of) this server|not a member of this server/,
      )
    }
    expect((await room.services.servers.load(attic.id)).revision).toBe(1)
    expect((await room.services.servers.load(demoServer.server.id)).revision).toBe(0)
  })
})

test('links are said to belong to a server, and those left over from another time are not shown', async () => {
  for (const [, channel] of places) {
    const message = await finalOf(await wren().run('buying', {}, { channel }))
    const links = await finalOf(await wren().click(message, encodeBuying({ is: 'view', place: placeOf('links') })))
    expect(text(links)).toMatch(/Links belong to a server; here there are none/)
  }
})

test('the bot has posted nothing where it is no member, and has not tried to', () => {
  expect(room.standIn.messages(attic.channel)).toEqual([])
  expect(room.standIn.journal.filter(one => one.path.startsWith(`/channels/${attic.channel}`))).toEqual([])
})
