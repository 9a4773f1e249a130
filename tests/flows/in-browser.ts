// For a file of browser tests: one practice room and one browser for all of them, and a window of its own for each.
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect } from 'vitest'
import { type Look, launchBrowser, type OpenPractice, openPage, startPractice } from './browser-hands.ts'

/** `open`: the page in a window that is closed after the test. At the end the room has to stop in order. */
export function useBrowser(): { open(look: Look): Promise<Page> } {
  let practice: OpenPractice
  let browser: Browser
  const opened: Page[] = []
  beforeAll(async () => {
    practice = await startPractice()
    browser = await launchBrowser()
  }, 240_000)
  afterEach(async () => {
    for (const page of opened.splice(0)) await page.context().close()
  })
  afterAll(async () => {
    await browser?.close()
    expect(await practice?.stop()).toBe(0)
  })
  return {
    async open(look) {
      const page = await openPage(browser, practice.pageUrl, look)
      opened.push(page)
      return page
    },
  }
}
