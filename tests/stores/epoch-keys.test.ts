// The keys behind pseudonyms: one an epoch for every process, readable by nobody else, and gone for good when their time is over.
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'

let folder: string
beforeEach(async () => {
  folder = join(await mkdtemp(join(tmpdir(), 'cellwary-keys-')), 'keys')
})
afterEach(() => rm(join(folder, '..'), { recursive: true, force: true }))

test('of many processes that ask at once all get the same key, and another epoch has another', async () => {
  const keys = await Promise.all(Array.from({ length: 20 }, () => openEpochKeys(folder).keyOf('2026-E4')))
  expect(new Set(keys.map(key => Buffer.from(key).toString('hex'))).size).toBe(1)
  expect(keys[0]).toHaveLength(32)
  expect(await openEpochKeys(folder).keyOf('2027-E1')).not.toEqual(keys[0])
  expect((await readdir(folder)).sort()).toEqual(['2026-E4.key', '2027-E1.key'])
})

test('nobody else on the machine can read them', async () => {
  await openEpochKeys(folder).keyOf('2026-E4')
  expect((await stat(join(folder, '2026-E4.key'))).mode & 0o777).toBe(0o600)
  expect((await stat(folder)).mode & 0o777).toBe(0o700)
})

test('the keys of epochs that are over are destroyed, on the disk and in memory; a restart finds the others', async () => {
  const keys = openEpochKeys(folder)
  const old = await keys.keyOf('2026-E3')
  const current = await keys.keyOf('2026-E4')
  expect(await keys.destroyBefore('2026-E4')).toBe(1)
  expect(await keys.destroyBefore('2026-E4')).toBe(0)
  expect(await readdir(folder)).toEqual(['2026-E4.key'])
  expect(await openEpochKeys(folder).keyOf('2026-E4')).toEqual(current)
  // Asked for once more, by a clock that went back, the old epoch has a new key: the old one is not to be had.
  expect(await keys.keyOf('2026-E3')).not.toEqual(old)
})

test('a folder that cannot be made is an error each time, not a key that is lost', async () => {
  await writeFile(join(folder, '..', 'in-the-way'), '')
  const keys = openEpochKeys(join(folder, '..', 'in-the-way'))
  await expect(keys.keyOf('2026-E4')).rejects.toThrow()
  await expect(keys.keyOf('2026-E4')).rejects.toThrow()
  expect(await readFile(join(folder, '..', 'in-the-way'), 'utf8')).toBe('')
})
