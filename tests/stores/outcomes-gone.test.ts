// Outcomes that a person has deleted, or that are past their time, are gone from every file of the database.
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { base } from '../trends/base-outcome.ts'
import { testCodes, testSeal } from './test-seal.ts'

test.each([
  ['forgotten', 'forget'],
  ['past their time', 'purgeBefore'],
] as const)('outcomes that are %s leave no byte of their pseudonym', async (_, how) => {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-gone-'))
  const db = await openSqlite(join(folder, 'cellwary.db'))
  const log = openOutcomeLog(db, testSeal, testCodes)
  const gone = { ...base, reporter: 'd0'.repeat(32), pooled: 'e1'.repeat(32), week: '2026-W02' }
  const kept = { ...base, reporter: 'f2'.repeat(32), week: '2026-W20' }
  const bytes = async () =>
    (await Promise.all((await readdir(folder)).map(name => readFile(join(folder, name), 'latin1')))).join()
  await log.record(gone)
  await log.record(kept)
  // While it is there, the search finds it, or it would find nothing whatever happened.
  expect(await bytes()).toContain(gone.reporter)
  expect(how === 'forget' ? await log.forget([gone.reporter]) : await log.purgeBefore('2026-W10')).toBe(1)
  const left = await bytes()
  expect(left).not.toContain(gone.reporter)
  expect(left).not.toContain(gone.pooled)
  expect(left).toContain(kept.reporter)
  await db.destroy()
  await rm(folder, { recursive: true })
})
