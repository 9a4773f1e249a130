// Two moderators in the page, on a phone and at a desk, in English and German: a wave with three tells is one finding, decided, taken back, and next week the same post.
import type { Browser, Locator, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { sayWeek } from '../../src/words/dates.ts'
import { type Say, sayIn } from '../../src/words/say.ts'
import { openTrendNames } from '../../src/words/trend-names.ts'
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
  wordsOf,
} from './browser-hands.ts'
import { caution } from './hands.ts'
import { whereChromiumIs } from './in-browser.ts'
import { openRoom, type TestRoom } from './open-room.ts'
import { beginWave, tells, type Wave, waveFamily } from './wave.ts'

/** A folder to put pictures of the screens into, to look at them. */
const shots = process.env['CELLWARY_SHOTS']
const server = demoServer.server.id
const week = 7 * 24 * 3600_000
const hollis = { name: 'Hollis', locale: 'en-GB' }
const maret = { name: 'Maret', locale: 'de' }
const sentences = ['new', 'sure', 'many', 'noise', 'next'] as const

whereChromiumIs('the desk in the browser', () => {
  let room: TestRoom
  let wave: Wave
  let browser: Browser
  let page: Page
  /** How much later than now the room is, in ms. */
  let later = 0
  const look = () => lookForWork({ ...room.job, services: room.services })
  beforeAll(async () => {
    room = await openRoom(services => ({ ...services, now: () => services.now() + later }))
    wave = await beginWave(room)
    await look()
    browser = await launchBrowser()
  }, 240_000)
  afterEach(() => page.context().close())
  afterAll(async () => {
    await browser?.close()
    await room?.close()
  })

  const shoot = async (name: string) => {
    await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
    if (shots) {
      const { width = 0, height = 0 } = page.viewportSize() ?? {}
      await page.setViewportSize({ width, height: 2600 })
      await page.screenshot({ path: `${shots}/${name}.png`, animations: 'disabled' })
      await page.setViewportSize({ width, height })
    }
    expect(await tooWide(page)).toEqual([])
  }
  const reports = async (public_: Say) => {
    await goTo(page, demoReportsChannel)
    const posts = page.locator('.card', { hasText: public_('finding.new.label', { quiet: 'no' }) })
    await posts.first().waitFor()
    return posts
  }
  /** Presses a button that opens a form, fills it in and sends it. */
  const fill = async (label: string, doing: (form: Locator) => Promise<unknown>) => {
    await card(page).getByRole('button', { name: label }).first().click()
    const form = page.getByRole('dialog')
    await form.waitFor()
    await doing(form)
    return changing(page, () => form.locator('button[type="submit"], button.send').last().click())
  }
  const speak = async (language: string) => {
    const settings = await room.services.servers.load(server)
    await room.services.servers.save({ ...settings, language, revision: settings.revision + 1 })
  }
  const findings = () => room.services.trends.findings.of(server)

  test.each([
    { name: 'a phone', width: 390, height: 844, warner: hollis, other: maret, posted: 'en', turned: 'de' },
    { name: 'a desk', width: 1200, height: 900, warner: maret, other: hollis, posted: 'de', turned: 'en' },
  ])(
    'on $name: one finding; warned of, taken back, a known fake, back in the list; the next week changes the same post',
    async ({ name, width, height, warner, other, posted, turned }) => {
      const [public_, hers] = [sayIn(posted), sayIn(other.locale)]
      page = await openPage(browser, room.standIn.pageUrl, { width, height })
      await become(page, warner.name)
      expect(await (await reports(public_)).count()).toBe(1)
      expect(await findings()).toHaveLength(1)
      const post = await wordsOf(page)
      const names = openTrendNames(public_, room.services.programs, '2026-11-30')
      for (const tell of tells) expect(post).toContain(names.rule(waveFamily, tell).replace(/\.(?=.$)/u, ''))
      for (const label of sentences) expect(post).toContain(public_(`finding.${label}.label`, { quiet: 'no' }))
      expect(post).toContain(public_('finding.new.together', { all: 'yes' }))
      await shoot(`${name}-post-${posted}`)

      const warned = await fill(public_('finding.warn'), form =>
        form.locator('.choice', { hasText: 'cell-questions' }).click(),
      )
      expect(warned).toContain(public_('finding.state.warned'))
      await shoot(`${name}-warned-${posted}`)
      const back = await fill(public_('finding.undo.warned'), form => form.getByRole('textbox').fill('One old lot.'))
      expect(back).toContain(public_('finding.state.open'))
      expect(back).toContain('One old lot.')

      await become(page, other.name)
      await goTo(page, { label: 'workbench' })
      await page.getByRole('heading', { name: `What ${other.name} sees in workbench` }).waitFor()
      await runByClicks(page, 'trends')
      await press(page, hers('trends.view.findings'))
      await shoot(`${name}-list-${other.locale}`)
      const looked = await press(page, hers('findings.look'))
      for (const label of sentences) expect(looked).toContain(hers(`finding.${label}.label`, { quiet: 'no' }))
      const fake = await press(page, hers('finding.fake'))
      expect(fake).toContain(hers('finding.state.known-fake'))
      await shoot(`${name}-fake-${other.locale}`)
      expect(await press(page, hers('finding.undo.known-fake'))).toContain(hers('finding.state.open'))
      expect(await press(page, hers('findings.back'))).toContain(hers('finding.state.open'))
      await shoot(`${name}-back-${other.locale}`)

      await become(page, 'Wren')
      await page.getByText(public_('warning.withdrawn.title')).first().waitFor()
      if (posted === 'en') expect(await wordsOf(page)).toMatch(caution)
      await shoot(`${name}-withdrawn-${posted}`)

      // The wave goes on for a week; the page is open while the post changes.
      const [before] = await findings()
      await become(page, warner.name)
      await reports(public_)
      await speak(turned)
      const next = await wave.next()
      later += week
      await look()
      const [after, ...others] = await findings()
      expect(others).toEqual([])
      expect(after).toMatchObject({ id: before?.id, post: before?.post, week: before?.week, seen: next, state: 'open' })
      const say = sayIn(turned)
      const ended = sayWeek(say, next)
      await until(page, `document.body.textContent.includes(${JSON.stringify(ended)})`)
      const posts = page.locator('.card', { hasText: say('finding.new.label', { quiet: 'no' }) })
      expect(await posts.count()).toBe(1)
      expect(await posts.textContent()).toContain(ended)
      // When it was first found stays so.
      expect(await posts.textContent()).toContain(sayWeek(say, before?.week ?? ''))
      await shoot(`${name}-next-${turned}`)
    },
  )
})
