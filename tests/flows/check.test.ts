// A guided check through the real client: from the command to a verdict, and back, and what happens when people slip.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { encodeClick } from '../../src/discord/id-codec.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { answer, caution, idOf, messageOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { openRoom, type TestRoom } from './open-room.ts'

/** Discord's code for a body that breaks its rules; 40060 (answered already) is ordinary when things are delivered twice. */
const invalidBody = 50035

let room: TestRoom
beforeAll(async () => {
  room = await openRoom()
})
afterAll(async () => {
  // Every body the bot sent passed Discord's own schema and the limits beside it.
  expect(room.standIn.complaints.filter(one => one.code === invalidBody)).toEqual([])
  await room.close()
})
const wren = () => room.standIn.as('Wren')
const ilse = () => room.standIn.as('Ilse')
const closeAll = async (name: string) => {
  const person = room.standIn.as(name)
  for (let i = 0; i < 12; i++) if (/no open check/.test(text(messageOf(await person.run('check close'))))) return
}

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
    expect(text(message)).toMatch(/^## Open/m)
    expect(text(message)).toMatch(/Consumer Product Safety Commission/)
    expect(text(message)).toMatch(/You could not tell about \d+ danger signs/)
    await pressed(wren(), message, 'Close this check')
  })

  test('smoke is danger at once, with what to do first', async () => {
    const message = await unsureUntil(wren(), await startCheck(wren()), /smoking, hissing/)
    const verdict = await pressed(wren(), message, 'At least one of these')
    expect(text(verdict)).toMatch(/^## Danger: stop now/m)
    expect(text(verdict).indexOf('Move away from it')).toBeLessThan(text(verdict).indexOf('Tape over both ends'))
    expect(text(verdict)).toMatch(/emergency number/)
    await pressed(wren(), verdict, 'Close this check')
  })

  test('every reply is private to the person who asked', async () => {
    const reply = await wren().run('check start')
    expect(reply.kind === 'message' && reply.private).toBe(true)
    expect(
      ilse()
        .sees()
        .some(one => one.id === messageOf(reply).id),
    ).toBe(false)
    await closeAll('Wren')
  })

  test('an impossible claim rules the cell out after a second look, by typing into forms', async () => {
    const claim = async (message: SeenMessage, typed: string) => {
      if (/Which size/.test(text(message))) return answer(wren(), message, '18650')
      const form = await press(wren(), message, 'Type in the reading')
      if (form.kind !== 'modal') throw new Error('no form')
      return messageOf(await wren().submit(form.modal, { value: typed }))
    }
    let message = await startCheck(wren())
    for (const typed of ['9,9 Ah', '9900 mAh'])
      message = await claim(await unsureUntil(wren(), message, /Which size|Which capacity/), typed)
    expect(text(message)).toMatch(/Please look a second time/)
    message = await claim(message, '9900 mAh')
    expect(text(message)).not.toMatch(/second time/)
    message = await pressed(wren(), message, 'Stop and show')
    expect(text(message)).toMatch(/^## Ruled out/m)
    expect(text(message)).toMatch(/an impossible claim/)
    expect(text(message)).toMatch(/Enough for this on its own/)
    await closeAll('Wren')
  })

  test('a known family is offered as one types, and is what the check is called', async () => {
    const [family] = room.desk.programs.families
    const choices = await wren().suggest('check start', {
      name: 'family',
      value: (family?.name ?? '').slice(0, 3).toLowerCase(),
    })
    expect(choices.map(one => one.value)).toContain(family?.id)
    expect(choices.map(one => one.value)).toContain('-')
    const message = await startCheck(wren(), { family: family?.id ?? '' })
    expect(text(message)).toContain(`Check of ${family?.name} by ${family?.maker}`)
    await closeAll('Wren')
  })

  test('a quick check ends sooner and can go on in full', async () => {
    let message = await startCheck(wren(), { depth: 'quick' })
    let steps = 0
    for (; buttons(message).some(one => one.customId?.includes('.unsure')); steps++)
      message = await pressed(wren(), message, '.unsure')
    expect(steps).toBeLessThan(16)
    expect(text(message)).toMatch(/^## Open/m)
    message = await pressed(wren(), message, 'Go on checking')
    expect(buttons(message).some(one => one.customId?.includes('.unsure'))).toBe(true)
    await closeAll('Wren')
  })

  test('cells bought together are checked by the one that looks worst', async () => {
    expect(text(await startCheck(wren(), { cells: 12 }))).toMatch(/12 cells bought together.*looks worst/)
    await closeAll('Wren')
  })

  test('a person whose direct messages are closed can do all of it', async () => {
    const odalys = room.standIn.as('Odalys')
    const message = await unsureUntil(odalys, await startCheck(odalys), /smoking, hissing/)
    expect(text(await pressed(odalys, message, 'None of these'))).toMatch(caution)
    await closeAll('Odalys')
  })

  test('it works in a private conversation with the bot', async () => {
    const reply = await wren().run('check start', {}, { channel: 'direct' })
    expect(text(messageOf(reply))).toMatch(caution)
    await closeAll('Wren')
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
    const other = room.desk && '900000000000000302'
    const resumed = messageOf(await wren().run('check resume', {}, { channel: other }))
    expect(text(resumed)).toContain((text(second).match(/\*\*(.*)\*\*/) ?? [])[1])
    const old = await pressed(wren(), paused, 'Go on')
    expect(text(old)).toMatch(/earlier step/)
    await closeAll('Wren')
  })

  test('resume names one of several, and offers them as one types', async () => {
    await startCheck(wren(), { cells: 3 })
    await startCheck(wren())
    const choices = await wren().suggest('check resume', { name: 'which', value: '' })
    expect(choices).toHaveLength(2)
    const chosen = messageOf(await wren().run('check resume', { which: String(choices[1]?.value) }))
    expect(text(chosen)).toMatch(/3 cells bought together/)
    const list = messageOf(await wren().run('check list'))
    expect(text(await pressed(wren(), list, 'Go on with 2'))).toMatch(/3 cells/)
    await closeAll('Wren')
  })

  test('a correction takes the check back to the last question', async () => {
    const message = await unsureUntil(wren(), await startCheck(wren()), /smoking, hissing/)
    const verdict = await pressed(wren(), message, 'At least one of these')
    expect(text(await pressed(wren(), verdict, 'Correct the last answer'))).toMatch(/smoking, hissing/)
    await closeAll('Wren')
  })
})

describe('slips: one clear sentence, nothing changed', () => {
  const atTheScale = async () => {
    const size = await unsureUntil(wren(), await startCheck(wren()), /Which size is the cell/)
    return unsureUntil(wren(), await answer(wren(), size, '18650'), /weigh, in grams/)
  }
  const revisionOf = async (message: SeenMessage) => {
    const id = idOf(message, '.pause').split('.')[1] ?? ''
    return (await room.desk.checks.load(id))?.check.revision
  }

  test("a stranger who presses a button of somebody else's check", async () => {
    const mine = await startCheck(wren())
    const [, check = ''] = idOf(mine, '.pause').split('.')
    const custom_id = encodeClick({ check, revision: 0, act: { is: 'unsure' } })
    const posted = await fetch(`${room.standIn.apiUrl}/v10/channels/900000000000000301/messages`, {
      method: 'POST',
      headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
      body: JSON.stringify({
        content: 'x',
        components: [{ type: 1, components: [{ type: 2, style: 2, label: 'x', custom_id }] }],
      }),
    })
    const { id } = (await posted.json()) as { id: string }
    expect(text(messageOf(await ilse().click(id, custom_id)))).toMatch(/Only the person who holds this check/)
    expect(await revisionOf(mine)).toBe(0)
    await closeAll('Wren')
  })

  test('a button from an earlier step redraws where the check stands', async () => {
    const first = await startCheck(wren())
    const second = await pressed(wren(), first, '.unsure')
    const stale = messageOf(await wren().click(first, idOf(first, '.unsure'), { stale: true }))
    expect(text(stale)).toMatch(/earlier step/)
    expect(await revisionOf(second)).toBe(1)
    await closeAll('Wren')
  })

  test('a double click counts once', async () => {
    const first = await startCheck(wren())
    const id = idOf(first, '.unsure')
    await Promise.all([wren().click(first, id, { stale: true }), wren().click(first, id, { stale: true })])
    expect(await revisionOf(first)).toBe(1)
    await closeAll('Wren')
  })

  test.each([
    ['a forged id', 'cw1.nonsense'],
    ['an id of another version', 'cw0.abcdefgh.0.unsure'],
    ["an id that is nobody's", 'hello'],
  ])('%s', async (_, custom_id) => {
    const posted = await fetch(`${room.standIn.apiUrl}/v10/channels/900000000000000301/messages`, {
      method: 'POST',
      headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
      body: JSON.stringify({
        content: 'x',
        components: [{ type: 1, components: [{ type: 2, style: 2, label: 'x', custom_id }] }],
      }),
    })
    const { id } = (await posted.json()) as { id: string }
    expect(text(messageOf(await wren().click(id, custom_id)))).toMatch(/not from this version of the bot/)
  })

  test('a check that is not there', async () => {
    const custom_id = encodeClick({ check: 'abcdefgh', revision: 0, act: { is: 'unsure' } })
    const posted = await fetch(`${room.standIn.apiUrl}/v10/channels/900000000000000301/messages`, {
      method: 'POST',
      headers: { authorization: `Bot ${room.standIn.botToken}`, 'content-type': 'application/json' },
      body: JSON.stringify({
        content: 'x',
        components: [{ type: 1, components: [{ type: 2, style: 2, label: 'x', custom_id }] }],
      }),
    })
    const { id } = (await posted.json()) as { id: string }
    expect(text(messageOf(await wren().click(id, custom_id)))).toMatch(/no longer kept/)
  })

  test.each([
    ['nothing of a number', 'heavy', /no number found/],
    ['a unit that does not fit', '44 V', /“V” does not fit/],
    ['two numbers', '44 or 45 g', /several numbers/],
    ['a value no cell has', '900 kg', /cannot be right/],
    ['not a number at all', 'NaN', /no number found/],
  ])('a form with %s', async (_, value, sentence) => {
    const message = await atTheScale()
    const before = await revisionOf(message)
    const form = await press(wren(), message, 'Type in the reading')
    if (form.kind !== 'modal') throw new Error('no form')
    const after = messageOf(await wren().submit(form.modal, { value, instrument: 'kitchen-scale' }))
    expect(text(after)).toMatch(sentence)
    expect(text(after)).toMatch(/weigh, in grams/)
    expect(await revisionOf(after)).toBe(before)
    await closeAll('Wren')
  })

  test('a form sent in after the question was answered otherwise', async () => {
    const message = await atTheScale()
    const form = await press(wren(), message, 'Type in the reading')
    const next = await pressed(wren(), message, '.unsure')
    if (form.kind !== 'modal') throw new Error('no form')
    const late = messageOf(await wren().submit(form.modal, { value: '45 g', instrument: 'kitchen-scale' }))
    expect(text(late)).toMatch(/earlier step/)
    expect(text(late)).toContain((text(next).match(/\*\*(.*)\*\*/) ?? [])[1])
    await closeAll('Wren')
  })

  test('an eleventh open check', async () => {
    for (let i = 0; i < 10; i++) await startCheck(wren())
    expect(text(await startCheck(wren()))).toMatch(/10 checks open/)
    await closeAll('Wren')
  })

  test('a family that is not there, and a check that is not theirs', async () => {
    expect(text(await startCheck(wren(), { family: 'no-such' }))).toMatch(/no family “no-such”/)
    await startCheck(ilse())
    const [theirs] = await ilse().suggest('check resume', { name: 'which', value: '' })
    expect(text(messageOf(await wren().run('check resume', { which: String(theirs?.value) })))).toMatch(
      /no open check like that/,
    )
    await closeAll('Ilse')
  })

  test('a closed check is closed', async () => {
    const message = await startCheck(wren())
    await wren().run('check close')
    expect(text(messageOf(await press(wren(), message, '.unsure')))).toMatch(/Closed/)
  })
})

describe('delivered twice', () => {
  test('every interaction of a whole check twice: the same path, each step once', async () => {
    room.standIn.faults.deliverTwice(true)
    let message = await startCheck(wren())
    const check = idOf(message, '.pause').split('.')[1] ?? ''
    for (let step = 1; buttons(message).some(one => one.customId?.includes('.unsure')); step++) {
      message = await pressed(wren(), message, '.unsure')
      await room.desk.lanes.idle()
      expect((await room.desk.checks.load(check))?.check.revision).toBe(step)
    }
    expect(await room.desk.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    room.standIn.faults.deliverTwice(false)
    await closeAll('Wren')
  })

  test('and to a second bot on the same database', async () => {
    const stop = await room.another()
    let message = await startCheck(wren())
    const check = idOf(message, '.pause').split('.')[1] ?? ''
    for (let step = 1; step <= 8; step++) {
      message = await pressed(wren(), message, '.unsure')
      expect((await room.desk.checks.load(check))?.check.revision).toBe(step)
    }
    expect(await room.desk.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    await stop()
    await closeAll('Wren')
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
    await closeAll('Wren')
  })
})
