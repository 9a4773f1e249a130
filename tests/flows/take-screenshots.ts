// Takes pictures of a check in the practice room: node tests/flows/take-screenshots.ts FOLDER [LOOK], where LOOK "readme" takes the README's three.
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import sharp from 'sharp'
import {
  become,
  card,
  choose,
  chromiumPath,
  chromiumThere,
  launchBrowser,
  openHead,
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
  { name: 'phone-small', width: 360, height: 640 },
] as const

/** A phone's width, and as much height as shows a whole screen of the bot. */
const readmeLook = { width: 360, height: 1000 }

const [, , folder, only] = process.argv
if (folder === undefined || !chromiumThere) {
  console.error(folder === undefined ? 'Say into which folder the pictures go.' : `${chromiumPath} is missing.`)
  process.exit(2)
}
await mkdir(folder, { recursive: true })
const browser = await launchBrowser()
try {
  // Every walk begins in an empty room.
  for (const look of looks.filter(one => only === undefined || one.name === only)) {
    const practice = await startPractice()
    await walk(browser, practice.pageUrl, look).finally(practice.stop)
  }
  if (only === undefined || only === 'readme') {
    const practice = await startPractice()
    await forReadme(browser, practice.pageUrl).finally(practice.stop)
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
    await shootAs(page, `${look.name}-${String(count).padStart(2, '0')}-${name}`)
  }
  await become(page, 'Wren')
  await shoot('beginning')
  await page.locator('.commands > summary').click()
  await shoot('commands')
  await page.locator('#entry-form [data-fill="check start"]').click()
  await shoot('command')
  await page.getByRole('button', { name: 'Back', exact: true }).click()
  await runByClicks(page, 'check start')
  await shoot('first-screen')
  await press(page, /Thorough/)
  await shoot('question')
  await unsureTo(page, /What capacity does it claim/, shoot)
  await card(page).getByRole('button', { name: 'Type in the reading' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Send', exact: true }).click()
  await page.getByText('must be filled in').waitFor()
  await shoot('form')
  await page.getByRole('dialog').getByRole('button', { name: 'Close without sending' }).click()
  await sendReading(page, '9900 mAh')
  await unsureTo(page, /Which size is the cell/, shoot)
  await press(page, /18650/)
  await shoot('second-look')
  await sendReading(page, '9900 mAh', 'Read it once more and type it in')
  await shoot('second-look-of-two')
  await press(page, /^Still .*18650/)
  await press(page, /INR, ICR/)
  await shoot('decided')
  await press(page, 'End now with this result')
  await shoot('verdict')
  await scrollOn(page)
  await shoot('verdict-further')
  await page.evaluate('document.getElementById("sheet-frame").scrollTop = 1e6')
  await shoot('verdict-end')
  for (const label of ['Details', 'Next page', 'Next page']) {
    await press(page, label)
    await shoot('details')
  }
  await press(page, 'Back to the result')
  await press(page, 'Change an answer')
  await card(page).locator('.menu > summary').click()
  await shoot('answers')
  await card(page).locator('.menu > summary').click()
  await press(page, 'Back')
  await become(page, 'Tomas')
  await shoot('somebody-else')
  await openHead(page)
  await page.locator('#weather-open').click()
  await shoot('weather')
  await page.locator('#weather-open').click()
  await become(page, 'Wren')
  await press(page, 'Close and delete the answers')
  await shoot('closed')
  await page.context().close()
}

/** A check of an invented family that one look at the square code rules out: a question, the verdict, and its details. */
async function forReadme(browser: Browser, pageUrl: string): Promise<void> {
  const page = await openPage(browser, pageUrl, readmeLook)
  await become(page, 'Wren')
  await runByClicks(page, 'check start')
  await choose(page, 'Brindlewick Rook')
  await press(page, /Thorough/)
  let words = await wordsOf(page)
  for (let i = 0; i < 60 && !/small square code of dots/.test(words); i++) {
    if (/How many legs hold up/.test(words)) await shootAs(page, 'question')
    const asks = /right now|swollen|liquid|smell|scorched|rust|wet|get hot|crushed|packed|weld marks|damaged|ring/.test(
      words,
    )
    words = await press(page, asks ? /^A · / : /^(A · Three|Can.t tell)/)
  }
  await press(page, /^B · On the metal can/)
  await press(page, /^Still B/)
  await press(page, 'End now with this result')
  await shootAs(page, 'verdict')
  await press(page, 'Details')
  await shootAs(page, 'verdict-further')
  await page.context().close()
}

/** Once the pictures in the page are there and nothing is in the middle of being drawn. */
async function shootAs(page: Page, name: string): Promise<void> {
  await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
  const taken = await page.screenshot({ animations: 'disabled', caret: 'hide' })
  // Few colours are enough for screens, and make small files.
  await sharp(taken)
    .png({ palette: true, colours: 96, effort: 10 })
    .toFile(join(folder ?? '', `${name}.png`))
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
