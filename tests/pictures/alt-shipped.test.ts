// The alt texts of everything the shipped packs draw, in every language: whole sentences under Discord's limit that tell options apart.
import { describe, expect, test } from 'vitest'
import { installedPacks } from '../../src/bin/installed-packs.ts'
import { drawFamily } from '../../src/discord/drawn/draw-family.ts'
import { drawQuestion } from '../../src/discord/drawn/draw-question.ts'
import { drawVerdictAlone } from '../../src/discord/drawn/draw-verdict.ts'
import { altDe } from '../../src/discord/words/alt-de.ts'
import { altEn } from '../../src/discord/words/alt-en.ts'
import { altEs } from '../../src/discord/words/alt-es.ts'
import { sayAltFact } from '../../src/discord/words/alt-words.ts'
import { sayIn } from '../../src/discord/words/say.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import type { AltFact } from '../../src/pictures/alt/alt-fact.ts'
import { joinAlt } from '../../src/pictures/alt/join-alt.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { drawMeasuring, MEASURING_KINDS } from '../../src/pictures/measuring/draw-measuring.ts'
import { gallery } from './gallery.ts'

/** Characters that Discord takes as the description of an item in a media gallery. */
const limit = 1024
const words = { en: altEn, de: altDe, es: altEs }
const locales = Object.keys(words) as (keyof typeof words)[]
const programs = openPrograms(await installedPacks(undefined))
const all = [null, ...programs.families.map(family => family.id)].map(
  family => programs.programFor(family, '2026-11-27')!,
)

/** Everything at once that can be wrong with a cell, so that the card is as long as a card gets. */
const worst = (program: (typeof all)[number]) =>
  Object.fromEntries(
    [...program.questions.keys()].map(id => [
      id,
      (program.states.get(id) ?? []).at(-1)?.answers[0] ?? { kind: 'cant-tell' },
    ]),
  ) as Parameters<typeof judge>[1]

function drawings(locale: string): { name: string; drawing: Drawing }[] {
  const say = sayIn(locale)
  return all
    .map(program => inLanguage(program, locale))
    .flatMap(program => {
      const named = (name: string, drawing: Drawing | undefined) => (drawing ? [{ name, drawing }] : [])
      const answers = worst(program)
      return [
        ...[...program.questions.values()].flatMap(question => named(question.id, drawQuestion(question))),
        ...(program.family ? named(program.family.id, drawFamily(say, program.family)) : []),
        ...named(`verdict of ${program.family?.id}`, drawVerdictAlone(say, program, judge(program, answers), answers)),
      ]
    })
    .concat(MEASURING_KINDS.map(kind => ({ name: kind, drawing: drawMeasuring(kind) })))
    .concat(gallery())
}

const codes = (facts: readonly AltFact[]): string[] => facts.flatMap(fact => [fact.code, ...codes(fact.parts ?? [])])

describe.each(locales)('in %s', locale => {
  const say = sayIn(locale)
  const told = drawings(locale)
  const text = (facts: readonly AltFact[]) => joinAlt(facts, (code, values) => sayAltFact(say, code, values))

  test('there is something to tell', () => {
    expect(told.length).toBeGreaterThan(150)
  })

  test('every fact has a sentence in this very language', () => {
    const lacking = new Set(told.flatMap(({ drawing }) => codes(drawing.about)).filter(code => !words[locale][code]))
    expect([...lacking]).toEqual([])
  })

  test('every text is under the limit, and none has a hole in it', () => {
    for (const { name, drawing } of told) {
      const alt = text(drawing.about)
      expect(alt.length, name).toBeLessThanOrEqual(limit)
      expect(alt, name).toMatch(/^\S.+[.!?…]$/s)
      expect(alt, name).not.toMatch(/undefined|NaN|[{}]| {2}|\.\./)
    }
  })

  test('every option is told, by its letter, and no two alike', () => {
    const sheets = told.filter(({ drawing }) => drawing.about[0]?.code === 'options')
    expect(sheets.length).toBeGreaterThan(40)
    for (const { name, drawing } of sheets) {
      const options = drawing.about.filter(fact => fact.code.startsWith('option') && fact.code !== 'options')
      const lines = options.map(fact => text([fact]).replace(/^\S+: /, ''))
      expect(new Set(lines).size, name).toBe(lines.length)
      for (const fact of options) expect(text(drawing.about), name).toContain(text([fact]))
    }
  })

  test('a verdict’s caution is never left out', () => {
    const cards = told.filter(({ name }) => name.startsWith('verdict of'))
    for (const { name, drawing } of cards) expect(text(drawing.about), name).toContain(say('caution.line'))
  })
})
