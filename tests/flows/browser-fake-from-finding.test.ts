// A finding becomes a known fake in the page at phone width, in English and German, and whoever checks the next such cell is told of it.
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { type Say, sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  goTo,
  launchBrowser,
  openPage,
  press,
  runByClicks,
  tooWide,
  until,
} from './browser-hands.ts'
import { postPart } from './hands.ts'
import { whereChromiumIs } from './in-browser.ts'
import { openRoom, type TestRoom } from './open-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const english = sayIn('en-GB')
const spanish = sayIn('es-ES')
const hands = [
  { who: 'Hollis', say: english, family: 'f-finding1', name: 'Avocet 25', four: /Legs: Four/, title: 'Four legs' },
  { who: 'Maret', say: sayIn('de'), family: 'f-finding2', name: 'Knutt 25', four: /Stege: Vier/, title: 'Vier Beine' },
]

whereChromiumIs('a finding in the browser', () => {
  let room: TestRoom
  let browser: Browser
  let page: Page
  beforeAll(async () => {
    room = await openRoom()
    const settings = await room.services.servers.load(server)
    await room.services.servers.save({ ...settings, revision: 1, outcomes: true, reportsChannel: demoReportsChannel })
    browser = await launchBrowser()
  }, 240_000)
  afterEach(() => page?.context().close())
  afterAll(async () => {
    await browser?.close()
    await room?.close()
  })

  /** A finding about checks of the family that failed with four legs, and the button under its post. */
  async function found(say: Say, family: string): Promise<void> {
    const pattern = {
      ...{ family, items: ['answer:legs=four', 'bought:marketplace'] as const },
      ...{ recent: 10, recentOf: 30, earlier: 0, earlierOf: 50, growth: 3 },
    }
    const finding = { key: family, family, week: '2026-W45', parts: [{ is: 'pattern' as const, pattern }] }
    const id = family.slice(2)
    await room.services.trends.findings.add(server, [finding], () => id)
    const custom_id = encodeTrends({ is: 'finding', id, does: 'fake' })
    await postPart(room.standIn, { type: 2, style: 2, label: say('finding.fake'), custom_id }, demoReportsChannel)
  }

  test.each(hands)(
    '$who makes it one of $name, Tomas agrees, and Wren is told',
    async ({ who, say, family, name, four, title }) => {
      await putInForce(room, server, builtFacts(room, family, name))
      room.services.families.renew(server)
      await found(say, family)
      page = await openPage(browser, room.standIn.pageUrl, { width: 390, height: 844 })
      const sheet = page.getByRole('dialog')
      const send = () => sheet.getByRole('button', { name: 'Send', exact: true }).click()
      await become(page, who)
      await goTo(page, demoReportsChannel)
      await page
        .getByRole('button', { name: say('finding.fake') })
        .last()
        .click()
      // What was found stands in the form already.
      expect(await sheet.getByLabel(four).isChecked()).toBe(true)
      await sheet.getByRole('textbox').nth(0).fill(title)
      await sheet.getByRole('textbox').nth(1).fill('The contact stands on four legs.')
      expect(await changing(page, send)).toContain(title)
      expect(await tooWide(page)).toEqual([])
      await press(page, say('families.button.page'))
      await press(page, say('families.button.try'))
      await card(page)
        .getByRole('button', { name: say('families.button.ask') })
        .click()
      await sheet.getByRole('textbox').first().fill('Seen ten times')
      await changing(page, send)

      await become(page, 'Tomas')
      await goTo(page, { label: 'workbench' })
      await runByClicks(page, 'family list')
      const waits = await press(page, spanish('families.button.waits', { name }))
      expect(waits).toContain(spanish('families.diff.fake-new', { title }))
      await press(page, spanish('families.button.agree'))

      await become(page, 'Wren')
      await goTo(page, { label: 'workbench' })
      await runByClicks(page, 'family list')
      const lists = card(page).locator('.menu').first()
      await lists.locator('summary').click()
      await changing(page, () => lists.locator('.choice', { hasText: name }).first().click())
      const cards = await page.locator('.card').count()
      await card(page)
        .getByRole('button', { name: english('families.button.check') })
        .click()
      await page.locator('.card').nth(cards).waitFor()
      await until(page, `!document.querySelector('.card:last-of-type .waiting')`)
      let words = await press(page, english('beginning.quick'))
      for (let i = 0; i < 20 && !/Look again/.test(words); i++)
        words = await press(
          page,
          /How many legs hold up/.test(words)
            ? /Four/
            : /burning, smoking/.test(words)
              ? /None of these/
              : /^Can.t tell/,
        )
      words = await press(page, /Four/)
      expect(words).toMatch(/^Ruled out/m)
      expect(words).toMatch(new RegExp(`a fake that has been seen here since [^:]*\\d{4} \\(W\\d\\d\\): ${title}`))
      expect(words).toContain(english('caution.line'))
      expect(await tooWide(page)).toEqual([])
    },
    200_000,
  )
})
