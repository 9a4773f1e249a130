// The practice room as it opens, with whom and what it has; and opened again: what was said is there, and old buttons go on.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import {
  become,
  card,
  chromiumPath,
  chromiumThere,
  goTo,
  launchBrowser,
  openPage,
  press,
  runByClicks,
  startPractice,
  wordsOf,
} from './browser-hands.ts'

if (!chromiumThere) console.warn(`SKIPPED: a restart in the browser, because ${chromiumPath} is missing.`)

test.skipIf(!chromiumThere)('a check begun before the restart is answered after it', { timeout: 240_000 }, async () => {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-restart-'))
  const browser = await launchBrowser()
  try {
    const first = await startPractice({ CELLWARY_DATA: data })
    let page = await openPage(browser, first.pageUrl, { width: 390, height: 800 })
    await become(page, 'Wren')
    await runByClicks(page, 'check start')
    const question = await press(page, /^Quick/)
    await page.context().close()
    expect(await first.stop()).toBe(0)

    const second = await startPractice({ CELLWARY_DATA: data })
    page = await openPage(browser, second.pageUrl, { width: 390, height: 800 })
    await become(page, 'Wren')
    expect(await wordsOf(page)).toBe(question)
    expect(await card(page).locator('img').count()).toBeGreaterThan(0)
    const next = await press(page, /^Can.t tell/)
    expect(next).not.toBe(question)
    expect(await second.stop()).toBe(0)
  } finally {
    await browser.close()
    await rm(data, { recursive: true, force: true })
  }
})

test.skipIf(!chromiumThere)('moderators of three languages, and a server where nothing is set up', async () => {
  const practice = await startPractice()
  const browser = await launchBrowser()
  try {
    const page = await openPage(browser, practice.pageUrl, { width: 1200, height: 850 })
    await become(page, 'Wren')
    // A newcomer is not offered what is for moderators.
    await page.locator('.commands > summary').click()
    const listed = `[...document.querySelectorAll('#entry-form [data-command]')].map(one => one.dataset.command)`
    const offered = (): Promise<string[]> => page.evaluate(listed)
    expect(await offered()).toContain('check start')
    expect(await offered()).not.toContain('setup')
    expect(await offered()).not.toContain('trends')
    await become(page, 'Hollis')
    await page.getByText('You are Hollis (moderator). You read British English.').waitFor()
    await runByClicks(page, 'setup')
    expect(await wordsOf(page)).toMatch(/warden-reports|moderators|Wardens/i)
    await goTo(page, { label: 'slipway' })
    await page.getByRole('heading', { name: 'What Hollis sees in slipway on Harbour Models' }).waitFor()
    await runByClicks(page, 'setup')
    expect(await wordsOf(page)).not.toMatch(/Wardens/)
  } finally {
    await browser.close()
    expect(await practice.stop()).toBe(0)
  }
})
