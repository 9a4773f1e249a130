// On a phone, by clicks alone, in two languages: from a verdict to a letter that is changed and copied, and to buying safely.
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import type { Key } from '../../src/words/catalogue.ts'
import { sayIn } from '../../src/words/say.ts'
import { become, card, changing, choose, press, runByClicks, tooWide, wordsOf } from './browser-hands.ts'
import { inBrowser } from './in-browser.ts'

const people = [
  { name: 'Wren', locale: 'en-GB', happening: /^C · /, asks: /smoking, hissing/ },
  { name: 'Ilse', locale: 'de', happening: /^C · /, asks: /raucht, zischt/ },
] as const

inBrowser('buying on a phone', ({ open: openWindow }) => {
  let page: Page

  test.each(people)('$name in $locale: danger, the letter, what to do with the cell', async who => {
    const say = sayIn(who.locale)
    page = await openWindow({ width: 360, height: 740 })
    await become(page, who.name)
    await runByClicks(page, 'check start')
    await press(page, say('beginning.full'))
    for (let i = 0; i < 20 && !who.asks.test(await wordsOf(page)); i++) await press(page, say('check.unsure'))
    expect(await press(page, who.happening)).toMatch(new RegExp(`^🛑 ${say('safety.now')}`))
    expect(await tooWide(page)).toEqual([])
    // Nothing about letters stands beside what to do.
    expect(await page.getByRole('button', { name: say('letter.write') }).count()).toBe(0)

    await press(page, say('button.details'))
    const letter = await press(page, say('letter.write'))
    expect(letter).toContain(say('letter.first'))
    expect(letter.indexOf(say('safety.now'))).toBeLessThan(letter.indexOf(say('letter.subject')))
    expect(letter).toContain(say('letter.no-return'))
    expect(await tooWide(page)).toEqual([])
    const other = who.locale === 'de' ? 'Spanisch' : 'German'
    const seller = sayIn(who.locale === 'de' ? 'es' : 'de')
    expect(await choose(page, other)).toContain(seller('letter.subject'))

    await card(page)
      .getByRole('button', { name: say('letter.change') })
      .click()
    const form = page.getByRole('dialog')
    const field = form.getByRole('textbox').first()
    expect(await field.inputValue()).toContain(seller('letter.refund'))
    await field.fill((await field.inputValue()).replace(/\[[^\]]*\]/, 'QX-77'))
    const changed = await changing(page, () => form.getByRole('button', { name: 'Send', exact: true }).click())
    expect(changed).toContain('QX-77')
    expect(await card(page).locator('pre').textContent()).toContain('QX-77')
    expect(changed).toContain(say('next.no-post'))
    expect(changed).toContain(say('caution.line'))

    const suspect = await press(page, say('buying.open.suspect'))
    expect(suspect).toContain(say('buying.suspect.title'))
    expect(await tooWide(page)).toEqual([])
    expect(await press(page, say('buying.later'))).toContain(say('next.seller'))
    for (const [part, wanted] of [
      ['report', 'buying.report.title'],
      ['links', 'links.title'],
      ['listing', 'buying.listing.title'],
      ['buy', 'buying.buy.title'],
    ] as const satisfies readonly (readonly [string, Key])[]) {
      expect(await press(page, new RegExp(`^${say(`buying.part.${part}`)}`))).toContain(say(wanted))
      expect(await wordsOf(page)).toContain(say('caution.line'))
      expect(await tooWide(page)).toEqual([])
    }
  })

  test('a check that is stopped early: the letter asks for papers, and the verdict stays where it is', async () => {
    const say = sayIn('de')
    page = await openWindow({ width: 360, height: 740 })
    await become(page, 'Ilse')
    await runByClicks(page, 'check start')
    await press(page, say('beginning.full'))
    await press(page, say('check.unsure'))
    expect(await press(page, say('check.finish'))).toContain(say('verdict.open'))
    const letter = await press(page, say('letter.write'))
    expect(letter).toContain(say('letter.unverified.bare'))
    expect(letter).toContain(say('letter.papers-first'))
    expect(await page.getByText(say('verdict.open')).first().isVisible()).toBe(true)
    expect(await tooWide(page)).toEqual([])
  })
})
