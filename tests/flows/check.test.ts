// A guided check through the real client: from the command to a verdict, and back, and what happens when people slip.
import { describe, expect, test } from 'vitest'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { answer, caution, closeAll, correctLast, messageOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren, ilse } = useRoom()

describe('from the command to a verdict', () => {
  test('a newcomer who can tell nothing reaches "open", with the caution on every message', async () => {
    let message = await startCheck(wren())
    let steps = 0
    while (buttons(message).some(one => one.customId?.includes('.unsure'))) {
      expect(text(message)).toMatch(caution)
      message = await pressed(wren(), message, '.unsure')
      steps++
    }
    expect(steps).toBeGreaterThan(10)
    expect(text(message)).toMatch(/^## Undecided/m)
    expect(text(message)).toMatch(/Consumer Product Safety Commission/)
    expect(text(message)).toMatch(/\d+ questions about danger are still open/)
    await pressed(wren(), message, 'Close and delete the answers')
  })

  test('smoke is danger at once, with what to do first', async () => {
    const message = await unsureUntil(wren(), await startCheck(wren()), /smoking, hissing/)
    const verdict = await pressed(wren(), message, 'At least one of these')
    expect(text(verdict)).toMatch(/^## 🛑 Drop the cell if you are holding it, get away now/m)
    expect(text(verdict)).not.toMatch(/cover both ends/i)
    expect(text(verdict)).toMatch(/emergency number/)
    expect(verdict.attachments.map(one => one.name)).toEqual(['verdict.png'])
    expect(verdict.attachments[0]?.description).toMatch(/^Result: Danger/)
    await pressed(wren(), verdict, 'Close and delete the answers')
  })

  test('every reply is private to the person who asked', async () => {
    const reply = await wren().run('check start', { depth: 'full' })
    expect(reply.kind === 'message' && reply.private).toBe(true)
    expect(
      ilse()
        .sees()
        .some(one => one.id === messageOf(reply).id),
    ).toBe(false)
    await closeAll(wren())
  })

  test('an impossible claim rules the cell out after a second look, by typing into forms', async () => {
    const claim = async (message: SeenMessage, typed: string) => {
      if (/Which size/.test(text(message))) return answer(wren(), message, '18650')
      const again = /Look again/.test(text(message))
      const form = await press(wren(), message, again ? 'type it in' : 'Type in the reading')
      if (form.kind !== 'modal') throw new Error('no form')
      return messageOf(await wren().submit(form.modal, { value: typed }))
    }
    let message = await startCheck(wren())
    for (const typed of ['9,9 Ah', '9900 mAh'])
      message = await claim(await unsureUntil(wren(), message, /Which size|What capacity/), typed)
    // The figure first, then the size: whatever accuses is asked again before it counts.
    for (const asked of [/Look again: What capacity/, /Look again: Which size/]) {
      expect(text(message)).toMatch(asked)
      message = await claim(message, '9900 mAh')
    }
    expect(text(message)).not.toMatch(/Look again/)
    // More than it could hold at any voltage: the kind of cell is not asked for.
    expect(text(message)).toMatch(/Already ruled out/)
    message = await pressed(wren(), message, 'End now with this result')
    expect(text(message)).toMatch(/^## Ruled out/m)
    expect(text(message)).toMatch(/an impossible claim/)
    const details = await pressed(wren(), message, 'Details')
    expect(text(details)).toMatch(/What decided the result/)
    expect(text(details)).toMatch(caution)
    message = await pressed(wren(), details, 'Back to the result')
    expect(text(message)).toMatch(/^## Ruled out/m)
    await closeAll(wren())
  })

  test('a known family is offered as one types, and is what the check is called', async () => {
    const [family] = room.services.programs.families
    const choices = await wren().suggest('check start', {
      name: 'family',
      value: (family?.name ?? '').slice(0, 3).toLowerCase(),
    })
    expect(choices.map(one => one.value)).toContain(family?.id)
    expect(choices.map(one => one.value)).toContain('-')
    const message = await startCheck(wren(), { family: family?.id ?? '' })
    expect(text(message)).toContain(`${family?.name} by ${family?.maker}`)
    await closeAll(wren())
  })

  test('a quick check ends sooner and can go on in full', async () => {
    let message = await startCheck(wren(), { depth: 'quick' })
    let steps = 0
    for (; buttons(message).some(one => one.customId?.includes('.unsure')); steps++)
      message = await pressed(wren(), message, '.unsure')
    expect(steps).toBeLessThan(16)
    expect(text(message)).toMatch(/^## Undecided/m)
    message = await pressed(wren(), message, 'Answer more questions')
    expect(buttons(message).some(one => one.customId?.includes('.unsure'))).toBe(true)
    await closeAll(wren())
  })

  test('cells bought together are checked by the one that looks worst', async () => {
    expect(text(await startCheck(wren(), { cells: 12 }))).toMatch(/12 cells bought together.*looks worst/)
    await closeAll(wren())
  })

  test('a person whose direct messages are closed can do all of it', async () => {
    const odalys = room.standIn.as('Odalys')
    const message = await unsureUntil(odalys, await startCheck(odalys), /smoking, hissing/)
    expect(text(await pressed(odalys, message, 'None of these'))).toMatch(caution)
    await closeAll(odalys)
  })

  test('it works in a private conversation with the bot', async () => {
    const reply = await wren().run('check start', { depth: 'full' }, { channel: 'direct' })
    expect(text(messageOf(reply))).toMatch(caution)
    await closeAll(wren())
  })
})

describe('pausing and coming back', () => {
  test('pause, list, resume in another channel; the old message works on too', async () => {
    const first = await startCheck(wren())
    const second = await pressed(wren(), first, '.unsure')
    const paused = await pressed(wren(), second, 'Pause')
    expect(text(paused)).toMatch(/answers are kept until <t:\d+:D>/)
    const list = messageOf(await wren().run('check list'))
    expect(text(list)).toMatch(/1 answer, kept until/)
    const other = room.services && '900000000000000302'
    const resumed = messageOf(await wren().run('check resume', {}, { channel: other }))
    expect(text(resumed)).toContain((text(second).match(/^### (.*)$/m) ?? [])[1])
    const old = await pressed(wren(), paused, 'Continue')
    expect(text(old)).toMatch(/earlier step/)
    await closeAll(wren())
  })

  test('the list tells open from finished, since when, with which verdict, and what goes', async () => {
    const message = await unsureUntil(wren(), await startCheck(wren()), /smoking, hissing/)
    await pressed(wren(), message, 'At least one of these')
    await startCheck(wren())
    let list = messageOf(await wren().run('check list'))
    expect(text(list)).toMatch(/Your open checks\n1\. [^\n]*: since <t:\d+:D>, nothing answered, kept until <t:\d+:D>/)
    expect(text(list)).toMatch(
      /Your finished checks\n2\. [^\n]*: \*\*Danger: stop now\*\* \(<t:\d+:D>\), kept until <t:\d+:D>/,
    )
    expect(text(list)).toMatch(/A check you close is emptied at once/)
    expect(text(list)).toMatch(caution)
    // Counted or not, its person sees what it came to.
    const [settled] = await room.services.checks.finished(Number.MAX_SAFE_INTEGER, 10)
    if (!settled) throw new Error('nothing finished')
    expect(await room.services.checks.settle(settled, null)).toBe(true)
    list = messageOf(await wren().run('check list'))
    expect(text(list)).toMatch(/2\. [^\n]*Danger: stop now/)
    const result = await pressed(wren(), list, 'Show result 2')
    await pressed(wren(), result, 'Close and delete the answers')
    list = messageOf(await wren().run('check list'))
    expect(text(list)).not.toMatch(/Danger: stop now/)
    await closeAll(wren())
    expect(text(messageOf(await wren().run('check list')))).toMatch(/no check, open or finished/)
  })

  test('resume names one of several, and offers them as one types', async () => {
    await startCheck(wren(), { cells: 3 })
    await startCheck(wren())
    const choices = await wren().suggest('check resume', { name: 'which', value: '' })
    expect(choices).toHaveLength(2)
    const chosen = messageOf(await wren().run('check resume', { which: String(choices[1]?.value) }))
    expect(text(chosen)).toMatch(/3 cells bought together/)
    const list = messageOf(await wren().run('check list'))
    expect(text(await pressed(wren(), list, 'Continue 2'))).toMatch(/3 cells/)
    await closeAll(wren())
  })

  test('a correction takes the check back to the last question', async () => {
    const message = await unsureUntil(wren(), await startCheck(wren()), /smoking, hissing/)
    const verdict = await pressed(wren(), message, 'At least one of these')
    expect(text(await correctLast(wren(), verdict))).toMatch(/smoking, hissing/)
    await closeAll(wren())
  })
})

test('whoever could not tell about heat is told to leave the cell where it is, then and whenever hands are asked for', async () => {
  const next = await pressed(wren(), await startCheck(wren()), '.unsure')
  expect(text(next)).toMatch(/otherwise leave it where it is.*emergency number/)
  const looking = await pressed(wren(), next, '.unsure')
  // From then on nothing is asked that needs hands.
  let now = looking
  while (buttons(now).some(one => one.customId?.includes('.unsure'))) {
    expect(text(now)).not.toMatch(/hold the cell gently|measuring tool/i)
    now = await pressed(wren(), now, '.unsure')
  }
  expect(text(now)).toMatch(/^## Undecided/m)
  await closeAll(wren())
})
