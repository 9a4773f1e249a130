// A release in the practice room's page: by clicks, on a phone, as a moderator who reads Spanish sees it.
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { sayIn } from '../../src/words/say.ts'
import { become, card, goTo, press, runByClicks, tooWide, wordsOf } from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'

/** The moderator reads Spanish; the post that all read is in the server's language. */
const his = sayIn('es-ES')
const english = sayIn('en')

/** A folder to put pictures of the screens into, to look at them. */
const shots = process.env['CELLWARY_SHOTS']

inBrowser('trends in the browser', ({ open: openWindow }) => {
  let page: Page
  const reports = async () => {
    await goTo(page, demoReportsChannel)
    await page
      .locator('.card', { hasText: english('finding.new.label', { quiet: 'no' }) })
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
