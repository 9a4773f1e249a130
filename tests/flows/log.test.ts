// A discharge log through the real client: attached, read in its thread, and answered with figures, a question or a refusal.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { logLabelIds } from '../../src/custom-ids/log-label-id.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { discharge, styles, writeLog } from '../readings/generate-log.ts'
import {
  answer,
  caution,
  closeAll,
  finalOf,
  messageOf,
  postButton,
  press,
  pressed,
  startCheck,
  unsureUntil,
} from './hands.ts'
import { useRoom } from './in-room.ts'
import { openRoom } from './open-room.ts'

const { room, wren, odalys } = useRoom()
const samples = discharge()
const csv = (header: string, row: (sample: (typeof samples)[number]) => string) =>
  new TextEncoder().encode([header, ...samples.map(row)].join('\n'))
const plain = () => writeLog(styles[0] as (typeof styles)[number], samples)
const send = async (bytes: Uint8Array, options: Record<string, string> = {}, name = 'log.csv'): Promise<SeenMessage> =>
  finalOf(await wren().run('log', { file: { name, bytes }, ...options }))
const claimed = { label: '3000 mAh', cutoff: '2,8 V', room: '21 °C', instrument: 'lab-load' }

describe('figures', () => {
  test.each(styles.map(style => style.name))('%s gives the same ones as any other', async name => {
    const seen = text(await send(readFileSync(new URL(`../readings/logs/${name}.csv`, import.meta.url)), claimed))
    expect(seen).toMatch(/Capacity: 2,88\d ± \d\d mAh \(down to 2.8 V\)/)
    expect(seen).toMatch(/Energy: 10\.\d+ ± 0\.\d+ Wh/)
    expect(seen).toMatch(/at least 95% of the 3,000 mAh on the label. That proves nothing/)
  })

  test('come with the curve and its words, after the caution of the test', async () => {
    const message = await send(plain(), claimed)
    const [picture] = message.attachments
    expect(picture?.name).toBe('discharge.png')
    expect(picture?.description).toMatch(/2,88\d mAh/)
    expect(picture?.description).toMatch(/A dashed line marks “claimed on the label”: 3,000 mAh/)
    expect(text(message).indexOf('Never leave a discharge unattended')).toBeLessThan(text(message).indexOf('Capacity:'))
    expect(text(message)).toMatch(/Never repeat a test with more current/)
    expect(text(message)).toMatch(caution)
  })

  test('without a label nothing is said of a claim, and no check is offered', async () => {
    const message = await send(plain())
    expect(text(message)).toMatch(/Without the capacity on the label nothing can be said/)
    expect(text(message)).toMatch(/where the load ended; no cut-off was given/)
    expect(message.attachments[0]?.description).not.toMatch(/dashed line/)
    expect(buttons(message).map(one => one.label)).toEqual(['Type the label'])
  })

  test('a label can be given afterwards, by whoever sent it: the same figures, and what they tell of the claim', async () => {
    const message = await send(plain(), { room: '21 °C', instrument: 'lab-load' })
    const [figures = 'none'] = /Capacity: 2,\d+ ± \d+ mAh/.exec(text(message)) ?? []
    const open = async () => {
      const reply = await press(wren(), message, 'Type the label')
      if (reply.kind !== 'modal') throw new Error('no form')
      return reply.modal
    }
    const form = await open()
    expect((await open()).customId).not.toBe(form.customId)
    const wrong = await wren().submit(form, { label: 'lots' })
    expect(text(messageOf(wrong))).toMatch(/Type/)
    const told = await wren().submit(await open(), { label: '9900 mAh' })
    const after = await finalOf(told)
    expect(text(after)).toContain(figures)
    expect(text(after)).toMatch(/Less than half of the 9,900 mAh on the label/)
    expect(text(after)).toMatch(caution)
    expect(buttons(after).map(one => one.label)).toEqual(['Check the cell with this result'])
  })

  test('a label cannot be given to somebody else’s log, nor once it is forgotten', async () => {
    const message = await send(plain())
    const id = buttons(message)[0]?.customId ?? ''
    const posted = await postButton(room.standIn, id)
    expect(text(messageOf(await odalys().click(posted, id)))).toMatch(/has this check|holds|in hand/)
    const gone = logLabelIds.write({ is: 'label', draft: '9f86d081884c7d659a2f' })
    const stale = await postButton(room.standIn, gone)
    expect(text(messageOf(await wren().click(stale, gone)))).toMatch(/again/)
  })

  test('two discharges in one file are both told of', async () => {
    const both = writeLog(styles[0] as (typeof styles)[number], samples, samples)
    expect(text(await send(both, claimed))).toMatch(
      /holds 2 discharges[\s\S]*Discharge 1: 2,88[\s\S]*Discharge 2: 2,88/,
    )
  })

  test('names of columns from the file stay text', async () => {
    const seen = text(await send(csv('Time (s) @everyone,Voltage (V) **x**,Current (A)', s => `${s.t},${s.V},${s.I}`)))
    expect(seen).toContain('\\@everyone')
    expect(seen).toContain('\\*\\*x\\*\\*')
  })
})

