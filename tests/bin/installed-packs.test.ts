// Packs and constructions are remembered only as long as the code that reads them is the same: the list of that code is complete.
import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { constructionReaders } from '../../src/packs/installed-constructions.ts'
import { packReaders } from '../../src/packs/installed-packs.ts'

/** What a file imports of ours, types left aside: they are gone when it runs. */
const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(/^import (?!type )([^'"]*?) from '(\.[^']+)'/gm)]
    .filter(([, names = '']) =>
      names
        .replace(/[{}]/g, '')
        .split(',')
        .some(name => name.trim() !== '' && !name.trim().startsWith('type ')),
    )
    .map(([, , from = '']) => resolve(dirname(file), from))

test.for([
  ['packs', packReaders],
  ['constructions', constructionReaders],
] as const)('whatever the readers of %s run is in the list', ([, readers]) => {
  const missing = readers.flatMap(importsOf).filter(file => !readers.includes(file))
  expect(readers.flatMap(importsOf).length).toBeGreaterThan(5)
  expect(missing).toEqual([])
})
