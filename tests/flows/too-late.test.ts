// A press that has waited for its turn until nobody can be answered any more: it is not begun, and what somebody typed is kept all the same.
import { afterEach, expect, test } from 'vitest'
import { buttons } from '../../src/practice/seen.ts'
import { messageOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

let room: TestRoom
/** How much later it is when a turn comes, in ms. */
let waits = 0
const ended: unknown[] = []
let next = Promise.withResolvers<void>()
const open = async () => {
  let passed = 0
  room = await openRoom(
    services => ({
      ...services,
      now: () => Date.now() + passed,
      lanes: {
        size: 0,
        async run(_server, _person, task) {
          passed += waits
          const delayed = waits > 0
          const how = await task()
          ended.push(how)
          if (delayed) next.resolve()
          return how
        },
      },
    }),
    englishServer,
  )
}
afterEach(async () => {
  waits = 0
  await room.close()
})
const wren = () => room.standIn.as('Wren')
const revision = async () => (await room.services.checks.heldBy(wren().id, Date.now()))[0]?.revision

test('a press is taken back as if it had not been made, and goes through when it is made again', async () => {
  await open()
  const message = await startCheck(wren())
  const before = await revision()
  waits = 3_000
  next = Promise.withResolvers()
  void press(wren(), message, '.unsure').catch(() => undefined)
  await next.promise
  expect(ended.at(-1)).toBe('ordinary')
  expect(await revision()).toBe(before)
  waits = 1_000
  expect(buttons(await pressed(wren(), message, '.unsure')).length).toBeGreaterThan(1)
  expect(await revision()).toBe((before ?? 0) + 1)
})

test('a form is read', async () => {
  await open()
  const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  waits = 3_000
  messageOf(await wren().submit(form.modal, { why: 'is that a ring?' }))
  expect(ended.at(-1)).toBe('fine')
})
