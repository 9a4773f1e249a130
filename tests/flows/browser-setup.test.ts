// A server set up in the practice room's page at phone width, by clicks alone, by two wardens with two languages.
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest'
import { demoForum, demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { parts } from '../../src/server/setup-part.ts'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  choose,
  goTo,
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
import { whereChromiumIs } from './in-browser.ts'

/** Where pictures of the screens are left to be looked at; nowhere when unset. */
const shots = process.env['CELLWARY_SHOTS']

whereChromiumIs('the set-up in the browser', () => {
  let practice: OpenPractice
  let browser: Browser
  let page: Page
  beforeAll(async () => {
    browser = await launchBrowser()
  }, 240_000)
  beforeEach(async () => {
    practice = await startPractice()
  }, 240_000)
  afterEach(async () => {
    await page.context().close()
    expect(await practice.stop()).toBe(0)
  })
  afterAll(() => browser?.close())

  test.each([
    ['Tomas', 'es-ES'],
    ['Maret', 'de'],
  ])(
    '%s goes through every part',
    async (name, locale) => {
      const say = sayIn(locale)
      const permission = say('permission.ViewChannel')
      let shot = 0
      const look = async () => {
        expect(await tooWide(page)).toEqual([])
        if (shots) await card(page).screenshot({ path: join(shots, `setup-${locale}-${++shot}.png`) })
      }
      page = await openPage(browser, practice.pageUrl, { width: 360, height: 740 })
      await become(page, name)
      // The invented past is there once something is told in the reports channel.
      await goTo(page, demoReportsChannel)
      await until(page, `document.querySelectorAll('.card').length > 0`)
      // More may be told there yet: the server is set up where nobody talks.
      await goTo(page, { label: 'workbench' })
      await page.getByRole('heading', { name: `What ${name} sees in workbench` }).waitFor()
      await runByClicks(page, 'setup')
      const overview = await wordsOf(page)
      for (const part of parts) expect(overview).toContain(say(`setup.part.${part}`))
      await look()
      const next = (part: (typeof parts)[number]) => press(page, say('setup.next', { part: say(`setup.part.${part}`) }))

      await press(page, say('setup.begin'))
      await look()
      expect(await choose(page, 'warden-notes')).toContain(permission)
      await look()
      expect(await choose(page, 'warden-reports')).toContain(say('setup.saved'))
      await next('review')
      expect(await press(page, say('setup.test'))).toContain(say('setup.tried', { channel: 'warden-reports' }))
      await look()

      await next('moderators')
      await look()
      await tick(['Wardens', 'Lamp-keepers'])
      expect(await wordsOf(page)).toContain('Lamp-keepers')

      await next('helpers')
      await look()

      await next('reminders')
      await look()

      await next('language')
      await choose(page, new Intl.DisplayNames([locale], { type: 'language' }).of('de') ?? '')
      await look()

      await next('recording')
      await look()
      await press(page, say('setup.outcomes.off'))
      expect(await wordsOf(page)).toContain(say('setup.stop.title'))
      await look()
      await press(page, say('setup.stop.yes'))
      await press(page, say('setup.outcomes.on'))

      await next('keeping')
      const sent = await sendWeeks('12', say('setup.ask-weeks'))
      expect(sent).toContain(say('setup.problem.weeks-out-of-range', { least: 26, most: 260 }))
      expect(await sendWeeks('60', say('setup.ask-weeks'))).toContain(say('setup.fewer.title', { weeks: 60 }))
      await look()
      expect(await press(page, say('setup.fewer.yes'))).toContain(say('setup.saved'))
      await look()

      await next('note')
      expect(await press(page, say('setup.note.on'))).toContain(say('setup.saved'))
      await look()

      await next('offers')
      await choose(page, 'help-services')
      await look()
      expect(await tick(['is this real?', 'solved'])).toContain(say('setup.saved'))
      await look()
      await press(page, say('setup.overview'))
      const done = await wordsOf(page)
      for (const set of ['warden-reports', 'Lamp-keepers', 'help-services', 'is this real?'])
        expect(done).toContain(set)
      await look()

      // What was changed is there, and the newest goes back by one press.
      expect(await press(page, say('history.open'))).toContain(say('history.title'))
      await look()
      expect(await press(page, say('history.undo'))).toContain(say('history.done'))
      await look()
      expect(await press(page, say('history.undo'))).toContain(say('history.done'))

      // A newcomer's post gets its offer, in the server's language, and the offer starts a check in theirs.
      await become(page, 'Wren')
      await goTo(page, demoForum)
      const form = page.locator('#entry-form')
      await form.getByLabel('Title').fill('Is my Rook real?')
      await form.getByLabel('What it says').fill('It came in a plain box.')
      await form.getByLabel('is this real?').check()
      expect(await tooWide(page)).toEqual([])
      if (shots) await page.screenshot({ path: join(shots, `post-${locale}.png`) })
      await form.getByRole('button', { name: 'Post' }).click()
      await page.getByText(sayIn('de')('offer.what')).first().waitFor()
      if (shots) await page.screenshot({ path: join(shots, `offer-${locale}.png`) })
      const cards = await page.locator('.card').count()
      await card(page)
        .getByRole('button', { name: sayIn('de')('offer.start') })
        .click()
      await page.locator('.card').nth(cards).waitFor()
      expect(await wordsOf(page)).toContain(sayIn('en-GB')('caution.line'))
      if (shots) await page.screenshot({ path: join(shots, `started-${locale}.png`) })
    },
    240_000,
  )

  /** Ticks these lines of the newest card's menu, or takes their ticks away, and sends the choice. */
  const tick = async (labels: readonly string[]) =>
    changing(page, async () => {
      await card(page).locator('.menu > summary').click()
      for (const label of labels) {
        const box = card(page).locator('.menu label.choice', { hasText: label }).locator('input')
        if (label === 'Wardens') await box.check()
        else await box.click()
      }
      await card(page).locator('.menu').getByRole('button').click()
    })

  const sendWeeks = async (weeks: string, label: string): Promise<string> => {
    await card(page).getByRole('button', { name: label }).click()
    const form = page.getByRole('dialog')
    await form.getByRole('textbox').first().fill(weeks)
    return changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
  }
})
