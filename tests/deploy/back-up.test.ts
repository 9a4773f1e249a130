// The back-up taken while the bot writes: whole, consistent, private, never over another one, and a refusal in a sentence.
import { execFile } from 'node:child_process'
import { mkdir, mkdtemp, open, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { backUp } from '../../deploy/back-up.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'

const script = resolve(import.meta.dirname, '../../deploy/back-up.ts')
const now = Date.UTC(2026, 10, 25, 10, 20, 30)
let folder: string
let data: string
let into: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-back-up-'))
  data = join(folder, 'data')
  into = join(folder, 'kept')
  await mkdir(data)
})
afterEach(() => rm(folder, { recursive: true }))

const check = (n: number) => pausedCheck(`c${n}`)

describe('a back-up', () => {
  test('holds no key of pseudonyms or seals, though they lie beside the database', async () => {
    await (await openSqlite(join(data, 'cellwary.db'))).destroy()
    const key = await openEpochKeys(join(data, 'keys')).keyOf('2026-E4')
    const sealing = await openEpochKeys(join(data, 'keys', 'seals')).keyOf('2026-W48')
    const done = await backUp(data, into, now)
    expect(await readdir(into, { recursive: true })).toEqual(['cellwary-2026-11-25T102030Z.db'])
    for (const one of [key, sealing])
      expect(done.ok && (await readFile(done.file)).includes(Buffer.from(one))).toBe(false)
    // The page for operators says what that is for, and what two hosts on one PostgreSQL have to share.
    const page = await readFile(resolve(script, '../operate.md'), 'utf8')
    expect(page).toMatch(/keys[\s\S]{0,200}out of every back-up/)
    expect(page).toMatch(/snapshot of the whole disk, or a back-up of both, has both/)
    expect(page).toMatch(/two hosts[\s\S]{0,300}same folder `keys`/i)
  })

  test('opens as the bot opens it and knows every check that was acknowledged before', async () => {
    const db = await openSqlite(join(data, 'cellwary.db'))
    const store = openCheckStore(db, testSeal)
    for (let n = 0; n < 50; n++) expect(await store.create(check(n), `i${n}`)).toBe('saved')
    const done = await backUp(data, into, now)
    expect(done).toEqual({ ok: true, file: join(into, 'cellwary-2026-11-25T102030Z.db') })
    await db.destroy()

    // One file and no other, readable by its owner only.
    expect(await readdir(into)).toEqual(['cellwary-2026-11-25T102030Z.db'])
    expect((await stat(join(into, 'cellwary-2026-11-25T102030Z.db'))).mode & 0o777).toBe(0o600)
    const again = await openSqlite(join(into, 'cellwary-2026-11-25T102030Z.db'))
    const kept = openCheckStore(again, testSeal)
    for (let n = 0; n < 50; n++) expect((await kept.load(`c${n}`))?.check).toEqual(check(n))
    expect(await kept.load('later')).toBeUndefined()
    await again.destroy()
  })

  test('holds one state and not two, though both sides of a sum are written all the while', async () => {
    const db = new DatabaseSync(join(data, 'cellwary.db'))
    db.exec('pragma journal_mode = wal; create table pairs (n integer, body text)')
    const pair = db.prepare('insert into pairs values (?, ?)')
    const write = (n: number) => {
      db.exec('begin')
      pair.run(n, 'x'.repeat(2000))
      pair.run(-n, 'x'.repeat(2000))
      db.exec('commit')
    }
    for (let n = 1; n <= 500; n++) write(n)
    let n = 500
    let copying = true
    const done = backUp(data, into, now).finally(() => {
      copying = false
    })
    // The copy takes turns with us, page by page, as it does with the bot.
    while (copying && n < 5000) {
      write(++n)
      await new Promise(setImmediate)
    }
    expect(await done).toMatchObject({ ok: true })
    db.close()
    expect(n).toBeGreaterThan(500)
    const copy = new DatabaseSync(join(into, 'cellwary-2026-11-25T102030Z.db'), { readOnly: true })
    const { rows, sum } = copy.prepare('select count(*) as rows, sum(n) as sum from pairs').get() ?? {}
    copy.close()
    expect(Number(rows)).toBeGreaterThanOrEqual(1000)
    expect(Number(rows) % 2).toBe(0)
    expect(sum).toBe(0)
  })

  test('is never written over another', async () => {
    await (await openSqlite(join(data, 'cellwary.db'))).destroy()
    expect(await backUp(data, into, now)).toMatchObject({ ok: true })
    const before = await stat(join(into, 'cellwary-2026-11-25T102030Z.db'))
    expect(await backUp(data, into, now)).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('exists already'),
    })
    expect((await stat(join(into, 'cellwary-2026-11-25T102030Z.db'))).mtimeMs).toBe(before.mtimeMs)
  })

  test('of a database that is not there is refused and makes nothing', async () => {
    expect(await backUp(data, into, now)).toMatchObject({ ok: false, sentence: expect.stringContaining('There is no') })
    expect(await readdir(folder)).toEqual(['data'])
    expect(await readdir(data)).toEqual([])
  })

  test('of a file that is no sound database fails and leaves nothing behind', async () => {
    await writeFile(join(data, 'cellwary.db'), 'no database at all '.repeat(500))
    await expect(backUp(data, into, now)).rejects.toThrow(/not a database/)
    expect(await readdir(into)).toEqual([])
  })

  test('of a damaged database is not kept', async () => {
    const path = join(data, 'cellwary.db')
    const db = new DatabaseSync(path)
    db.exec('create table t (a text); create index by_a on t (a)')
    for (let n = 0; n < 200; n++) db.exec(`insert into t values ('${n}')`)
    db.close()
    // The index, third page of the file, is wiped as a bad disk may wipe it; the table before it stays readable.
    const pages = await open(path, 'r+')
    await pages.write(Buffer.alloc(4096), 0, 4096, 2 * 4096)
    await pages.close()
    const done = await backUp(data, into, now)
    expect(done).toMatchObject({ ok: false, sentence: expect.stringContaining('not sound') })
    expect(await readdir(into)).toEqual([])
  })
})

