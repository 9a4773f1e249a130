// The practice room in a made-up language, in a real browser: on what the bot says, reads out or offers, no word is plain English.
//
// The page around it stands in for Discord's client, which speaks its own languages: its words are left out of account.
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Key } from '../../src/words/catalogue.ts'
import { openPseudo, pseudoLocale } from '../../src/words/pseudo.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  launchBrowser,
  type OpenPractice,
  openPage,
  press,
  runByClicks,
  startPractice,
  tooWide,
} from './browser-hands.ts'
import { whereChromiumIs } from './in-browser.ts'
import { plainEnglishIn } from './plain-english.ts'

/** What the newest card of the bot says: its words, what stands on its buttons and in its menus, and the alt texts of its pictures. */
const shown = `(() => {
  const card = [...document.querySelectorAll('.card')].at(-1)
  const texts = [...card.querySelectorAll('.words, .action:not(.menu *), .menu .choice, .menu > summary')].map(one => one.textContent)
  return [...texts, ...[...card.querySelectorAll('img')].map(one => one.alt)]
})()`
/** Names, packs and sources, which are the same in every language. */
const known = [
  /(any-cell|paper-harbour) [\d.]+/g,
  /(Brindlewick|Tarnhollow|Rook|Heron|Bittern|Brindle|Amber|Slate|Larkmoor|Ashgate|Curlew|Sandpiper|Plover|Dunlin)/g,
  'only Wren sees this',
  // Channels and roles, as their server calls them.
  /(warden-reports|cell-questions|workbench|help-services|Wardens|Lamp-keepers)/g,
]

whereChromiumIs('the pseudo-language in the browser, at the width of a phone', () => {
  let practice: OpenPractice
  let browser: Browser
  let page: Page
  beforeAll(async () => {
    openPseudo()
    practice = await startPractice({ CELLWARY_PSEUDO: 'on' })
    browser = await launchBrowser()
    page = await openPage(browser, practice.pageUrl, { width: 360, height: 740 })
  }, 240_000)
  afterAll(async () => {
    await browser?.close()
    expect(await practice?.stop()).toBe(0)
  })

  async function look(): Promise<void> {
    const texts = (await page.evaluate(shown)) as string[]
    expect(texts.some(one => one.includes('⟦'))).toBe(true)
    const found = texts.flatMap(one => plainEnglishIn(one, known).map(word => `${word} | in: ${one}`))
    expect(found).toEqual([])
    expect(await tooWide(page)).toEqual([])
  }
  const said = (key: Key) => sayIn(pseudoLocale)(key)

  test('a check from the first question to its verdict, a form and a choice on the way', async () => {
    await become(page, 'Wren')
    await runByClicks(page, 'check start')
    await look()
    await press(page, said('beginning.full'))
    let looked = 0
    for (let i = 0; i < 90; i++) {
      await look()
      const unsure = card(page)
        .getByRole('button', { name: said('check.unsure') })
        .or(card(page).getByRole('button', { name: said('check.unsure-printed') }))
      if ((await unsure.count()) === 0) break
      looked++
      const reading = card(page).getByRole('button', { name: said('check.measure') })
      if (i < 20 && (await reading.count()) > 0) {
        await reading.click()
        const form = page.getByRole('dialog')
        await form.getByRole('textbox').first().waitFor()
        const labels = await form.locator('label, .hint, h2').allTextContents()
        expect(labels.some(one => one.includes('⟦'))).toBe(true)
        expect(labels.flatMap(one => plainEnglishIn(one, known))).toEqual([])
        await page.keyboard.press('Escape')
        await form.waitFor({ state: 'hidden' })
      }
      await changing(page, () => unsure.click())
    }
    expect(looked).toBeGreaterThan(10)
    for (const key of ['button.details', 'details.on', 'details.on', 'details.close', 'button.change'] as const) {
      await press(page, said(key))
      await look()
    }
    await press(page, said('check.back'))
    await press(page, said('button.close'))
    await look()
  })

  test.each(['check list', 'check counting', 'privacy'])('/%s', async command => {
    await become(page, 'Wren')
    await runByClicks(page, command)
    await look()
  })

  test('/buying, part by part; the links are in their moderators’ own words', async () => {
    await become(page, 'Wren')
    await runByClicks(page, 'buying')
    await look()
    for (const key of ['buying.part.listing', 'buying.part.suspect', 'buying.later', 'buying.part.report'] as const) {
      await press(page, said(key))
      await look()
    }
  })

  test.each(['trends', 'check waiting', 'setup'])('/%s, for a moderator', async command => {
    await become(page, 'Tomas')
    await runByClicks(page, command)
    await look()
  })
})
