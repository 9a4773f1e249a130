// The page in a real browser: a person runs a command, presses, chooses, fills in a form, and comes back after a reload.
import { existsSync } from 'node:fs'
import { type Browser, chromium, type Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { goTo, openHead } from '../flows/browser-hands.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startShowBot } from './show-bot.ts'
import type { TinyBot } from './tiny-bot.ts'

const browserPath = '/usr/bin/chromium'
const there = existsSync(browserPath)
if (!there) console.warn(`SKIPPED: the page's browser tests, because ${browserPath} is missing.`)

describe.skipIf(!there)('the page', () => {
  let standIn: StandIn
  let bot: TinyBot
  let browser: Browser
  let page: Page
  const wrong: string[] = []
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: browserPath,
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    })
  })
  afterAll(() => browser?.close())
  beforeEach(async () => {
    standIn = await openStandIn({ scenario: hobbyServer, patience: { deferred: 2000 } })
    bot = await startShowBot(standIn)
    page = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage()
    page.setDefaultTimeout(60_000)
    page.on('pageerror', error => wrong.push(String(error)))
    page.on('console', line => {
      if (line.type() === 'error') wrong.push(line.text())
    })
    await page.goto(standIn.pageUrl)
    await page.waitForSelector('body[data-ready]')
  })
  afterEach(async () => {
    await page.context().close()
    await bot.stop()
    await standIn.close()
    expect(wrong.splice(0)).toEqual([])
  })

  async function runLook(): Promise<void> {
    await page.fill('#entry', '/look')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.fill('[data-option="kind"]', 'head')
    await page.locator('.suggestions [data-value="Head torch"]').click()
    await page.getByRole('button', { name: 'Run' }).click()
    await page.locator('#sheet').getByText('Looking at: Head torch').waitFor()
  }

  test('a command by keyboard and autocomplete gives a private card with a picture that has words', async () => {
    await runLook()
    const card = page.locator('[data-kind="private"]')
    await expect.poll(() => card.getAttribute('aria-label')).toContain('only Wren sees this')
    const image = card.getByAltText('A drawn torch battery, lying on its side')
    await expect
      .poll(() => image.evaluate(node => (node as unknown as { naturalWidth: number }).naturalWidth))
      .toBe(640)
    await openHead(page)
    await page.getByRole('radio', { name: 'Ilse' }).check({ force: true })
    await page.getByRole('heading', { name: 'What Ilse sees in bench' }).waitFor()
    expect(await page.locator('#sheet').getByText('Looking at').count()).toBe(0)
  })

  test('pressing a button and choosing from a menu change the card, and the focus stays on it', async () => {
    await runLook()
    await page.locator('[data-custom-id="beam"]').click()
    await page.locator('#sheet').getByText('· beam is narrow').waitFor()
    expect(await page.evaluate('document.activeElement.dataset.customId')).toBe('beam')
    await page.locator('.menu[data-custom-id="colour"] summary').click()
    await page.locator('.menu [data-value="purple"]').click()
    await page.locator('#sheet').getByText('· beam is purple').waitFor()
  })

  test('a form says what is missing, takes files, and its answer is a message for everyone', async () => {
    await runLook()
    await page.locator('[data-custom-id="form"]').click()
    const form = page.getByRole('dialog')
    await form.getByRole('button', { name: 'Send', exact: true }).click()
    await form.getByText('must be filled in').waitFor()
    await form.getByLabel('In your words').fill('<b>green</b>')
    await form.getByLabel('Raised').check()
    await form.getByLabel('A name').check()
    await form.getByLabel('A photo').setInputFiles([{ name: 'p.png', mimeType: 'image/png', buffer: Buffer.from('x') }])
    await form.getByRole('button', { name: 'Send', exact: true }).click()
    const card = page.locator('[data-kind="bot"]')
    await card.getByText('wrote: <b>green</b> (raised, 1 photos)').waitFor()
    expect(standIn.messages(ids.bench).at(-1)?.content).toContain('1 photos')
  })

  test('who you are, where you are and what you had begun to write survive a reload', async () => {
    await openHead(page)
    await page.getByRole('radio', { name: 'Tomas' }).check({ force: true })
    await page.getByRole('heading', { name: 'What Tomas sees in bench' }).waitFor()
    await goTo(page, { label: 'moderators' })
    await page.getByRole('heading', { name: 'What Tomas sees in moderators' }).waitFor()
    await page.fill('#entry', 'half a thou')
    await page.reload()
    await page.getByRole('heading', { name: 'What Tomas sees in moderators' }).waitFor()
    expect(await page.inputValue('#entry')).toBe('half a thou')
  })

  test('a bot that is refused or silent is reported in plain words', async () => {
    await page.fill('#entry', '/torch wrong')
    await page.keyboard.press('Enter')
    await page.locator('.notice[data-kind="complaint"]').getByText('Must be 2000 or fewer').waitFor()
    await page.locator('.notice[data-kind="trouble"]').getByText('Discord would not accept the answer').waitFor()
    await bot.stop()
    await page.getByText('Wren · bench · not connected').waitFor()
  })

  test('what others do appears by itself, and nothing in it becomes markup', async () => {
    standIn.say('Ilse', ids.bench, '<img src=x onerror=alert(1)> **loud** [go](javascript:alert(1))')
    const card = page.locator('[data-kind="person"]')
    await card.getByText('<img src=x').waitFor()
    expect(await card.locator('strong', { hasText: 'loud' }).count()).toBe(1)
    expect(await card.locator('img, a').count()).toBe(0)
    await expect.poll(() => page.locator('#announce').textContent()).toContain('Ilse')
  })

  test('a message command is used from the card', async () => {
    standIn.say('Ilse', ids.bench, 'is it real?')
    await page.locator('[data-kind="person"] .actions summary').click()
    await page.getByRole('button', { name: 'Ask about this' }).click()
    await page.locator('#sheet').getByText('You asked about: “is it real?”').waitFor()
  })
})
