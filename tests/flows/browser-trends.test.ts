// A moderator in the practice room's page: the release, the planted pattern, a warning and a rule, by clicks alone.
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/demo-server.ts'
import {
  become,
  card,
  changing,
  chromiumPath,
  chromiumThere,
  launchBrowser,
  type OpenPractice,
  openPage,
  press,
  runByClicks,
  startPractice,
  tooWide,
  until,
  wordsOf,
} from './browser-hands.ts'
import { caution } from './hands.ts'

if (!chromiumThere) console.warn(`SKIPPED: trends in the browser, because ${chromiumPath} is missing.`)

describe.skipIf(!chromiumThere)('trends in the browser', () => {
  let practice: OpenPractice
  let browser: Browser
  let page: Page
  beforeAll(async () => {
    practice = await startPractice()
    browser = await launchBrowser()
  }, 30_000)
  afterAll(async () => {
    await browser?.close()
    expect(await practice?.stop()).toBe(0)
  })
  afterEach(() => page.context().close())
  /** The reports channel, once the weekly job has told there what it found. */
  const reports = async () => {
    await page.locator('#place').selectOption(demoReportsChannel)
    await until(page, `document.querySelectorAll('.card').length > 1`)
  }

  test('a warning is posted and a rule drafted from what was told in the reports channel', async () => {
    page = await openPage(browser, practice.pageUrl, { width: 1200, height: 850 })
    await become(page, 'Tomas')
    await reports()
    expect(await wordsOf(page)).toMatch(/Brindlewick Rook/)
    await card(page).getByRole('button', { name: 'Post a warning' }).click()
    const form = page.getByRole('dialog')
    await form.locator('.choice', { hasText: 'cell-questions' }).click()
    const after = await changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
    expect(after).toMatch(/posted a warning/)
    const cards = await page.locator('.card').count()
    await card(page).getByRole('button', { name: 'Draft a rule' }).click()
    await page.locator('.card').nth(cards).waitFor()
    expect(await wordsOf(page)).toMatch(/rule to begin with/)
    expect(await card(page).getByText('rule.yaml').isVisible()).toBe(true)
    await become(page, 'Wren')
    await page.getByText('A warning about cells').first().waitFor()
    expect(await wordsOf(page)).toMatch(caution)
  })

  test('the release names the planted pattern and does not accuse the family that only grows', async () => {
    page = await openPage(browser, practice.pageUrl, { width: 360, height: 740 })
    await become(page, 'Tomas')
    await reports()
    await runByClicks(page, 'trends')
    const overview = await wordsOf(page)
    expect(overview).toMatch(/Brindlewick Rook[\s\S]*What goes together/)
    expect(overview).not.toMatch(/Heron/)
    expect(overview).toMatch(caution)
    expect(await tooWide(page)).toEqual([])
    const patterns = await press(page, 'Patterns')
    expect(patterns).toMatch(/code on the wrap[\s\S]*three legs/)
    expect(await press(page, 'Kinds of cell')).toMatch(/Brindlewick Heron/)
    expect(await tooWide(page)).toEqual([])
  })
})
