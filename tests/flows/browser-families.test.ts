// Families in the practice room's page at phone width: made by one warden, agreed to by another, and met by a newcomer.
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  choose,
  fillAndRun,
  goTo,
  press,
  runByClicks,
  tooWide,
  until,
  wordsOf,
} from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'
import { bare18650, letterOf } from './new-family.ts'

/** Where pictures of the screens are left to be looked at; nowhere when unset. */
const shots = process.env['CELLWARY_SHOTS']
const german = sayIn('de')
const spanish = sayIn('es-ES')
const english = sayIn('en-GB')

inBrowser('families in the browser', browser => {
  let page: Page
  let shot = 0
  const look = async () => {
    expect(await tooWide(page)).toEqual([])
    if (shots) await card(page).screenshot({ path: join(shots, `families-${String(++shot).padStart(2, '0')}.png`) })
  }
  const dialog = () => page.getByRole('dialog')
  const send = () => dialog().getByRole('button', { name: 'Send', exact: true }).click()
  /** Chooses in a menu of the form by its label. */
  const pick = async (label: string, line: string) => {
    await dialog().getByRole('group', { name: label }).getByLabel(line, { exact: true }).check()
  }
  const openCommand = async (path: string) => {
    await page.locator('.commands > summary').click()
    await page.locator(`#entry-form [data-command="${path}"]`).click()
    await dialog().waitFor()
  }

  test('a warden describes a model, another agrees, and a newcomer is told what rules theirs out', async () => {
    page = await browser.open({ width: 360, height: 740 })
    await become(page, 'Maret')
    await goTo(page, demoReportsChannel)
    await until(page, `document.querySelectorAll('.card').length > 0`)
    await goTo(page, { label: 'workbench' })
    await page.getByRole('heading', { name: 'What Maret sees in workbench' }).waitFor()
    const cards = await page.locator('.card').count()
    await openCommand('family new')
    if (shots) await page.screenshot({ path: join(shots, 'families-form.png') })
    await dialog().getByLabel(german('families.form.name')).fill('Avocet 25')
    await dialog().getByLabel(german('families.form.maker')).fill('Larkmoor')
    await pick(german('families.form.size'), bare18650(german))
    await dialog().getByLabel(german('families.form.figures')).fill('2500 mAh 20 A')
    await send()
    await page.locator('.card').nth(cards).waitFor()
    await until(page, `!document.querySelector('.card:last-of-type .waiting')`)
    const offered = await wordsOf(page)
    expect(offered).toContain('Avocet 25')
    await look()
    const built = await press(page, letterOf(sayIn('de'), offered, { dimples: 'two' }, ['legs', 'vent-disc']))
    expect(built).toContain('Stege: drei · vier oder fünf: „Widerlegt“')
    await look()
    expect(await press(page, german('families.button.try'))).toMatch(/ausgedachten Zellen probiert/)
    await look()
    await card(page)
      .getByRole('button', { name: german('families.button.ask') })
      .click()
    await dialog().getByRole('textbox').first().fill('An fünf Zellen aus drei Bestellungen gezählt')
    const asked = await changing(page, send)
    expect(asked).toContain('Avocet 25')
    expect(asked).toContain('/modell liste')
    await look()

    await become(page, 'Tomas')
    await goTo(page, demoReportsChannel)
    await until(page, `[...document.querySelectorAll('.card')].some(one => one.textContent.includes('Avocet 25'))`)
    await look()
    const agreeing = page.locator('.card', { hasText: 'Avocet 25' }).last()
    await agreeing.getByRole('button', { name: english('families.button.agree') }).click()
    await page
      .getByText(spanish('families.put-in-force', { name: 'Avocet 25', number: 1 }))
      .first()
      .waitFor()

    await become(page, 'Wren')
    await goTo(page, { label: 'workbench' })
    await page.getByRole('heading', { name: 'What Wren sees in workbench' }).waitFor()
    const shown = await fillAndRun(page, 'family list', {})
    for (const name of ['Avocet 25', 'Sandpiper 25', 'Curlew 30', 'Plover 20']) expect(shown).toContain(name)
    expect(shown).not.toContain('Dunlin 40')
    await look()
    expect(await choose(page, 'Avocet 25')).toContain('Legs: three · four or five: ruled out')
    await look()

    const told = await checked('Avocet 25')
    expect(told.words).toMatch(/^Ruled out/m)
    expect(told.words).toContain(english('caution.line'))
    expect(told.screens).toBeLessThanOrEqual(8)
    await look()
  }, 400_000)

  /** A newcomer's quick check of a cell with four legs and its lettering on the wrap; how many questions were answered. */
  async function checked(name: string): Promise<{ words: string; screens: number }> {
    await become(page, 'Wren')
    await goTo(page, { label: 'workbench' })
    await page.getByRole('heading', { name: 'What Wren sees in workbench' }).waitFor()
    await runByClicks(page, 'check start')
    await choose(page, name)
    let words = await press(page, english('beginning.quick'))
    const said: readonly [RegExp, RegExp][] = [
      [/burning, smoking/, /None of these/],
      [/What was the cell sold as/, /New, in its maker/],
      [/small lettering/, /On the coloured wrap/],
      [/How many legs hold up/, /Four/],
    ]
    for (let screens = 1; screens < 20; screens++) {
      const again = /Look again/.test(words)
      const mine = said.find(([asked]) => asked.test(words))?.[1]
      words = await press(page, mine ?? /^Can.t tell/)
      if (again) return { words, screens }
    }
    throw new Error(`no second look came; the last card says: ${words}`)
  }

  /** The page of a model, as a warden works on it; in the warden's language. */
  async function work(say: typeof german, name: string): Promise<string> {
    await goTo(page, { label: 'workbench' })
    await fillAndRun(page, 'family list', {})
    const words = await choose(page, name)
    const change = card(page).getByRole('button', { name: say('families.button.change'), exact: true })
    return (await change.count()) > 0 ? press(page, say('families.button.change')) : words
  }

  /** Has a draft tried and asked for by one warden, and agreed to by Tomas. */
  async function putInForce(say: typeof german, name: string, version: number): Promise<void> {
    await press(page, say('families.button.try'))
    await card(page)
      .getByRole('button', { name: say('families.button.ask') })
      .click()
    await dialog().getByRole('textbox').first().fill('So gezählt')
    await changing(page, send)
    await become(page, 'Tomas')
    await goTo(page, demoReportsChannel)
    await until(page, `[...document.querySelectorAll('.card')].some(one => one.textContent.includes('${name}'))`)
    const agreeing = page.locator('.card', { hasText: name }).last()
    await agreeing.getByRole('button', { name: english('families.button.agree') }).click()
    await page
      .getByText(spanish('families.put-in-force', { name, number: version }))
      .first()
      .waitFor()
  }

  test('a false look becomes a known fake, the next such cell is told so, and the version is taken back', async () => {
    page = await browser.open({ width: 360, height: 740 })
    await become(page, 'Maret')
    await work(german, 'Avocet 25')
    await press(page, german('families.button.fakes'))
    await card(page)
      .getByRole('button', { name: german('families.button.add-fake') })
      .click()
    const boxes = dialog().getByRole('textbox')
    await boxes.nth(0).fill('Vier Beine')
    await boxes.nth(1).fill('Der Kontakt steht auf vier Beinen.')
    await dialog()
      .getByLabel(/Stege: Vier/)
      .check()
    expect(await changing(page, send)).toContain('Vier Beine')
    await look()
    await press(page, german('families.button.page'))
    await putInForce(german, 'Avocet 25', 2)

    const told = await checked('Avocet 25')
    expect(told.words).toMatch(/a fake that has been seen here since [^:]*\d{4} \(W\d\d\): Vier Beine/)
    expect(told.words).toMatch(/^Ruled out/m)
    await look()

    await become(page, 'Maret')
    await work(german, 'Avocet 25')
    await press(page, german('families.button.more'))
    expect(await press(page, german('families.button.history'))).toContain('So gezählt')
    await look()
    await press(page, german('families.button.back-to', { number: 1 }))
    await card(page)
      .getByRole('button', { name: german('families.button.back-to', { number: 1 }) })
      .click()
    await dialog().getByRole('textbox').first().fill('War ein Irrtum')
    expect(await changing(page, send)).toContain(german('families.put-in-force', { name: 'Avocet 25', number: 3 }))
    await look()
  }, 400_000)

  test('a model is learnt from three good cells in the hand, of three wardens and orders', async () => {
    page = await browser.open({ width: 360, height: 740 })
    await become(page, 'Hollis')
    await goTo(page, { label: 'workbench' })
    const cards = await page.locator('.card').count()
    await openCommand('family new')
    await dialog().getByLabel(english('families.form.name')).fill('Knot 30')
    await dialog().getByLabel(english('families.form.maker')).fill('Larkmoor')
    await pick(english('families.form.size'), bare18650(english))
    await send()
    await page.locator('.card').nth(cards).waitFor()
    await until(page, `!document.querySelector('.card:last-of-type .waiting')`)
    const hands = [
      ['Hollis', english, 2],
      ['Maret', german, 1],
      ['Tomas', spanish, 0],
    ] as const
    for (const [warden, say, more] of hands) {
      if (warden !== 'Hollis') {
        await become(page, warden)
        await work(say, 'Knot 30')
        await press(page, say('families.button.references'))
      }
      const begin = warden === 'Hollis' ? 'families.from-cell' : 'families.button.add-reference'
      await card(page)
        .getByRole('button', { name: say(begin) })
        .click()
      await pick(say('families.reference.how'), say('families.how.maker'))
      await dialog().getByRole('textbox').first().fill(`order of ${warden}`)
      await changing(page, send)
      if (warden !== 'Tomas') await look()
      for (let i = 0; i < 5; i++) await press(page, /^A · /)
      await press(page, say('consent.unwrap.no'))
      await look()
      const taken = await press(page, say('families.walk.vouch'))
      expect(taken).toContain(say('families.reference.taken', { count: 5, more }))
    }
    await become(page, 'Maret')
    await work(german, 'Knot 30')
    await putInForce(german, 'Knot 30', 1)
    // What is in force stands at the strength it has earned: with two cells it would be a moderate sign.
    await become(page, 'Wren')
    await goTo(page, { label: 'workbench' })
    await fillAndRun(page, 'family list', {})
    expect(await choose(page, 'Knot 30')).toMatch(/four or five: strong sign/)
    await look()
  }, 400_000)
})
