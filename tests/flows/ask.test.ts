// Questions people ask, through the real client: answered alone, none guessed, another picked, one posted for everybody.
import { beforeAll, describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { languages } from '../../src/answers/entry.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { decodeAsk, encodeAsk } from '../../src/custom-ids/ask-id.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { shippedAnswers } from '../answers/questions.ts'
import { caution, closeAll, idOf, messageOf, postButton, pressed } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const everybody = '900000000000000301'
const { room, wren, tomas } = useRoom()
beforeAll(async () => {
  // As when the bot starts.
  const answers = await room.services.answers()
  for (const language of languages) answers.lookUp('', [language])
})
const ask = async (question: string, name = 'Wren'): Promise<SeenMessage> => {
  const reply = await room.standIn.as(name).run('ask', { question })
  expect(reply.kind === 'message' && reply.private).toBe(true)
  return messageOf(reply)
}
const choose = async (name: string, message: SeenMessage, entry: string): Promise<SeenMessage> =>
  messageOf(await room.standIn.as(name).choose(message, menus(message)[0]?.customId ?? '', [entry]))

describe('/ask', () => {
  test('answers with title, sources and both cautions, and offers to go on', async () => {
    const message = await ask('is it fine to leave them charging while i sleep')
    const seen = text(message)
    expect(seen).toMatch(/^> is it fine/)
    expect(seen).toMatch(/### May I charge unattended or overnight\?/)
    expect(seen).toMatch(/Sources: US Fire Administration .* · common practice, no published source/)
    expect(seen).toMatch(/not to buy or use loose 18650 cells at all/)
    expect(seen).toMatch(/\*\*Unsure\? Then do not use or charge the cell\.\*\*$/)
    expect(seen.length).toBeLessThan(4000)
    expect(buttons(message).map(one => one.label)).toEqual(['Check a cell', 'Post it in this channel'])
  })

  test('says first that one gets away, where a cell may be burning', async () => {
    const message = await ask('my cell is hissing and smoking')
    expect(buttons(message).map(one => one.label)).toEqual(['Post it in this channel'])
    expect(text(message)).toMatch(
      /^> .*\nIs the cell burning.*\*\*Drop the cell if you are holding it, get away now, and call your emergency number\.\*\*[\s\S]*### It gets hot, hisses, smokes or swells/,
    )
    expect(text(await ask('sizzling noise from my headlamp'))).toMatch(/\*\*Drop the cell if you are holding it/)
  })

  test('offers the check before everything else, where the question is about a cell in the hand', async () => {
    const message = await ask('how do i know if my 18650 is fake')
    expect(text(message)).toMatch(
      /^> .*\nAbout a cell you have in front of you\?.*\n### How do I know whether my cell is fake/,
    )
    expect(buttons(message).map(one => one.label)).toEqual(['Check a cell', 'Post it in this channel'])
  })

  test('answers in the language of the question, whatever the person has set', async () => {
    expect(text(await ask('woran erkenne ich eine gefälschte 18650'))).toContain(
      '### Woran erkenne ich, ob meine Zelle',
    )
    expect(text(await ask('ayuda sale humo de la batería'))).toContain('aléjate ahora mismo')
  })

  test('says that it has no entry rather than guess, with the nearest as choices', async () => {
    const message = await ask('which headlamp throws furthest at night')
    expect(text(message)).toMatch(/No entry here answers this for sure/)
    expect(text(message)).not.toMatch(/###/)
    expect(text(message)).toMatch(caution)
    const labels = buttons(message).map(one => one.label)
    expect(labels.length).toBeGreaterThan(1)
    expect(labels.at(-1)).toBe('Check a cell')
    const next = await pressed(wren(), message, labels[0] ?? '')
    expect(next.id).toBe(message.id)
    expect(text(next)).toContain(`### ${labels[0]}`)
  })

  test('what says nothing has no choices either, and a check can still be started', async () => {
    const message = await ask('???')
    expect(buttons(message).map(one => one.label)).toEqual(['Check a cell'])
    expect(text(await pressed(wren(), message, 'Check a cell'))).toMatch(
      /let go of it, get away and call your emergency number[\s\S]*“Can’t tell” is always an answer/,
    )
    await closeAll(wren())
  })

  test('related questions lead on, each to its own answer', async () => {
    const next = await choose('Wren', await ask('dented'), 'disposal')
    expect(text(next)).toMatch(/### How do I get rid of a cell\?/)
  })

  test('text from people stays text', async () => {
    expect(text(await ask('@everyone **loud** [x](https://x.invalid) <t:0>'))).toContain(
      '> \\@everyone \\*\\*loud\\*\\* \\[x\\]\\(https\\://x.invalid\\) \\<t\\:0\\>',
    )
  })

  test('suggests titles that hold what is typed, and what the search finds; each leads to its entry', async () => {
    const offered = await wren().suggest('ask', { name: 'question', value: 'fly' })
    expect(offered[0]?.name).toMatch(/on a plane/)
    expect(text(await ask(String(offered[0]?.value)))).toMatch(/### How do I carry spare cells/)
    expect((await wren().suggest('ask', { name: 'question', value: '' })).length).toBe(25)
  })

  test('in a direct conversation it answers, and offers no post', async () => {
    const message = messageOf(await wren().run('ask', { question: 'dented' }, { channel: 'direct' }))
    expect(buttons(message).map(one => one.label)).toEqual(['Check a cell'])
  })
})

describe('an answer posted for everybody', () => {
  test('is in the server’s language, names who picked it, pings nobody, and is posted once', async () => {
    const own = await ask('dented', 'Ilse')
    const id = idOf(own, 'posten')
    const before = room.standIn.messages(everybody).length
    const answers = await Promise.all([1, 2].map(() => room.standIn.as('Ilse').click(own, id, { stale: true })))
    expect(text(messageOf(answers[0] as never))).toMatch(/Niemand wurde angepingt/)
    const posted = room.standIn.messages(everybody).slice(before)
    expect(posted).toHaveLength(1)
    const [seen] = posted as [SeenMessage]
    expect(text(seen)).toMatch(/### My cell has a dent[\s\S]*Picked and posted by <@900000000000000402>$/)
    expect(text(seen)).toMatch(caution)
    expect(seen.pinged).toMatchObject({ everyone: false, people: [], roles: [] })
    expect(buttons(messageOf(answers[0] as never)).some(one => one.customId?.includes('.post.'))).toBe(false)
  })

  test('whoever picks a question under it gets the answer alone, in their language', async () => {
    await pressed(wren(), await ask('dented'), 'Post it')
    const public_ = room.standIn.messages(everybody).at(-1) as SeenMessage
    const reply = await tomas().choose(public_, menus(public_)[0]?.customId ?? '', ['disposal'])
    expect(reply.kind === 'message' && reply.private).toBe(true)
    expect(text(messageOf(reply))).toMatch(/¿Tienes alguna duda, la que sea\?/)
  })

  test('only by somebody who may write there', async () => {
    const quiet = await openRoom(undefined, {
      ...demoServer,
      channels: demoServer.channels.map(one =>
        one.id === everybody
          ? {
              ...one,
              forbid: [{ who: demoServer.server.id, what: ['send'] }],
              permit: [{ who: 'bot', what: ['send'] }],
            }
          : one,
      ),
    })
    const person = quiet.standIn.as('Wren')
    const own = messageOf(await person.run('ask', { question: 'dented' }))
    expect(buttons(own).map(one => one.label)).toEqual(['Check a cell'])
    // A button that lies about from before the channel was closed.
    const id = encodeAsk({ is: 'post', entry: 'dented', to: null })
    const button = await postButton(quiet.standIn, id)
    const before = quiet.standIn.messages(everybody).length
    expect(text(messageOf(await person.click(button, id)))).toMatch(/You may not write in this channel yourself/)
    expect(quiet.standIn.messages(everybody).length).toBe(before)
    await quiet.close()
  })

  test('an entry that is gone is said to be', async () => {
    const id = encodeAsk({ is: 'post', entry: 'long-gone', to: null })
    const reply = messageOf(await wren().click(await postButton(room.standIn, id), id))
    expect(text(reply)).toMatch(/This entry is not here any more/)
  })
})

test('while the answers are still being read, the person is told so in time, and answered once they are there', async () => {
  const held = Promise.withResolvers<void>()
  const slow = await openRoom(services => ({
    ...services,
    answers: async () => {
      await held.promise
      return services.answers()
    },
  }))
  const reply = await slow.standIn.as('Wren').run('ask', { question: 'dented' })
  if (reply.kind !== 'deferred') throw new Error(`it was ${reply.kind}`)
  held.resolve()
  expect(text((await reply.final) as SeenMessage)).toMatch(/### My cell has a dent/)
  await slow.close()
})

test('an entry without a translation falls back to English, and says so', async () => {
  const entries = (await shippedAnswers()).map(entry => ({ ...entry, texts: { en: entry.texts.en } }))
  const bare = await openRoom(services => ({ ...services, answers: async () => openBook(entries) }))
  const seen = text(messageOf(await bare.standIn.as('Ilse').run('ask', { question: 'dented' })))
  expect(seen).toMatch(/### My cell has a dent/)
  expect(seen).toMatch(/Diese Antwort hat noch niemand in deine Sprache übersetzt/)
  expect(seen).toMatch(/benutze und lade die Zelle nicht/)
  const [first] = await bare.standIn.as('Ilse').suggest('ask', { name: 'question', value: 'dent' })
  expect(first?.name).toMatch(/\(auf Englisch\)$/)
  await bare.close()
})

test('custom ids are read back, and nothing else is', () => {
  for (const to of [null, '900000000000000301'])
    for (const act of [
      { is: 'choose', to } as const,
      { is: 'post', entry: 'dented', to } as const,
      { is: 'show', entry: 'fire', to } as const,
    ])
      expect(decodeAsk(encodeAsk(act))).toEqual(act)
  for (const id of ['', 'ca1', 'ca1.post', 'ca1.post.Dented.-', 'ca1.post.dented.x', 'ca1.choose.12', 'ca2.choose.-'])
    expect(decodeAsk(id)).toBeUndefined()
})