describe('the script', () => {
  const run = (words: string[], env: NodeJS.ProcessEnv = {}) =>
    new Promise<{ code: number; out: string; err: string }>(done =>
      execFile(
        process.execPath,
        [script, ...words],
        { env: { PATH: process.env['PATH'], ...env } },
        (error, out, err) => done({ code: error === null ? 0 : Number(error.code), out, err }),
      ),
    )

  test('prints the file it made; the data folder comes from the second word or from CELLWARY_DATA', async () => {
    await (await openSqlite(join(data, 'cellwary.db'))).destroy()
    const named = await run([into, data])
    expect(named).toMatchObject({ code: 0, err: '' })
    expect((await stat(named.out.trim())).size).toBeGreaterThan(0)
    const fromEnv = await run([join(folder, 'other')], { CELLWARY_DATA: data })
    expect(fromEnv).toMatchObject({ code: 0, err: '' })
  })

  test.each([
    ['no folder', [], {}, 2, /^Usage/],
    ['a word too many', ['a', 'b', 'c'], {}, 2, /^Usage/],
    ['PostgreSQL in use', ['a'], { DATABASE_URL: 'postgres://h/d' }, 2, /pg_dump/],
    ['a wrong setting', ['a'], { CELLWARY_PORT: 'x' }, 2, /^CELLWARY_PORT/],
    ['nothing to back up', ['a', '/nowhere'], {}, 1, /There is no \/nowhere\/cellwary\.db/],
  ])('says what is wrong: %s', async (_, words, env, code, says) => {
    const ran = await run(words, env)
    expect(ran.code).toBe(code)
    expect(ran.out).toBe('')
    expect(ran.err).toMatch(says)
  })
})
