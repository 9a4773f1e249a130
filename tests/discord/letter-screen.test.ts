// The screen of a letter: text of packs and of people stays text, fits, gives itself back, and ids decode to themselves.
import { ComponentType } from 'discord.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeLetter, encodeLetter } from '../../src/custom-ids/letter-id.ts'
import { letterForm, letterIn, showLetter } from '../../src/discord/check/letter/letter-screen.ts'
import { textBudget } from '../../src/discord/message/parts.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { longestLetter } from '../../src/words/letter/draft-letter.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { finished, heron, letterOf, odd, pick, wordsOf } from './finished-screens.ts'

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
      expect(wordsOf(shown).indexOf(say('safety.now'))).toBeLessThan(wordsOf(shown).indexOf("'''"))
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
    expect(both).toMatch(/- Ask 0\? Bad\.\n- Ask 1\? Bad\./)
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
