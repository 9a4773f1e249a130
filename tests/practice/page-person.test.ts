// The page in a real browser explains itself: a rehearsal, whom one is and where, in which language, on which servers; its light tells the truth.
import { existsSync } from 'node:fs'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { goTo, openHead, tooWide } from '../flows/browser-hands.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const browserPath = '/usr/bin/chromium'
const there = existsSync(browserPath)
if (!there) console.warn(`SKIPPED: what the page says of itself, because ${browserPath} is missing.`)

const harbour = { id: '900000000000000500', channel: '900000000000000501' }
const scenario = {
  ...hobbyServer,
  servers: [
    {
      id: harbour.id,
      name: 'Harbour',
      locale: 'en-GB',
      roles: [],
      channels: [{ id: harbour.channel, name: 'slipway', kind: 'text' as const }],
      members: { [ids.tomas]: [] },
      install: 'bot' as const,
    },
  ],
}

describe.skipIf(!there).each([360, 390, 1200])('the page at %i pixels', width => {
  let standIn: StandIn
  let bot: TinyBot
  let browser: Browser
  let page: Page
  let heard: string | undefined
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath, args: ['--no-sandbox', '--disable-gpu'] })
  })
  afterAll(() => browser?.close())
  beforeEach(async () => {
    standIn = await openStandIn({ scenario })
    const commands = [
      { name: 'hello', description: 'x' },
      { name: 'reports', description: 'x', default_member_permissions: String(1n << 5n) },
    ]
    bot = await startTinyBot(standIn, commands, async interaction => {
      heard = interaction.locale
      if (interaction.isRepliable()) await interaction.reply({ content: `in ${interaction.locale}`, flags: 64 })
    })
    page = await (await browser.newContext({ viewport: { width, height: 800 } })).newPage()
    page.setDefaultTimeout(60_000)
    await page.goto(standIn.pageUrl)
    await page.waitForSelector('body[data-ready]')
  })
  afterEach(async () => {
    await page.context().close()
    await bot.stop()
    await standIn.close()
  })
  const become = async (name: string) => {
    await openHead(page)
    await page.locator(`[data-person="${name}"]`).click()
    await page.getByRole('heading', { name: `What ${name} sees` }).waitFor()
  }

  test('says that it is a rehearsal, whom one is, where, and for whom the weather is', async () => {
    const shown = (words: string) => page.getByText(words).isVisible()
    expect(await shown('This is a rehearsal')).toBe(true)
    expect(await shown('You are Wren (newcomer). You read American English.')).toBe(true)
    expect(await shown('What Wren sees in bench on Torch Makers')).toBe(true)
    expect(await tooWide(page)).toEqual([])
    await openHead(page)
    await page.getByRole('button', { name: 'About Wren' }).click()
    expect(await tooWide(page)).toEqual([])
    await page.getByRole('button', { name: 'For testers' }).click()
    expect(await tooWide(page)).toEqual([])
    expect(await shown('For testers: each of these makes Discord behave badly on purpose')).toBe(true)
  })

  test('another language is what the bot hears from then on', async () => {
    await openHead(page)
    await page.getByRole('button', { name: 'About Wren' }).click()
    await page.getByLabel('Language that Wren reads').selectOption('de')
    await page.getByText('You read Deutsch.').waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: '/hello' }).click()
    await page.locator('#sheet').getByText('in de').waitFor()
    expect(heard).toBe('de')
  })

  test('one server is left, another is joined, and the way back is open', async () => {
    await openHead(page)
    await page.getByRole('button', { name: 'About Wren' }).click()
    await page.getByRole('button', { name: 'Join Harbour' }).click()
    await goTo(page, { label: 'slipway' })
    await page.getByRole('heading', { name: 'What Wren sees in slipway on Harbour' }).waitFor()
    await openHead(page)
    await page.getByRole('button', { name: 'Leave Harbour' }).click()
    // Whoever stands in a place that is gone for them is somewhere else at once.
    await page.getByRole('heading', { name: 'What Wren sees in bench on Torch Makers' }).waitFor()
    await page.getByRole('button', { name: 'Leave Torch Makers' }).click()
    await page.getByRole('heading', { name: 'What Wren sees in the conversation with Tiny Bot' }).waitFor()
    await page.getByRole('button', { name: 'Join Torch Makers' }).click()
    await goTo(page, { label: 'bench' })
    await page.getByRole('heading', { name: 'What Wren sees in bench on Torch Makers' }).waitFor()
  })

  test('newcomers are not offered what is for moderators', async () => {
    expect(await page.locator('[data-command="reports"]').count()).toBe(0)
    await become('Tomas')
    await page.locator('#empty summary').click()
    await page.getByRole('button', { name: '/reports' }).waitFor()
  })

  test('the light is on only while the bot is there, and off when the room itself is gone', async () => {
    const light = page.locator('#bot-state')
    // The bar of a small screen carries the same light while it is folded.
    const bar = page.locator('#head-open')
    const lit = () => light.getAttribute('data-connected')
    expect([await lit(), await light.textContent()]).toEqual(['true', 'Tiny Bot is connected'])
    standIn.faults.dropSocket(4000)
    await expect.poll(() => standIn.connections()).toBe(1)
    await bot.stop()
    await expect.poll(() => light.textContent()).toBe('Tiny Bot is not connected')
    expect(await lit()).toBe('false')
    expect([await bar.getAttribute('data-connected'), await bar.textContent()]).toEqual([
      'false',
      'You: Wren · bench · not connectedChange',
    ])
    await openHead(page)
    expect(await light.isVisible()).toBe(true)
    bot = await startTinyBot(standIn, [{ name: 'hello', description: 'x' }], async () => {})
    await page.getByText('Tiny Bot is connected').waitFor()
    expect(await lit()).toBe('true')
    await standIn.close()
    await page.getByText('The practice room does not answer').waitFor()
    expect(await lit()).toBe('false')
  })
})
