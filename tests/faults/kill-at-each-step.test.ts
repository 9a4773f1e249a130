// kill -9 at each step of putting a family in force, on every database: what was told is stored, and nothing is half there.
import { fork } from 'node:child_process'
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

const script = fileURLToPath(new URL('./put-in-force-by-steps.ts', import.meta.url))
const url = process.env['CELLWARY_TEST_POSTGRES'] ?? 'postgres://postgres@127.0.0.1:5432/test'

/** What it told before it ended, and by what it ended. */
async function run(kind: string, place: string, schema: string, step: number) {
  const child = fork(script, [kind, place, schema, String(step)], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] })
  const told: string[] = []
  child.on('message', one => told.push(String(one)))
  const [code, signal] = await once(child, 'close')
  return { told, code, signal }
}

for (const { name, missing } of databases)
  describe.skipIf(missing)(`on ${name}${missing ? ` (skipped: ${missing})` : ''}`, () => {
    test('asked for, agreed to, or neither: killed at whichever step, and done again afterwards', async () => {
      const folder = await mkdtemp(join(tmpdir(), 'cellwary-steps-'))
      const place = name === 'SQLite' ? join(folder, 'test.db') : url
      const schema = `cellwary_steps_${process.pid}`
      const client = name === 'SQLite' ? undefined : new pg.Client({ connectionString: url })
      await client?.connect()
      await client?.query(`drop schema if exists ${schema} cascade`)
      await client?.query(`create schema ${schema}`)
      const db = name === 'SQLite' ? await openSqlite(place) : await openPostgres(place, schema)
      const store = openFamilyStore(db)
      const anew = async () => {
        await store.forget('s')
        await store.create(draftOf('s', named('f-aaaaaa', 'Killed')), 'killed')
      }
      await anew()
      const whole = await run(name, place, schema, 0)
      expect(whole).toMatchObject({ code: 0, told: ['asked', 'in-force', expect.stringMatching(/^steps \d+$/)] })
      const steps = Number(whole.told.at(-1)?.split(' ')[1])
      expect(steps).toBeGreaterThanOrEqual(8)
      const states = new Set<string>()
      for (let step = 1; step <= steps; step++) {
        await anew()
        const { told, signal } = await run(name, place, schema, step)
        expect(signal).toBe('SIGKILL')
        const family = await store.load('s', 'f-aaaaaa')
        const versions = await store.versions('s', 'f-aaaaaa')
        const again = !states.has(family?.state ?? 'gone')
        states.add(family?.state ?? 'gone')
        if (told.includes('asked')) expect(family?.state).not.toBe('draft')
        if (told.includes('in-force')) expect(family?.state).toBe('in-force')
        const inForce = family?.state === 'in-force'
        expect(family?.head).toBe(inForce ? 1 : 0)
        expect(versions).toHaveLength(inForce ? 1 : 0)
        expect(family?.draft === null).toBe(inForce)
        expect(family?.review !== null).toBe(family?.state === 'in-review')
        // Whoever presses again comes to the end of it, from whatever was left.
        if (inForce || !again) continue
        expect((await run(name, place, schema, 0)).told).toContain('in-force')
        expect(await store.versions('s', 'f-aaaaaa')).toHaveLength(1)
      }
      expect([...states].sort()).toEqual(['draft', 'in-force', 'in-review'])
      expect(await db.selectFrom('families').select('putting').execute()).toEqual([{ putting: null }])
      await db.destroy()
      await client?.query(`drop schema ${schema} cascade`)
      await client?.end()
      await rm(folder, { recursive: true, force: true })
    }, 120_000)
  })
