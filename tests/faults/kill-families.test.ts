// kill -9 while versions are put in force: head and version are both there or neither, and what was told is stored.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { draftOf, named } from '../families/made-families.ts'
import { databases } from '../stores/databases.ts'
import { openOwnDatabase } from './own-database.ts'

const script = fileURLToPath(new URL('./put-in-force.ts', import.meta.url))

for (const { name, missing } of databases)
  describe.skipIf(missing)(`on ${name}${missing ? ` (skipped: ${missing})` : ''}`, () => {
    test('two processes race and one after the other is killed in the middle; nothing is half there', async () => {
      const database = await openOwnDatabase(name, 'kill')
      const { db, words } = database
      const store = openFamilyStore(db)
      await store.create(draftOf('s', named('f-aaaaaa', 'Killed')), 'killed')
      let told = 0
      const begin = async (): Promise<ChildProcess> => {
        const child = fork(script, words, { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] })
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
      await database.close()
    }, 300_000)
  })
