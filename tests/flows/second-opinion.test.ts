// A second opinion by picture, through the real client: what moderators see of a photograph, and that it leaves with the question.
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lifetime } from '../../src/check/check.ts'
import { takeAway } from '../../src/discord/check/hand-over/tell-others.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { Upload } from '../../src/practice/world/files.ts'
import { samplePhoto, secrets } from '../photos/sample-photos.ts'
import { closeAll, finalOf, messageOf, press, pressed, unsureUntil } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'

const { room, wren, tomas } = useRoom(inEnglish)
beforeAll(async () => {
  await seedPractice(room.services)
}, 60_000)
beforeEach(() => closeAll(wren()))

/** No picture is asked for of a cell that may be hot, hissing, swollen or leaking. */
const photographable = /insulating ring around/

/** Asks about the first question that a photograph can tell something of. */
async function ask(photos: readonly Upload[]): Promise<SeenMessage> {
  const question = await unsureUntil(
    wren(),
    messageOf(await wren().run('check start', { depth: 'full' })),
    photographable,
  )
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  return finalOf(await wren().submit(form.modal, { why: 'what is this?', photos }))
}
async function helpRequest(): Promise<SeenMessage> {
  await room.services.queue.idle()
  return tomas()
    .sees(demoReportsChannel)
    .findLast(one => !one.private && /stuck on a question|dealt with/.test(text(one))) as SeenMessage
}
const photo = (name: string): Upload => ({ name, bytes: samplePhoto() })

test('from a result, a helper is asked about one of the questions nobody could tell, those of danger first', async () => {
  const begun = messageOf(await wren().run('check start', { depth: 'full' }))
  const one = await pressed(wren(), await pressed(wren(), begun, 'None of these'), '.unsure')
  const result = await pressed(wren(), await pressed(wren(), one, '.unsure'), 'Stop and show the result')
  const hands = await pressed(wren(), result, 'Ask or hand over')
  const [menu] = menus(hands)
  if (!menu) throw new Error(text(hands))
  expect(menu.options.map(option => option.label)).toEqual([
    'Is the cell swollen, bulging or burst open anywhere?',
    'Is there liquid, crust or powder on the cell?',
  ])
  const again = messageOf(await wren().choose(hands, menu.customId, [menu.options[1]?.value ?? '']))
  const form = await press(wren(), again, 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  expect(text(await finalOf(await wren().submit(form.modal, { why: 'what is this?' })))).toMatch(
    /is waiting for a helper/,
  )
  expect(text(await helpRequest())).toContain('liquid, crust or powder')
})

test('moderators see two photographs with nothing in them but the pictures; with the answer they are gone', async () => {
  expect(text(await ask([photo('IMG_0815 Pier.jpg'), photo('second.jpg')]))).toMatch(/is waiting for a helper/)
  const asked = await helpRequest()
  expect(asked.attachments.map(one => one.name)).toEqual(['photo-1.jpg', 'photo-2.jpg'])
  expect(asked.attachments[0]?.description).toMatch(/Photo 1 of the cell/)
  for (const { url } of asked.attachments) {
    const bytes = Buffer.from(await (await fetch(url)).arrayBuffer()).toString('latin1')
    expect(bytes.slice(0, 3)).toBe('\xff\xd8\xff')
    for (const secret of secrets) expect(bytes).not.toContain(secret)
  }
  const question = await pressed(tomas(), asked, 'Answer for them')
  expect(text(await pressed(tomas(), question, '.unsure'))).toMatch(/Thank you/)
  const after = await helpRequest()
  expect(after.id).toBe(asked.id)
  expect(after.attachments).toEqual([])
})

test.each([
  ['a drawing', { name: 'cell.jpg', bytes: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>') }, /SVG drawing/],
  [
    'a program',
    { name: 'photo.png', bytes: Buffer.concat([Buffer.from('MZ'), Buffer.alloc(200)]) },
    /a program|no picture/,
  ],
  ['half a photograph', { name: 'half.jpg', bytes: samplePhoto().subarray(0, 300) }, /damaged, empty or cut off/],
])('%s is refused with what to change, and nobody is asked', async (_what, file, says) => {
  const told = text(await ask([photo('good.jpg'), file]))
  expect(told).toMatch(says)
  // What was typed beside the photographs is not lost with them.
  expect(told).toMatch(/What you typed:\s+```\s+what is this\?\s+```/)
  const [check] = await room.services.checks.heldBy(wren().id, room.services.now())
  expect(check?.custody?.helpRequest).toBeUndefined()
  expect(await room.services.notices.of(check?.id ?? '')).toEqual([])
})

test('a check that is closed, or that nobody touches until it runs out, takes its photographs along', async () => {
  const waiting = await ask([photo('one.jpg')])
  const asked = await helpRequest()
  expect(asked.attachments).toHaveLength(1)
  await pressed(wren(), await pressed(wren(), waiting, 'Pause'), 'Close')
  expect((await helpRequest()).attachments).toEqual([])

  await ask([photo('two.jpg')])
  const forgotten = await helpRequest()
  expect(forgotten.attachments).toHaveLength(1)
  // What the sweep of every hour does, two weeks on.
  for (const notice of await room.services.notices.expired(room.services.now() + lifetime + 3600_000, 10))
    await takeAway(room.services, notice)
  expect(
    tomas()
      .sees(demoReportsChannel)
      .some(one => one.id === forgotten.id),
  ).toBe(false)
})

test('a question that is taken back, and a check that is handed over, take their photographs along', async () => {
  const waiting = await ask([photo('one.jpg')])
  await pressed(wren(), await pressed(wren(), waiting, 'Ask or hand over'), 'Take the question back')
  expect((await helpRequest()).attachments).toEqual([])
  const again = await ask([photo('one.jpg')])
  const form = await press(wren(), await pressed(wren(), again, 'Ask or hand over'), 'Hand it over')
  if (form.kind !== 'modal') throw new Error('no form')
  await wren().submit(form.modal, { why: 'no time' })
  expect((await helpRequest()).attachments).toEqual([])
})

test('where there is no channel for it, the form takes no photographs, and the queue has the question', async () => {
  const { server, revision, ...settings } = await room.services.servers.load('900000000000000100')
  await room.services.servers.save({ ...settings, server, revision: revision + 1, reviewChannel: null })
  const question = await unsureUntil(
    wren(),
    messageOf(await wren().run('check start', { depth: 'full' })),
    photographable,
  )
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  expect(form.modal.fields.map(one => one.customId)).toEqual(['why'])
  await finalOf(await wren().submit(form.modal, { why: 'hm' }))
  const queue = messageOf(await tomas().run('check waiting'))
  expect(text(queue)).toMatch(/stuck since[\s\S]*insulating ring/)
  expect(buttons(queue).map(one => one.label)).toEqual(['Look: Dunlin 40', 'See it'])
  await room.services.servers.save({ ...settings, server, revision: revision + 2 })
})
