// Offers in a forum: one quiet offer under a new post with the tag, never twice, never elsewhere; whoever presses it has their own check.
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { demoForum, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Services } from '../../src/discord/services.ts'
import { text } from '../../src/practice/seen.ts'
import type { ForumOffers } from '../../src/server/settings.ts'
import { type FairUse, noLimits, openFairUse } from '../../src/services/fair-use/open-fair-use.ts'
import { sayIn } from '../../src/words/say.ts'
import { caution, messageOf, pressed } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'
import { wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
const everybody = '900000000000000301'
const real = 'is this real?'
let room: TestRoom
/** What happens between the claim on a post and the message under it. */
let meanwhile: (post: string) => Promise<void>
let fairUse: FairUse
beforeEach(async () => {
  meanwhile = async () => undefined
  fairUse = noLimits
  room = await openRoom(
    services => ({
      ...services,
      fairUse: { ...services.fairUse, admitPost: (...args) => fairUse.admitPost(...args) },
      offers: {
        ...services.offers,
        claim: async (...args: Parameters<Services['offers']['claim']>) => {
          const claimed = await services.offers.claim(...args)
          await meanwhile(args[1])
          return claimed
        },
      },
    }),
    englishServer,
  )
  const warden = wardenOf(room)
  const asked = await warden.choose(await warden.open('offers'), [demoForum])
  const tag = asked.components
    .flatMap(one => one.components ?? [])
    .flatMap(one => one.options ?? [])
    .find(one => one.label === real)
  await warden.choose(asked, [tag?.value ?? ''])
})
afterEach(() => room.close())

const wren = () => room.standIn.as('Wren')
const post = (tags: readonly string[] = [real], forum = demoForum): string =>
  wren().post(forum, { title: 'Is my Rook real?', text: 'It came in a plain box.', tags })
/** What the bot has said under a post, once everything that was told before has been dealt with. */
const offersUnder = async (id: string) => {
  await wren().run('check list')
  await room.services.queue.idle()
  return room.standIn.messages(id).filter(one => one.author.bot)
}
const change = async (more: { language?: string; forumOffers?: readonly ForumOffers[] }) => {
  const now = await room.services.servers.load(server)
  expect(await room.services.servers.save({ ...now, ...more, revision: now.revision + 1 })).toBe('saved')
}
const faults = () => room.log.filter(line => /"level":(40|50|60)/.test(line))

describe('under a new post with the tag', () => {
  test('there is one offer, quiet, with the caution, and nobody is told of it', async () => {
    const [offer, ...more] = await offersUnder(post(['solved', real]))
    expect(more).toEqual([])
    if (!offer) throw new Error('no offer')
    expect(text(offer)).toContain(sayIn('en')('offer.what'))
    expect(text(offer)).toMatch(caution)
    expect(offer.pinged).toEqual({ people: [], roles: [], everyone: false })
    // Discord's flag for messages that notify nobody.
    expect(offer.flags & (1 << 12)).not.toBe(0)
  })

  test('who writes one post after the other gets no more offers than a person asks for, others theirs', async () => {
    fairUse = openFairUse()
    const offers: number[] = []
    for (let i = 0; i < 6; i++) offers.push((await offersUnder(post())).length)
    expect(offers).toEqual([1, 1, 1, 1, 1, 0])
    fairUse = openFairUse()
    const theirs = room.standIn.as('Ilse').post(demoForum, { title: 'And mine?', text: 'Also in a box.', tags: [real] })
    expect(await offersUnder(theirs)).toHaveLength(1)
  })

  test('whoever presses it gets a check of their own that nobody else sees', async () => {
    const [offer] = await offersUnder(post())
    if (!offer) throw new Error('no offer')
    for (const name of ['Wren', 'Ilse']) {
      const person = room.standIn.as(name)
      const first = await pressed(person, offer, 'Start a check')
      expect(first.onlyFor).toBe(person.id)
      expect(await room.services.checks.heldBy(person.id, Date.now())).toHaveLength(1)
    }
    expect(room.standIn.messages(offer.channelId).filter(one => one.author.bot)).toHaveLength(1)
  })

  test('it speaks the server’s language, or the one it has told Discord', async () => {
    await change({ language: 'de' })
    const [offer] = await offersUnder(post())
    expect(text(offer ?? { content: '', embeds: [], components: [] })).toContain(sayIn('de')('offer.what'))
  })

  test('two processes that hear of it make one offer, and so does one that is started later', async () => {
    const stop = await room.another()
    const posts = [post(), post(), post()]
    for (const id of posts) expect(await offersUnder(id)).toHaveLength(1)
    await stop()
    await room.another()
    room.standIn.faults.dropSocket(4000)
    await room.standIn.connected(2)
    for (const id of posts) expect(await offersUnder(id)).toHaveLength(1)
    // Not only for Discord's sake, which forgets a nonce within minutes: nobody has tried twice.
    for (const id of posts)
      expect(room.standIn.journal.filter(one => one.path === `/channels/${id}/messages`)).toHaveLength(1)
  })

  test('an answer of Discord that is lost does not make it two', async () => {
    room.standIn.faults.loseAnswer({ match: /^POST \/channels\/\d+\/messages/ })
    expect(await offersUnder(post())).toHaveLength(1)
  })

  test('it waits for the person’s own first message where Discord wants that', async () => {
    room.standIn.faults.answerNext({ match: /^POST \/channels\/\d+\/messages/, status: 403, code: 40058 })
    expect(await offersUnder(post())).toHaveLength(1)
    expect(faults()).toEqual([])
  })
})

describe('nothing is said', () => {
  test('under a post without the tag, in another forum, in a thread, or where offers are off', async () => {
    expect(await offersUnder(post([]))).toEqual([])
    expect(await offersUnder(post(['solved']))).toEqual([])
    const thread = (await asBot('POST', `/channels/${everybody}/threads`, { name: 'talk', type: 11 })) as { id: string }
    expect((await offersUnder(thread.id)).filter(one => one.components.length > 0)).toEqual([])
    const now = await room.services.servers.load(server)
    await change({ forumOffers: now.forumOffers.map(one => ({ ...one, forum: everybody })) })
    expect(await offersUnder(post())).toEqual([])
    await change({ forumOffers: [] })
    expect(await offersUnder(post())).toEqual([])
  })

  test('under a post the bot has made itself', async () => {
    const tag = (await room.services.servers.load(server)).forumOffers[0]?.tags[0]
    const made = (await asBot('POST', `/channels/${demoForum}/threads`, {
      name: 'by the bot',
      applied_tags: [tag],
      message: { content: 'mine' },
    })) as { id: string }
    expect(await offersUnder(made.id)).toHaveLength(1)
  })

  test('under a post that was there before: tagged later, or one the bot is brought into', async () => {
    const settings = await room.services.servers.load(server)
    // Of a post in a forum it may not see it hears nothing.
    room.standIn.changeRights(demoForum, { forbid: [{ who: 'bot', what: ['view'] }] })
    const old = post()
    expect(await offersUnder(old)).toEqual([])
    room.standIn.changeRights(demoForum, {})
    await asBot('PUT', `/channels/${old}/thread-members/@me`)
    expect(await offersUnder(old)).toEqual([])
    const untagged = post([])
    await asBot('PATCH', `/channels/${untagged}`, { applied_tags: settings.forumOffers[0]?.tags })
    expect(await offersUnder(untagged)).toEqual([])
  })

  test.each(['archived', 'locked', 'deleted'] as const)(
    'under a post that is %s meanwhile, and that is no error',
    async is => {
      meanwhile = async id => {
        if (is === 'deleted') room.standIn.removeChannel(id)
        else room.standIn.changeThread(id, { [is]: true })
        // Once this is answered, the bot has heard of it.
        messageOf(await wren().run('check list'))
      }
      expect(await offersUnder(post())).toEqual([])
      expect(faults()).toEqual([])
    },
  )

  test('where the bot may not write under posts, and that is no error', async () => {
    room.standIn.changeRights(demoForum, { forbid: [{ who: 'bot', what: ['send-in-threads'] }] })
    expect(await offersUnder(post())).toEqual([])
    expect(faults()).toEqual([])
  })

  test('when Discord is down for too long: it is logged, and not made up for later', async () => {
    for (let i = 0; i < 4; i++)
      room.standIn.faults.answerNext({ match: /^POST \/channels\/\d+\/messages/, status: 502 })
    const id = post()
    expect(await offersUnder(id)).toEqual([])
    expect(faults().join()).toMatch(/an offer could not be posted/)
    expect(await offersUnder(id)).toEqual([])
  })
})

async function asBot(method: string, path: string, body?: object): Promise<unknown> {
  const answer = await fetch(`${room.standIn.apiUrl}/v10${path}`, {
    method,
    headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
    ...(body && { body: JSON.stringify(body) }),
  })
  return answer.status === 204 ? undefined : answer.json()
}
