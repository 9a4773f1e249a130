// The table of what people complain about, in DEVELOPERS.md: every row says what answers it, and every test it names is there.
import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const table = readFileSync(resolve(root, 'DEVELOPERS.md'), 'utf8')
  .split('\n')
  .flatMap(line => [...(/^\| (\d+) +\| (.+?) +\| (.+?) +\| (.+?) +\|$/.exec(line) ?? [])].slice(1, 5).join('\0') || [])
  .map(row => row.split('\0'))

test('every complaint is there once, in order', () => {
  expect(table.map(([number]) => Number(number))).toEqual(Array.from({ length: 31 }, (_, i) => i + 1))
})

test('each names a test that is there, or says why it is not answered', () => {
  for (const [number, , answer = '', named = ''] of table) {
    const paths = [...named.matchAll(/`(tests\/[^`]+)`/g)].map(([, path = '']) => path)
    if (answer.startsWith('not answered:')) continue
    expect(paths.length, `row ${number}`).toBeGreaterThan(0)
    for (const path of paths) expect(existsSync(resolve(root, path)), `row ${number}: ${path}`).toBe(true)
  }
})
