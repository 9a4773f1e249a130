// A letter to the seller, in three languages: every sure finding, every caution, blanks for what only the person knows, no accusation.
import { ComponentType } from 'discord.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { loadPacks } from '../../src/bin/load-packs.ts'
import { shippedRules } from '../../src/bin/shipped-rules.ts'
import type { Check } from '../../src/check/check.ts'
import { type Screen, screenOf } from '../../src/check/screen.ts'
import { start } from '../../src/check/step.ts'
import { decodeLetter, encodeLetter, letterLanguages } from '../../src/discord/letter-id.ts'
import { hasLetter, longestLetter, sureFindings, writeLetter } from '../../src/discord/show/letter.ts'
import { letterForm, letterIn, showLetter } from '../../src/discord/show/letter-screen.ts'
import { type ShownMessage, textBudget } from '../../src/discord/show/parts.ts'
import { sayAnswer } from '../../src/discord/words/describe.ts'
import { languages, sayIn } from '../../src/discord/words/say.ts'
import type { Answer, Answers } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { answersRead } from '../../src/engine/judge.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

type VerdictScreen = Extract<Screen, { kind: 'verdict' }>
const now = Date.UTC(2026, 10, 27)

function finished(program: Program, answers: Answers, cells = 1): VerdictScreen {
  const who = { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', family: program.family?.id ?? null } as const
  const begun = start(program, { ...who, cells }, now)
  if (!begun.ok) throw new Error(begun.refusal.code)
  const all = { ...begun.check.answers, ...answers }
  const check: Check = { ...begun.check, answers: all, trail: Object.keys(answers), phase: { is: 'done' } }
  const screen = screenOf(program, check)
  if (screen.kind !== 'verdict') throw new Error(screen.kind)
  return screen
}
const letterOf = (language: string, program: Program, screen: VerdictScreen): string =>
  writeLetter(sayIn(language), inLanguage(program, language), screen)
const wordsOf = ({ components }: ShownMessage): string =>
  components.flatMap(part => (part.type === ComponentType.TextDisplay ? [part.content] : [])).join('\n')

/** Words that accuse a person or judge a cell; a letter of facts has none of them. */
const accusing: Readonly<Record<string, RegExp>> = {
  en: /\b(fak\w+|counterfeit\w*|fraud\w*|scam\w*|cheat\w*|forg\w+|decei\w+|liar|lied|lies|criminal\w*|illegal\w*|st[eo]l\w+|thie\w+|genuine|authentic|ruled out|doubtful|you sold)\b/i,
  de: /(?<!\p{L})(gefälsch\p{L}*|fälsch\p{L}*|betr[uü]g\p{L}*|schwind\p{L}*|l[uü]g\p{L}*|krimin\p{L}*|illegal\p{L}*|gestohl\p{L}*|dieb\p{L}*|unecht\p{L}*|echt\p{L}*|plagiat\p{L}*|ausgeschlossen|zweifelhaft:)(?!\p{L})/iu,
  es: /(?<!\p{L})(fals\p{L}+|fraud\p{L}*|estaf\p{L}*|enga[ñn]\p{L}*|mentir\p{L}*|delit\p{L}*|ilegal\p{L}*|rob\p{L}+|ladr\p{L}+|auténtic\p{L}*|timo|descartad\p{L}*)(?!\p{L})/iu,
}
/** What every letter says, whatever was found: not posted back, no return, where the cell goes, that papers are asked for. */
const wanted: Readonly<Record<string, readonly RegExp[]>> = {
  en: [
    /do not post the cell back/,
    /dangerous and may be forbidden/,
    /without return/,
    /takes lithium cells/,
    /UN 38\.3/,
  ],
  de: [
    /schicke die Zelle nicht zurück/,
    /gefährlich und kann verboten sein/,
    /ohne dass die Zelle zurück/,
    /Lithiumzellen annimmt/,
    /UN 38\.3/,
  ],
  es: [
    /No envío la celda de vuelta/,
    /peligroso y puede estar prohibido/,
    /sin devolución/,
    /acepte celdas de litio/,
    /UN 38\.3/,
  ],
}

const packs = (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack)
const programs = [undefined, ...packs.flatMap(pack => pack.families.map(one => one.id))].flatMap(family => {
  const result = compile(packs, '2026-11-27', family)
  return result.ok ? [result.program] : []
})

describe.each(letterLanguages)('on random answers to the shipped packs, in %s', language => {
  test('every sure finding is named, nothing accuses, every caution is there, and it fits', () => {
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
          const [found = ''] = letter.split(sayIn(language)('letter.open'))
          const cutShort = /^…\D*\d+/m.test(found)
          const told = inLanguage(program, language)
          const named = sureFindings(screen).filter(finding =>
            Object.entries(answersRead(program, screen.check.answers, finding)).some(([id, answer]) => {
              const question = told.questions.get(id)
              return question && found.includes(`${question.ask} ${sayAnswer(sayIn(language), question, answer)}`)
            }),
          )
          if (!cutShort) expect(named.length).toBe(sureFindings(screen).length)
        },
      ),
      { numRuns: 150 },
    )
  }, 120_000)
})

