// Questions in the practice room's page, at phone width: a newcomer asks, a helper answers somebody's message, in two languages.
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { sayIn } from '../../src/words/say.ts'
import { become, card, fillAndRun, tooWide, until, wordsOf } from './browser-hands.ts'
import { caution } from './hands.ts'
import { inBrowser } from './in-browser.ts'

const english = sayIn('en')
/** The helper of the practice room reads German. */
const hers = sayIn('de')

inBrowser('questions in the browser', ({ open: openWindow }) => {
  let page: Page
  const phone = async (name: string) => {
    page = await openWindow({ width: 360, height: 800 })
    await become(page, name)
  }

  test('a newcomer types, picks what is suggested, reads on, and is told where there is no entry', async () => {
    await phone('Wren')
    await page.locator('.commands > summary').click()
    await page.locator('#entry-form [data-command="ask"]').click()
    await page.locator('#entry-form [data-option="question"]').fill('overnight')
    await page.getByRole('option', { name: /unattended or overnight/ }).click()
    await page.getByRole('button', { name: 'Run', exact: true }).click()
    await until(page, `/May I charge unattended/.test(document.querySelector('.card:last-of-type')?.textContent ?? '')`)
    expect(await wordsOf(page)).toMatch(caution)
    expect(await tooWide(page)).toEqual([])
    const none = await fillAndRun(page, 'ask', { question: 'which headlamp throws furthest' })
    expect(none).toContain(english('ask.none'))
    expect(await tooWide(page)).toEqual([])
    await card(page).getByRole('button').nth(1).click()
    await until(page, `/Sources:/.test(document.querySelector('.card:last-of-type')?.textContent ?? '')`)
    expect(await tooWide(page)).toEqual([])
  })

  test('a command typed with its words is shown ready with them', async () => {
    await phone('Wren')
    await page.locator('#entry').fill('/ask my cell is swollen')
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'Run', exact: true }).waitFor()
    expect(await page.locator('#entry-form [data-option="question"]').inputValue()).toBe('my cell is swollen')
    await page.getByRole('button', { name: 'Run', exact: true }).click()
    await until(page, `/swollen/i.test(document.querySelector('.card:last-of-type')?.textContent ?? '')`)
    await page.locator('#entry').fill('/asking whether it is real')
    await page.keyboard.press('Enter')
    await page.getByText('There is no command like').waitFor()
  })

  test('a helper answers a newcomer’s message in their own language, and posts it in the server’s', async () => {
    await phone('Wren')
    await page.getByPlaceholder('Write as Wren').fill('my cell got wet in the washing machine')
    await page.keyboard.press('Enter')
    await until(page, `/washing machine/.test(document.querySelector('.card:last-of-type')?.textContent ?? '')`)
    await become(page, 'Ilse')
    await card(page).locator('.actions > summary').click()
    await card(page).locator('[data-command="Find an answer"]').click()
    await until(page, `/Sie ist nass geworden/.test(document.querySelector('.card:last-of-type')?.textContent ?? '')`)
    expect(await wordsOf(page)).toContain(hers('caution.line'))
    expect(await tooWide(page)).toEqual([])
    const cards = await page.locator('.card').count()
    await card(page)
      .getByRole('button', { name: hers('ask.reply') })
      .click()
    await page.locator('.card').nth(cards).waitFor()
    expect(await wordsOf(page)).toMatch(/It got wet[\s\S]*Picked and posted by/)
    expect(await tooWide(page)).toEqual([])
    // The private message says so as soon as it hears that it is posted.
    await page.locator('.card').getByText(hers('ask.posting.posted')).waitFor()
  })
})
