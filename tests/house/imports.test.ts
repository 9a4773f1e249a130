// The arrows of the house: which room may import which, what a pure room may not touch, and how big a file may grow.
import { readdir, readFile } from 'node:fs/promises'
import { dirname, join, relative, resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { arrows, packages, pure, type Room, rooms } from './rooms.ts'

const root = resolve(import.meta.dirname, '../..')
/** The files of a pure room that may touch the world, and why. */
const impure: Record<string, string> = {
  'pictures/png.ts': 'the one file that turns SVG into PNG',
}
/** What only the clock, chance or the environment can answer, and what waits. */
const forbidden =
  /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bprocess\.|\bperformance\.|\basync\b|\bawait\b|\bsetTimeout\b|\bcrypto\b|\bfetch\(/
type Import = { readonly from: string; readonly typeOnly: boolean }
async function files(folder: string, ending = '.ts'): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true }).catch(() => [])
  return entries
    .filter(entry => entry.isFile() && entry.name.endsWith(ending) && !entry.parentPath.includes('node_modules'))
    .map(entry => join(entry.parentPath, entry.name))
}
function importsOf(source: string): Import[] {
  const found: Import[] = []
  for (const match of source.matchAll(/^\s*(?:import|export)\s+(type\s+)?([^'";]*?)\s*from\s*['"]([^'"]+)['"]/gm)) {
    const names = (match[2] ?? '')
      .replace(/[{}\s]+/g, ' ')
      .split(',')
      .map(name => name.trim())
      .filter(Boolean)
    const allTypes = names.length > 0 && names.every(name => name.startsWith('type '))
    found.push({ from: match[3] ?? '', typeOnly: match[1] !== undefined || allTypes })
  }
  for (const match of source.matchAll(/(?:^\s*import\s+|\bimport\()['"]([^'"]+)['"]/gm))
    found.push({ from: match[1] ?? '', typeOnly: false })
  return found
}
const roomOf = (path: string): Room | undefined =>
  rooms.find(room => path === join(root, 'src', room) || path.startsWith(`${join(root, 'src', room)}/`))
/** Code without comments, so that a word in a sentence is no offence. */
const codeOf = (source: string): string => source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '')

const sources = await Promise.all(
  (await files(join(root, 'src'))).map(async path => ({
    path,
    name: relative(join(root, 'src'), path),
    source: await readFile(path, 'utf8'),
  })),
)

test('there is something to look at', () => {
  expect(sources.length).toBeGreaterThan(100)
})

describe.each(rooms)('the room %s', room => {
  const mine = sources.filter(one => roomOf(one.path) === room)
  test('imports only the rooms it may', () => {
    const wrong = mine.flatMap(({ path, name, source }) =>
      importsOf(source).flatMap(({ from, typeOnly }) => {
        if (!from.startsWith('.')) return []
        const to = roomOf(resolve(dirname(path), from))
        if (to === room) return []
        // The version stands in one place.
        if (resolve(dirname(path), from) === join(root, 'package.json') && !pure.includes(room)) return []
        const allowed = to && arrows[room][to]
        const fine = allowed === 'all' || (allowed === 'types' && typeOnly)
        return fine ? [] : [`${name} imports ${from}${allowed === 'types' ? ' (types only are allowed)' : ''}`]
      }),
    )
    expect(wrong).toEqual([])
  })

  test.skipIf(!packages[room])('imports only the packages it may', () => {
    const allowed = packages[room] ?? []
    const wrong = mine.flatMap(({ name, source }) =>
      importsOf(source)
        .filter(
          ({ from, typeOnly }) =>
            !from.startsWith('.') &&
            !typeOnly &&
            !allowed.some(
              one => from === one || from.startsWith(`${one}/`) || (one.endsWith('/') && from.startsWith(one)),
            ),
        )
        .map(({ from }) => `${name} imports ${from}`),
    )
    expect(wrong).toEqual([])
  })

  test.skipIf(!pure.includes(room))('is pure: no clock, chance, environment or waiting', () => {
    const wrong = mine
      .filter(({ name }) => !(name in impure))
      .flatMap(({ name, source }) => {
        const offence = forbidden.exec(codeOf(source))
        return offence ? [`${name}: ${offence[0]}`] : []
      })
    expect(wrong).toEqual([])
  })
})

test('only the Discord room knows discord.js, and of the pure rooms only custom ids and the schemas of packs, families, outcomes and settings files know zod', () => {
  const wrong = sources.flatMap(({ name, source }) =>
    importsOf(source).flatMap(({ from }) => {
      if (from.startsWith('discord.js') && !name.startsWith('discord/')) return [`${name}: discord.js`]
      const pureRoom = pure.some(room => name.startsWith(`${room}/`))
      return from === 'zod' &&
        pureRoom &&
        !/^(engine\/pack|families|trends|custom-ids|server\/exchange\.ts$)/.test(name)
        ? [`${name}: zod`]
        : []
    }),
  )
  expect(wrong).toEqual([])
})

test('practice and the rest of the bot know nothing of each other', () => {
  const wrong = sources.filter(
    ({ name, source }) =>
      !name.startsWith('practice/') &&
      !name.startsWith('bin/') &&
      /practice\//.test(
        importsOf(source)
          .map(one => one.from)
          .join(' '),
      ),
  )
  expect(wrong.map(one => one.name)).toEqual([])
})

const everything = [
  ...sources,
  ...(await Promise.all(
    (
      await files(join(root, 'tests'))
    ).map(async path => ({ path, name: relative(root, path), source: await readFile(path, 'utf8') })),
  )),
]

test('no file is over 300 lines', () => {
  expect(
    everything
      .filter(({ source }) => source.split('\n').length > 301)
      .map(({ name, source }) => `${name}: ${source.split('\n').length - 1}`),
  ).toEqual([])
})

test('no room holds more than a fifth of the house', () => {
  const linesOf = (some: typeof sources) => some.reduce((sum, { source }) => sum + source.split('\n').length - 1, 0)
  const fifth = linesOf(sources) / 5
  const big = rooms
    .map(room => ({ room, lines: linesOf(sources.filter(one => roomOf(one.path) === room)) }))
    .filter(({ lines }) => lines > fifth)
  expect(big).toEqual([])
})

test('every file says in its first line what it is for', () => {
  const silent = everything.filter(({ source }) => !/^(#!.*\n)?\/\/ \S.*\w/.test(source))
  expect(silent.map(one => one.name)).toEqual([])
})

test('no drawer for odds and ends, no barrel, no enum, no default export', () => {
  const wrong = everything.flatMap(({ name, source }) => {
    const drawer = /(^|\/)(utils?|helpers?|manager|types|misc|common|index)\.ts$/.test(name)
    const code = codeOf(source)
    return drawer ||
      /^\s*(export )?(const )?enum\s/m.test(code) ||
      (/^export default/m.test(code) && !name.endsWith('.config.ts'))
      ? [name]
      : []
  })
  expect(wrong).toEqual([])
})

test('the visible top level is what the README says it is', async () => {
  const allowed = [
    'README.md',
    'DEVELOPERS.md',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'LICENSE',
    'src',
    'rules',
    'tests',
    'deploy',
  ]
  const seen = (await readdir(root)).filter(name => !name.startsWith('.') && name !== 'node_modules')
  expect(seen.filter(name => !allowed.includes(name))).toEqual([])
  expect(allowed.filter(name => !seen.includes(name))).toEqual([])
})

test('the lock file names no host', async () => {
  expect(await readFile(join(root, 'package-lock.json'), 'utf8')).not.toMatch(/"resolved"/)
})
