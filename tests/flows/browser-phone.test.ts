// The page on a phone of 360 × 640: head and foot are slim, a question is seen whole with its answers, and it is few taps to a result.
import type { Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { sayIn } from '../../src/words/say.ts'
import {
  become,
  card,
  changing,
  goTo,
  openHead,
  press,
  runByClicks,
  sendReading,
  until,
  wordsOf,
} from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'

type Fold = {
  readonly ask: string
  readonly answers: number
  /** From the heading's upper edge to the caution's lower one, and the view they have. */
  readonly needs: number
  readonly has: number
  /** How far the caution is below the view; negative where it is in it. */
  readonly below: number
  readonly picture: number
  /** Something that must be read stands above the heading. */
  readonly loud: boolean
}

const measure = (unsure: string) => `(() => {
  const frame = document.getElementById('sheet-frame').getBoundingClientRect()
  const newest = [...document.querySelectorAll('.card')].at(-1)
  const heading = newest.querySelector('h3, h4, h5')
  const caution = [...newest.querySelectorAll('.words')].find(one => one.textContent.includes(${JSON.stringify(unsure)}))
  const words = [...newest.querySelectorAll('.words')]
  const above = words.slice(0, words.indexOf(heading.closest('.words')))
  const end = caution.getBoundingClientRect().bottom
  return {
    ask: heading.textContent,
    answers: [...newest.querySelectorAll('.action')].filter(one => /(^|\\s)[A-Z] · /.test(one.textContent)).length,
    needs: Math.round(end - heading.getBoundingClientRect().top),
    has: Math.round(frame.height),
    below: Math.round(end - frame.bottom),
    picture: Math.round(newest.querySelector('.gallery img')?.getBoundingClientRect().height ?? 0),
    loud: above.some(one => one.querySelector(':scope > :not(.small)') !== null),
  }
})()`

/** What the bot says next is in this language to whoever one is. */
async function reads(page: Page, locale: string): Promise<void> {
  await openHead(page)
  const drawer = page.locator('#person-open[aria-expanded="false"]')
  if (await drawer.isVisible()) await drawer.click()
  await page.locator('#person select').selectOption(locale)
  await page.locator('#head-open').click()
}

inBrowser('on a phone of 360 × 640', ({ open }) => {
  let page: Page
  const wrong: string[] = []
  beforeEach(async () => {
    page = await open({ width: 360, height: 640 })
    page.on('pageerror', error => wrong.push(String(error)))
    await become(page, 'Wren')
  })
  afterEach(() => {
    expect(wrong.splice(0)).toEqual([])
  })

  test('the first thing that an empty sheet offers begins a check, with one press and in full view', async () => {
    const first = page.locator('#empty .command').first().locator('[data-command]')
    const [box, frame] = [await first.boundingBox(), await page.locator('#sheet-frame').boundingBox()]
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual((frame?.y ?? 0) + (frame?.height ?? 0))
    await first.click()
    await card(page).waitFor()
    expect(await wordsOf(page)).toMatch(/let go of it, get away and call your emergency number[\s\S]*Check of a cell/)
    await press(page, 'Not now')
  })

  test('head and foot leave the sheet all but 110 pixels, and nothing of them is lost', async () => {
    const sheet = await page.locator('#sheet-frame').boundingBox()
    expect(640 - (sheet?.height ?? 0)).toBeLessThanOrEqual(110)
    expect(await page.locator('#head-open').textContent()).toBe('You: Wren · cell-questionsChange')
    await openHead(page)
    const inside = '#head-open, #people-tabs label, #place, #weather-open, #person-open, .commands > summary, #entry'
    for (const one of await page.locator(inside).all()) {
      const box = await one.boundingBox()
      expect(box?.height, await one.textContent().then(String)).toBeGreaterThanOrEqual(40)
    }
    expect(await page.getByText('Cellwary is connected').isVisible()).toBe(true)
    // What is chosen folds it again; so does a press beside it.
    await goTo(page, { label: 'workbench' })
    await until(page, `document.getElementById('head-open').firstChild.textContent === 'You: Wren · workbench'`)
    expect(await page.locator('#place').isVisible()).toBe(false)
    await openHead(page)
    await page.mouse.click(180, 590)
    expect(await page.locator('#place').isVisible()).toBe(false)
    await goTo(page, { label: 'cell-questions' })
  })

  test('keys alone open the head, go from person to person, and fold it again', async () => {
    await page.locator('#head-open').focus()
    await page.keyboard.press('Enter')
    await page.locator('#weather-open').waitFor()
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    await page.keyboard.press('ArrowRight')
    await page.getByRole('heading', { name: 'What Ilse sees' }).waitFor()
    // Whoever is on the way to somebody else still stands among the people.
    expect(await page.evaluate('document.activeElement.name')).toBe('you')
    await page.keyboard.press('Escape')
    expect(await page.evaluate('document.activeElement.id')).toBe('head-open')
    expect(await page.locator('#place').isVisible()).toBe(false)
  })

  describe.each([
    ['en', undefined],
    ['de', 'de'],
    ['es', 'es-ES'],
  ] as const)('read in %s', (language, locale) => {
    const say = sayIn(language)
    test.each(['quick', 'full'] as const)(
      'in a whole %s check a question with four answers or fewer is seen whole',
      async depth => {
        if (locale !== undefined) await reads(page, locale)
        await runByClicks(page, 'check start')
        await press(page, say(`beginning.${depth}`))
        const seen: Fold[] = []
        const untold = card(page).getByRole('button', { name: new RegExp(`^${say('check.unsure')}`) })
        for (;;) {
          const consent = card(page).getByRole('button', { name: say('consent.touch.yes') })
          if ((await consent.count()) > 0) await press(page, say('consent.touch.yes'))
          if ((await untold.count()) === 0) break
          await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
          seen.push(await page.evaluate<Fold>(measure(say('caution.line'))))
          const first = card(page).getByRole('button', { name: /^A · / })
          await press(
            page,
            depth === 'full' && (await first.count()) > 0 ? /^A · / : new RegExp(`^${say('check.unsure')}`),
          )
        }
        await press(page, say('button.close'))
        if (locale !== undefined) await reads(page, 'en-US')
        expect(seen.length).toBeGreaterThan(9)
        const few = seen.filter(({ answers }) => answers <= 4)
        for (const one of few) expect(one.picture, one.ask).toBeLessThanOrEqual(640 / 3)
        // Whatever is too long is told at once, with by how much.
        expect(few.filter(({ needs, has }) => needs > has).map(one => `${one.ask}: ${one.needs - one.has} px`)).toEqual(
          [],
        )
        expect(few.filter(({ loud, below }) => !loud && below > 0).map(one => `${one.ask}: ${one.below} px`)).toEqual(
          [],
        )
      },
    )
  })

  test('what opens below the fold is brought into view, and the hand is on it', async () => {
    await runByClicks(page, 'check start')
    const menu = card(page).locator('.menu').last()
    await menu.locator('summary').click()
    await until(page, 'document.activeElement.closest(".menu .choices") !== null')
    const [box, frame] = [await menu.boundingBox(), await page.locator('#sheet-frame').boundingBox()]
    const [end, fold] = [(box?.y ?? 0) + (box?.height ?? 0), (frame?.y ?? 0) + (frame?.height ?? 0)]
    expect(end).toBeLessThanOrEqual(fold + 1)
    await page.keyboard.press('Escape')
    expect(await menu.getAttribute('open')).toBeNull()
    expect(await page.evaluate('document.activeElement.matches(".menu > summary")')).toBe(true)
    await openHead(page)
    await page.locator('#weather-open').click()
    expect(await page.evaluate('document.activeElement.closest("#weather") !== null')).toBe(true)
    await page.mouse.click(180, 590)
    await press(page, 'Not now')
  })

  test('an overstated cell is ruled out in six questions and eleven taps', async () => {
    await runByClicks(page, 'check start')
    let words = await press(page, /Quick/)
    // The list of commands, the command, the depth.
    let taps = 3
    const asked = new Set<string>()
    for (let i = 0; i < 20 && !/What to do now/.test(words); i++) {
      asked.add((await card(page).locator('h5').textContent())?.replace('Look again: ', '') ?? '')
      const form = card(page).getByRole('button', { name: /^Type in/ })
      const size = /Which size is the cell/.test(words) && /18650/
      // A form is opened and sent.
      taps += (await form.count()) > 0 ? 2 : 1
      if ((await form.count()) > 0) words = await sendReading(page, '9900 mAh', String(await form.textContent()))
      else
        words = await changing(page, () =>
          card(page)
            .getByRole('button', { name: size || /^(I looked.*|Still .*|A · .*)/ })
            .first()
            .click(),
        )
    }
    expect(await wordsOf(page)).toMatch(/Ruled out/)
    expect(asked.size, [...asked].join()).toBeLessThanOrEqual(6)
    expect(taps).toBeLessThanOrEqual(11)
    // The card of a verdict stands above its heading: it is neither scrolled away nor made small.
    await page.evaluate('Promise.all([...document.images].map(one => one.decode().catch(() => null)))')
    const picture = await card(page).locator('.gallery img').first().boundingBox()
    expect(picture?.y).toBeGreaterThanOrEqual((await page.locator('#sheet-frame').boundingBox())?.y ?? 640)
    expect(picture?.width).toBeGreaterThan(250)
    await press(page, 'Close and delete the answers')
  })
})
