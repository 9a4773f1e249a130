// cellwary practice: the practice room's families go, while a room on the same data goes on, and nothing else of it.
import { spawn } from 'node:child_process'
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { skeletonOf } from '../../src/families/names.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { draftOf, named } from '../families/made-families.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-practice-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

async function run(...words: string[]): Promise<{ code: number | null; out: string; err: string }> {
  const env = { ...process.env, CELLWARY_DATA: folder }
  const child = spawn(process.execPath, [entry, 'practice', ...words], { stdio: ['ignore', 'pipe', 'pipe'], env })
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { code, out, err }
}

test('empties the families of the practice room, and of no other server', async () => {
  await mkdir(join(folder, 'practice'))
  const db = await openSqlite(join(folder, 'practice', 'cellwary.db'))
  const store = openFamilyStore(db)
  const server = demoServer.server.id
  for (const where of [server, 'another'])
    await store.create(draftOf(where, named('f-aaaaaa', 'Dunlin'), { revision: 0 }), skeletonOf('Dunlin'))
  // The room is open meanwhile.
  expect(await run('empty-families')).toMatchObject({ code: 0, out: expect.stringMatching(/^Taken away: 1\./) })
  expect(await store.heads(server)).toEqual([])
  expect(await store.heads('another')).toHaveLength(1)
  expect(await run('empty-families')).toMatchObject({ code: 0, out: expect.stringMatching(/^Taken away: 0\./) })
  await db.destroy()
})

test('says where it has looked when there is no practice room yet', async () => {
  const { code, err } = await run('empty-families')
  expect(code).toBe(1)
  expect(err).toMatch(/There is no practice room yet \(.*practice.*cellwary\.db\)\. Open it once/)
})
