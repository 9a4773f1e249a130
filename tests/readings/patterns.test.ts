// No pattern that looks through a whole text of people goes over the same characters again and again.
import { readdirSync, readFileSync } from 'node:fs'
import { stripTypeScriptTypes } from 'node:module'
import { analyse } from 'scslre'
import { describe, expect, test } from 'vitest'
import { parseAst } from 'vitest/node'
import { formatNames } from '../../src/ground/formats.ts'

const room = new URL('../../src/readings/', import.meta.url)

type Pattern = { readonly source: string; readonly flags: string }

/** The regular expressions written in a file. */
function patternsOf(name: string): Pattern[] {
  const found: Pattern[] = []
  const visit = (node: unknown): void => {
    if (node === null || typeof node !== 'object') return
    if ('regex' in node && node.regex) {
      const { pattern, flags } = node.regex as { pattern: string; flags: string }
      found.push({ source: pattern, flags })
    }
    for (const child of Object.values(node)) visit(child)
  }
  visit(parseAst(stripTypeScriptTypes(readFileSync(new URL(name, room), 'utf8'))))
  return found
}

/** Claims and lists of figures are searched whole; what is typed after a question and the cells of a log are cut to a length first. */
const searched = [
  ...readdirSync(new URL('claims/', room)).map(name => `claims/${name}`),
  'read-claims.ts',
  'batch/read-batch.ts',
  'log/unwrap-lines.ts',
  'log/answers.ts',
]

describe.each(searched)('%s', name => {
  const patterns = patternsOf(name)
  test.each(patterns.map(({ source, flags }) => [`/${source.slice(0, 80)}/${flags}`, source, flags] as const))(
    '%s',
    (_shown, source, flags) => {
      expect(analyse({ source, flags }).reports.map(({ type }) => type)).toEqual([])
    },
  )
  if (patterns.length === 0) test('has none', () => expect(patterns).toEqual([]))
})

test('the check sees what it is for', () => {
  const seen = (source: string) => analyse({ source, flags: 'u' }).reports.map(({ type }) => type)
  // The price pattern of old: every digit of a long number was a beginning of its own.
  expect(seen("\\d[\\d.,']* ?[€$]")).toContain('Move')
  expect(seen('^(\\d+)\\s*\\d+x$')).toContain('Trade')
  expect(patternsOf('claims/claim-words.ts').length).toBeGreaterThan(10)
  expect(formatNames.join('|')).not.toMatch(/[^\d|]/)
})
