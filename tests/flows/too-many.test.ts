// Checks that are started and closed in a loop: at some number within a day the person is told so, and can start again a day later.
import { expect, test } from 'vitest'
import { mostPerDay } from '../../src/discord/check/begin-check.ts'
import { text } from '../../src/practice/seen.ts'
import { messageOf, startCheck } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const { room, ilse } = useRoom(() => openRoom(services => ({ ...services, now: () => now })))
let now = Date.now()

test('the most within a day, then a sentence that says when it goes on; others are not held up by it', async () => {
  const wren = room.standIn.as('Wren')
  const begin = async () => text(messageOf(await wren.run('check start')))
  await startCheck(wren)
  await wren.run('check close')
  const [last] = await room.services.checks.heldBy(wren.id, 0)
  expect(last).toBeUndefined()
  for (let i = 2; i < mostPerDay; i++) {
    const id = room.services.newId()
    const times = { startedAt: now, expiresAt: now + 15 * 24 * 3600_000 }
    const plain = { answers: {}, trail: [], consents: {}, packs: [], phase: { is: 'closed' } as const }
    const check = {
      id,
      revision: 0,
      server: null,
      holder: wren.id,
      mode: 'quick',
      cells: 1,
      family: null,
      day: '2026-11-25',
    } as const
    await room.services.checks.create({ ...check, ...times, ...plain }, `opens ${id}`)
  }
  expect(await begin()).not.toMatch(/within a day/)
  expect(await begin()).toMatch(/You have started 40 checks within a day.*start the next one tomorrow/)
  expect(text(messageOf(await ilse().run('check start')))).not.toMatch(/within a day/)
  now += 24 * 3600_000 + 1
  expect(await begin()).not.toMatch(/within a day/)
})
