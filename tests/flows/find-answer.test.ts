// "Find an answer" in a message's menu: seen first by whoever looked, posted once as a reply, and every way that can go wrong.
import { beforeEach, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Posts } from '../../src/discord/posts/post.ts'
import type { Services } from '../../src/discord/services.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { idOf, messageOf, pressed } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const everybody = '900000000000000301'
/** What happens between the press and the post; whether it is posted then is up to it. */
let before: Posts['reply'] | undefined
let realReply: Posts['reply']
const { room, ilse } = useRoom(() => openRoom(through))
const through = (services: Services): Services => {
  realReply = services.posts.reply
  return { ...services, posts: { ...services.posts, reply: (...reply) => (before ?? realReply)(...reply) } }
}
beforeEach(() => {
  before = undefined
})
const worried = 'is it fine to leave them charging while i sleep?'
const find = async (message: SeenMessage | string, name = 'Ilse'): Promise<SeenMessage> => {
  const reply = await room.standIn.as(name).useOnMessage('Find an answer', message)
  expect(reply.kind === 'message' && reply.private).toBe(true)
  return messageOf(reply)
}
const asks = (words = worried): string => room.standIn.as('Wren').say(words)
const replies = (to: string) => room.standIn.messages(everybody).filter(one => one.replyTo === to)
/** The bot's own hands, for what a test does to channels and messages. */
const rest = (method: string, path: string, body?: object) =>
  fetch(`${room.standIn.apiUrl}/v10${path}`, {
    method,
    headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
    ...(body && { body: JSON.stringify(body) }),
  })

test('of a long message only the beginning is read, and that is said', async () => {
  const long = `${worried} ${'and then '.repeat(60)}`
  expect(text(await find(asks(long)))).toMatch(/Gelesen wurden nur die ersten 400 Zeichen/)
  expect(text(await find(asks()))).not.toMatch(/Gelesen wurden/)
})

test('a helper sees it first, in their language; then it is a reply in the server’s, and pings nobody', async () => {
  const question = asks()
  const own = await find(question)
  expect(text(own)).toMatch(/^> is it fine to leave/)
  expect(text(own)).toMatch(/benutze und lade die Zelle nicht/)
  expect(replies(question)).toEqual([])
  expect(text(await pressed(ilse(), own, 'Als Antwort posten'))).toMatch(/Niemand wurde angepingt/)
  const [reply] = replies(question)
  expect(text(reply as SeenMessage)).toMatch(/### May I charge unattended or overnight\?[\s\S]*Picked and posted by <@/)
  expect(reply?.pinged).toMatchObject({ everyone: false, people: [], roles: [] })
})

test('two helpers, each pressing twice, post one reply', async () => {
  const question = asks()
  const owns = await Promise.all(['Ilse', 'Tomas'].map(name => find(question, name)))
  const presses = ['Ilse', 'Tomas', 'Ilse', 'Tomas'].map((name, i) => {
    const own = owns[i % 2] as SeenMessage
    return room.standIn.as(name).click(own, idOf(own, '.post.'), { stale: true })
  })
  await Promise.all(presses)
  expect(replies(question)).toHaveLength(1)
})

test('what no entry answers is not guessed at, and a picked one is still a reply', async () => {
  const question = asks('which headlamp throws furthest at night')
  const own = await find(question)
  expect(text(own)).toMatch(/Kein Eintrag hier beantwortet das sicher/)
  expect(buttons(own).some(one => one.customId?.includes('.post.'))).toBe(false)
  const picked = messageOf(await ilse().click(own, idOf(own, '.show.')))
  await pressed(ilse(), picked, 'Als Antwort posten')
  expect(replies(question)).toHaveLength(1)
})

test('a message without words is said to have none', async () => {
  const posted = (await (
    await rest('POST', `/channels/${everybody}/messages`, {
      flags: 1 << 15,
      components: [{ type: 10, content: 'shown, not written' }],
    })
  ).json()) as { id: string }
  expect(text(await find(posted.id))).toMatch(/Diese Nachricht hat keinen Text/)
})

test('a message deleted meanwhile: said so, and the answer can be posted by itself', async () => {
  const posted = (await (await rest('POST', `/channels/${everybody}/messages`, { content: worried })).json()) as {
    id: string
  }
  const own = await find(posted.id)
  await rest('DELETE', `/channels/${everybody}/messages/${posted.id}`)
  const after = await pressed(ilse(), own, 'Als Antwort')
  expect(text(after)).toMatch(/die Nachricht, auf die sie antworten sollte, wurde gelöscht/i)
  const count = room.standIn.messages(everybody).length
  expect(text(await pressed(ilse(), after, 'In diesem Kanal'))).toMatch(/Niemand wurde angepingt/)
  expect(room.standIn.messages(everybody).length).toBe(count + 1)
})

test('a thread archived meanwhile: said so, and the button stays for when it is open again', async () => {
  const made = await rest('POST', `/channels/${everybody}/threads`, { name: 'cells', type: 11 })
  const { id } = (await made.json()) as { id: string }
  const question = room.standIn.as('Wren').say(worried, { channel: id })
  const own = await find(question)
  before = async (...reply) => {
    await rest('PATCH', `/channels/${id}`, { archived: true, locked: true })
    return realReply(...reply)
  }
  const shut = await pressed(ilse(), own, 'Als Antwort')
  expect(text(shut)).toMatch(/Dieser Thread ist archiviert oder gesperrt/)
  before = undefined
  await rest('PATCH', `/channels/${id}`, { archived: false, locked: false })
  expect(text(await pressed(ilse(), shut, 'Als Antwort'))).toMatch(/Niemand wurde angepingt/)
  expect(room.standIn.messages(id).filter(one => one.replyTo === question)).toHaveLength(1)
})

test('a channel the bot may not write in, and one that is gone, are said to be', async () => {
  const mute = await openRoom(undefined, {
    ...demoServer,
    channels: demoServer.channels.map(one =>
      one.id === everybody ? { ...one, forbid: [{ who: 'bot', what: ['send'] }] } : one,
    ),
  })
  const question = mute.standIn.as('Wren').say(worried)
  const own = messageOf(await mute.standIn.as('Tomas').useOnMessage('Find an answer', question))
  const after = messageOf(await mute.standIn.as('Tomas').click(own, idOf(own, '.post.')))
  expect(text(after)).toMatch(/el bot no puede escribir aquí/)
  expect(mute.standIn.messages(everybody)).toHaveLength(1)
  await mute.close()
  before = async () => ({ is: 'gone' })
  expect(text(await pressed(ilse(), await find(asks()), 'Als Antwort'))).toMatch(/Diesen Kanal gibt es nicht mehr/)
})