describe('a check from a log', () => {
  test('knows that less than half of the label was found', async () => {
    const message = await send(plain(), { ...claimed, label: '9900 mAh' })
    expect(text(message)).toMatch(/Less than half of the 9,900 mAh on the label \(30% at most\)/)
    const first = await pressed(wren(), message, 'Check the cell with this result')
    const quick = await pressed(wren(), first, 'Quick')
    // A fact that would make the cell doubtful is asked once more before it counts.
    const again = await unsureUntil(wren(), quick, /Look again/)
    const next = await answer(wren(), again, 'Less than half')
    const verdict = await pressed(wren(), next, 'End now with this result')
    expect(text(verdict)).toMatch(/gives less than half of what the label claims/)
    await closeAll(wren())
  })

  test('or is added to the one that is open', async () => {
    await startCheck(wren())
    const message = await send(plain(), { ...claimed, label: '9900 mAh' })
    expect(text(await pressed(wren(), message, 'Add it to my check'))).toMatch(/2 answered/)
    await closeAll(wren())
  })
})

describe('what the file does not say is asked', () => {
  const unknown = csv('aika;jännite;virta', s => `${s.t};${s.V};${s.I}`)
  const choose = async (message: SeenMessage, label: RegExp, person = wren()) => {
    const [menu] = menus(message)
    const option = menu?.options.find(one => label.test(one.label))
    if (!menu || !option) throw new Error(`no ${label} in ${text(message)}`)
    return finalOf(await person.choose(message, menu.customId, [option.value]))
  }

  test('column by column, with the first rows, until it can be read', async () => {
    let message = await send(unknown, claimed)
    expect(text(message)).toMatch(/Which column is the time\?[\s\S]*aika │ jännite │ virta\n0 │ 4.172 │ 0/)
    message = await choose(message, /aika/)
    expect(text(message)).toMatch(/Which column is the voltage/)
    message = await choose(message, /jännite/)
    message = await choose(message, /virta/)
    expect(text(message)).toMatch(/Capacity: 2,88\d ± \d\d mAh/)
  })

  test('by a restarted bot just as well, and not for long after', async () => {
    const message = await send(unknown, claimed)
    const close = await room.another()
    await close()
    expect(text(await choose(message, /aika/))).toMatch(/Which column is the voltage/)
  })
})

describe('what cannot be read is refused in one sentence that says what to change', () => {
  test.each([
    ['an empty file', new Uint8Array(0), /file is empty/],
    [
      'a picture',
      new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, ...Array(50).fill(7)]),
      /This is a picture/,
    ],
    ['a zip', new Uint8Array([0x50, 0x4b, 3, 4, ...Array(80).fill(0)]), /zip archive/],
    ['a formula', csv('Time (s),Voltage (V),Current (A)', s => `${s.t},=1+1,${s.I}`), /formula in row 2/],
    ['prose', new TextEncoder().encode('Dear all,\nhere is my log.\n'), /No table of measurements/],
    ['a charge', csv('Time (s),Voltage (V),Current (A)', s => `${s.t},4.1,0`), /No discharge was found/],
  ])('%s', async (_what, bytes, sentence) => {
    const seen = text(await send(bytes))
    expect(seen).toMatch(sentence)
    expect(seen).toMatch(caution)
  })

  test('typed values that cannot be right, before the file is even fetched', async () => {
    const seen = text(await send(plain(), { label: 'lots', cutoff: '28 V', room: '300 °C' }))
    expect(seen.split('\n').filter(line => /Type|lie between/.test(line))).toHaveLength(3)
  })

  test('what goes wrong while it is read is told with a reference', async () => {
    const broken = await openRoom(services => ({
      ...services,
      logs: { read: () => Promise.reject(new Error('boom')) },
    }))
    const reply = finalOf(await broken.standIn.as('Wren').run('log', { file: { name: 'a.csv', bytes: plain() } }))
    expect(text(await reply)).toMatch(/tell a moderator this reference/)
    expect(broken.log.join()).toMatch(/boom/)
    await broken.close()
  })
})
