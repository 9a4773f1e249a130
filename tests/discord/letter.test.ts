// A letter to the seller, in three languages: every sure finding, every caution, blanks for what only the person knows, no accusation.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { letterLanguages } from '../../src/custom-ids/letter-id.ts'
import type { Answer } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { hasLetter, longestLetter } from '../../src/words/letter/draft-letter.ts'
import { letterFacts, sureFindings } from '../../src/words/letter/letter-facts.ts'
import { sayIn } from '../../src/words/say.ts'
import { finished, heron, letterOf, odd, pick, programs } from './finished-screens.ts'

/** Words that accuse a person or judge a cell; a letter of facts has none of them. */
const accusing: Readonly<Record<string, RegExp>> = {
  en: /\b(fak\w+|counterfeit\w*|fraud\w*|scam\w*|cheat\w*|forg\w+|decei\w+|liar|lied|lies|criminal\w*|illegal\w*|st[eo]l\w+|thie\w+|genuine|authentic|ruled out|doubtful|you sold)\b/i,
  de: /(?<!\p{L})(gefälsch\p{L}*|fälsch\p{L}*|betr[uü]g\p{L}*|schwind\p{L}*|l[uü]g\p{L}*|krimin\p{L}*|illegal\p{L}*|gestohl\p{L}*|dieb\p{L}*|unecht\p{L}*|echt\p{L}*|plagiat\p{L}*|ausgeschlossen|widerlegt|zweifelhaft:)(?!\p{L})/iu,
  es: /(?<!\p{L})(fals\p{L}+|fraud\p{L}*|estaf\p{L}*|enga[ñn]\p{L}*|mentir\p{L}*|delit\p{L}*|ilegal\p{L}*|rob\p{L}+|ladr\p{L}+|auténtic\p{L}*|timo|descartad\p{L}*)(?!\p{L})/iu,
}
/** What every letter says, whatever was found: not mailed back, no return, where the cell goes, that papers are asked for. */
const wanted: Readonly<Record<string, readonly RegExp[]>> = {
  en: [
    /will not mail the cell back/,
    /dangerous and may not be allowed/,
    /without return/,
    /takes lithium cells/,
    /UN 38\.3/,
  ],
  de: [
    /schicke die Zelle nicht zurück/,
    /gefährlich und kann verboten sein/,
    /ohne dass die Zelle zurück/,
    /Lithiumzellen annimmt/,
    /UN-38\.3/,
  ],
  es: [
    /No envío la celda de vuelta/,
    /peligroso y puede estar prohibido/,
    /sin devolución/,
    /acepte celdas de litio/,
    /UN 38\.3/,
  ],
}

describe.each(letterLanguages)('on random answers to the shipped packs, in %s', language => {
  test('every fact once, nothing about the writer, nothing accuses, every caution is there, and it fits', () => {
    fc.assert(
      fc.property(
        fc.nat({ max: programs.length - 1 }),
        fc.array(fc.nat({ max: 1000 }), { minLength: 80, maxLength: 80 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 40 }),
        (which, picks, sparse, cells) => {
          const program = programs[which] as Program
          const answers: Record<string, Answer> = {}
          for (const [i, [id, states]] of [...program.states].entries()) {
            const pick = picks[i % picks.length] ?? 0
            if (pick % sparse === 0) answers[id] = states[pick % states.length]?.answers[0] as Answer
          }
          const screen = finished(program, answers, cells)
          if (!hasLetter(screen)) return
          const letter = letterOf(language, program, screen)
          expect(letter.length).toBeLessThanOrEqual(longestLetter)
          expect(letter).not.toMatch(accusing[language] as RegExp)
          for (const one of wanted[language] ?? []) expect(letter).toMatch(one)
          expect(letter.match(/\[[^\]]+\]/g)?.length).toBeGreaterThanOrEqual(5)
          const told = inLanguage(program, language)
          const facts = letterFacts(sayIn(language), told, screen).map(fact => fact.line)
          const cutShort = /^…\D*\d+/m.test(letter)
          if (!cutShort) for (const line of facts) expect(letter).toContain(`- ${line}`)
          // Nothing twice: no statement and no reason stands in two lines, and no question as it was asked of the writer.
          const statements = facts.flatMap(line => line.split(/ · |(?<=[^\d])\. /)).map(one => one.replace(/\.$/, ''))
          expect(statements.filter((one, i) => statements.indexOf(one) !== i)).toEqual([])
          for (const { id, ask } of told.questions.values())
            expect(letter.includes(ask), `${id} as the writer was asked`).toBe(false)
        },
      ),
      { numRuns: 150 },
    )
  }, 120_000)
})

