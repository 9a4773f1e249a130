// kill -9 at each step of putting a family in force, on every database: what was told is stored, and nothing is half there.
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { draftOf, named } from '../families/made-families.ts'
import { databases } from '../stores/databases.ts'
import { openOwnDatabase } from './own-database.ts'

const script = fileURLToPath(new URL('./put-in-force-by-steps.ts', import.meta.url))

/** What it told before it ended, and by what it ended. */
async function run(words: readonly string[], step: number) {
  const child = fork(script, [...words, String(step)], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] })
  const told: string[] = []
  child.on('message', one => told.push(String(one)))
  const [code, signal] = await once(child, 'close')
  return { told, code, signal }
}

for (const { name, missing } of databases)
  describe.skipIf(missing)(`on ${name}${missing ? ` (skipped: ${missing})` : ''}`, () => {
    test('asked for, agreed to, or neither: killed at whichever step, and done again afterwards', async () => {
      const database = await openOwnDatabase(name, 'steps')
      const { db, words } = database
      const store = openFamilyStore(db)
      const anew = async () => {
        await store.forget('s')
        await store.create(draftOf('s', named('f-aaaaaa', 'Killed')), 'killed')
      }
      await anew()
      const whole = await run(words, 0)
      expect(whole).toMatchObject({ code: 0, told: ['asked', 'in-force', expect.stringMatching(/^steps \d+$/)] })
      const steps = Number(whole.told.at(-1)?.split(' ')[1])
      expect(steps).toBeGreaterThanOrEqual(8)
      const states = new Set<string>()
      for (let step = 1; step <= steps; step++) {
        await anew()
        const { told, signal } = await run(words, step)
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
        expect((await run(words, 0)).told).toContain('in-force')
        expect(await store.versions('s', 'f-aaaaaa')).toHaveLength(1)
      }
      expect([...states].sort()).toEqual(['draft', 'in-force', 'in-review'])
      expect(await db.selectFrom('families').select('putting').execute()).toEqual([{ putting: null }])
      await database.close()
    }, 300_000)
  })
