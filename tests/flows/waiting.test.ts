// The queue through the real client: moderators and helpers see who is stuck since when and where, say that they look at it, and pass it on.
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { mostOpen } from '../../src/discord/check/begin-check.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { closeAll, finalOf, messageOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'

const helpers = '900000000000000202'
const server = '900000000000000100'
const everybody = '900000000000000301'
const { room, wren, ilse, odalys, tomas } = useRoom(inEnglish)
beforeAll(async () => {
  await seedPractice(room.services)
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, helperRoles: [helpers], revision: settings.revision + 1 })
}, 60_000)
beforeEach(async () => {
  for (const person of [wren(), odalys(), ilse()]) await closeAll(person)
})

async function stuck(person = wren(), at = /insulating ring around/): Promise<SeenMessage> {
  const question = await unsureUntil(person, messageOf(await person.run('check start', { depth: 'full' })), at)
  const form = await press(person, await pressed(person, question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  return finalOf(await person.submit(form.modal, { why: 'hm' }))
}
const queue = async (person = tomas()): Promise<SeenMessage> =>
  messageOf(await person.run('check waiting', {}, { anyway: true }))
async function listed(person: ReturnType<typeof tomas>, what: string): Promise<string> {
  const list = await queue(person)
  return text(messageOf(await person.choose(list, menus(list)[0]?.customId ?? '', [what])))
}
/** Checks that can be taken just now. */
async function panels(): Promise<SeenMessage[]> {
  await room.services.queue.idle()
  return ilse()
    .sees(everybody)
    .filter(one => !one.private && buttons(one).some(button => button.label === 'Take it'))
}
const plea = (): SeenMessage =>
  tomas()
    .sees(demoReportsChannel)
    .findLast(one => /stuck on a question|dealt with/.test(text(one))) as SeenMessage

test('a moderator reads who is stuck, since when and at which question, with the way to the message', async () => {
  await stuck()
  const list = await queue()
  expect(text(list)).toMatch(/1 is waiting/)
  expect(text(list)).toMatch(/with <@900000000000000401>: stuck since <t:\d+:f> \(<t:\d+:R>\)/)
  expect(text(list)).toMatch(/insulating ring/)
  expect(text(list)).toContain(`https://discord.com/channels/${server}/${demoReportsChannel}/${plea().id}`)
})

test('a check that goes on with somebody waits for nobody, and is not in it', async () => {
  await wren().run('check start', { depth: 'full', anyone: true }, { channel: everybody })
  const [offered] = await panels()
  expect(text(await queue())).toMatch(/offered to the first person who takes it since/)
  await press(ilse(), offered as SeenMessage, 'Take it')
  expect(text(await queue())).toMatch(/Nothing of this kind is waiting/)
})

test('a helper looks at it, which the others see; a second claim is refused; the answer says afterwards who gave it', async () => {
  await stuck()
  expect(text(await queue(ilse()))).toMatch(/1 is waiting/)
  expect(text(await pressed(tomas(), plea(), 'I will look at it'))).toMatch(/<@900000000000000403> looked at it/)
  expect(await listed(ilse(), 'free')).toMatch(/Nothing of this kind is waiting/)
  expect(await listed(tomas(), 'mine')).toMatch(/<@900000000000000403> is looking at it/)
  const again = (await queue(ilse())).id
  expect(again).toBeTruthy()
  const question = await pressed(ilse(), await queue(ilse()), 'See it')
  expect(text(question)).toMatch(/You are answering for/)
  await pressed(ilse(), question, 'I can’t tell either')
  await room.services.queue.idle()
  expect(text(plea())).toMatch(/dealt with[\s\S]*<@900000000000000402> answered a question[\s\S]*insulating ring/)
})

test('a question is left to a role, and is then among those of its members', async () => {
  await stuck()
  const form = await press(tomas(), plea(), 'Pass it to')
  if (form.kind !== 'modal') throw new Error('no form')
  await tomas().submit(form.modal, { taker: [helpers] })
  expect(await listed(ilse(), 'mine')).toMatch(new RegExp(`Passed to <@&${helpers}>`))
  expect(await listed(tomas(), 'mine')).toMatch(/Nothing of this kind is waiting/)
})

test('a helper sees no findings and takes no check over; somebody who is neither sees nothing', async () => {
  await stuck()
  expect(text(messageOf(await ilse().run('trends', {}, { anyway: true })))).toMatch(/Only moderators/)
  expect(text(await queue(odalys()))).toMatch(/Only moderators/)
  const { customId } = buttons(plea()).find(one => one.label.startsWith('Take the check')) ?? {}
  expect(customId).toBeTruthy()
})

test('what a moderator wrote stands above the question it was about, and above no other', async () => {
  const asked = await stuck()
  const form = await press(tomas(), plea(), 'Send it back')
  if (form.kind !== 'modal') throw new Error('no form')
  await tomas().submit(form.modal, { why: 'Look from above.' })
  const now = messageOf(await wren().run('check resume'))
  expect(text(now)).toMatch(/wrote: Look from above/)
  expect(text(await pressed(wren(), now, '.unsure'))).not.toMatch(/Look from above/)
  expect(asked).toBeTruthy()
})

test('two takes in the same instant open no more checks than one after the other would', async () => {
  for (let i = 0; i < mostOpen - 1; i++) await startCheck(ilse())
  for (const person of [wren(), odalys()])
    await person.run('check start', { depth: 'full', anyone: true }, { channel: everybody })
  const offered = await panels()
  expect(offered).toHaveLength(2)
  const replies = await Promise.all(offered.map(panel => press(ilse(), panel, 'Take it')))
  expect(replies.map(messageOf).filter(one => /checks open, which is the limit/.test(text(one)))).toHaveLength(1)
  expect(await room.services.checks.heldBy(ilse().id, room.services.now())).toHaveLength(mostOpen)
})

test('a moderator who asks whether they are counted is told that here they are not', async () => {
  expect(text(messageOf(await tomas().run('check counting')))).toMatch(
    /You moderate this server, so your checks here are not counted/,
  )
  expect(text(messageOf(await tomas().run('privacy')))).toMatch(/You moderate this server/)
  expect(text(messageOf(await wren().run('check counting')))).not.toMatch(/You moderate/)
})
