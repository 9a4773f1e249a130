// A verdict shown in a channel: by its person's own press, seen beforehand, with the caution, accusing nobody, and taken away again.
import { expect, test } from 'vitest'
import { letterLanguages } from '../../src/custom-ids/letter-id.ts'
import { encodeShare } from '../../src/custom-ids/share-id.ts'
import { showShared } from '../../src/discord/check/share/show-share.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { buttons, text } from '../../src/practice/seen.ts'
import { accusationIn } from '../../src/words/accusing.ts'
import { sayIn } from '../../src/words/say.ts'
import { finished, heron, pick, wordsOf } from '../discord/finished-screens.ts'
import { caution, closeAll, messageOf, postButton, press, pressed, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'

const { room, wren, odalys } = useRoom()
const channel = '900000000000000302'
const shared = () => room.standIn.messages(channel).filter(one => /Shown by/.test(text(one)))

test('its person sees it beforehand, posts it once, and takes it away; others cannot', async () => {
  const started = messageOf(await wren().run('check start', { depth: 'full' }, { channel }))
  const verdict = await pressed(wren(), await unsureUntil(wren(), started, /smoking, hissing/), 'At least one of these')
  const before = shared().length
  // In danger nothing but what to do stands on the first screen.
  expect(buttons(verdict).map(one => one.label)).not.toContain('Show it here')
  const preview = await press(wren(), await pressed(wren(), verdict, 'Details'), 'Show it here')
  expect(preview.kind === 'message' && preview.private).toBe(true)
  expect(text(messageOf(preview))).toMatch(/Everybody in this channel will see this[\s\S]*Danger: stop now/)
  expect(shared()).toHaveLength(before)
  room.standIn.faults.deliverTwice(true)
  const done = await pressed(wren(), messageOf(preview), 'Post it here')
  room.standIn.faults.clear()
  expect(text(done)).toMatch(/in the channel now[\s\S]*Nobody was pinged/)
  const [card] = shared()
  expect(shared()).toHaveLength(before + 1)
  if (!card) throw new Error('nothing posted')
  expect(text(card)).toMatch(/### Danger: stop now[\s\S]*burning, smoking, hissing[\s\S]*Drop the cell/)
  expect(text(card)).toMatch(caution)
  expect(text(card)).toContain('Consumer Product Safety Commission')
  const other = await press(odalys(), card, 'Remove it')
  expect(text(messageOf(other))).toMatch(/has this check/)
  expect(shared()).toHaveLength(before + 1)
  await press(wren(), card, 'Remove it')
  expect(shared()).toHaveLength(before)
  await closeAll(wren())
})

test('what a filter of the server stops is told as that, and nothing is posted', async () => {
  const started = messageOf(await wren().run('check start', { depth: 'full' }, { channel }))
  const verdict = await pressed(wren(), await unsureUntil(wren(), started, /smoking, hissing/), 'At least one of these')
  const preview = messageOf(await press(wren(), await pressed(wren(), verdict, 'Details'), 'Show it here'))
  const before = shared().length
  room.standIn.faults.block({ words: ['danger'] })
  const done = await pressed(wren(), preview, 'Post it here')
  room.standIn.faults.block({})
  expect(text(done)).toMatch(/could not be posted: a filter of this server/)
  expect(shared()).toHaveLength(before)
  await closeAll(wren())
})

test('nobody shows somebody else’s, nor one that has no verdict', async () => {
  const message = await startCheck(wren())
  const check = (await room.services.checks.heldBy(wren().id, room.services.now()))[0]?.id ?? ''
  const id = encodeShare({ is: 'post', check })
  const posted = await postButton(room.standIn, id)
  expect(text(messageOf(await odalys().click(posted, id)))).toMatch(/has this check/)
  expect(text(messageOf(await wren().click(posted, id)))).toMatch(/not possible at this step/)
  await unsureUntil(wren(), message, /right now, or/)
  await closeAll(wren())
})

test.each(letterLanguages)('says what was seen and measured, and accuses nobody: %s', language => {
  const reading = (value: number) => ({ kind: 'reading', value, u: 0 }) as const
  const cases = [
    { legs: pick('three'), 'code-place': pick('can'), 'sold-as': pick('new-bare') },
    { 'claimed-capacity': reading(9900), price: pick('far-below'), 'where-bought': pick('marketplace') },
    { rust: { kind: 'cant-tell' } as const },
  ]
  for (const answers of cases) {
    const screen = finished(heron, answers)
    const say = sayIn(language)
    const said = wordsOf(showShared(say, inLanguage(heron, language), screen, '900000000000000101'))
    const own = said.replaceAll(say('caution.full'), '').replaceAll(say('share.one-cell'), '')
    expect(accusationIn(own), own).toBeUndefined()
    expect(said).toContain(say('caution.full'))
    expect(said).toContain(say('share.one-cell'))
  }
})

test('the button is where a server is, and not in a private conversation', async () => {
  const verdict = async (options: object) => {
    const started = messageOf(await wren().run('check start', { depth: 'full' }, options))
    const danger = await pressed(
      wren(),
      await unsureUntil(wren(), started, /smoking, hissing/),
      'At least one of these',
    )
    return pressed(wren(), danger, 'Details')
  }
  const labels = async (options: object) => buttons(await verdict(options)).map(one => one.label)
  expect(await labels({ channel })).toContain('Show it here')
  expect(await labels({ channel: 'direct' })).not.toContain('Show it here')
  await closeAll(wren())
})
