// For a file of browser tests: skipped aloud where there is no Chromium; one practice room and one browser for all, and a window for each.
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect } from 'vitest'
import {
  chromiumPath,
  chromiumThere,
  type Look,
  launchBrowser,
  type OpenPractice,
  openPage,
  startPractice,
} from './browser-hands.ts'

/** Tests that open rooms and browsers of their own. */
export function whereChromiumIs(what: string, tests: () => void): void {
  if (!chromiumThere) console.warn(`SKIPPED: ${what}, because ${chromiumPath} is missing.`)
  describe.skipIf(!chromiumThere)(what, tests)
}

/** `open`: the page in a window that is closed after the test. At the end the room has to stop in order. */
export function inBrowser(what: string, tests: (browser: { open(look: Look): Promise<Page> }) => void): void {
  whereChromiumIs(what, () => {
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
    tests({
      async open(look) {
        const page = await openPage(browser, practice.pageUrl, look)
        opened.push(page)
        return page
      },
    })
  })
}
