// cellwary trends as a person uses it: a frozen release byte by byte, the methods on figures someone brings, and mistakes.
import { spawn } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { demoOutcomes } from '../../src/trends/demo.ts'
import { decodePng } from '../pictures/pixels.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { closeDue } from '../trends/close-due.ts'
import { demoCast } from '../trends/demo-cast.ts'
import { lrCusum, observed } from '../trends/rises/cusum-figures.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
let folder: string
let db: string
let frozen: string | null
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-cli-'))
  db = join(folder, 'cellwary.db')
  const opened = await openSqlite(db)
  const [outcomes, releases] = [openOutcomeLog(opened, testSeal, testCodes), openReleaseLog(opened)]
  for (const outcome of demoOutcomes(7, demoCast, '2026-W40')) await outcomes.record(outcome)
  const scope = { kind: 'server', server: demoCast.server } as const
  await closeDue(outcomes, releases, scope, '2026-W40')
  frozen = await releases.bytes(scope, '2026-W39')
  await opened.destroy()
}, 60_000)
afterAll(() => rm(folder, { recursive: true, force: true }))

async function run(...words: string[]): Promise<{ code: number | null; out: string; err: string }> {
  const child = spawn(process.execPath, [entry, 'trends', ...words], { stdio: ['ignore', 'pipe', 'pipe'] })
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { code, out, err }
}
const kept = async (value: unknown): Promise<string> => {
  const file = join(folder, 'input.json')
  await writeFile(file, typeof value === 'string' ? value : JSON.stringify(value))
  return file
}

describe('a release', () => {
  test('as JSON is the stored bytes, for the week that was asked for', async () => {
    const { out, code } = await run('--db', db, '--week', '2026-W39', '--json')
    expect(code).toBe(0)
    expect(out).toBe(`${frozen}\n`)
  })

  test('is drawn beside its words, into a file that ends as a picture does', async () => {
    const file = join(folder, 'verdicts.png')
    const { code, out } = await run('--db', db, '--picture', file)
    expect({ code, out }).toEqual({ code: 0, out: expect.stringMatching(/go up in fives/) })
    expect(decodePng(await readFile(file)).width).toBe(720)
    expect(await run('--db', db, '--picture', 'verdicts.jpg')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^--picture: .*neither in \.png nor in \.svg/),
    })
  })

  test('in words names the planted pattern and accuses no family that only grows', async () => {
    const { out } = await run('--db', db)
    expect(out).toMatch(/Reasons that occur together[\s\S]*brant-40/)
    expect(out).not.toMatch(/harrow-30[^\n]*more checks end badly/)
    expect(out).toMatch(/go up in fives/)
    expect(out).toMatch(/do not use or charge the cell/)
  })

  test.each([
    [['--week', '2024-W07'], /no release of week 2024-W07.*There are: 20\d\d-W\d\d … 2026-W40/],
    [['--week', 'last'], /last: this is not a week/],
    [['--server', 'elsewhere'], /no releases of server elsewhere. There are: tidewater/],
  ])('%j has its sentence', async (words, sentence) => {
    expect(await run('--db', db, ...words)).toMatchObject({ code: 1, err: expect.stringMatching(sentence) })
  })

  test('several servers: it asks which; a damaged release is called one; a pool that is not is not made up', async () => {
    const path = join(folder, 'two.db')
    const two = await openSqlite(path)
    const state = { first: '2026-W10', families: {}, series: {}, rises: [] }
    for (const server of ['a', 'b'])
      await openReleaseLog(two).freeze({ kind: 'server', server }, '2026-W10', '{"format":1', state)
    await two.destroy()
    expect((await run('--db', path)).err).toMatch(/Say which with --server: a, b/)
    expect(await run('--db', path, '--server', 'a')).toMatchObject({
      code: 1,
      err: expect.stringMatching(/2026-W10 is damaged/),
    })
    expect((await run('--db', path, '--pool')).err).toMatch(/None is there yet/)
  })

  test('reading leaves the file as it is', async () => {
    const before = await readFile(db)
    await run('--db', db)
    expect((await readFile(db)).equals(before)).toBe(true)
  })

  test('after a gap that no running bot would close, weeks are closed when somebody says so', async () => {
    const path = join(folder, 'gap.db')
    const old = await openSqlite(path)
    const state = { first: '2020-W10', families: {}, series: {}, rises: [] }
    await openReleaseLog(old).freeze({ kind: 'server', server: 'a' }, '2024-W10', '{}', state)
    await old.destroy()
    expect((await run('close', '--db', path)).out).toMatch(/^server:a: \d{2,} weeks closed\.$/m)
    expect((await run('close', '--db', path)).out).toMatch(/nothing was due/)
  })

  test('a database that is none, or not named', async () => {
    expect(await run('--db', join(folder, 'nowhere.db'))).toMatchObject({
      code: 1,
      err: expect.stringMatching(/no database here/),
    })
    expect(await run('--db', await kept('hello'))).toMatchObject({
      code: 1,
      err: expect.stringMatching(/not a database of Cellwary/),
    })
    expect(await run()).toMatchObject({ code: 2, err: expect.stringMatching(/--db/) })
  })
})

