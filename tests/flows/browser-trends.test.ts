// Two moderators in the practice room's page, on a phone and at a desk, in English and German: one finding, decided and taken back by clicks.
import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  chromiumPath,
  chromiumThere,
  goTo,
  press,
  runByClicks,
  tooWide,
  wordsOf,
} from './browser-hands.ts'
import { caution } from './hands.ts'
import { useBrowser } from './in-browser.ts'

if (!chromiumThere) console.warn(`SKIPPED: trends in the browser, because ${chromiumPath} is missing.`)

/** One moderator reads Spanish, the other German; the post that both read is in the server's language. */
const his = sayIn('es-ES')
const hers = sayIn('de')
const english = sayIn('en')

/** A folder to put pictures of the screens into, to look at them. */
const shots = process.env['CELLWARY_SHOTS']

describe.skipIf(!chromiumThere)('trends in the browser', () => {
  const { open: openWindow } = useBrowser()
  let page: Page
  const reports = async () => {
    await goTo(page, demoReportsChannel)
    await page
      .locator('.card', { hasText: english('finding.new.label') })
      .first()
      .waitFor()
  }
  const shoot = async (name: string) => {
    await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
    if (shots) {
      await page.screenshot({ path: `${shots}/${name}.png`, animations: 'disabled' })
      await card(page).screenshot({ path: `${shots}/${name}-card.png`, animations: 'disabled' })
    }
    expect(await tooWide(page)).toEqual([])
  }
  /** Presses a button that opens a form, fills it in and sends it. */
  const fill = async (label: string, doing: (form: Locator) => Promise<unknown>) => {
    await card(page).getByRole('button', { name: label }).first().click()
    const form = page.getByRole('dialog')
    await form.waitFor()
    await doing(form)
    return changing(page, () => form.locator('button[type="submit"], button.send').last().click())
  }

  test.each([
    ['a phone', 390, 844],
    ['a desk', 1200, 900],
  ])(
    'on %s: one counterfeit is one post; warned of by one moderator, taken back, a known fake by the other, back in the list',
    async (name, width, height) => {
      page = await openWindow({ width, height })
      await become(page, 'Tomas')
      await reports()
      expect(await page.locator('.card', { hasText: english('finding.new.label') }).count()).toBe(1)
      const post = await wordsOf(page)
      expect(post).toMatch(/Brindlewick Rook/)
      for (const label of ['new', 'sure', 'many', 'noise', 'next'] as const)
        expect(post).toContain(english(`finding.${label}.label`))
      await shoot(`${name}-post`)
      const warned = await fill(english('finding.warn'), form =>
        form.locator('.choice', { hasText: 'cell-questions' }).click(),
      )
      expect(warned).toContain(english('finding.state.warned'))
      await shoot(`${name}-warned`)
      const back = await fill(english('finding.undo.warned'), form =>
        form.getByRole('textbox').fill('It was one old lot.'),
      )
      expect(back).toContain(english('finding.state.open'))
      expect(back).toContain('It was one old lot.')

      await become(page, 'Maret')
      await reports()
      await runByClicks(page, 'trends')
      await press(page, hers('trends.view.findings'))
      await shoot(`${name}-list-de`)
      const looked = await press(page, hers('findings.look'))
      for (const label of ['new', 'sure', 'many', 'noise', 'next'] as const)
        expect(looked).toContain(hers(`finding.${label}.label`))
      const fake = await press(page, hers('finding.fake'))
      expect(fake).toContain(hers('finding.state.known-fake'))
      await shoot(`${name}-fake-de`)
      expect(await press(page, hers('finding.undo.known-fake'))).toContain(hers('finding.state.open'))
      expect(await press(page, hers('findings.back'))).toContain(hers('finding.state.open'))

      await become(page, 'Wren')
      await page.getByText(english('warning.withdrawn.title')).first().waitFor()
      expect(await wordsOf(page)).toMatch(caution)
      await shoot(`${name}-withdrawn`)
    },
  )

  test('the release names the planted pattern and does not accuse the family that only grows', async () => {
    page = await openWindow({ width: 360, height: 740 })
    await become(page, 'Tomas')
    await reports()
    await runByClicks(page, 'trends')
    const overview = await wordsOf(page)
    expect(overview).toMatch(/Brindlewick Rook/)
    expect(overview).not.toMatch(/Heron/)
    expect(overview).toContain(his('caution.line'))
    expect(await tooWide(page)).toEqual([])
    expect(await press(page, his('trends.view.patterns'))).toMatch(/Brindlewick Rook/)
    expect(await press(page, his('trends.view.families'))).toMatch(/Brindlewick Heron/)
    await press(page, his('trends.view.rises'))
    await shoot('rises-es')
  })
})