describe('what stands in it', () => {
  const anyCell = programs[0] as Program
  const mAh = (value: number): Answer => ({ kind: 'reading', value, u: 0 })

  test.each([
    [
      'en',
      /description:\n- Size: 18650[^\n]*Claimed capacity: 9,900 mAh\. No 18650 known holds more than about 4,000 mAh\.\n\nPlease/,
    ],
    [
      'de',
      /- Größe: 18650[^\n]*Angegebene Kapazität: 9\.900 mAh\. Keine bekannte 18650 fasst mehr als etwa 4\.000 mAh\.\n\n/,
    ],
    [
      'es',
      /- Tamaño: 18650[^\n]*Capacidad declarada: 9900 mAh\. Ninguna 18650 conocida tiene más de unos 4000 mAh\.\n\n/,
    ],
  ])('what was claimed and why that cannot be, once, though four rules say it: %s', (language, expected) => {
    const answers = { format: pick('18650'), 'claimed-capacity': mAh(9900), 'sold-as': pick('new-bare') }
    const screen = finished(anyCell, { ...answers, price: pick('far-below'), 'where-bought': pick('marketplace') })
    expect(sureFindings(screen).length).toBeGreaterThan(2)
    const letter = letterOf(language, anyCell, screen)
    expect(letter).toMatch(expected)
    expect(letter).not.toMatch(/\?/)
  })

  test('a cell that contradicts its family: what was seen, and how the model is made; no rule’s own words', () => {
    const letter = letterOf(
      'en',
      heron,
      finished(heron, { legs: pick('three'), 'weld-marks': pick('spots'), 'sold-as': pick('new-bare') }),
    )
    expect(letter).toMatch(
      /does not match the description:\n- Legs of the positive contact: Three \(this model: Four\)\./,
    )
    expect(letter).toMatch(
      /could not be verified[\s\S]*Marks on the ends: Pits or torn spots on either end\. A cell that was/,
    )
    expect(letter).not.toMatch(/This is another cell|salvaged|welded into a pack/)
    expect(letter).toMatch(/sold as “Brindlewick Heron/)
  })

  test('an unsafe cell: unsafe, and refund without return', () => {
    const letter = letterOf('en', heron, finished(heron, { dent: pick('dented') }))
    expect(letter).toMatch(/The following is unsafe[\s\S]*\n- State of the can: Dented/)
    expect(letter).toMatch(/refund \[amount\] by \[date\], without return/)
  })

  test('what happened at the writer’s is no matter for a seller: papers are asked for, no money', () => {
    const letter = letterOf('en', heron, finished(heron, { wet: pick('wet'), 'past-damage': pick('damaged') }))
    expect(letter).not.toMatch(/wet|damaged|unsafe/i)
    expect(letter).toMatch(/It could not be verified[\s\S]*tell me the maker[\s\S]*If that is not possible/)
  })

  test('an open check accuses of nothing: it asks for papers, and names what could not be told, not what was not asked', () => {
    const unsure = { kind: 'cant-tell' } as const
    const letter = letterOf(
      'en',
      heron,
      finished(heron, { rust: unsure, 'sold-as': unsure, legs: unsure, print: unsure }),
    )
    expect(letter).toMatch(/It could not be verified that the cell is as described\./)
    expect(letter).toMatch(/I could not tell: [^\n]*Legs of the positive contact[^\n]*\.\n/)
    expect(letter).not.toMatch(/\?|metal|more/)
    expect(letter).toMatch(/tell me the maker[\s\S]*If that is not possible, please refund/)
  })

  test('nothing was looked at, or every check was met: there is nothing to write', () => {
    expect(hasLetter(finished(heron, {}))).toBe(false)
    const states = [...heron.questions.keys()].map(id => [id, heron.states.get(id)?.[0]?.answers[0] as Answer] as const)
    const met = finished(heron, Object.fromEntries(states))
    if (met.judgement.verdict === 'nothing-found') expect(hasLetter(met)).toBe(false)
  })

  test('what cannot be told, what tells nothing and what is out of date are no findings', () => {
    const answers = { 'weld-marks': { kind: 'cant-tell' }, dimples: pick('two') } as const
    const screen = finished(heron, answers)
    expect(sureFindings(screen)).toEqual([])
    expect(letterOf('en', heron, screen)).not.toMatch(/does not match/)
  })

  test('only what makes a rule fire is named, not what else it reads', () => {
    const program = odd([{ id: 'any', when: { any: [{ q0: 'bad' }, { q1: 'bad' }] } }])
    const letter = letterOf('en', program, finished(program, { q0: pick('bad'), q1: pick('good') }))
    expect(letter).toMatch(/- Ask 0\? Bad\.\n/)
    expect(letter).not.toMatch(/Ask 1/)
  })

  test('cells bought together: for the one that looks worst', () => {
    expect(letterOf('en', heron, finished(heron, { dent: pick('dented') }, 12))).toMatch(
      /12 lithium-ion cells[\s\S]*looks worst/,
    )
  })
})
