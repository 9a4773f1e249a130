// The command line for packs of one's own: begun, checked, listed, compared; and a broken one that stops nobody else.
import { execFile } from 'node:child_process'
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

const entry = new URL('../../src/bin/cellwary.ts', import.meta.url).pathname
const run = async (...words: string[]): Promise<{ code: number; out: string; err: string }> => {
  try {
    const { stdout, stderr } = await promisify(execFile)(process.execPath, [entry, ...words])
    return { code: 0, out: stdout, err: stderr }
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string }
    return { code, out: stdout, err: stderr }
  }
}

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-rules-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

test('a pack that is begun passes the checker, and starts', async () => {
  const pack = join(folder, 'own', 'my-cells')
  expect((await run('rules', 'new', pack, '--maker', 'Larkmoor', '--family', 'Sandpiper 25')).code).toBe(0)
  const checked = await run('rules', 'check', join(folder, 'own'))
  expect(checked).toMatchObject({ code: 0, err: '' })
  expect(checked.out).toMatch(/3 of 3 firings shown/)
  const { packs, leftOut } = await installedPacks(join(folder, 'own'))
  expect(leftOut).toEqual([])
  expect(packs.at(-1)?.families[0]).toMatchObject({ name: 'Sandpiper 25', maker: 'Larkmoor' })
  const again = await run('rules', 'new', pack)
  expect(again.code).toBe(2)
  expect(again.err).toMatch(/There is something in it already|there is something in it already/)
  const odd = await run('rules', 'new', join(folder, 'My Cells'))
  expect(odd.err).toMatch(/lower-case words joined by hyphens/)
})

test('questions are listed with their options, and what a hazard reads is marked', async () => {
  const listed = await run('rules', 'list', 'legs')
  expect(listed.out).toMatch(/^legs \(look; \d+ rules\)/m)
  expect(listed.out).toMatch(/^ {2}four: Four$/m)
  expect((await run('rules', 'list', 'swollen')).out).toMatch(/a hazard among them/)
  expect((await run('rules', 'list', 'no such word')).code).toBe(1)
  expect(JSON.parse((await run('rules', 'list', 'legs', '--json')).out)[0]).toMatchObject({ id: 'legs', hazard: false })
})

test('two packs are compared rule by rule', async () => {
  const before = join(folder, 'own', 'my-cells')
  const after = join(folder, 'later', 'my-cells')
  await cp(before, after, { recursive: true })
  expect((await run('rules', 'diff', before, after)).out).toMatch(/They judge alike/)
  const text = await readFile(join(after, 'pack.yaml'), 'utf8')
  await writeFile(join(after, 'pack.yaml'), text.replace('[four, five]', '[four, five, other]'))
  expect((await run('rules', 'diff', before, after)).out).toMatch(/my-cells-legs: other answers make it fire/)
})

test('what is wrong is told as JSON where that is asked for', async () => {
  const broken = join(folder, 'broken', 'my-cells')
  await cp(join(folder, 'own', 'my-cells'), broken, { recursive: true })
  const text = await readFile(join(broken, 'pack.yaml'), 'utf8')
  await writeFile(join(broken, 'pack.yaml'), text.replace('legs: [four, five]', 'leggs: [four, five]'))
  const told = await run('rules', 'check', join(folder, 'broken'), '--json')
  expect(told.code).toBe(1)
  expect(JSON.parse(told.out).problems[0]).toMatchObject({ problem: { code: 'unknown-name', name: 'leggs' } })
})

test('a broken pack, a copied one and one that takes a name are left out with a sentence, and the rest starts', async () => {
  const many = join(folder, 'many')
  await cp(join(folder, 'own', 'my-cells'), join(many, 'my-cells'), { recursive: true })
  await cp(join(folder, 'broken', 'my-cells'), join(many, 'broken'), { recursive: true })
  await cp(join(shippedRules, 'paper-harbour'), join(many, 'copied'), { recursive: true })
  const { packs, leftOut } = await installedPacks(many)
  expect(packs.map(pack => pack.id)).toContain('my-cells')
  expect(packs.filter(pack => pack.id === 'paper-harbour')).toHaveLength(1)
  expect(leftOut.join('\n')).toMatch(/leggs/)
  expect(leftOut.join('\n')).toMatch(/copied/)
})

test('a database that is none is refused before anything is read', async () => {
  const tried = await run('rules', 'try', join(folder, 'own'), '--db', join(folder, 'nothing.db'))
  expect(tried.code).toBe(2)
  expect(tried.err).toMatch(/no database of this version/)
})
