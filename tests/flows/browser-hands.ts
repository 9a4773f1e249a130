// Hands in a real browser: the practice room as `npm start` opens it, and a person who only clicks or only uses keys.
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium, type Locator, type Page } from 'playwright-core'

const entry = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))

export const chromiumPath = '/usr/bin/chromium'
export const chromiumThere = existsSync(chromiumPath)

export const launchBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: chromiumPath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  })

export type OpenPractice = { readonly pageUrl: string; stop(): Promise<number | null> }

/** The practice room as a newcomer to the project opens it: `npm start` without a token, on any free port. */
export async function startPractice(more: Readonly<Record<string, string>> = {}): Promise<OpenPractice> {
  // A folder of somebody else's is theirs to take away.
  const given = more['CELLWARY_DATA']
  const data = given ?? (await mkdtemp(join(tmpdir(), 'cellwary-browser-')))
  const { DISCORD_TOKEN: _, DISCORD_TOKEN_FILE: __, DATABASE_URL: ___, ...inherited } = process.env
  const child: ChildProcess = spawn(process.execPath, [entry], {
    env: { ...inherited, ...more, CELLWARY_DATA: data, CELLWARY_PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const gone = once(child, 'exit') as Promise<[number | null]>
  const said = (async () => {
    if (child.stdout)
      for await (const line of createInterface(child.stdout)) {
        const url = /http:\/\/127\.0\.0\.1:\d+\S*/.exec(line)?.[0]
        if (url) return url
      }
    throw new Error('the practice room stopped before it said where it is')
  })()
  return {
    pageUrl: await said,
    async stop() {
      child.kill('SIGTERM')
      const [code] = await gone
      if (given === undefined) await rm(data, { recursive: true, force: true })
      return code
    },
  }
}

/** How long something may take before it counts as never coming, in milliseconds; a loaded machine is slow. */
const patience = 60_000

export type Look = { readonly width: number; readonly height: number; readonly dark?: boolean }

/** The page in a window of its own, with an empty memory, once it has heard from the room. */
export async function openPage(browser: Browser, pageUrl: string, look: Look): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: look.width, height: look.height },
    colorScheme: look.dark ? 'dark' : 'light',
  })
  const page = await context.newPage()
  page.setDefaultTimeout(patience)
  await page.goto(pageUrl)
  await page.waitForSelector('body[data-ready]')
  return page
}

/** The newest card on the sheet. */
export const card = (page: Page): Locator => page.locator('.card').last()

// Scripts for the page are strings: the tests are checked without the DOM's types, and the page allows no eval.
const newestWords = `[...([...document.querySelectorAll('.card')].at(-1)?.querySelectorAll('.words') ?? [])]
  .map(one => one.textContent).join('\\n')`

/** The words of the newest card, without its buttons. */
export const wordsOf = (page: Page): Promise<string> => page.evaluate(newestWords)

/** Waits until this expression holds in the page, looked at once a frame. */
export const until = (page: Page, expression: string): Promise<void> =>
  page.evaluate(`new Promise((resolve, reject) => {
    const end = Date.now() + ${patience}
    const look = () => ${expression} ? resolve()
      : Date.now() > end ? reject(new Error(${JSON.stringify(`never so: ${expression}`)})) : requestAnimationFrame(look)
    look()
  })`)

/** Does it and waits until the newest card says something else; gives back what it says then. */
export async function changing(page: Page, doing: () => Promise<unknown>): Promise<string> {
  const before = await wordsOf(page)
  await doing()
  await until(page, `${newestWords} !== ${JSON.stringify(before)}`)
  return wordsOf(page)
}

/** Opens the list of commands and runs this one as it stands, all by clicks. */
export async function runByClicks(page: Page, path: string): Promise<void> {
  const cards = await page.locator('.card').count()
  await page.locator('.commands > summary').click()
  await page.locator(`#entry-form [data-command="${path}"]`).click()
  await page.locator('.card').nth(cards).waitFor()
}

/** What takes nothing to be filled in has run already. */
async function runWhatIsShown(page: Page): Promise<void> {
  const run = page.getByRole('button', { name: 'Run', exact: true })
  if (await run.isVisible()) await run.click()
}

/** Shows a command ready to be filled in, or runs what takes nothing to be filled in. */
async function showByClicks(page: Page, path: string): Promise<void> {
  await page.locator('.commands > summary').click()
  const fill = page.locator(`#entry-form [data-fill="${path}"]`)
  await ((await fill.count()) > 0 ? fill : page.locator(`#entry-form [data-command="${path}"]`)).click()
}

