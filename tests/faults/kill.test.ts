// kill -9 at every step of a check: what was acknowledged is stored, the same buttons work on, nothing counts twice.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setImmediate as turn } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { openStandIn } from '../../src/practice/stand-in.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { answer, idOf, messageOf, press, pressed, startCheck, unsureUntil } from '../flows/hands.ts'
import { testSeal } from '../stores/test-seal.ts'
import { startBot } from './bot-process.ts'

test('a whole check, the bot killed after every answer and in the middle of every answer', async () => {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-kill-'))
  const standIn = await openStandIn({ scenario: demoServer })
  const wren = standIn.as('Wren')
  let bot = await startBot(standIn, data)
  const restart = async () => {
    await bot.kill()
    bot = await startBot(standIn, data)
  }
  try {
    let message = await startCheck(wren, { depth: 'quick' })
    const id = idOf(message, '.pause').split('.')[1] ?? ''
    const store = openCheckStore(await openSqlite(join(data, 'cellwary.db')), testSeal)
    const revision = async () => (await store.load(id))?.check.revision ?? -1
    let steps = 0
    while (buttons(message).some(one => one.customId?.includes('.unsure'))) {
      const before = await revision()
      // Killed somewhere on the way: between taking the click in and answering it, a little later at each step.
      const lost = press(wren, message, '.unsure')
      for (let i = 0; i < steps * 3; i++) await turn()
      await restart()
      const after = await revision()
      expect([before, before + 1]).toContain(after)
      // Whatever came of it, the person presses the same button of the same message.
      const current = standIn.message(message.id) ?? message
      if (buttons(current).some(one => one.customId?.includes('.unsure'))) {
        const next = await pressed(wren, current, '.unsure')
        expect([before + 1, before + 2]).toContain(await revision())
        message = next
      } else message = current
      // Killed after the answer was seen: it is stored.
      const acknowledged = await revision()
      await restart()
      expect(await revision()).toBe(acknowledged)
      void lost
      steps++
    }
    expect(steps).toBeGreaterThan(3)
    expect(text(message)).toMatch(/^## Undecided/m)
    const stored = (await store.load(id))?.check
    expect(stored?.trail).toHaveLength(new Set(stored?.trail).size)
    expect(stored?.revision).toBe(stored?.trail.length)
    expect(await store.heldBy(wren.id, Date.now())).toHaveLength(1)
  } finally {
    await bot.kill()
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  }
}, 300_000)

test('every kind of step survives a kill: options, forms, second looks, going back, pausing, a verdict and after', async () => {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-kill-'))
  const standIn = await openStandIn({ scenario: demoServer })
  const wren = standIn.as('Wren')
  let bot = await startBot(standIn, data)
  const store = openCheckStore(await openSqlite(join(data, 'cellwary.db')), testSeal)
  try {
    let message = await startCheck(wren)
    const id = idOf(message, '.pause').split('.')[1] ?? ''
    /** Takes a step, kills the bot, starts it again, and sees that what was answered is stored and counted once. */
    const step = async (act: () => Promise<SeenMessage>, by = 1) => {
      const before = (await store.load(id))?.check.revision ?? 0
      message = await act()
      await bot.kill()
      expect((await store.load(id))?.check.revision).toBe(before + by)
      bot = await startBot(standIn, data)
    }
    const typed = async (value: string) => {
      const form = await press(wren, message, '.measure')
      if (form.kind !== 'modal') throw new Error('no form')
      return messageOf(await wren.submit(form.modal, { value }))
    }
    await step(() => answer(wren, message, 'A · '))
    await step(() => pressed(wren, message, 'Pause'))
    await step(() => pressed(wren, message, 'Continue'))
    await step(() => pressed(wren, message, 'Back'))
    message = await unsureUntil(wren, message, /Which size is the cell|What capacity/)
    const claim = (value: string) => (/Which size/.test(text(message)) ? answer(wren, message, '18650') : typed(value))
    await step(() => claim('9900 mAh'))
    message = await unsureUntil(wren, message, /Which size is the cell|What capacity/)
    await step(() => claim('9900 mAh'))
    for (let i = 0; i < 2; i++) {
      expect(text(message)).toMatch(/Look again/)
      await step(() => claim('9900 mAh'))
    }
    await step(() => pressed(wren, message, '.finish'))
    expect(text(message)).toMatch(/^## Ruled out/m)
    await step(() => pressed(wren, message, 'Answer more questions'))
    await step(() => pressed(wren, message, '.finish'))
    await step(() => pressed(wren, message, 'Close and delete the answers'))
    expect((await store.load(id))?.check.phase).toEqual({ is: 'closed' })
    expect(standIn.complaints.filter(one => one.code === 50035)).toEqual([])
  } finally {
    await bot.kill()
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  }
}, 300_000)
