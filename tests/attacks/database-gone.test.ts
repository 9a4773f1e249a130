// The database is removed or replaced under a running bot: nothing is acknowledged that is kept by nobody.
import { mkdtemp, rename, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { failingOf } from '../../src/discord/interaction/failures.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOptOuts } from '../../src/stores/opt-outs.ts'

let folder: string
let file: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-gone-'))
  file = join(folder, 'cellwary.db')
})
afterEach(() => rm(folder, { recursive: true, force: true }))

test.each([
  ['removed', () => rm(file)],
  ['moved away', () => rename(file, `${file}.old`)],
  ['replaced by another', () => rm(file).then(() => writeFile(file, ''))],
])('%s: the next change is trouble, and told so', async (_, befall) => {
  const db = await openSqlite(file)
  const outs = openOptOuts(db)
  await outs.add('900000000000000001')
  await befall()
  const failed = await outs.add('900000000000000002').then(
    () => undefined,
    (error: unknown) => error,
  )
  expect(failed).toMatchObject({ code: 'DATABASE_GONE' })
  expect(failingOf(failed)).toBe('trouble')
  await db.destroy()
})

test('left alone, it goes on', async () => {
  const db = await openSqlite(file)
  const outs = openOptOuts(db)
  for (let i = 0; i < 10; i++) await outs.add(`90000000000000000${i}`)
  expect(await outs.has('900000000000000009')).toBe(true)
  await db.destroy()
})
