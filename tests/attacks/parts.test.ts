// A long run in parts: what is asked for, what the file keeps, and one table of all of it.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { attacks } from './long-form/attacks.ts'
import { addPart, readParts, together } from './long-form/parts.ts'
import { readWords } from './long-form/sizes.ts'

const names = attacks.map(one => one.name)

test('words ask for a size, one attack, a part, and a file; anything else is refused', () => {
  expect(readWords([], names)).toMatchObject({ name: 'full', only: undefined, part: { number: 1, of: 1 } })
  const some = '--size short --only kills-sqlite --part 3/10 --into runs.jsonl'.split(' ')
  expect(readWords(some, names)).toMatchObject({
    name: 'short',
    only: 'kills-sqlite',
    part: { number: 3, of: 10 },
    into: 'runs.jsonl',
  })
  for (const wrong of ['--size huge', '--only nothing', '--part 4/3', '--part 0/3', '--part x', '--into', '--speed 3'])
    expect(readWords(wrong.split(' '), names), wrong).toBeUndefined()
})

test('parts are kept beside each other, and are one line of the table together', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-parts-'))
  const file = join(folder, 'runs.jsonl')
  expect(await readParts(file)).toEqual([])
  const what = 'kills at random instants'
  await addPart(file, { attack: 'kills-sqlite', size: 'full', result: { what, done: 50, wrong: [], took: 1_000 } })
  await addPart(file, {
    attack: 'raid',
    size: 'full',
    result: { what: 'raid', done: 1, wrong: [], slowestMs: 9, took: 1 },
  })
  const lost = ['kill 7: something was lost']
  await addPart(file, { attack: 'kills-sqlite', size: 'full', result: { what, done: 50, wrong: lost, took: 3_000 } })
  const parts = await readParts(file)
  expect(parts).toHaveLength(3)
  expect(together(parts, names)).toEqual([
    { what, done: 100, wrong: lost, took: 4_000 },
    { what: 'raid', done: 1, wrong: [], slowestMs: 9, took: 1 },
  ])
  await rm(folder, { recursive: true })
})