describe('detect', () => {
  // Figures of R's surveillance, see cusum-figures.ts.
  const [figures] = lrCusum
  test('gives statistic, expected and alarms as the published library does', async () => {
    if (!figures) throw new Error('no figures')
    const { mu0, theta, threshold, statistic, alarms } = figures
    const series = {
      method: 'lr-cusum',
      scatter: 'poisson',
      observed,
      expected: mu0,
      kappa: Math.exp(theta),
      threshold,
    }
    const { out } = await run('detect', await kept(series), '--json')
    const found = JSON.parse(out)
    expect(found.alarms).toEqual(alarms)
    for (const [i, value] of found.statistic.entries()) expect(value).toBeCloseTo(statistic[i] ?? 0, 9)
    expect((await run('detect', await kept(series))).out).toMatch(/16: .*ALARM[\s\S]*Alarms in weeks 16, 18/)
  })

  test.each([
    ['{"method":', /not valid JSON/],
    [{ method: 'lr-cusum', observed: [1, -1] }, /observed, week 2: a week has a whole number of 0 or more/],
    [{ method: 'spike', observed: [1, 2], checks: [1] }, /checks has 1 weeks, but observed has 2/],
    [{ method: 'lr-cusum', observed: [1], kappa: 1 }, /kappa: this value is out of its range \(1.01 to 100\)/],
    [{ method: 'tarot', observed: [1] }, /method/],
  ])('%j has its sentence', async (series, sentence) => {
    const { code, err } = await run('detect', await kept(series))
    expect(err).toMatch(sentence)
    expect(code).toBe(1)
  })
})

describe('patterns', () => {
  const rows = Array.from({ length: 120 }, (_, i) => ({
    items: i < 20 ? ['code-on-can', 'four-legs'] : i % 3 ? ['light'] : ['light', 'four-legs'],
    recent: i < 30,
  }))
  test('finds what rises together, with counts and p', async () => {
    const { out, code } = await run('patterns', await kept({ rows }), '--json')
    expect(code).toBe(0)
    expect(out).toContain('code-on-can')
    expect((await run('patterns', await kept({ rows }))).out).toMatch(/20 of 30 recent rows, 0 of 90 earlier ones/)
  })

  test.each([
    [{ rows: [{ items: ['a'], recent: true }] }, /1 rows are recent and 0 are not/],
    [{ rows: [{ items: [''], recent: true }] }, /Row 1: an item is a text/],
  ])('%j has its sentence', async (table, sentence) => {
    expect(await run('patterns', await kept(table))).toMatchObject({ code: 1, err: expect.stringMatching(sentence) })
  })
})
