// The practice room as `npm start` opens it, in a real browser: a worried newcomer comes to a verdict by clicks alone.
import type { Page } from 'playwright-core'
import { afterEach, describe, expect, test } from 'vitest'
import {
  become,
  card,
  changing,
  correctLast,
  goTo,
  press,
  runByClicks,
  sendReading,
  tooWide,
  unsureUntilShown,
  until,
  wordsOf,
} from './browser-hands.ts'
import { caution } from './hands.ts'
import { inBrowser } from './in-browser.ts'

const widths = [
  { name: 'on a desk', width: 1200, height: 850 },
  { name: 'on a phone', width: 360, height: 740 },
] as const

inBrowser('a check in the browser', ({ open: openWindow }) => {
  let page: Page
  const wrong: string[] = []
  afterEach(async () => {
    expect(wrong.splice(0)).toEqual([])
  })
  const open = async (look: { width: number; height: number }) => {
    page = await openWindow(look)
    page.on('pageerror', error => wrong.push(String(error)))
    page.on('console', line => {
      if (line.type() === 'error') wrong.push(line.text())
    })
    await become(page, 'Wren')
  }

  describe.each(widths)('$name', look => {
    test('clicks alone lead from the first page to a verdict, and nothing reaches over the side', async () => {
      await open(look)
      expect(await tooWide(page)).toEqual([])
      // For whoever has nothing yet, the first thing to read is the first thing to do.
      await become(page, 'Odalys')
      expect((await page.getByText('Press to begin').boundingBox())?.y).toBeGreaterThan(0)
      await become(page, 'Wren')
      await page.locator('.commands > summary').click()
      expect(await tooWide(page)).toEqual([])
      await page.locator('.commands > summary').click()
      await runByClicks(page, 'check start')
      await press(page, /Thorough/)
      expect(await card(page).getByText('only Wren sees this').isVisible()).toBe(true)
      let words = await wordsOf(page)
      for (let i = 0; i < 80 && !/^Undecided/m.test(words); i++) {
        expect(words).toMatch(caution)
        expect(await tooWide(page)).toEqual([])
        words = await press(page, /^Can.t tell/)
      }
      expect(words).toMatch(/cannot settle it/)
      expect(await tooWide(page)).toEqual([])
      const warning = card(page).getByText(/can never show that one is right/)
      await warning.scrollIntoViewIfNeeded()
      expect(await warning.isVisible()).toBe(true)
      await press(page, 'Close and delete the answers')
    })

    test('a reading typed into a form and a second look lead to "ruled out", which others do not see', async () => {
      await open(look)
      await goTo(page, { label: 'workbench' })
      await page.getByRole('heading', { name: 'What Wren sees in workbench' }).waitFor()
      await runByClicks(page, 'check start')
      await press(page, /Thorough/)
      await unsureUntilShown(page, /What capacity does it claim/)
      await sendReading(page, '9900 mAh')
      await unsureUntilShown(page, /Which size is the cell/)
      // Each of the two answers that accuse together is asked once more.
      expect(await press(page, /18650/)).toMatch(/Look again: What capacity does it claim/)
      expect(await tooWide(page)).toEqual([])
      const again = await sendReading(page, '9900 mAh', 'Read it once more and type it in')
      expect(again).toMatch(/Look again: Which size is the cell/)
      expect(await tooWide(page)).toEqual([])
      expect(await press(page, /^Still .*18650/)).toMatch(/Already ruled out/)
      const verdict = await press(page, 'End now with this result')
      expect(verdict).toMatch(/Ruled out/)
      expect(verdict).toMatch(/an impossible claim/)
      expect(verdict).toMatch(caution)
      expect(await tooWide(page)).toEqual([])
      expect(await press(page, 'Details')).toMatch(/5,000 mAh or more cannot fit/)
      for (const part of [/Not checked/, /What to do now/]) {
        expect(await tooWide(page)).toEqual([])
        expect(await press(page, 'Next page')).toMatch(part)
      }
      expect(await tooWide(page)).toEqual([])
      expect(await press(page, 'Back to the result')).toBe(verdict)

      await become(page, 'Ilse')
      expect(await page.getByText('Ruled out').count()).toBe(0)
      await become(page, 'Wren')
      expect(await wordsOf(page)).toBe(verdict)

      await page.reload()
      await page.getByRole('heading', { name: 'What Wren sees in workbench' }).waitFor()
      await card(page).waitFor()
      expect(await wordsOf(page)).toBe(verdict)
      expect(await correctLast(page)).toMatch(/Which size is the cell/)
      expect(await press(page, 'End now with this result')).toBe(verdict)
      await press(page, 'Close and delete the answers')
    })
  })

  test('on a phone the next question is read from its heading, wherever the answer pressed before it stood', async () => {
    await open({ width: 360, height: 640 })
    await runByClicks(page, 'check start')
    await press(page, /Quick/)
    for (let i = 0; i < 2; i++) {
      await press(page, /^A · /)
      const heading = await card(page).getByRole('heading').first().boundingBox()
      const head = await page.locator('#sheet-frame').boundingBox()
      expect(heading?.y).toBeGreaterThanOrEqual(head?.y ?? 0)
      expect(heading?.y).toBeLessThan((head?.y ?? 0) + (head?.height ?? 0))
    }
  })

  test('keys alone: a command from the list, a quick check begun, the first question answered, the second one under the hand', async () => {
    await open({ width: 1200, height: 850 })
    const tabTo = async (selector: string) => {
      for (let i = 0; i < 6; i++) {
        await page.keyboard.press('Tab')
        if (await page.evaluate(`document.activeElement.matches(${JSON.stringify(selector)})`)) return
      }
      throw new Error(`Tab never came to ${selector}`)
    }
    await page.reload()
    await page.waitForSelector('body[data-ready]')
    const cards = await page.locator('.card').count()
    await tabTo('.skip')
    await page.keyboard.press('Enter')
    await tabTo('.commands > summary')
    await page.keyboard.press('Enter')
    // The list is under the hand as soon as it is open.
    await until(page, `document.activeElement.matches('#entry-form [data-command="check start"]')`)
    await page.keyboard.press('Enter')
    await page.locator('.card').nth(cards).waitFor()
    const beginning = await wordsOf(page)
    await until(page, 'document.activeElement.matches(".card")')
    await tabTo('.card:last-child .action')
    const first = await changing(page, () => page.keyboard.press('Enter'))
    expect(first).not.toBe(beginning)
    expect(first).toMatch(/nothing answered yet/)
    expect(await page.evaluate('document.activeElement.matches(".card:last-child, .card:last-child *")')).toBe(true)
    await tabTo('.card:last-child .action')
    const second = await changing(page, () => page.keyboard.press('Enter'))
    expect(second).not.toBe(first)
    expect(second).toMatch(/1 answered/)
    expect(await page.evaluate('document.activeElement.matches(".card:last-child, .card:last-child *")')).toBe(true)
    await tabTo('.card:last-child .action')
    await press(page, 'Stop and show the result')
    await press(page, 'Close and delete the answers')
  })
})
