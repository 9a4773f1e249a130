// A start that changes a database of an earlier version leaves a copy of it as it was, once; and a restored back-up forgets again.
import { copyFile, mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, expect, test } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { type Config, readConfig } from '../../src/bin/config.ts'
import { openServices } from '../../src/bin/open-services.ts'
import { openDatabase } from '../../src/bin/prepare-data.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { noPosts } from '../flows/no-posts.ts'
import { pausedCheck } from '../stores/paused-check.ts'

let data: string
let config: Config
let lines: string[]
const log = openLog('warn', { write: (line: string) => void lines.push(line) })
beforeEach(async () => {
  lines = []
  data = await mkdtemp(join(tmpdir(), 'cellwary-copy-'))
  const read = readConfig({ CELLWARY_DATA: data, CELLWARY_PICTURES: 'off' })
  if (!read.ok) throw new Error(read.sentences.join())
  config = read.config
})
afterEach(() => rm(data, { recursive: true, force: true }))

const copies = async () => (await readdir(data)).filter(name => name.includes('before'))
const rowsOf = (file: string) => {
  const database = new DatabaseSync(file, { readOnly: true })
  const rows = (table: string) => database.prepare(`select * from ${table} order by 1`).all()
  try {
    return [rows('kysely_migration'), rows('checks'), rows('servers')]
  } finally {
    database.close()
  }
}

async function bringEarlier(): Promise<string> {
  const file = join(data, 'cellwary.db')
  const database = new DatabaseSync(file)
  database.exec(await readFile(join(import.meta.dirname, '../stores/version-0.1.0/sqlite.sql'), 'utf8'))
  database.close()
  return file
}

test('as it was, for this user alone, told of at every start as long as it lies there', async () => {
  const before = rowsOf(await bringEarlier())
  expect(before[1]?.length).toBeGreaterThan(0)
  for (let start = 0; start < 2; start++) await (await openDatabase(config, log)).destroy()
  const copy = `cellwary-before-${manifest.version}.db`
  expect(await copies()).toEqual([copy])
  expect(rowsOf(join(data, copy))).toEqual(before)
  expect((await stat(join(data, copy))).mode & 0o077).toBe(0)
  expect(lines.map(line => /delete it once all is well|still lies here/.exec(line)?.[0])).toEqual([
    ...['delete it once all is well', 'still lies here'],
  ])
})

test('a copy that was cut off is made anew; a database that begins has none', async () => {
  await (await openDatabase(config, log)).destroy()
  expect(await copies()).toEqual([])
  await rm(join(data, 'cellwary.db'))
  const before = rowsOf(await bringEarlier())
  const copy = join(data, `cellwary-before-${manifest.version}.db`)
  await writeFile(`${copy}.part`, 'half of it')
  await (await openDatabase(config, log)).destroy()
  expect(await copies()).toEqual([`cellwary-before-${manifest.version}.db`])
  expect(rowsOf(copy)).toEqual(before)
})

test('where it cannot be made, nothing is changed, and a sentence says so', async () => {
  const file = await bringEarlier()
  const before = rowsOf(file)
  // A folder of that name is in the way, as a full disk would be.
  await mkdir(join(data, `cellwary-before-${manifest.version}.db.part`, 'in-the-way'), { recursive: true })
  await expect(openDatabase(config, log)).rejects.toThrow(/could not be copied/)
  expect(rowsOf(file)).toEqual(before)
})

test('a start on a back-up from before an erasure erases again', async () => {
  const holder = '900000000000000401'
  const first = await openServices(config, log, noPosts)
  expect(await first.services.checks.create({ ...pausedCheck('c1'), holder }, 'i1')).toBe('saved')
  await first.close()
  await copyFile(join(data, 'cellwary.db'), join(data, 'back-up'))
  const second = await openServices(config, log, noPosts)
  await second.services.traces.forgetPerson(holder)
  await second.close()
  await copyFile(join(data, 'back-up'), join(data, 'cellwary.db'))
  const third = await openServices(config, log, noPosts)
  expect(await third.services.checks.load('c1')).toBeUndefined()
  await third.close()
  expect(lines.join()).toMatch(/erased since is erased again/)
})
