// The page's reading of Discord's markdown. Syntax from Discord's documentation (Reference, "Message Formatting").
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Block, readBlocks, readSpans, type Span } from '../../src/practice/page/markdown.ts'

const flat = (spans: readonly Span[]): string =>
  spans
    .map(span => {
      if (span.kind === 'text') return span.text
      if ('inside' in span) return `<${span.kind}>${flat(span.inside)}</>`
      if (span.kind === 'code') return `<code>${span.text}</>`
      if ('id' in span) return `<${span.kind} ${span.id}>`
      return `<${span.kind}>`
    })
    .join('')

test.each([
  ['**bold** and *thin* and _thin_', '<bold>bold</> and <italic>thin</> and <italic>thin</>'],
  ['***both***', '<bold><italic>both</></>'],
  ['__under__ ~~gone~~ ||hidden||', '<underline>under</> <struck>gone</> <spoiler>hidden</>'],
  ['`**not bold**`', '<code>**not bold**</>'],
  ['snake_case_name', 'snake_case_name'],
  ['2 * 3 * 4', '2 * 3 * 4'],
  ['\\*plain\\*', '*plain*'],
  ['<@12> <@&34> <#56> </check start:78> <t:0:R>', '<person 12> <role 34> <channel 56> <command> <time>'],
  ['[words](https://example.org/a)', '<link>words</>'],
  ['[words](javascript:alert(1))', '[words](javascript:alert(1))'],
  ['see https://example.org/a.', 'see <link>https://example.org/a</>.'],
  ['open **bold', 'open **bold'],
])('%s', (line, shown) => {
  expect(flat(readSpans(line))).toBe(shown)
})

test('blocks: headings, small print, lists, quotes and code', () => {
  const text =
    '# One\n## Two\n-# small\n- a\n  - b\n3. c\n> said\n> more\n```js\n# not a heading\n```\nplain\nsecond line'
  const shape = readBlocks(text).map((block: Block) => block.kind)
  expect(shape).toEqual(['heading', 'heading', 'small', 'list', 'quote', 'code', 'paragraph'])
  const list = readBlocks('- a\n  - b\n')[0]
  expect(list?.kind === 'list' && list.items.map(item => item.depth)).toEqual([0, 1])
})

test('any text is read to its end, and plain letters are never lost', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), text => {
      expect(Array.isArray(readBlocks(text))).toBe(true)
    }),
  )
  fc.assert(
    fc.property(fc.stringMatching(/^[a-zA-Z0-9 ,.é漢🔋]{1,80}$/u), line => {
      expect(flat(readSpans(line))).toBe(line)
    }),
  )
})
