// How many presses it takes from the first command to a check of a new family, on a phone, in the ordinary way; from English into English, and from German into Spanish.
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { together } from '../../src/words/family-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { become, card, changing, goTo, press, runByClicks, tooWide, until, wordsOf } from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'
import { bare18650, letterOf } from './new-family.ts'

/** Above these, moderators leave it to somebody else: where the letter is right as it is, with a reason typed, and where two features are not known. */
const [mostPresses, mostWithNotKnown] = [17, 20]

const readers = [
  {
    ...{ who: 'Hollis', say: sayIn('en-GB') },
    // Whoever follows the README in English can read what the second moderator reads.
    ...{
      names: ['Redshank 25', 'Whinchat 25'],
      unknown: ['Measured capacity', 'Dimples'],
      second: 'Sorrel',
      theirs: sayIn('en-GB'),
      waits: /^Waits for you: /,
    },
  },
  {
    who: 'Maret',
    say: sayIn('de'),
    ...{
      names: ['Rotschenkel 25', 'Braunkehlchen 25'],
      unknown: ['Gemessene Kapazität', 'Vertiefungen'],
      second: 'Tomas',
      theirs: sayIn('es-ES'),
      waits: /^Te espera: /,
    },
  },
]

const hands = readers.flatMap(({ names: [whole = '', inPart = ''], unknown, ...reader }) => [
  { ...reader, name: whole, unknown: [], most: mostPresses },
  { ...reader, name: inPart, unknown, most: mostWithNotKnown },
])

inBrowser('presses on a phone', browser => {
  test.each(hands)(
    '$who makes $name, of which $unknown.length features are not known, $second agrees, and a check of it is begun',
    async ({ who, say, name, unknown, most, second, theirs, waits }) => {
      const page = await browser.open({ width: 390, height: 844 })
      const sheet = page.getByRole('dialog')
      const type = async (label: string, words: string) => {
        await sheet.getByLabel(label).click()
        await page.keyboard.type(words)
      }
      const fits = async () => expect(await tooWide(page)).toEqual([])
      await become(page, who)
      await goTo(page, { label: 'workbench' })
      const count = await countPresses(page)

      await page.locator('.commands > summary').click()
      await page.locator('#entry-form [data-command="family new"]').click()
      await sheet.waitFor()
      await type(say('families.form.name'), name)
      await type(say('families.form.maker'), 'Larkmoor')
      await sheet
        .getByRole('group', { name: say('families.form.size') })
        .getByLabel(bare18650(say), { exact: true })
        .check()
      await type(say('families.form.figures'), '2500 mAh, min 2450 mAh, 20 A, 45 g')
      const cards = await page.locator('.card').count()
      await sheet.getByRole('button', { name: 'Send', exact: true }).click()
      await page.locator('.card').nth(cards).waitFor()
      await until(page, `!document.querySelector('.card:last-of-type .waiting')`)
      await until(page, onNewestCard)
      await fits()
      await press(page, letterOf(say, await wordsOf(page), { dimples: 'two' }, ['legs', 'vent-disc']))
      await fits()
      if (unknown.length > 0) {
        const menu = card(page).locator('.menu', { hasText: say('families.unknown.choose') })
        await menu.locator('summary').click()
        for (const feature of unknown) await menu.locator('.choice', { hasText: feature }).click()
        const said = await changing(page, () => menu.getByRole('button', { name: 'Send this choice' }).click())
        expect(said).toContain(say('families.unknown.line', { features: together(say, unknown) }))
        await fits()
      }
      await press(page, say('families.button.try'))
      await card(page)
        .getByRole('button', { name: say('families.button.ask') })
        .click()
      if (unknown.length === 0) {
        await sheet.getByRole('textbox').first().click()
        await page.keyboard.type('Counted on five cells')
      }
      await changing(page, () => sheet.getByRole('button', { name: 'Send', exact: true }).click())
      const author = await count()

      await become(page, second)
      await goTo(page, { label: 'workbench' })
      const before = await count()
      await runByClicks(page, 'family list')
      // What waits for them stands first, and of that what was asked last, though another model waits as well.
      const [first = ''] = (await wordsOf(page)).split('\n')
      expect(first).toMatch(waits)
      expect(first).toContain(name)
      await press(page, theirs('families.button.waits', { name }))
      await fits()
      expect(await press(page, theirs('families.button.agree'))).toContain(
        theirs('families.put-in-force', { name, number: 1 }),
      )
      const checks = await page.locator('.card').count()
      await card(page)
        .getByRole('button', { name: theirs('families.button.check') })
        .click()
      await page.locator('.card').nth(checks).waitFor()
      expect(await wordsOf(page)).toContain(name)
      expect(author + (await count()) - before).toBeLessThanOrEqual(most)
    },
    200_000,
  )

  test('a command or form that was typed and sent leaves the focus on its answer, and never on the text field', async () => {
    const page = await browser.open({ width: 390, height: 844 })
    await become(page, 'Hollis')
    await goTo(page, { label: 'workbench' })
    const line = page.locator('#entry')
    const enter = async (words: string) => {
      await line.click()
      await page.keyboard.type(words)
      await page.keyboard.press('Enter')
    }
    const cards = await page.locator('.card').count()
    await enter('/family list')
    await page.locator('.card').nth(cards).waitFor()
    await until(page, onNewestCard)
    await enter('/family new')
    const sheet = page.getByRole('dialog')
    await sheet.waitFor()
    await page.evaluate(
      `window.typedIn = 0; document.addEventListener('focusin', event => { if (event.target.id === 'entry') window.typedIn++ })`,
    )
    await sheet.getByLabel('Model, as it is sold').fill('Whimbrel 30')
    await sheet.getByLabel('Maker').fill('Larkmoor')
    await sheet.getByRole('group', { name: 'Size' }).getByLabel('18650 · bare', { exact: true }).check()
    await sheet.getByRole('button', { name: 'Send', exact: true }).click()
    await page
      .locator('.card')
      .nth(cards + 1)
      .waitFor()
    await until(page, onNewestCard)
    await until(page, `!document.querySelector('#form-dialog').open`)
    expect(await page.evaluate('document.activeElement.id')).not.toBe('entry')
  })

  test('the list of commands is narrowed to a group, and whole again with one more press', async () => {
    const page = await browser.open({ width: 390, height: 844 })
    await become(page, 'Sorrel')
    await goTo(page, { label: 'workbench' })
    await page.locator('.commands > summary').click()
    const seen = (path: string) => page.locator(`#entry-form [data-command="${path}"]`).isVisible()
    await page.locator('.groups [data-group="family"]').click()
    expect([await seen('family new'), await seen('check start')]).toEqual([true, false])
    await page.locator('.groups [data-group="family"]').click()
    expect([await seen('family new'), await seen('check start')]).toEqual([true, true])
  })
})

/** On a text field, a phone's keyboard would cover the answer. */
const onNewestCard = 'document.activeElement.matches(".card:last-child, .card:last-child *")'

/** Counts every finger that goes down from now on. */
async function countPresses(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(`window.pressed = 0; addEventListener('pointerdown', () => { window.pressed++ }, true)`)
  return () => page.evaluate(`window.pressed`) as Promise<number>
}
