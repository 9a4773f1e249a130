// What a listing claims, through the real client: typed, or read from somebody's message; and the check that starts from it.
import { describe, expect, test } from 'vitest'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { caution, closeAll, messageOf, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren, ilse } = useRoom()
const claim = async (typed: string): Promise<SeenMessage> => messageOf(await wren().run('claim', { text: typed }))

describe('/claim', () => {
  test('names what is impossible, what is not comparable and what was read, with the caution', async () => {
    const seen = text(await claim('9900mAh 18650 30A 38g'))
    expect(seen).toMatch(/Impossible[\s\S]*9,900 mAh in this size: the best known hold about 4,000 mAh/)
    expect(seen).toMatch(/The claim would need 2,155 Wh per litre/)
    expect(seen).toMatch(/Suspiciously low[\s\S]*38 g/)
    expect(seen).toMatch(/Cannot be compared[\s\S]*30 A that is not marked “continuous”/)
    expect(seen).toMatch(/What was read[\s\S]*Size: 18650/)
    expect(seen).toMatch(caution)
  })

  test('understands a designation of the standard as what the trade calls it', async () => {
    expect(text(await claim('INR19/66 3000 mAh'))).toMatch(/19 mm wide and 66 mm long, sold as 18650/)
  })

  test('a modest claim shows nothing, and is told so', async () => {
    expect(text(await claim('18650 3000mAh 15A continuous'))).toMatch(
      /None of these claims is impossible.*shows nothing/,
    )
  })

  test('a claim that nothing is known to compare with is not told to be possible', async () => {
    const seen = text(await claim('48V 12Ah 13S4P'))
    expect(seen).not.toMatch(/None of these claims is impossible/)
    expect(seen).toMatch(/13 in series, 4 in parallel/)
    expect(seen).toMatch(/Nothing in it could be compared/)
  })

  test('a text of nothing but figures is cut off with a sentence', async () => {
    expect(text(await claim('1A '.repeat(1300)))).toMatch(/Only the first 60 claims were read/)
  })

  test('what is no claim gets an example of one', async () => {
    const seen = text(await claim('hello there'))
    expect(seen).toMatch(/No claim about a cell was found.*for example/)
    expect(seen).toMatch(caution)
  })

  test('text from people stays text', async () => {
    const seen = text(await claim('18650 3000mAh @everyone **loud** [x](https://x.invalid) <t:0>'))
    expect(seen).toContain('\\@everyone \\*\\*loud\\*\\* \\[x\\]\\(https\\://x.invalid\\) \\<t\\:0\\>')
  })

  test('the longest text Discord takes still fits, caution and all', async () => {
    const seen = text(await claim('18650 9900mAh 38g 100A pulse 21700 99A continuous '.repeat(120).slice(0, 4000)))
    expect(seen).toMatch(caution)
    expect(seen.length).toBeLessThanOrEqual(4000)
  })
})

describe('the check that starts from a claim', () => {
  test('knows the claim, asks the decisive part again, and ends in "ruled out"', async () => {
    const first = await pressed(wren(), await claim('18650 9900 mAh'), 'Check a cell with these claims')
    expect(text(first)).toMatch(/thing is known already|things are known already/)
    const quick = await pressed(wren(), first, 'Quick')
    expect(text(quick)).toMatch(/Is the cell burning, smoking/)
    const again = await unsureUntil(wren(), quick, /Look again/)
    expect(text(again)).toMatch(/9,900 mAh/)
    const form = await press(wren(), again, 'Read it once more')
    if (form.kind !== 'modal') throw new Error('no form')
    // The size came from the claim, too, and together with the capacity it decides.
    const size = messageOf(await wren().submit(form.modal, { value: '9900 mAh' }))
    expect(text(size)).toMatch(/Look again: Which size/)
    expect(text(await pressed(wren(), size, 'Still B · 18650'))).toMatch(/^## Ruled out/m)
    await closeAll(wren())
  })

  test('and a newcomer is at the result in nine presses: a figure and a size that are right are confirmed by one', async () => {
    let now = await startCheck(wren(), { depth: 'quick' })
    let presses = 2
    const quiet = ['None of these', 'Straight and flat', 'Clean and dry']
    for (let i = 0; i < quiet.length; i++) {
      const label = quiet.find(one => buttons(now).some(({ label }) => label?.includes(one)))
      now = await pressed(wren(), now, label ?? 'none of the three')
      presses += 1
    }
    const form = await press(wren(), now, 'Type in the reading')
    if (form.kind !== 'modal') throw new Error('no form')
    now = messageOf(await wren().submit(form.modal, { value: '9900 mAh' }))
    presses += 2
    for (const label of ['18650', 'still the same']) {
      now = await pressed(wren(), now, label)
      presses += 1
    }
    expect(text(now)).toMatch(/^## Ruled out/m)
    expect(presses).toBeLessThanOrEqual(9)
    await closeAll(wren())
  })

  test('or the claim is added to the check that is open', async () => {
    await startCheck(wren())
    const before = await claim('21700 5000 mAh')
    const after = await pressed(wren(), before, 'Add them to my check')
    expect(text(after)).toMatch(/2 answered/)
    await closeAll(wren())
  })

  test('delivered twice, it opens one check', async () => {
    const seen = await claim('18650 3000mAh')
    room.standIn.faults.deliverTwice(true)
    await pressed(wren(), seen, 'Check a cell with these claims')
    room.standIn.faults.deliverTwice(false)
    expect((await room.services.checks.heldBy(wren().id, Date.now())).length).toBe(1)
    await closeAll(wren())
  })
})

test('the menu of a message reads the claims in it, for the person who asked alone', async () => {
  const posted = ilse().say('look: 18650 9900mAh, real?')
  const reply = await wren().useOnMessage('Read the claims', posted)
  expect(reply.kind === 'message' && reply.private).toBe(true)
  expect(text(messageOf(reply))).toMatch(/9,900 mAh in this size/)
})
