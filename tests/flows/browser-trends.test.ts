// A moderator in the practice room's page: the release, the planted pattern, a warning and a rule, by clicks alone.
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  chromiumPath,
  chromiumThere,
  press,
  runByClicks,
  tooWide,
  until,
  wordsOf,
} from './browser-hands.ts'
import { caution } from './hands.ts'
import { useBrowser } from './in-browser.ts'

if (!chromiumThere) console.warn(`SKIPPED: trends in the browser, because ${chromiumPath} is missing.`)

/** The moderator of the practice room reads Spanish. */
const his = sayIn('es-ES')
const english = sayIn('en')

describe.skipIf(!chromiumThere)('trends in the browser', () => {
  const { open: openWindow } = useBrowser()
  let page: Page
  /** The reports channel, once the weekly job has told there what it found. */
  const reports = async () => {
    await page.locator('#place').selectOption(demoReportsChannel)
    await until(page, `document.querySelectorAll('.card').length > 1`)
  }

  test('a warning is posted and a rule drafted from what was told in the reports channel', async () => {
    page = await openWindow({ width: 1200, height: 850 })
    await become(page, 'Tomas')
    await reports()
    // What is told in a channel is in the server's language, and stays in it; what answers him alone is in his own.
    expect(await wordsOf(page)).toMatch(/Brindlewick Rook/)
    await card(page)
      .getByRole('button', { name: english('finding.warn') })
      .click()
    const form = page.getByRole('dialog')
    await form.locator('.choice', { hasText: 'cell-questions' }).click()
    await changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
    expect(await card(page).getByRole('button').count()).toBe(1)
    const cards = await page.locator('.card').count()
    await card(page)
      .getByRole('button', { name: english('finding.draft') })
      .click()
    await page.locator('.card').nth(cards).waitFor()
    expect(await wordsOf(page)).toContain(his('finding.drafted'))
    expect(await card(page).getByText('rule.yaml').isVisible()).toBe(true)
    await become(page, 'Wren')
    await page.getByText(english('warning.title')).first().waitFor()
    expect(await wordsOf(page)).toMatch(caution)
  })

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
    expect(await tooWide(page)).toEqual([])
  })
})
