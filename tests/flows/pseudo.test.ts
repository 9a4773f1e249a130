// The bot in a made-up language: whatever it sends in any flow, no word is plain English but names, units and citations.
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { commands, messageCommands } from '../../src/discord/commands.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { disguiseText, pseudoLocale } from '../../src/words/pseudo.ts'
import { sayIn } from '../../src/words/say.ts'
import { discharge, styles, writeLog } from '../readings/generate-log.ts'
import { finalOf, messageOf, postButton, press, pressed, startCheck } from './hands.ts'
import { useRoom } from './in-room.ts'
import { plainEnglishIn, textsIn } from './plain-english.ts'
import { openPseudoRoom } from './pseudo-room.ts'

const server = demoServer.server.id
const everybody = '900000000000000301'
const { room, wren, tomas, odalys } = useRoom(openPseudoRoom)
beforeEach(() => room.forgetSent())

/** Answers question after question, each with its option number `n`, readings by `typed`, until there is a verdict. */
async function goThrough(n: number, typed?: string, options = {}): Promise<SeenMessage> {
  let now = await startCheck(wren(), options)
  for (let i = 0; i < 90; i++) {
    const acts = buttons(now).flatMap(one => one.customId ?? [])
    if (!acts.some(id => id.endsWith('.pause'))) return now
    const [menu] = menus(now)
    const picks = acts.filter(id => id.includes('.pick.') || id.includes('.consent.'))
    if (menu)
      now = messageOf(await wren().choose(now, menu.customId, [menu.options[n % menu.options.length]?.value ?? '']))
    else if (picks.length > 0) now = messageOf(await wren().click(now, picks[n % picks.length] ?? ''))
    else if (typed !== undefined && acts.some(id => id.endsWith('.measure'))) now = await measure(now, typed)
    else now = await pressed(wren(), now, '.unsure')
  }
  throw new Error(`no verdict: ${text(now)}`)
}

/** Fills every field of the form with `typed`; presses "can't tell" where that was refused. */
async function measure(message: SeenMessage, typed: string): Promise<SeenMessage> {
  const id = buttons(message).find(one => one.customId?.endsWith('.measure'))?.customId ?? ''
  const form = await wren().click(message, id)
  if (form.kind !== 'modal') throw new Error('no form')
  const fields = Object.fromEntries(
    form.modal.fields.map(one => [one.customId, one.kind === 'text' ? typed : one.options[0]?.value]),
  )
  const after = messageOf(await wren().submit(form.modal, fields as Record<string, string>))
  return pressed(wren(), after, '.unsure').catch(() => after)
}

describe('the pseudo-language', () => {
  test('has an accent on every letter, is about a third longer, and keeps what is filled in', () => {
    const say = sayIn(pseudoLocale)
    expect(disguiseText('Which size is the cell?')).not.toMatch(/[a-z]/i)
    const [english, pseudo] = [sayIn('en')('caution.full'), say('caution.full')]
    expect(pseudo.length / english.length).toBeGreaterThan(1.25)
    expect(pseudo.length / english.length).toBeLessThan(1.45)
    expect(say('list.entry', { what: 'Brindlewick Rook', count: 1, since: '<t:0:D>', date: '<t:1:D>' })).toMatch(
      /^⟦Brindlewick Rook: .*<t:0:D>, 1 \P{ASCII}+, .*<t:1:D>⟧$/u,
    )
  })

  test('is not spoken where nobody has switched it on', () => {
    expect(sayIn('qps-plocm')('check.back')).toBe('Back')
  })

  test('plain English is found wherever it hides', () => {
    expect(plainEnglishIn('⟦Ẃóórđ⟧ Back', [])).toEqual(['Back', 'Back'])
    expect(plainEnglishIn('⟦Ẃóórđ Back⟧', [])).toEqual(['Back'])
    expect(plainEnglishIn('⟦Ẃóórđ⟧ ẃóórđ', [])).toEqual(['ẃóórđ'])
    expect(plainEnglishIn('⟦Ẃóórđ 3,5 mAh <t:1:D> a⟧ · A', [])).toEqual([])
    expect(textsIn({ components: [{ label: 'a', options: [{ label: 'b', value: 'c', description: 'd' }] }] })).toEqual([
      'a',
      'b',
      'd',
    ])
    expect(textsIn({ choices: [{ name: 'a', value: 'b' }], files: [{ name: 'c.png' }] })).toEqual(['a'])
  })
})