const heron = programs.find(program => program.family?.id === 'brindlewick-heron') as Program
const pick = (option: string): Answer => ({ kind: 'option', option })

describe('what stands in it', () => {
  test('a cell that contradicts its family: what was seen does not match, and no rule’s own words', () => {
    const letter = letterOf(
      'en',
      heron,
      finished(heron, { legs: pick('three'), 'weld-marks': pick('spots'), 'sold-as': pick('new-bare') }),
    )
    expect(letter).toMatch(/does not match the description:\n- .*legs.*Three/i)
    expect(letter).toMatch(/could not be verified[\s\S]*weld marks.*Pits or torn spots/)
    expect(letter).not.toMatch(/This is another cell|salvaged|welded into a pack/)
    expect(letter).toMatch(/sold as “Brindlewick Heron/)
  })

  test('an unsafe cell: unsafe, refund without return, and nothing more to be looked at', () => {
    const letter = letterOf('en', heron, finished(heron, { dent: pick('dented') }))
    expect(letter).toMatch(/The following is unsafe[\s\S]*\n- .*Dent/i)
    expect(letter).toMatch(/refund \[amount\] by \[date\], without return/)
    expect(letter).toMatch(/Nothing more was checked/)
  })

  test('an open check accuses of nothing: it asks for papers, and says what was left open', () => {
    const letter = letterOf('en', heron, finished(heron, { rust: { kind: 'cant-tell' } }))
    expect(letter).toMatch(/It could not be verified that the cell is as described\./)
    expect(letter).toMatch(/left open here:\n- .*\?[\s\S]*…and \d+ more/)
    expect(letter).toMatch(/tell me the maker[\s\S]*If that is not possible, I ask you to refund/)
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
    expect(letter).toMatch(/- Ask 0\? Bad\n/)
    expect(letter).not.toMatch(/Ask 1/)
  })

  test('cells bought together: for the one that looks worst', () => {
    expect(letterOf('en', heron, finished(heron, { dent: pick('dented') }, 12))).toMatch(
      /12 lithium-ion cells[\s\S]*looks worst/,
    )
  })
})

