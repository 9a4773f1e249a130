// Fair use through the real client: whoever overdoes it is told until when to wait, and everybody else goes on undisturbed.
import { afterEach, describe, expect, test } from 'vitest'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { buttons, text } from '../../src/practice/seen.ts'
import { openFairUse } from '../../src/services/fair-use/open-fair-use.ts'
import { samplePhoto } from '../photos/sample-photos.ts'
import {
  answer,
  caution,
  coolUntil,
  finalOf,
  messageOf,
  press,
  pressed,
  settled,
  startCheck,
  unsureUntil,
} from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

/** A minute for every token, so that none comes back while the test runs. */
const few = (burst: number) => ({ burst, every_ms: 60_000 })
const plenty = { act: few(1000), file: few(1000), suggestions: few(1000) }
const noPostLimits = { person: few(1000), channel: few(1000) }
const small = (burst: number) => ({ act: few(burst), file: few(burst), suggestions: few(burst) })

let room: TestRoom
const open = async (rates: Parameters<typeof openFairUse>[0]) => {
  room = await openRoom(services => ({ ...services, fairUse: openFairUse(rates) }), englishServer)
}
afterEach(() => room.close())
const wren = () => room.standIn.as('Wren')
const ilse = () => room.standIn.as('Ilse')

describe('a person who overdoes it', () => {
  test('is told when to go on and that nothing is lost; the step is not taken, others are not held up', async () => {
    await open({ person: small(3), server: plenty, posts: noPostLimits })
    let message = await startCheck(wren())
    message = await pressed(wren(), message, '.unsure')
    message = await pressed(wren(), message, '.unsure')
    const before = (await room.services.checks.heldBy(wren().id, Date.now()))[0]?.revision
    const refused = messageOf(await press(wren(), message, '.unsure'))
    const until = Number(/<t:(\d+):R>/.exec(text(refused))?.[1])
    expect(until * 1000).toBeGreaterThan(Date.now())
    expect(until * 1000).toBeLessThanOrEqual(Date.now() + 61_000)
    expect(text(refused)).toMatch(/nothing that you answered is lost/)
    expect(text(refused)).toMatch(caution)
    expect((await room.services.checks.heldBy(wren().id, Date.now()))[0]?.revision).toBe(before)
    expect(text(messageOf(await wren().run('check list')))).toMatch(/<t:\d+:R>/)
    expect(buttons(await startCheck(ilse())).length).toBeGreaterThan(1)
  })

  test('finds what they typed again where the photographs beside it were too many', async () => {
    await open({ person: { ...plenty, file: few(1) }, server: plenty, posts: noPostLimits })
    await seedPractice(room.services)
    const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
    const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
    if (form.kind !== 'modal') throw new Error('no form')
    const broken = [{ name: 'half.jpg', bytes: samplePhoto().subarray(0, 300) }]
    const first = await finalOf(await wren().submit(form.modal, { why: 'is that a ring?', photos: broken }))
    expect(text(first)).toMatch(/damaged/)
    const photos = [{ name: 'whole.jpg', bytes: samplePhoto() }]
    const refused = await finalOf(await wren().submit(form.modal, { why: 'is that a ring?', photos }))
    expect(text(refused)).toMatch(/<t:\d+:R>[\s\S]*What you typed:\s+```\s+is that a ring\?\s+```/)
  })

  test('gets no suggestions for a while, and commands still work', async () => {
    await open({ person: { ...plenty, suggestions: few(2) }, server: plenty, posts: noPostLimits })
    const suggested = async () => (await wren().suggest('check start', { name: 'family', value: '' })).length
    expect([await suggested(), await suggested(), await suggested()]).toEqual([
      expect.any(Number),
      expect.any(Number),
      0,
    ])
    expect(buttons(await startCheck(wren())).length).toBeGreaterThan(1)
  })

  test('with files is told so before any is fetched, and may still press buttons', async () => {
    await open({ person: { ...plenty, file: few(1) }, server: plenty, posts: noPostLimits })
    const send = () => wren().run('log', { file: { name: 'log.csv', bytes: new TextEncoder().encode('x') } })
    expect(text(await finalOf(await send()))).toMatch(/No table/)
    expect(text(messageOf(await send()))).toMatch(/several files.*<t:\d+:R>/)
    expect(buttons(await startCheck(wren())).length).toBeGreaterThan(1)
  })
})

test('checks that are offered are open ones, and however many commands come at once, ten is the most', async () => {
  await open({ person: plenty, server: plenty, posts: noPostLimits })
  const everybody = '900000000000000301'
  const replies = await Promise.all(
    Array.from({ length: 13 }, (_, i) =>
      wren().run('check start', i % 2 === 0 ? { anyone: true } : {}, { channel: everybody }),
    ),
  )
  const refused = replies.map(reply => text(messageOf(reply))).filter(one => /10 checks open/.test(one))
  expect(refused).toHaveLength(3)
  expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(10)
})

