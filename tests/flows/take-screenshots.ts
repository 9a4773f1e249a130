// Takes pictures of a check in the practice room, for the README and for looking at it: node tests/flows/take-screenshots.ts FOLDER
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import {
  become,
  card,
  choose,
  chromiumPath,
  chromiumThere,
  launchBrowser,
  openPage,
  press,
  runByClicks,
  sendReading,
  startPractice,
  wordsOf,
} from './browser-hands.ts'

const looks = [
  { name: 'desk-light', width: 1200, height: 1000 },
  { name: 'desk-dark', width: 1200, height: 1000, dark: true },
  { name: 'phone-light', width: 360, height: 800 },
  { name: 'phone-dark', width: 360, height: 800, dark: true },
] as const

const folder = process.argv[2]
if (folder === undefined || !chromiumThere) {
  console.error(folder === undefined ? 'Say into which folder the pictures go.' : `${chromiumPath} is missing.`)
  process.exit(2)
}
await mkdir(folder, { recursive: true })
const browser = await launchBrowser()
try {
  for (const look of looks) {
    // Every walk begins in an empty room.
    const practice = await startPractice()
    await walk(browser, practice.pageUrl, look).finally(practice.stop)
  }
} finally {
  await browser.close()
}

/** One check from the empty page to a verdict, with a picture of every kind of screen. */
async function walk(browser: Browser, pageUrl: string, look: (typeof looks)[number]): Promise<void> {
  const page = await openPage(browser, pageUrl, look)
  let count = 0
  const shoot = async (name: string) => {
    count += 1
    const file = join(folder ?? '', `${look.name}-${String(count).padStart(2, '0')}-${name}.png`)
    // Pictures in the page are there, and nothing is in the middle of being drawn.
    await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
    await page.screenshot({ path: file, animations: 'disabled', caret: 'hide' })
  }
  await become(page, 'Wren')
  await shoot('beginning')
  await page.locator('.commands > summary').click()
  await shoot('commands')
  await page.locator('#entry-form [data-command="check start"]').click()
  await shoot('command')
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  await runByClicks(page, 'check start')
  await press(page, /Thorough/)
  await shoot('question')
  await unsureTo(page, /Which capacity does it claim/, shoot)
  await card(page).getByRole('button', { name: 'Type in the reading' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Send', exact: true }).click()
  await page.getByText('must be filled in').waitFor()
  await shoot('form')
  await page.getByRole('dialog').getByRole('button', { name: 'Close without sending' }).click()
  await sendReading(page, '9900 mAh')
  await unsureTo(page, /Which size is the cell/, shoot)
  await card(page).locator('.menu > summary').click()
  await shoot('menu')
  await card(page).locator('.menu > summary').click()
  await choose(page, '18650')
  await shoot('second-look')
  await choose(page, '18650')
  await press(page, 'Stop and show the result')
  await shoot('verdict')
  await scrollOn(page)
  await shoot('verdict-further')
  await page.evaluate('document.getElementById("sheet-frame").scrollTop = 1e6')
  await shoot('verdict-end')
  await become(page, 'Tomas')
  await shoot('somebody-else')
  await page.locator('#weather-open').click()
  await shoot('weather')
  await page.locator('#weather-open').click()
  await become(page, 'Wren')
  await press(page, 'Close this check')
  await shoot('closed')
  await page.context().close()
}

/** Answers "Can't tell" until the card says `wanted`; the first question with a picture is taken on the way. */
async function unsureTo(page: Page, wanted: RegExp, shoot: (name: string) => Promise<void>): Promise<void> {
  let pictured = false
  for (let i = 0; i < 80 && !wanted.test(await wordsOf(page)); i++) {
    if (!pictured && (await card(page).locator('img').count()) > 0) {
      pictured = true
      await shoot('pictured-question')
    }
    await press(page, /^Can.t tell/)
  }
}

async function scrollOn(page: Page): Promise<void> {
  await page.evaluate('(frame => frame.scrollBy(0, frame.clientHeight - 40))(document.getElementById("sheet-frame"))')
}
