// The channels and the forum of the set-up: tried on the spot, without leaving anything behind, and refused with what to change.
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import {
  demoClosedChannel,
  demoForum,
  demoReportsChannel,
  demoServer,
  demoWardens,
} from '../../src/bin/practice-room/demo-server.ts'
import { menus, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'
import { type Warden, wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
const everybody = '900000000000000301'
const { room } = useFreshRoom(inEnglish)
const warden = wardenOf(room)

test('a role that sees neither the channels nor /trends is named with what to change in Discord; one that does is not', async () => {
  const keepers = '900000000000000202'
  const settings = await warden.settings()
  await room.services.servers.save({ ...settings, reportsChannel: demoReportsChannel, revision: settings.revision + 1 })
  const chosen = text(await warden.choose(await warden.open('moderators'), [keepers]))
  expect(chosen).toMatch(/This is how it is now/)
  expect(chosen).toContain(`<@&${keepers}> cannot see <#${demoReportsChannel}>: give it “View Channel” there`)
  expect(chosen).toContain(`<@&${keepers}> cannot use /trends`)
  expect(text(await warden.overview())).toContain(`<@&${keepers}> cannot see`)
  const wardens = text(await warden.choose(await warden.open('moderators'), [demoWardens]))
  expect(wardens).not.toMatch(/cannot see|cannot use/)
})

describe('a channel', () => {
  test('is tried on the spot, leaves nothing behind, and is kept', async () => {
    const before = room.standIn.messages(demoReportsChannel).length
    const after = await warden.choose(await warden.open('reports'), [demoReportsChannel])
    expect(text(after)).toMatch(/This is how it is now/)
    expect((await warden.settings()).reportsChannel).toBe(demoReportsChannel)
    expect(room.standIn.messages(demoReportsChannel)).toHaveLength(before)
    expect(room.standIn.journal.some(one => one.path === `/channels/${demoReportsChannel}/typing`)).toBe(true)
    expect(menus(await warden.open('reports'))[0]?.chosen).toEqual([demoReportsChannel])
    const { revision } = await warden.settings()
    expect(text(await warden.press(await warden.open('reports'), 'Test it'))).toMatch(/Tried just now/)
    expect((await warden.settings()).revision).toBe(revision)
    expect(text(await warden.press(await warden.open('reports'), 'No channel'))).toMatch(/Now:\*\* none/)
  })

  test('where the bot may not post names what is missing, changes nothing, and can be tried again', async () => {
    const message = await warden.choose(await warden.open('reports'), [demoClosedChannel])
    expect(text(message)).toMatch(/may not post in .* give it \*\*View Channel\*\* there/)
    expect((await warden.settings()).revision).toBe(0)
    room.standIn.changeRights(demoClosedChannel, {
      forbid: [{ who: server, what: ['view', 'send'] }],
      permit: [
        { who: 'bot', what: ['view'] },
        { who: demoWardens, what: ['view'] },
      ],
    })
    const second = await warden.press(message, 'Try again')
    expect(text(second)).toMatch(/give it \*\*Send Messages\*\* there/)
    room.standIn.changeRights(demoClosedChannel, {
      forbid: [{ who: server, what: ['view'] }],
      permit: [
        { who: 'bot', what: ['view'] },
        { who: demoWardens, what: ['view'] },
      ],
    })
    expect(text(await warden.press(second, 'Try again'))).toMatch(/This is how it is now/)
    expect((await warden.settings()).reportsChannel).toBe(demoClosedChannel)
  })

  test('for photographs needs Attach Files, too', async () => {
    room.standIn.changeRights(demoReportsChannel, {
      forbid: [{ who: server, what: ['view', 'attach'] }],
      permit: [
        { who: 'bot', what: ['view'] },
        { who: demoWardens, what: ['view'] },
      ],
    })
    expect(text(await warden.choose(await warden.open('review'), [demoReportsChannel]))).toMatch(
      /give it \*\*Attach Files\*\* there/,
    )
  })

  test('that everybody can read is for nothing that only moderators may see', async () => {
    for (const part of ['reports', 'review'])
      expect(text(await warden.choose(await warden.open(part), [everybody]))).toMatch(/Everybody can read/)
    expect((await warden.settings()).revision).toBe(0)
  })

  test('where Discord itself refuses is not taken', async () => {
    room.standIn.faults.answerNext({ match: /typing$/, status: 403, code: 50013 })
    expect(text(await warden.choose(await warden.open('reports'), [demoReportsChannel]))).toMatch(
      /Discord does not let the bot write/,
    )
    expect((await warden.settings()).reportsChannel).toBeNull()
  })

  test('that is deleted meanwhile is said to be gone', async () => {
    const message = await warden.choose(await warden.open('reports'), [demoClosedChannel])
    room.standIn.removeChannel(demoClosedChannel)
    expect(text(await warden.press(message, 'Try again'))).toMatch(/That channel is gone/)
    await warden.choose(await warden.open('reports'), [demoReportsChannel])
    room.standIn.removeChannel(demoReportsChannel)
    expect(text(await warden.overview())).toMatch(/That channel is gone/)
    expect(menus(await warden.open('reports'))[0]?.chosen).toEqual([])
  })

  test('of another kind is refused with what to choose instead', async () => {
    expect(text(await warden.anyMenu(8, { is: 'reports', channel: 'chosen' }, [demoForum]))).toMatch(
      /Choose a text channel/,
    )
    const thread = await (
      await fetch(`${room.standIn.apiUrl}/v10/channels/${everybody}/threads`, {
        method: 'POST',
        headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
        body: JSON.stringify({ name: 'a thread', type: 11 }),
      })
    ).json()
    const { id } = thread as { id: string }
    expect(text(await warden.anyMenu(8, { is: 'review', channel: 'chosen' }, [id]))).toMatch(/Choose a text channel/)
    expect(text(await warden.anyMenu(8, { is: 'forum', forum: 'chosen' }, [everybody]))).toMatch(/is not a forum/)
    expect((await warden.settings()).revision).toBe(0)
  })
})

test('a review channel that everybody has come to read since gets no question and no photograph; the queue has it', async () => {
  await warden.choose(await warden.open('review'), [demoReportsChannel])
  const wren = room.standIn.as('Wren')
  const ask = async () => {
    const question = messageOf(await wren.run('check start', { depth: 'full' }))
    const form = await press(wren, await pressed(wren, question, 'Ask or hand over'), 'Ask a helper')
    if (form.kind !== 'modal') throw new Error('no form')
    await finalOf(await wren.submit(form.modal, { why: 'what is this?' }))
    await room.services.queue.idle()
    return room.standIn.messages(demoReportsChannel).length
  }
  room.standIn.changeRights(demoReportsChannel, {})
  expect(await ask()).toBe(0)
  expect(text(messageOf(await warden.person.run('check waiting')))).toMatch(/stuck since/)
  room.standIn.changeRights(demoReportsChannel, {
    forbid: [{ who: server, what: ['view'] }],
    permit: [
      { who: 'bot', what: ['view'] },
      { who: demoWardens, what: ['view'] },
    ],
  })
  expect(await ask()).toBe(1)
})

const wharf = '900000000000000394'
const berths = Array.from({ length: 6 }, (_, i) => String(900000000000000380n + BigInt(i)))

describe('offers in several forums', () => {
  let own: TestRoom
  let hers: Warden
  beforeEach(async () => {
    own = await openRoom(undefined, {
      ...englishServer,
      channels: [
        ...englishServer.channels,
        { id: wharf, name: 'wharf', kind: 'forum', tags: ['fake?', 'where from?', 'sold', 'found', 'asked', 'odd'] },
        ...berths.map((id, i) => ({ id, name: `berth-${i}`, kind: 'forum' as const, tags: ['x'] })),
      ],
    })
    hers = wardenOf(own)
  })
  afterEach(() => own.close())
  const choose = async (forum: string, wanted: readonly string[]) => {
    const asked = await hers.choose(await hers.open('offers'), [forum])
    const options = menus(asked)[0]?.options ?? []
    const values = options.filter(one => wanted.includes(one.label)).map(one => one.value)
    return hers.choose(asked, values)
  }
  const forums = async () => (await hers.settings()).forumOffers.map(one => [one.forum, one.tags.length])

  test('each has its tags, several of them; they are named, changed one forum at a time, and a post under any gets its offer', async () => {
    await choose(demoForum, ['is this real?'])
    const both = text(await choose(wharf, ['fake?', 'where from?']))
    expect(both).toMatch(
      /under the tag “is this real.*” and in <#900000000000000394> under the tags “fake.*” and “where/,
    )
    expect(await forums()).toEqual([
      [demoForum, 1],
      [wharf, 2],
    ])
    // What is chosen already stands in the menu as chosen.
    const again = await hers.choose(await hers.open('offers'), [wharf])
    expect(
      menus(again)[0]
        ?.options.filter(one => one.default)
        .map(one => one.label),
    ).toEqual(['fake?', 'where from?'])
    for (const [tags, offers] of [
      [['where from?'], 1],
      [['fake?', 'sold'], 1],
      [['sold'], 0],
    ] as const) {
      const id = own.standIn.as('Wren').post(wharf, { title: 'Is it?', text: 'It came in a box.', tags })
      await own.standIn.as('Wren').run('check list')
      await own.services.queue.idle()
      expect(own.standIn.messages(id).filter(one => one.author.bot)).toHaveLength(offers)
    }
    expect(text(await choose(wharf, ['sold', 'found', 'asked', 'odd', 'fake?']))).toMatch(
      /“asked” and 1 more|, and 1 more/,
    )
    await hers.press(await hers.choose(await hers.open('offers'), [wharf]), 'No offers in this forum')
    expect(await forums()).toEqual([[demoForum, 1]])
  })

  test('no more than five; one more is refused with what to do, and changes nothing', async () => {
    for (const id of berths.slice(0, 5)) await choose(id, ['x'])
    const { revision } = await hers.settings()
    expect(text(await choose(berths[5] ?? '', ['x']))).toMatch(/at most 5 forums\. Nothing was changed/)
    expect((await hers.settings()).revision).toBe(revision)
  })

  test('a forum that is gone is said, and forgotten by one press; the others stay', async () => {
    await choose(demoForum, ['is this real?'])
    await choose(wharf, ['sold'])
    own.standIn.removeChannel(wharf)
    const part = await hers.open('offers')
    expect(text(part)).toMatch(/That channel is gone/)
    const after = await hers.press(part, 'Forget the forums that are gone')
    expect(text(after)).not.toMatch(/gone/)
    expect(await forums()).toEqual([[demoForum, 1]])
  })

  test('a change of one forum is in the history with its tags by name, and is taken back', async () => {
    await choose(demoForum, ['is this real?'])
    await choose(wharf, ['sold', 'found'])
    const history = await hers.press(await hers.overview(), 'What was changed')
    expect(text(history)).toMatch(/Offers in forums.*under the tags “sold” and “found”/)
    await finalOf(await press(hers.person, history, 'Take it back'))
    expect(await forums()).toEqual([[demoForum, 1]])
  })
})

test('helpers and who is to be pinged: a role that does not see the review channel is named with what that means', async () => {
  const keepers = '900000000000000202'
  await warden.choose(await warden.open('review'), [demoReportsChannel])
  const helpers = text(await warden.choose(await warden.open('helpers'), [keepers]))
  expect(helpers).toContain(
    `<@&${keepers}> cannot see <#${demoReportsChannel}>, so its members see questions only with`,
  )
  await warden.choose(await warden.open('reminders'), ['6'])
  await warden.anyMenu(6, { is: 'ping', roles: 'chosen' }, [keepers])
  expect(text(await warden.open('reminders'))).toMatch(/would not be pinged[\s\S]* cannot see .*nobody would notice/)
  room.standIn.changeRights(demoReportsChannel, {
    forbid: [{ who: server, what: ['view'] }],
    permit: [
      { who: 'bot', what: ['view'] },
      { who: keepers, what: ['view'] },
    ],
  })
  expect(text(await warden.open('helpers'))).not.toMatch(/cannot see/)
  expect(text(await warden.open('reminders'))).not.toMatch(/cannot see/)
})

describe('offers in forums', () => {
  test('need a forum and one of its tags', async () => {
    const asked = await warden.choose(await warden.open('offers'), [demoForum])
    const [menu] = menus(asked)
    expect(menu?.options.map(one => one.label)).toEqual(['is this real?', 'solved'])
    expect((await warden.settings()).forumOffers).toEqual([])
    const tag = menu?.options[0]?.value ?? ''
    expect(text(await warden.choose(asked, [tag]))).toMatch(/under the tag “is this real?/)
    expect((await warden.settings()).forumOffers).toEqual([{ forum: demoForum, tags: [tag] }])
    await warden.press(await warden.open('offers'), 'No offers at all')
    expect((await warden.settings()).forumOffers).toEqual([])
  })

  test('need the right to write under posts', async () => {
    room.standIn.changeRights(demoForum, { forbid: [{ who: 'bot', what: ['send-in-threads'] }] })
    const message = await warden.choose(await warden.open('offers'), [demoForum])
    expect(text(message)).toMatch(/under posts in .* give it \*\*Send Messages in Threads\*\*/)
    room.standIn.changeRights(demoForum, {})
    expect(menus(await warden.press(message, 'Try again'))[0]?.options).toHaveLength(2)
  })

  test('a forum without tags, a tag that is gone and a forum that is gone are said', async () => {
    const asked = await warden.choose(await warden.open('offers'), [demoForum])
    const gone = await warden.anyMenu(3, { is: 'tag', forum: demoForum }, ['900000000000000999'])
    expect(text(gone)).toMatch(/tag is gone/)
    room.standIn.removeChannel(demoForum)
    expect(text(await warden.choose(asked, [menus(asked)[0]?.options[0]?.value ?? '']))).toMatch(/channel is gone/)
  })
})
