// Licences: every package has one that this project can live with, and those that ask for a notice have it in the image.
import { execFile } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')
type Locked = { readonly dev?: boolean; readonly license?: string; readonly version?: string }
const lock = Object.entries(JSON.parse(read('package-lock.json')).packages as Record<string, Locked>).filter(
  ([path]) => path !== '',
)
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)
/** What stands in the package itself, where it is there; packages for other systems are known from the lock file alone. */
const licenceOf = ([path, locked]: readonly [string, Locked]): string | undefined => {
  const own = join(path, 'package.json')
  return existsSync(join(root, own)) ? JSON.parse(read(own)).license : locked.license
}

/** They ask for no more than that their text stays where it is. */
const plain = [
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'Apache-2.0',
  'BSL-1.0',
  'Unlicense',
  'CC0-1.0',
]
/** They ask for a notice, or for the source of what was changed. */
const noticed = ['LGPL-3.0-or-later', 'MPL-2.0', 'OFL-1.1']
const partsOf = (licence = ''): string[] => licence.replace(/[()]/g, '').split(/ (?:AND|OR) /)

/** Names of the table in the notices; an ellipsis stands for any ending. */
const told = [...read('deploy/notices.md').matchAll(/`(@[^`]+)`/g)].map(match => match[1] ?? '')
const isTold = (name: string) =>
  told.some(one => (one.endsWith('…') ? name.startsWith(one.slice(0, -1)) : name === one))

/** What is against the rule, by name. */
const against = (packages: typeof lock): string[] =>
  packages.flatMap(one => {
    const parts = partsOf(licenceOf(one))
    const name = nameOf(one[0])
    if (!parts.every(part => plain.includes(part) || noticed.includes(part))) return [`${name}: ${licenceOf(one)}`]
    const silent = !one[1].dev && parts.some(part => noticed.includes(part)) && !isTold(name)
    return silent ? [`${name}: ${licenceOf(one)}, and deploy/notices.md does not say so`] : []
  })

test('every package, here or for another system, has a licence of the list, and a notice where it asks for one', () => {
  expect(lock.length).toBeGreaterThan(400)
  expect(against(lock)).toEqual([])
  expect(against([['node_modules/strange', { license: 'SSPL-1.0' }]])).toEqual(['strange: SSPL-1.0'])
  expect(against([['node_modules/strange', {}]])).toEqual(['strange: undefined'])
  expect(against([['node_modules/strange', { license: 'MPL-2.0' }]])).toHaveLength(1)
})

test('the notices name nothing that is not there, and are in the image', () => {
  const names = lock.map(([path]) => nameOf(path))
  for (const one of told)
    expect(
      names.some(name => (one.endsWith('…') ? name.startsWith(one.slice(0, -1)) : name === one)),
      one,
    ).toBe(true)
  expect(told.length).toBeGreaterThan(4)
  expect(read('deploy/Containerfile')).toMatch(/^COPY deploy\/notices\.md /m)
})

test('the list of materials that the notices promise names every package in use, and marks those that are not', async () => {
  const [, words = ''] = /`npm (sbom [^`>]*) > /.exec(read('deploy/notices.md')) ?? []
  const { stdout } = await promisify(execFile)('npm', words.split(' '), { cwd: root, maxBuffer: 64 * 1024 ** 2 })
  type Listed = { readonly purl: string; readonly properties?: readonly { readonly name: string }[] }
  const listed = (JSON.parse(stdout).components as Listed[]).map(({ purl, properties = [] }) => ({
    name: decodeURIComponent(purl),
    dev: properties.some(one => one.name === 'cdx:npm:package:development'),
  }))
  const inUse = lock.filter(([path, { dev }]) => !dev && existsSync(join(root, path)))
  const used = inUse.map(([path, { version }]) => `pkg:npm/${nameOf(path)}@${version}`)
  expect(used.length).toBeGreaterThan(50)
  expect([...new Set(used)].sort()).toEqual([...new Set(listed.filter(one => !one.dev).map(one => one.name))].sort())
})
