// Menus and forms of families against Discord's limits, in every language: nothing on them is cut.
import { ComponentType } from 'discord.js'
import { describe, expect, test } from 'vitest'
import {
  askForm,
  featureMenu,
  identityForm,
  notKnownMenu,
  sayableIn,
  typedOf,
} from '../../src/discord/families/show/menus.ts'
import { showWork } from '../../src/discord/families/show/show-page.ts'
import type { WorkingOn } from '../../src/discord/families/working-on.ts'
import { textBudget } from '../../src/discord/message/parts.ts'
import { bareFacts, factsFrom } from '../../src/families/construction.ts'
import { type Facts, formats, kinds } from '../../src/families/facts/facts-schema.ts'
import { featuresOf, leadingFeatures } from '../../src/families/features.ts'
import { isTelling } from '../../src/families/not-known.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { anyCell } from '../families/base.ts'
import { draftOf } from '../families/made-families.ts'

const { constructions } = await loadConstructions()
const identityOf = (format: (typeof formats)[number], kind: (typeof kinds)[number]) => ({
  ...{ id: 'f-tried01', name: 'T'.repeat(60), maker: 'M'.repeat(60), alsoCalled: [], format, kind },
  chemistry: 'not-known' as const,
})
const bare = identityOf('18650', 'bare')

/** Every feature that a family may speak of, each with so many looks that are normal. */
function knowing(many: number, from = 0): Facts {
  const all = [...featuresOf(anyCell).values()].slice(from, from + 25)
  const traits = all.map(({ id, answer }) => {
    const made = answer.options.slice(0, Math.min(many, answer.options.length - 1)).map(one => one.id)
    const options = answer.options.filter(one => !made.includes(one.id)).map(one => one.id)
    return [id, { made, against: [{ options, tells: 'moderate' as const, from: 'moderator' as const }], remarks: [] }]
  })
  return { ...bareFacts(bare), traits: Object.fromEntries(traits) }
}

/** Everything that a message or form says, by where it stands. */
function* labels(part: unknown): Generator<string> {
  if (Array.isArray(part)) for (const one of part) yield* labels(one)
  else if (part && typeof part === 'object')
    for (const [key, value] of Object.entries(part)) {
      if (['label', 'description', 'title', 'placeholder'].includes(key) && typeof value === 'string') yield value
      else yield* labels(value)
    }
}

const families: readonly (readonly [string, Facts])[] = [
  ['nothing', bareFacts(bare)],
  ['one look', knowing(1)],
  ['further features', knowing(1, 9)],
  ['five looks', knowing(5)],
  ['five looks of further features', knowing(5, 9)],
  ...constructions.map(one => [one.construction, factsFrom(one, bare)] as const),
]

const workOn = (facts: Facts): WorkingOn => ({
  ...{ family: draftOf('s', facts), facts, inForce: undefined, references: [] },
  proposed: { facts, digest: 'sha256:a', problems: [] },
})

describe.each(languages)('in %s', language => {
  const say = sayIn(language)
  /** The placeholders end in dots of their own. */
  const isCut = (label: string) =>
    label.endsWith('…') && ![say('families.feature.choose'), say('families.unknown.choose')].includes(label)

  test.each(families)('the menu of features of a family that knows %s has everything in it, whole', (_, facts) => {
    const [menu] = featureMenu(say, anyCell, 'id', facts).components
    if (!menu) throw new Error('no menu')
    expect(menu.options.length).toBeLessThanOrEqual(25)
    for (const id of Object.keys(facts.traits)) expect(menu.options.map(one => one.value)).toContain(id)
    for (const { label, description } of menu.options) {
      expect([...label].length).toBeLessThanOrEqual(100)
      expect([...(description ?? '')].length).toBeLessThanOrEqual(100)
    }
    expect([...labels(menu)].filter(isCut)).toEqual([])
    // What cells are told apart by and is left open stands first, unless it is said not to be known.
    const values = menu.options.map(one => one.value)
    const open = leadingFeatures.filter(one => !isTelling(facts.traits[one]) && values.includes(one))
    expect(values.slice(0, open.length)).toEqual(open)
    const unknown = open.slice(0, 1)
    const [other] = featureMenu(say, anyCell, 'id', facts, { unknown }).components
    if (open.length > 1) expect(other?.options[0]?.value).toBe(open[1])
    // What is known stands with it.
    const known = menu.options.filter(one => isTelling(facts.traits[one.value]))
    for (const one of known) expect(one.label).not.toMatch(/^\+ /)
  })

  test.each(families)(
    'the menu of what is not known of a family that knows %s is whole, and can be emptied',
    (_, facts) => {
      const all = sayableIn(anyCell, facts, { construction: undefined, inForce: undefined })
      const menus = notKnownMenu(say, anyCell, 'id', all).flatMap(one => one.components)
      expect(menus).toHaveLength(all.length > 0 ? 1 : 0)
      for (const menu of menus) {
        expect(menu).toMatchObject({ min_values: 0, max_values: menu.options.length })
        expect(menu.options.length).toBeLessThanOrEqual(25)
        expect([...labels(menu)].filter(isCut)).toEqual([])
      }
    },
  )

  test('a form says all it says', () => {
    const form = identityForm(say, 'id', typedOf({ identity: bare, figures: {} }))
    const said = [...labels(form)].filter(isCut)
    expect(said).toEqual([])
    expect(form.components).toHaveLength(4)
    // What is typed stands above the ten lines of sizes.
    expect(form.components.map(one => ('component' in one ? one.component.type : 0))).toEqual([
      ...[ComponentType.TextInput, ComponentType.TextInput, ComponentType.TextInput],
      ComponentType.RadioGroup,
    ])
    for (const first of [true, false]) expect([...labels(askForm(say, 'id', first))].filter(isCut)).toEqual([])
  })

  test.each(formats.flatMap(format => kinds.map(kind => [format, kind] as const)))(
    'the page of a new %s, %s, fits into one message',
    (format, kind) => {
      const page = showWork(say, anyCell, constructions, workOn(bareFacts(identityOf(format, kind))))
      const texts = page.components.flatMap(one => ('content' in one ? [one.content] : []))
      expect(texts.join('').length).toBeLessThanOrEqual(textBudget)
      expect(texts.some(one => one.endsWith('…'))).toBe(false)
      expect([...labels(page.components)].filter(isCut)).toEqual([])
    },
  )

  test('the page of a family that knows all it may, at its longest, is whole but for nothing that counts', () => {
    const page = showWork(say, anyCell, constructions, workOn(knowing(1)))
    const texts = page.components.flatMap(one => ('content' in one ? [one.content] : []))
    expect(texts.join('').length).toBeLessThanOrEqual(textBudget)
    expect(texts.at(-1)).toContain(say('caution.line'))
  })
})
