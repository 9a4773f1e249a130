// What is made plain is text wherever it stands, as the practice page reads Discord's markdown, and reaches past no place.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readBlocks, type Span } from '../../src/practice/page/markdown.ts'
import { bare, fenced, plain, plainLines, unmarked } from '../../src/words/plain.ts'
import { hostileText, tricks } from './hostile-text.ts'

const textOf = (spans: readonly Span[]): string => {
  const other = spans.filter(span => span.kind !== 'text')
  expect(other).toEqual([])
  return spans.map(span => (span.kind === 'text' ? span.text : '')).join('')
}
const onlyParagraph = (content: string): string => {
  const blocks = readBlocks(content)
  expect(blocks.map(block => block.kind)).toEqual(['paragraph'])
  return textOf(blocks.flatMap(block => (block.kind === 'paragraph' ? block.inside : [])))
}

describe('on one line', () => {
  test.each(tricks.map(trick => [JSON.stringify(trick), `x${trick}`] as const))('%s is text', (_, trick) => {
    expect(onlyParagraph(`said: ${plain(trick)}, they said`)).toBe(`said: ${bare(trick)}, they said`)
  })

  test('whatever it is, at the start of a line, in the middle and at the end', () => {
    fc.assert(
      fc.property(hostileText, text => {
        for (const [before, after] of [
          ['', ''],
          ['Why: ', ''],
          ['“', '” is damaged'],
          ['', ' has it'],
        ] as const)
          expect(onlyParagraph(`${before}${plain(text)}${after}`)).toBe(`${before}${bare(text)}${after}`)
      }),
      { numRuns: 2000 },
    )
  })

  test('also inside what we mark ourselves: it neither ends nor widens it', () => {
    fc.assert(
      fc.property(hostileText, text => {
        const shown = plain(text)
        const inside = [{ kind: 'text', text: bare(text) }]
        const bold = {
          kind: 'paragraph',
          inside: [
            { kind: 'bold', inside },
            { kind: 'text', text: ' end' },
          ],
        }
        expect(readBlocks(`**${shown}** end`)).toEqual([bold])
        expect(readBlocks(`> ${shown}`)).toEqual([{ kind: 'quote', inside }])
        expect(readBlocks(`-# ${shown}`)).toEqual([{ kind: 'small', inside }])
        expect(readBlocks(`### ${shown}\nnext`)[0]).toEqual({ kind: 'heading', level: 3, inside })
        expect(readBlocks(`- ${shown}`)).toMatchObject([{ kind: 'list', items: [{ inside }] }])
      }),
      { numRuns: 2000 },
    )
  })
})

describe('with its lines kept', () => {
  test('every line is text, and no more than one in a row is empty', () => {
    fc.assert(
      fc.property(hostileText, hostileText, (one, two) => {
        const shown = plainLines(`${one}\n\n\n${two}`)
        expect(shown).not.toMatch(/\n\s*\n\s*\n/)
        for (const block of readBlocks(`### Title\n${shown}`).slice(1)) {
          expect(block.kind).toBe('paragraph')
          if ('inside' in block) textOf(block.inside.filter(span => span.kind !== 'break'))
        }
      }),
      { numRuns: 2000 },
    )
  })

  test('in a block of code nothing ends the block', () => {
    fc.assert(
      fc.property(hostileText, text => {
        expect(readBlocks(`${fenced(text)}\nafter`).map(block => block.kind)).toEqual(['code', 'paragraph'])
      }),
    )
  })
})

describe('what nobody sees', () => {
  test.each([
    ['an override of direction, under which a program looks like a photo', 'photo\u202egpj.exe', 'photogpj.exe'],
    ['isolates and marks of direction', '\u2067a\u2069\u200fb\u061c', 'ab'],
    ['zero-width spaces, joiners of words, byte order marks', 'a\u200bb\u2060c\ufeffd', 'abcd'],
    ['soft hyphens and fillers that pass for letters', 'a\u00adb\u3164c\u115fd', 'abcd'],
    ['letters of the tag block', `a${'\u{e0041}\u{e0042}'}b`, 'ab'],
    ['line ends of every kind, tabs and controls', 'a\nb\r\nc\u2028d\te\0f\u0085g', 'a b c d e f g'],
    ['half of a letter', 'a\ud83d', 'a\ufffd'],
    ['marks piled up', `e${'\u0301'.repeat(40)}!`, `e${'\u0301'.repeat(4)}!`],
  ])('%s', (_, text, seen) => {
    expect(bare(text)).toBe(seen)
  })

  test('what emoji and scripts are made with stays', () => {
    for (const text of ['👩‍🔧', '❤️', 'می‌خواهم'.normalize(), 'नमस्ते', 'Ziegelstraße 7', '電池'])
      expect(bare(text).replace(/[\u2068\u2069]/g, '')).toBe(text)
  })

  test('text that runs from right to left is kept apart from ours (UAX #9: FSI … PDI), whatever it tries to close', () => {
    expect(bare('שלום')).toBe('\u2068שלום\u2069')
    expect(bare('\u2069\u2069مرحبا\u2068')).toBe('\u2068مرحبا\u2069')
  })
})

test('a terminal gets it back without escapes', () => {
  fc.assert(
    fc.property(hostileText, text => {
      expect(unmarked(plain(text))).toBe(bare(text))
    }),
  )
})

test('it grows to twice its length at most, so that what fits before has room to be reckoned with', () => {
  fc.assert(
    fc.property(hostileText, text => {
      expect(plain(text).length).toBeLessThanOrEqual(2 * text.length + 2)
    }),
  )
})
