// Interactions delivered twice, to one bot and to two, and a connection that drops: each step counts once.
import { describe, expect, test } from 'vitest'
import { buttons, menus, text } from '../../src/practice/seen.ts'
import { closeAll, idOf, messageOf, pressed, startCheck, untouched } from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren } = useRoom()

describe('delivered twice', () => {
  test('every interaction of a whole check twice: the same path, each step once', async () => {
    room.standIn.faults.deliverTwice(true)
    let message = await startCheck(wren())
    const check = idOf(message, '.pause').split('.')[1] ?? ''
    for (let step = 1; buttons(message).some(one => one.customId?.includes('.unsure')); step++) {
      message = await pressed(wren(), message, '.unsure')
      await room.services.queue.idle()
      expect((await room.services.checks.load(check))?.check.revision).toBe(step)
    }
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    room.standIn.faults.deliverTwice(false)
    await closeAll(wren())
  })

  test('commands too: one close closes one check, one resume resumes one, and the tenth start is no eleventh', async () => {
    for (let i = 0; i < 9; i++) await startCheck(wren())
    room.standIn.faults.deliverTwice(true)
    expect(text(await startCheck(wren()))).not.toMatch(/checks open/)
    await room.services.queue.idle()
    const held = async () => (await room.services.checks.heldBy(wren().id, Date.now())).length
    expect(await held()).toBe(10)
    await wren().run('check close')
    // The second delivery is through once a later command has been answered.
    await wren().run('check list')
    expect(await held()).toBe(9)
    expect(text(messageOf(await wren().run('check resume')))).toMatch(untouched)
    room.standIn.faults.deliverTwice(false)
    await closeAll(wren())
  })

  test('and to a second bot on the same database', async () => {
    const stop = await room.another()
    let message = await startCheck(wren())
    const check = idOf(message, '.pause').split('.')[1] ?? ''
    for (let step = 1; step <= 8; step++) {
      message = await pressed(wren(), message, '.unsure')
      expect((await room.services.checks.load(check))?.check.revision).toBe(step)
    }
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    await stop()
    await closeAll(wren())
  })
})

describe('the connection', () => {
  test('goes on after a dropped socket, a reconnect and a lost session', async () => {
    let message = await startCheck(wren())
    for (const fault of ['dropSocket', 'askReconnect'] as const) {
      room.standIn.faults[fault]()
      await room.standIn.connected()
      message = await pressed(wren(), message, '.unsure')
    }
    expect(menus(message).length + buttons(message).length).toBeGreaterThan(0)
    await closeAll(wren())
  })
})
