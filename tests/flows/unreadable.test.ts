// A check that a newer version has written: its person is told so in words that help, the log says what to do, and nothing is changed.
import { expect, test } from 'vitest'
import { text } from '../../src/practice/seen.ts'
import { UnreadableBody } from '../../src/stores/bodies/body.ts'
import { messageOf, press, pressed, startCheck } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const { room } = useRoom(() =>
  openRoom(services => ({
    ...services,
    checks: {
      ...services.checks,
      async load(id, expected) {
        if (newer) throw new UnreadableBody('A check', 'its form is of version 9. Start that one.')
        return services.checks.load(id, expected)
      },
    },
  })),
)
let newer = false

test('a press is answered in a sentence with a reference that stands in the log beside the reason', async () => {
  const wren = room.standIn.as('Wren')
  const asked = await startCheck(wren)
  newer = true
  const told = text(messageOf(await press(wren, asked, '.unsure')))
  newer = false
  expect(told).toMatch(/cannot be read by the version of the bot that runs now\. Nothing was changed or lost\./)
  const [, reference = 'none'] = /reference: ([0-9a-f]{8})/.exec(told) ?? []
  const line = room.log.find(one => one.includes(reference)) ?? ''
  expect(line).toMatch(/version 9\. Start that one/)
  expect(line).toMatch(/"level":50/)
  // The same button goes on once the program can read it.
  expect(text(await pressed(wren, asked, '.unsure'))).not.toMatch(/cannot be read/)
})