/** A pack with two questions of this wording and rules of these conditions. */
function odd(rules: readonly { id: string; when: object }[], ask = 'Ask', label = 'Bad', name = 'F'): Program {
  const questions = [0, 1].map(i => ({
    id: `q${i}`,
    ask: `${ask} ${i}?`,
    look: 'x',
    care: 'look',
    effort: 1,
    options: [
      { id: 'good', label: 'Good' },
      { id: 'bad', label },
    ],
  }))
  const read = readPack({
    pack: 'odd',
    version: '1.0.0',
    written: '2026-11-27',
    title: 'x',
    about: 'x',
    sources: { s: { kind: 'memory', text: 'x' } },
    questions,
    rules: [
      ...rules.map(rule => ({ kind: 'must', means: 'counterfeit', says: 'x', source: ['s'], ...rule })),
      { id: 'last', kind: 'sign', strength: 'weak', when: { q1: 'bad' }, says: 'x', source: ['s'] },
    ],
    families: [{ id: 'f', name, maker: 'M', given: {}, enough: ['last'] }],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const compiled = compile([read.pack], '2026-11-27', 'f')
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}

describe('text of a pack that wants to be more than text', () => {
  const nasty = 'x```\n# @everyone [a](https://b.example)\n\nPS: pay me.\u202e\u200b'
  const program = odd([{ id: 'one', when: { q0: 'bad' } }], nasty, nasty.slice(0, 60), 'F```\nG')
  const screen = finished(program, { q0: pick('bad') })

  test('stays one line of the list, and inside the block of code', () => {
    const letter = letterOf('en', program, screen)
    const lines = letter.split('\n').filter(line => /everyone|PS: pay me/.test(line))
    for (const line of lines) expect(line).toMatch(/^- /)
    expect(letter).not.toMatch(/[\u202e\u200b]/)
    const shown = showLetter(sayIn('en'), program, screen, { text: letter, language: 'en' })
    const block = shown.components.flatMap(part =>
      part.type === ComponentType.TextDisplay && part.content.startsWith('```') ? [part.content] : [],
    )
    expect(block).toHaveLength(1)
    expect(block[0]?.match(/```/g)).toHaveLength(2)
    expect(wordsOf(shown).match(/everyone/g)?.length).toBe(block[0]?.match(/everyone/g)?.length)
  })

  test('at its longest, and with forty findings, it fits with its caution and its steps', () => {
    const long = 'word '.repeat(55).trim()
    for (const language of languages) {
      const wordy = odd([{ id: 'one', when: { q0: 'bad' } }], long, 'word '.repeat(15).trim())
      const letter = letterOf(language, wordy, finished(wordy, { q0: pick('bad'), q1: pick('bad') }))
      expect(letter.length).toBeLessThanOrEqual(longestLetter)
      const danger = finished(heron, { dent: pick('dented'), 'hot-now': pick('happening') })
      const full = { text: '`'.repeat(longestLetter), language: 'de' } as const
      const say = sayIn(language)
      const shown = showLetter(say, inLanguage(heron, language), danger, full)
      expect(wordsOf(shown).length).toBeLessThanOrEqual(textBudget)
      expect(wordsOf(shown)).toContain(say('caution.line'))
      expect(wordsOf(shown)).toContain(say('next.no-post'))
      // First the steps, then the letter.
      expect(wordsOf(shown).indexOf(say('next.danger.get-away'))).toBeLessThan(wordsOf(shown).indexOf("'''"))
    }
  })
})

describe('wording that accuses', () => {
  test('of a pack is left out of the draft, and what else was found is there', () => {
    const rules = [
      { id: 'one', when: { q0: 'bad' } },
      { id: 'two', when: { q1: 'bad' } },
    ]
    for (const ask of ['Is it FAKE', 'Hat man dich betrogen', '¿Es una falsificación', 'A ｆｒａｕｄ']) {
      const program = odd(rules, ask)
      const screen = finished(program, { q0: pick('bad'), q1: pick('bad') })
      const letter = letterOf('en', program, screen)
      expect(letter).not.toContain(ask)
      expect(letter).toMatch(/without return/)
    }
    const kept = odd(rules, 'Ask')
    const both = letterOf('en', kept, finished(kept, { q0: pick('bad'), q1: pick('bad') }))
    expect(both).toMatch(/- Ask 0\? Bad\n- Ask 1\? Bad/)
  })

  test('of a person stays theirs, and they are told what carries further', () => {
    const screen = finished(heron, { dent: pick('dented') })
    for (const language of languages) {
      const say = sayIn(language)
      const shown = (text: string) => wordsOf(showLetter(say, heron, screen, { text, language: 'en' }))
      expect(shown('You sold me a fake.')).toContain('You sold me a fake.')
      expect(shown('You sold me a fake.')).toContain(say('letter.accuses', { word: 'fake' }))
      expect(shown('It does not match.')).not.toContain(say('letter.accuses', { word: 'fake' }))
    }
  })
})

describe('the screen', () => {
  test('gives the letter back as it stands, and forms have an id of their own each', () => {
    const screen = finished(heron, { dent: pick('dented') })
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), typed => {
        const shown = showLetter(sayIn('es'), heron, screen, { text: typed, language: 'en' })
        expect(letterIn(shown.components)).toBe(typed.replaceAll('`', "'"))
      }),
    )
    const ids = ['0123abcd', '0123abce'].map(
      opening => letterForm(sayIn('en'), 'abcdefgh', { text: 'x', language: 'en' }, opening).custom_id,
    )
    expect(new Set(ids).size).toBe(2)
  })

  test('ids decode to what they were made of, and nothing else decodes', () => {
    const check = 'abcdefgh'
    for (const act of [
      { is: 'write', check },
      { is: 'language', check },
      { is: 'change', check, language: 'de' },
      { is: 'changed', check, language: 'es', opening: '0123abcd' },
    ] as const)
      expect(decodeLetter(encodeLetter(act))).toEqual(act)
    fc.assert(
      fc.property(fc.string(), tail => {
        const act = decodeLetter(`clt1.${tail}`)
        if (act) expect(encodeLetter(act)).toBe(`clt1.${tail}`)
      }),
    )
    for (const id of [
      'clt1',
      'clt1.write',
      'clt1.write.abcdefgh.en',
      'clt1.change.abcdefgh.fr',
      'clt1.changed.abcdefgh.en',
    ])
      expect(decodeLetter(id)).toBeUndefined()
  })
})
