// Claims and logs in the practice room's page: typed and attached by hand, at services and phone width.
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { become, card, fillAndRun, press, tooWide, until, wordsOf } from './browser-hands.ts'
import { caution } from './hands.ts'
import { inBrowser } from './in-browser.ts'

const log = (name: string) => ({ file: fileURLToPath(new URL(`../readings/logs/${name}.csv`, import.meta.url)) })

inBrowser('readings in the browser', ({ open: openWindow }) => {
  let page: Page

  describe.each([
    { name: 'on a desk', width: 1200, height: 850 },
    { name: 'on a phone', width: 360, height: 740 },
  ])('$name', look => {
    test('a newcomer types a claim, sees what is impossible in it, and starts a check from it', async () => {
      page = await openWindow(look)
      await become(page, 'Wren')
      const words = await fillAndRun(page, 'claim', { text: '18650 9900mAh 30A 38g brand new!' })
      expect(words).toMatch(/Impossible[\s\S]*9,900 mAh in this size/)
      expect(words).toMatch(caution)
      expect(await tooWide(page)).toEqual([])
      const cards = await page.locator('.card').count()
      await card(page).getByRole('button', { name: 'Check a cell with these claims' }).click()
      await page.locator('.card').nth(cards).waitFor()
      expect(await wordsOf(page)).toMatch(/5 things are known already/)
      expect(await tooWide(page)).toEqual([])
      // Danger is asked about first; then what was read and accuses is asked for by eye.
      expect(await press(page, /^Quick/)).toMatch(/Is the cell burning, smoking/)
      let asked = await wordsOf(page)
      for (let i = 0; i < 10 && !/Look again/.test(asked); i++) asked = await press(page, /^A · /)
      expect(asked).toMatch(/Look again: What capacity does it claim[\s\S]*9,900 mAh/)
      expect(await tooWide(page)).toEqual([])
      await press(page, 'Pause')
      await press(page, 'Close and delete the answers')
    })

    test('a helper attaches logs that are written differently, and gets the same figures with a curve', async () => {
      page = await openWindow(look)
      await become(page, 'Ilse')
      const seen: string[] = []
      for (const name of ['plain-seconds', 'german-semicolon', 'newest-first']) {
        const words = await fillAndRun(page, 'log', { file: log(name), label: '3000 mAh', cutoff: '2.8 V' })
        seen.push(/[\d.,]+ ± \d+ mAh/.exec(words)?.[0] ?? words)
        expect(words).toMatch(/±/)
        await card(page).locator('img').scrollIntoViewIfNeeded()
        await until(page, `[...document.querySelectorAll('.card')].at(-1).querySelector('img')?.complete === true`)
        expect(await tooWide(page)).toEqual([])
      }
      expect(new Set(seen).size).toBe(1)
    })
  })
})
