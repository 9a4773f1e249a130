// No file leads back to itself by its imports, types included: whoever reads one never has to read a circle.
import { readdir, readFile } from 'node:fs/promises'
import { dirname, join, relative, resolve } from 'node:path'
import { expect, test } from 'vitest'

const room = resolve(import.meta.dirname, '../../src')

async function importsByFile(): Promise<Map<string, string[]>> {
  const entries = await readdir(room, { recursive: true, withFileTypes: true })
  const found = new Map<string, string[]>()
  for (const entry of entries) {
    if (!entry.isFile() || !entry.name.endsWith('.ts')) continue
    const path = join(entry.parentPath, entry.name)
    const source = await readFile(path, 'utf8')
    const specifiers = [...source.matchAll(/(?:from|import|import\()\s*'(\.[^']+)'/g)].map(match => match[1] as string)
    found.set(
      path,
      specifiers.map(specifier => resolve(dirname(path), specifier)),
    )
  }
  return found
}

/** The first circle found from each file on, as a list of files; depth first, each file entered once. */
function circlesIn(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const done = new Set<string>()
  const circles: string[][] = []
  const walk = (file: string, way: string[]): void => {
    const seen = way.indexOf(file)
    if (seen >= 0) return void circles.push([...way.slice(seen), file])
    if (done.has(file)) return
    for (const next of graph.get(file) ?? []) walk(next, [...way, file])
    done.add(file)
  }
  for (const file of graph.keys()) walk(file, [])
  return circles
}

test('a circle is seen', () => {
  const graph = new Map([
    ['a', ['b']],
    ['b', ['c']],
    ['c', ['b']],
  ])
  expect(circlesIn(graph)).toEqual([['b', 'c', 'b']])
})

test('no file of the house leads back to itself', async () => {
  const graph = await importsByFile()
  expect(graph.size).toBeGreaterThan(300)
  expect(circlesIn(graph).map(circle => circle.map(file => relative(room, file)).join(' -> '))).toEqual([])
})