describe('no plain English', () => {
  test('in the names and descriptions of commands, options and choices', () => {
    const say = sayIn(pseudoLocale)
    const texts = [...commands, ...messageCommands].flatMap(command => textsIn(command.describe(say)))
    expect(texts.length).toBeGreaterThan(20)
    expect(texts.flatMap(one => plainEnglishIn(one, []))).toEqual([])
  })

  test.each([
    ['the first answer everywhere', 0, undefined],
    ['the second', 1, undefined],
    ['the third', 2, '3400'],
    ['the fourth', 3, '99999 mAh'],
    ['the last', 11, 'lots'],
  ] as const)('in a check: %s', async (_how, n, typed) => {
    for (const options of [{}, { family: 'brindlewick-rook', cells: 7 }]) {
      const verdict = await goThrough(n, typed, options)
      await pressed(wren(), await pressed(wren(), verdict, '.close').catch(() => verdict), '.close').catch(
        () => verdict,
      )
    }
    expect(room.slips(...(typed ? [typed] : []))).toEqual([])
  })

  test('in pausing, resuming, listing, closing, old buttons and refusals', async () => {
    const first = await startCheck(wren(), { cells: 3 })
    const second = await pressed(wren(), first, '.unsure')
    await wren().click(first, buttons(first).find(one => one.customId?.endsWith('.unsure'))?.customId ?? '', {
      stale: true,
    })
    await pressed(wren(), second, '.pause')
    await wren().run('check list')
    await wren().suggest('check resume', { name: 'which', value: '' })
    await wren().suggest('check start', { name: 'family', value: '' })
    await wren().run('check resume')
    for (let i = 0; i < 12; i++) await wren().run('check start', { depth: 'full' })
    for (let i = 0; i < 12; i++) await wren().run('check close')
    await wren().run('check start', { depth: 'full', family: 'nothing like it' })
    await wren().run('check list')
    const posted = await postButton(room.standIn, 'what is this')
    await odalys().click(posted, 'what is this')
    expect(room.slips('nothing like it', /^x$/g)).toEqual([])
  })

  test('in claims', async () => {
    const typed = ['18650 9900mAh 30A 38g', 'INR19/66 3000 mAh 15A continuous', 'hello there']
    for (const one of typed) await wren().run('claim', { text: one })
    await wren().useOnMessage('Read the claims', wren().say('21700 5000mAh 30A pulse', { channel: everybody }))
    expect(room.slips(...typed, '21700 5000mAh 30A pulse')).toEqual([])
  })

  test('in logs: figures, questions and refusals', async () => {
    const samples = discharge()
    const style = styles[0] as (typeof styles)[number]
    const unknown = ['aika;jännite;virta', ...samples.map(s => `${s.t};${s.V};${s.I}`)].join('\n')
    const bytes = (content: string) => new TextEncoder().encode(content)
    const claimed = { label: '9900 mAh', cutoff: '2,8 V', room: '21 °C', instrument: 'lab-load' }
    const send = async (content: Uint8Array, options = {}) =>
      finalOf(await wren().run('log', { file: { name: 'log.csv', bytes: content }, ...options }))
    await send(writeLog(style, samples), claimed)
    await send(writeLog(style, samples, samples))
    let asked = await send(bytes(unknown), claimed)
    for (let i = 0; i < 3; i++) {
      const [menu] = menus(asked)
      if (menu)
        asked = await finalOf(
          await wren().choose(asked, menu.customId, [menu.options[i % menu.options.length]?.value ?? '']),
        )
    }
    for (const content of ['', 'Dear all,\nhere is my log.\n', 'Time (s),Voltage (V),Current (A)\n1,=1+1,2\n2,4,1'])
      await send(bytes(content))
    await send(writeLog(style, samples), { label: 'lots', cutoff: '28 V', room: '300 °C' })
    expect(
      room.slips('aika', 'jännite', 'virta', 'lots', 'Dear all', /(Time|Voltage|Current|Temperature) \\?\(\w\\?\)/g),
    ).toEqual([])
  })

  test('in what is counted, and in privacy', async () => {
    const counting = messageOf(await wren().run('check counting'))
    await pressed(wren(), await pressed(wren(), await pressed(wren(), counting, '.out'), '.forget'), '.in')
    const privacy = messageOf(await wren().run('privacy'))
    await pressed(wren(), privacy, '.show')
    await pressed(
      wren(),
      await pressed(wren(), await pressed(wren(), messageOf(await wren().run('privacy')), '.delete'), '.see'),
      '.delete',
    ).then(one => pressed(wren(), one, '.deleted'))
    expect(room.slips()).toEqual([])
  })

  test('in trends: every view, findings, warnings and refusals', async () => {
    await wren().run('trends', {}, { anyway: true })
    await seedPractice(room.services)
    const settings = await room.services.servers.load(server)
    await room.services.servers.save({ ...settings, language: pseudoLocale, revision: settings.revision + 1 })
    for (let i = 0; i < 4; i++) await lookForWork({ ...room.job, services: room.services })
    let release = messageOf(await tomas().run('trends'))
    for (const view of ['families', 'rises', 'patterns', 'overview'])
      release = await pressed(tomas(), release, `.${view}`)
    await pressed(tomas(), release, '.csv')
    const finding = (): SeenMessage => {
      const told = tomas()
        .sees(demoReportsChannel)
        .findLast(one => !one.private && buttons(one).some(seen => seen.customId?.endsWith('.draft')))
      if (!told) throw new Error('nothing was found')
      return told
    }
    for (const [does, fields] of [
      ['watch', { weeks: ['4'] }],
      ['dismiss', { reason: 'REASON' }],
      ['warn', { warning: 'WARNING', channel: [everybody] }],
    ] as const) {
      const form = await press(tomas(), finding(), `.${does}`)
      if (form.kind !== 'modal') throw new Error('no form')
      await tomas().submit(form.modal, fields as Record<string, string | string[]>)
      if (does !== 'warn') await pressed(tomas(), finding(), '.undo.')
    }
    await pressed(tomas(), finding(), '.draft')
    await pressed(tomas(), finding(), '.findings.')
    expect(room.slips('WARNING', 'REASON')).toEqual([])
  }, 60_000)
})
