// People slip, and strangers press: each gets one clear sentence, and nothing changes.
import { describe, expect, test } from 'vitest'
import { encodeClick } from '../../src/custom-ids/check-id.ts'
import { type SeenMessage, text } from '../../src/practice/seen.ts'
import { answer, closeAll, coolUntil, idOf, messageOf, postButton, press, pressed, startCheck } from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren, ilse, odalys } = useRoom()

describe('slips: one clear sentence, nothing changed', () => {
  const atTheScale = async () => {
    const size = await coolUntil(wren(), await startCheck(wren()), /Which size is the cell/)
    return coolUntil(wren(), await answer(wren(), size, '18650'), /weigh, in grams/)
  }
  const revisionOf = async (message: SeenMessage) => {
    const id = idOf(message, '.pause').split('.')[1] ?? ''
    return (await room.services.checks.load(id))?.check.revision
  }

  test("a stranger who presses a button of somebody else's check", async () => {
    const mine = await startCheck(wren())
    const [, check = ''] = idOf(mine, '.pause').split('.')
    const custom_id = encodeClick({ check, revision: 0, act: { is: 'unsure' } })
    const id = await postButton(room.standIn, custom_id)
    expect(text(messageOf(await odalys().click(id, custom_id)))).toMatch(/Only the person who has this check/)
    expect(await revisionOf(mine)).toBe(0)
    await closeAll(wren())
  })

  test('a claimed current as a multiple of the capacity: amperes are said, or asked for where no capacity is known', async () => {
    const typed = async (message: SeenMessage, value: string) => {
      const form = await press(wren(), message, 'Type in the reading')
      if (form.kind !== 'modal') throw new Error('no form')
      return messageOf(await wren().submit(form.modal, { value }))
    }
    const atCurrent = async (from: SeenMessage) => {
      const size = await coolUntil(wren(), from, /Which size is the cell/)
      return coolUntil(wren(), await answer(wren(), size, '21700'), /What current does it claim/)
    }
    const capacity = await coolUntil(wren(), await startCheck(wren()), /What capacity does it claim/)
    expect(text(await typed(await atCurrent(await typed(capacity, '4.0 Ah')), '50C'))).toContain(
      '50C of the claimed capacity is 200 A',
    )
    await closeAll(wren())
    expect(text(await typed(await atCurrent(await startCheck(wren())), '50C'))).toMatch(
      /“50C” is a multiple of the capacity[\s\S]*What current does it claim/,
    )
    await closeAll(wren())
  })

  test('a button from an earlier step redraws where the check stands', async () => {
    const first = await startCheck(wren())
    const second = await pressed(wren(), first, '.unsure')
    const stale = messageOf(await wren().click(first, idOf(first, '.unsure'), { stale: true }))
    expect(text(stale)).toMatch(/earlier step/)
    expect(await revisionOf(second)).toBe(1)
    await closeAll(wren())
  })

  test('a double click counts once', async () => {
    const first = await startCheck(wren())
    const id = idOf(first, '.unsure')
    await Promise.all([wren().click(first, id, { stale: true }), wren().click(first, id, { stale: true })])
    expect(await revisionOf(first)).toBe(1)
    await closeAll(wren())
  })

  test.each([
    ['a forged id', 'cw1.nonsense'],
    ['an id of another version', 'cw0.abcdefgh.0.unsure'],
    ["an id that is nobody's", 'hello'],
  ])('%s', async (_, custom_id) => {
    const id = await postButton(room.standIn, custom_id)
    expect(text(messageOf(await wren().click(id, custom_id)))).toMatch(/not from this version of the bot/)
  })

  test('a check that is not there', async () => {
    const custom_id = encodeClick({ check: 'abcdefgh', revision: 0, act: { is: 'unsure' } })
    const id = await postButton(room.standIn, custom_id)
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
    await closeAll(wren())
  })

  test('a form sent in after the question was answered otherwise', async () => {
    const message = await atTheScale()
    const form = await press(wren(), message, 'Type in the reading')
    const next = await pressed(wren(), message, '.unsure')
    if (form.kind !== 'modal') throw new Error('no form')
    const late = messageOf(await wren().submit(form.modal, { value: '45 g', instrument: 'kitchen-scale' }))
    expect(text(late)).toMatch(/earlier step/)
    expect(text(late)).toContain((text(next).match(/\*\*(.*)\*\*/) ?? [])[1])
    await closeAll(wren())
  })

  test('an eleventh open check', async () => {
    for (let i = 0; i < 10; i++) await startCheck(wren())
    expect(text(await startCheck(wren()))).toMatch(/10 checks open/)
    await closeAll(wren())
  })

  test('a family that is not there, and a check that is not theirs', async () => {
    expect(text(await startCheck(wren(), { family: '[cheap](https://x.example) **@everyone**' }))).toMatch(
      /no model “\\\[cheap\\\]\\\(https\\:.*\\\*\\\*\\@everyone/,
    )
    await startCheck(ilse())
    const [theirs] = await ilse().suggest('check resume', { name: 'which', value: '' })
    expect(text(messageOf(await wren().run('check resume', { which: String(theirs?.value) })))).toMatch(
      /no open check like that/,
    )
    await closeAll(ilse())
  })

  test('a closed check is closed', async () => {
    const message = await startCheck(wren())
    await wren().run('check close')
    expect(text(messageOf(await press(wren(), message, '.unsure')))).toMatch(/Closed/)
  })
})
