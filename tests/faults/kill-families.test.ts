// kill -9 while versions are put in force: head and version are both there or neither, and what was told is stored.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import { describe, expect, test } from 'vitest'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { draftOf, named } from '../families/made-families.ts'
import { databases } from '../stores/databases.ts'

const script = fileURLToPath(new URL('./put-in-force.ts', import.meta.url))
const url = process.env['CELLWARY_TEST_POSTGRES'] ?? 'postgres://postgres@127.0.0.1:5432/test'

for (const { name, missing } of databases)
  describe.skipIf(missing)(`on ${name}${missing ? ` (skipped: ${missing})` : ''}`, () => {
    test('two processes race and one after the other is killed in the middle; nothing is half there', async () => {
      const folder = await mkdtemp(join(tmpdir(), 'cellwary-kill-'))
      const place = name === 'SQLite' ? join(folder, 'test.db') : url
      const schema = `cellwary_kill_${process.pid}`
      const client = name === 'SQLite' ? undefined : new pg.Client({ connectionString: url })
      await client?.connect()
      await client?.query(`drop schema if exists ${schema} cascade`)
      await client?.query(`create schema ${schema}`)
      const db = name === 'SQLite' ? await openSqlite(place) : await openPostgres(place, schema)
      const store = openFamilyStore(db)
      await store.create(draftOf('s', named('f-aaaaaa', 'Killed')), 'killed')
      let told = 0
      const begin = async (): Promise<ChildProcess> => {
        const child = fork(script, [name, place, schema], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] })
        await once(child, 'message')
        child.on('message', head => {
          told = Math.max(told, Number(head))
        })
        return child
      }
      const other = await begin()
      try {
        for (let round = 0; round < 5; round++) {
          const before = told
          const child = await begin()
          // Killed after as many versions as the round says, of either (one may keep the other waiting), wherever it is then.
          while (told < before + 3 + round) await Promise.race([once(other, 'message'), once(child, 'message')])
          const gone = once(child, 'exit')
          child.kill('SIGKILL')
          await gone
          const family = await store.load('s', 'f-aaaaaa')
          const versions = await store.versions('s', 'f-aaaaaa')
          const head = family?.head ?? 0
          expect(head).toBeGreaterThanOrEqual(before)
          // The other one goes on meanwhile, so there may be later versions than the head that was read.
          const numbers = versions.map(one => one.number).sort((a, b) => a - b)
          expect(numbers).toEqual(Array.from({ length: numbers.length }, (_, i) => i + 1))
          expect(numbers.length).toBeGreaterThanOrEqual(head)
        }
      } finally {
        const gone = once(other, 'exit')
        other.kill('SIGKILL')
        await gone
      }
      const family = await store.load('s', 'f-aaaaaa')
      const versions = await store.versions('s', 'f-aaaaaa')
      expect(versions).toHaveLength(family?.head ?? -1)
      expect(family?.head).toBeGreaterThanOrEqual(told)
      expect(versions[0]?.facts.figures.capacity?.typical).toBe(1000 + (family?.head ?? 0))
      const left = await db.selectFrom('families').select('putting').execute()
      expect(left).toEqual([{ putting: null }])
      await db.destroy()
      await client?.query(`drop schema ${schema} cascade`)
      await client?.end()
      await rm(folder, { recursive: true, force: true })
    }, 120_000)
  })