describe('what everybody in a channel sees', () => {
  const everybody = '900000000000000301'
  const posts = () => room.standIn.messages(everybody).length
  const post = async (name: string, question: string) => {
    const own = messageOf(await room.standIn.as(name).run('ask', { question }))
    return text(messageOf(await press(room.standIn.as(name), own, 'Post it')))
  }

  test('is not flooded with answers: the channel cools down first, whoever asks', async () => {
    await open({ person: plenty, server: plenty, posts: { person: few(9), channel: few(2) } })
    const before = posts()
    await post('Wren', 'dented')
    await post('Ilse', 'is it fine to leave them charging while i sleep')
    expect(await post('Tomas', 'dented')).toMatch(/this channel.*<t:\d+:R>/)
    expect(posts()).toBe(before + 2)
  })

  test('nor with offers of checks: what cannot be shown now is not begun', async () => {
    await open({ person: plenty, server: plenty, posts: { person: few(1), channel: few(9) } })
    const offer = () => wren().run('check start', { depth: 'full', anyone: true }, { channel: everybody })
    await settled(room, messageOf(await offer()))
    const before = posts()
    expect(text(messageOf(await offer()))).toMatch(/several messages.*<t:\d+:R>/)
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    expect(posts()).toBe(before)
    expect(buttons(await startCheck(wren())).length).toBeGreaterThan(1)
  })
})

test('photos in a form count as files, and the form without any passes', async () => {
  await open({ person: { ...plenty, file: few(1) }, server: plenty, posts: noPostLimits })
  // Photos go to the moderators' channel of the invented server.
  await seedPractice(room.services)
  const photos = [{ name: 'IMG_1.jpg', bytes: samplePhoto() }]
  const ask = async (more: object) => {
    // Nobody is asked to photograph a cell that may be hot or leaking: the first question that a photo can tell something of.
    const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
    const hands = await pressed(wren(), question, 'Ask or hand over')
    const form = await press(wren(), hands, 'Ask a helper')
    if (form.kind !== 'modal') throw new Error(`no form but ${form.kind}`)
    return text(await finalOf(await wren().submit(form.modal, { why: 'what is this?', ...more })))
  }
  expect(await ask({ photos })).not.toMatch(/several files/)
  expect(await ask({ photos })).toMatch(/several files.*<t:\d+:R>/)
  expect(await ask({})).not.toMatch(/several files/)
})

test('a server in which too many press at once is asked to wait as one', async () => {
  await open({ person: plenty, server: small(2), posts: noPostLimits })
  await startCheck(wren())
  await startCheck(ilse())
  expect(text(messageOf(await wren().run('check list')))).toMatch(/many people on this server.*<t:\d+:R>/)
})

test('what was typed into a form is never turned away for haste', async () => {
  await open({ person: small(1000), server: plenty, posts: noPostLimits })
  const size = await coolUntil(wren(), await startCheck(wren()), /Which size is the cell/)
  const message = await coolUntil(wren(), await answer(wren(), size, '18650'), /weigh, in grams/)
  const form = await press(wren(), message, 'Type in the reading')
  if (form.kind !== 'modal') throw new Error(`no form but ${form.kind}`)
  for (let i = 0; i < 1000; i++) room.services.fairUse.admit('act', wren().id, null, Date.now())
  expect(text(messageOf(await press(wren(), message, '.unsure')))).toMatch(/too quick/)
  const typed = { value: '45 g', instrument: 'kitchen-scale' }
  expect(text(messageOf(await wren().submit(form.modal, typed)))).not.toMatch(/too quick/)
})

test('the rates as they are: a whole check, clicked as fast as the answers come, is never asked to wait', async () => {
  await open(undefined)
  let message = await startCheck(wren())
  let clicks = 0
  for (; buttons(message).some(one => one.customId?.includes('.unsure')); clicks++)
    message = await pressed(wren(), message, '.unsure')
  expect(clicks).toBeGreaterThan(20)
  expect(text(message)).toMatch(/^## /m)
})

describe('Discord’s own limits', () => {
  test('an answer that would have to wait for a minute is trouble at once', async () => {
    room = await openRoom(services => services, englishServer)
    const message = await startCheck(wren())
    room.standIn.faults.answerNext({ match: '/callback', status: 429, retryAfter: 60 })
    expect(text(messageOf(await press(wren(), message, '.unsure')))).toMatch(/went wrong on the bot’s side/)
  })

  test('a message to a channel that would have to wait for an hour is trouble at once; a short wait is waited', async () => {
    room = await openRoom(services => services, englishServer)
    const { message, text: part } = await import('../../src/discord/message/parts.ts')
    const post = (nonce: string) => room.services.posts.post('900000000000000301', message([part('x')]), nonce)
    room.standIn.faults.answerNext({ match: '/messages', status: 429, retryAfter: 3600 })
    await expect(post('one')).rejects.toMatchObject({ name: expect.stringContaining('RateLimitError') })
    const fresh = await openRoom(services => services, englishServer)
    fresh.standIn.faults.answerNext({ match: '/messages', status: 429, retryAfter: 0.2 })
    expect(await fresh.services.posts.post('900000000000000301', message([part('x')]), 'two')).toMatchObject({
      is: 'posted',
    })
    await fresh.close()
  })
})
