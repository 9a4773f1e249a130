// Families in the practice room's page at phone width: made by one warden, agreed to by another, and met by a newcomer.
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  choose,
  chromiumPath,
  chromiumThere,
  fillAndRun,
  press,
  tooWide,
  until,
  wordsOf,
} from './browser-hands.ts'
import { useBrowser } from './in-browser.ts'

if (!chromiumThere) console.warn(`SKIPPED: families in the browser, because ${chromiumPath} is missing.`)

/** Where pictures of the screens are left to be looked at; nowhere when unset. */
const shots = process.env['CELLWARY_SHOTS']
const german = sayIn('de')
const spanish = sayIn('es-ES')
const english = sayIn('en-GB')

describe.skipIf(!chromiumThere)('families in the browser', () => {
  const browser = useBrowser()
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
    await page.getByRole('button', { name: 'Run', exact: true }).click()
    await dialog().waitFor()
  }

  test('a warden describes a model, another agrees, and a newcomer is told what rules theirs out', async () => {
    page = await browser.open({ width: 360, height: 740 })
    await become(page, 'Maret')
    await page.locator('#place').selectOption(demoReportsChannel)
    await until(page, `document.querySelectorAll('.card').length > 0`)
    await page.locator('#place').selectOption({ label: 'workbench' })
    await page.getByRole('heading', { name: 'What Maret sees in workbench' }).waitFor()
    let pressed = 0
    const cards = await page.locator('.card').count()
    await openCommand('family new')
    if (shots) await page.screenshot({ path: join(shots, 'families-form.png') })
    await dialog().getByLabel(german('families.form.name')).fill('Avocet 25')
    await dialog().getByLabel(german('families.form.maker')).fill('Larkmoor')
    await pick(german('families.form.format'), '18650')
    await pick(german('families.form.kind'), german('families.kind.bare'))
    await dialog().getByLabel(german('families.form.printed')).fill('2500 mAh 20 A')
    await send()
    await page.locator('.card').nth(cards).waitFor()
    await until(page, `!document.querySelector('.card:last-of-type .waiting')`)
    pressed += 9
    expect(await wordsOf(page)).toContain('Avocet 25')
    await look()
    const built = await changing(page, async () => {
      await card(page).getByText(german('families.built.choose')).click()
      await card(page).locator('.menu .choice', { hasText: 'zwei Vertiefungen, drei Stege' }).first().click()
    })
    pressed += 2
    expect(built).toContain(german('families.tells.must'))
    await look()
    expect(await press(page, german('families.button.try'))).toMatch(/Fälle stimmen/)
    await look()
    await card(page)
      .getByRole('button', { name: german('families.button.ask') })
      .click()
    await dialog().getByRole('textbox').first().fill('An fünf Zellen aus drei Bestellungen gezählt')
    const asked = await changing(page, send)
    pressed += 4
    expect(asked).toContain('Avocet 25')
    await look()
    expect(pressed).toBeLessThanOrEqual(20)

    await become(page, 'Tomas')
    await page.locator('#place').selectOption(demoReportsChannel)
    await until(page, `[...document.querySelectorAll('.card')].some(one => one.textContent.includes('Avocet 25'))`)
    await look()
    const agreeing = page.locator('.card', { hasText: 'Avocet 25' }).last()
    await agreeing.getByRole('button', { name: english('families.button.agree') }).click()
    await page
      .getByText(spanish('families.put-in-force', { number: 1 }))
      .first()
      .waitFor()

    await become(page, 'Wren')
    await page.locator('#place').selectOption({ label: 'workbench' })
    await page.getByRole('heading', { name: 'What Wren sees in workbench' }).waitFor()
    const shown = await fillAndRun(page, 'family list', {})
    for (const name of ['Avocet 25', 'Sandpiper 25', 'Curlew 30', 'Plover 20']) expect(shown).toContain(name)
    expect(shown).not.toContain('Dunlin 40')
    await look()
    expect(await choose(page, 'Avocet 25')).toContain(english('families.tells.must'))
    await look()
  }, 240_000)
})