/** What is filled into a command: text, a choice by its words, or a file by its path. */
export type Filled = Readonly<Record<string, string | { readonly file: string }>>

/** Opens a command from the list, fills it in and runs it; resolves once its answer is there and finished. */
export async function fillAndRun(page: Page, path: string, filled: Filled): Promise<string> {
  const cards = await page.locator('.card').count()
  await showByClicks(page, path)
  for (const [name, value] of Object.entries(filled)) {
    const field = page.locator(`#entry-form [data-option="${name}"]`)
    if (!(await field.isVisible())) await page.locator('#entry-form .fields details > summary').click()
    if (typeof value !== 'string') await field.setInputFiles(value.file)
    else if ((await field.and(page.locator('select')).count()) > 0) await field.selectOption({ label: value })
    else await field.fill(value)
  }
  await runWhatIsShown(page)
  await page.locator('.card').nth(cards).waitFor()
  await until(page, `${newestWords}.trim() !== '' && !document.querySelector('.card:last-of-type .waiting')`)
  return wordsOf(page)
}

/** Presses a button of the newest card by what stands on it. */
export const press = (page: Page, label: RegExp | string): Promise<string> =>
  changing(page, () => card(page).getByRole('button', { name: label }).first().click())

/** Opens the first menu of the newest card and chooses the line that holds `label`. */
export const choose = (page: Page, label: string | RegExp): Promise<string> =>
  changing(page, async () => {
    const menu = card(page).locator('.menu').first()
    await menu.locator('summary').click()
    await menu.locator('.choice', { hasText: label }).first().click()
  })

/** Chooses the latest answer to be given again, out of the list of answers. */
export async function correctLast(page: Page): Promise<string> {
  await press(page, 'Change an answer')
  return choose(page, /./)
}

/** Types a reading into the form that the newest card opens with this button, and sends it. */
export async function sendReading(page: Page, typed: string, opens = 'Type in the reading'): Promise<string> {
  await card(page).getByRole('button', { name: opens }).click()
  const form = page.getByRole('dialog')
  await form.getByRole('textbox').first().fill(typed)
  return changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
}

/** Presses "Can't tell" until the newest card says `wanted`. */
export async function unsureUntilShown(page: Page, wanted: RegExp): Promise<string> {
  let words = await wordsOf(page)
  for (let i = 0; i < 80 && !wanted.test(words); i++) words = await press(page, /^Can.t tell/)
  if (!wanted.test(words)) throw new Error(`never came to ${wanted}; the last card says: ${words}`)
  return words
}

/** Opens the head where it is folded into one bar, as on a phone. */
export async function openHead(page: Page): Promise<void> {
  const opener = page.locator('#head-open[aria-expanded="false"]')
  if (await opener.isVisible()) await opener.click()
}

/** Chooses a place of a server, and waits until its sheet is there. */
export async function goTo(page: Page, place: string | { readonly label: string }): Promise<void> {
  await openHead(page)
  await page.locator('#place').selectOption(place)
  const chosen = String(await page.locator('#place option:checked').textContent())
  const name = chosen.replace(/^— | · new$| \(closed\)/g, '')
  await until(page, `document.getElementById('sheet-title').textContent.includes(${JSON.stringify(` in ${name}`)})`)
}

export const become = async (page: Page, name: string): Promise<void> => {
  await openHead(page)
  await page.locator(`[data-person="${name}"]`).click()
  await page.getByRole('heading', { name: `What ${name} sees` }).waitFor()
}

const findTooWide = `(() => {
  const { scrollWidth, clientWidth } = document.documentElement
  const found = scrollWidth > clientWidth ? ['the page: ' + scrollWidth + ' > ' + clientWidth] : []
  for (const one of document.querySelectorAll('body *')) {
    const { left, right, width } = one.getBoundingClientRect()
    if (width === 0 || (left >= -0.5 && right <= clientWidth + 0.5)) continue
    if (one.closest('.tabs, pre, .unseen, .skip, select')) continue
    found.push(one.tagName + '.' + one.className + ': ' + Math.round(left) + ' to ' + Math.round(right))
  }
  return found
})()`

/** What reaches over the sides of the window; lists that scroll sideways by themselves may. */
export const tooWide = (page: Page): Promise<string[]> => page.evaluate(findTooWide)
