// From a check started for a newcomer to a letter and buying advice, in the practice room's page, on a phone, by clicks alone.
import { writeFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import type { Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { type Say, sayIn } from '../../src/words/say.ts'
import { samplePhoto } from '../photos/sample-photos.ts'
import { become, card, changing, choose, fillAndRun, goTo, press, tooWide, until, wordsOf } from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'

/** The moderator of the practice room reads Spanish; what everybody sees is in the server's language. */
const his = sayIn('es-ES')
const server = sayIn('en-US')
const programs = openPrograms((await loadPacks(shippedRules)).packs.map(one => one.pack))
const today = new Date().toISOString().slice(0, 10)
/** Where to leave pictures of every screen, for people to look over. */
const shots = process.env['CELLWARY_SHOTS']

inBrowser('in other hands, in the browser', ({ open: openWindow }) => {
  let page: Page
  let folder: string
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'cellwary-photo-'))
    writeFileSync(join(folder, 'cell.jpg'), samplePhoto(1, 640, 320))
  }, 240_000)
  afterAll(async () => {
    await rm(folder, { recursive: true, force: true })
  })

  let shot = 0
  const look = async () => {
    expect(await tooWide(page)).toEqual([])
    if (shots) await page.screenshot({ path: join(shots, `${String(shot++).padStart(2, '0')}.png`), fullPage: true })
  }

  test.each([
    ['Wren', 'en-GB'],
    ['Ilse', 'de'],
  ])(
    '%s gets stuck, asks with a photograph, is helped, and ends with a letter and where to buy',
    async (name, locale) => {
      const theirs = sayIn(locale)
      page = await openWindow({ width: 360, height: 740 })
      await become(page, 'Tomas')
      await fillAndRun(page, 'check start', { for: name })
      await look()
      await become(page, name)
      await look()
      expect(await press(page, server('panel.take'))).toContain(theirs('beginning.text'))
      await look()
      await press(page, theirs('beginning.full'))
      await look()
      await answering(theirs, locale, 'ring')
      await look()
      await press(page, theirs('button.hands'))
      await look()
      await card(page)
        .getByRole('button', { name: theirs('hands.ask') })
        .click()
      const form = page.getByRole('dialog')
      await form.locator('textarea').fill('Is that ring torn?')
      await form.locator('input[type=file]').setInputFiles(join(folder, 'cell.jpg'))
      await look()
      await changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
      await look()
      expect(await wordsOf(page)).toContain(theirs('hands.asked'))

      await become(page, 'Tomas')
      await goTo(page, demoReportsChannel)
      await until(page, `document.querySelector('.card:last-of-type img')`)
      await look()
      await press(page, server('help-request.help'))
      await look()
      expect(await wordsOf(page)).toContain(his('help-request.care'))
      expect(await press(page, /^A · /)).toMatch(/Gracias/)
      await look()

      await become(page, name)
      expect(await wordsOf(page)).toMatch(/has answered your question/)
      await look()
      await press(page, server('word.go-on'))
      await look()
      const verdict = await answering(theirs, locale)
      expect(verdict).toContain(theirs('verdict.doubtful'))
      await look()
      expect(await press(page, theirs('button.details'))).toContain(theirs('part.why'))
      await look()
      expect(await press(page, theirs('details.close'))).toBe(verdict)
      await changing(page, () =>
        theCard(theirs('caution.failed'))
          .getByRole('button', { name: theirs('letter.write') })
          .click(),
      )
      expect(await wordsOf(page)).toContain(theirs('letter.greeting'))
      await look()
      await changing(page, () =>
        card(page)
          .getByRole('button', { name: theirs('buying.open.suspect') })
          .click(),
      )
      expect(await wordsOf(page)).toContain(theirs('caution.line'))
      await look()
      await press(page, theirs('buying.part.buy'))
      await look()
    },
    240_000,
  )

  /** A card by what stands on it. */
  const theCard = (words: string) => page.locator('.card', { hasText: words }).last()

  /** Answers what was seen of the welds, twice where it is asked twice, and cannot tell the rest, until this question or the verdict; the words there. */
  async function answering(theirs: Say, locale: string, until?: string): Promise<string> {
    const program = inLanguage(programs.programFor(null, today) as Program, locale)
    const seen = ['weld-marks', 'sold-as'].map(id => program.questions.get(id) as Question)
    const end = until === undefined ? theirs('caution.failed') : (program.questions.get(until)?.ask ?? '?')
    let words = await wordsOf(page)
    for (let i = 0; i < 80 && !words.includes(end); i++) {
      const asked = seen.find(one => words.includes(one.ask))
      const options = asked?.answer.kind === 'options' ? asked.answer.options : []
      const at = options.findIndex(one => ['spots', 'new-bare'].includes(one.id))
      const label = theirs('check.letter', { letter: String.fromCharCode(65 + at), label: options[at]?.label ?? '?' })
      // Asked a second time, the same answer has "Still" before it.
      words = await (asked ? answer(label) : press(page, theirs('check.unsure')))
    }
    expect(words).toContain(end)
    return words
  }

  /** By a button, or by the menu where there are too many for buttons. */
  const answer = async (label: string): Promise<string> =>
    (await card(page).locator('.menu').count()) > 0 ? choose(page, label) : press(page, label)
})
