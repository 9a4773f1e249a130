// A pack's words in other languages, as files: found by their names, noted where they lack something, and no part of the digest.
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { checkRules } from '../../src/packs/check-rules.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'

let folder: string
const words = (name: string, text: string) => writeFile(join(folder, 'any-cell', 'words', name), text)
const load = async () => (await loadPacks(folder, { cases: false })).packs[0]?.pack
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-words-'))
  await cp(join(shippedRules, 'any-cell'), join(folder, 'any-cell'), { recursive: true })
  await rm(join(folder, 'any-cell', 'words'), { recursive: true, force: true })
  await mkdir(join(folder, 'any-cell', 'words'))
})
afterEach(() => rm(folder, { recursive: true }))

test('a language is a file; the digest by which a verdict is judged again stays the same', async () => {
  const before = await load()
  await words('fr.yaml', 'rules: { torn-wrap: La gaine est déchirée. }\n')
  const after = await load()
  expect(after?.words['fr']?.rules['torn-wrap']).toBe('La gaine est déchirée.')
  expect(after?.digest).toBe(before?.digest)
})

test('what a language lacks is noted, and is no problem', async () => {
  await words('fr.yaml', 'rules: { torn-wrap: La gaine est déchirée. }\n')
  const report = await checkRules(folder, '2026-11-25')
  expect(report.problems).toEqual([])
  const [note] = report.missing
  expect(note).toMatchObject({ pack: 'any-cell', language: 'fr' })
  expect(note?.texts).toContain('rules.torn-ring')
  expect(note?.texts).not.toContain('rules.torn-wrap')
})

test.each([
  ['fr.yaml', 'rules: { torn-warp: x }\n', /rules: there is no rule “torn-warp”; did you mean “torn-wrap”\?/],
  ['fr.yaml', 'rules: { torn-wrap: [\n', /not valid YAML/],
  ['french.yaml', 'rules: {}\n', /“french” does not name a language other than/],
  ['en.yaml', 'rules: {}\n', /“en” does not name a language other than/],
])('%s with %j is a problem with a sentence', async (name, text, sentence) => {
  await words(name, text)
  const { problems } = await loadPacks(folder)
  expect(problems.map(({ problem }) => sayProblem(sayIn('en'), problem)).join()).toMatch(sentence)
})

test('remembered packs are read again when their words change', async () => {
  const remembered = new Map<string, unknown>()
  const memory = {
    get: async (key: string) => remembered.get(key),
    set: async (key: string, value: unknown) => remembered.set(key, value),
  }
  const own = join(folder, 'own')
  await mkdir(join(own, 'words'), { recursive: true })
  await writeFile(
    join(own, 'pack.yaml'),
    `pack: own\nversion: 1.0.0\nwritten: 2026-11-25\ntitle: Own\nabout: Own.\nsources: { s: { kind: memory, text: x } }
questions: [{ id: glow, ask: Does it glow?, care: look, effort: 1, options: [{ id: y, label: Yes }, { id: n, label: No }] }]
rules: [{ id: glowing, kind: hazard, act: get-away, when: { glow: y }, says: It glows., source: [s] }]\n`,
  )
  const told = async () => (await installedPacks(own, memory)).packs.find(pack => pack.id === 'own')?.words['de']
  expect(await told()).toBeUndefined()
  await writeFile(join(own, 'words', 'de.yaml'), 'rules: { glowing: Sie leuchtet. }\n')
  expect((await told())?.rules['glowing']).toBe('Sie leuchtet.')
})

test('a long language may be a folder of files, none of which says what another has said', async () => {
  await mkdir(join(folder, 'any-cell', 'words', 'fr'))
  await words('fr/1.yaml', 'rules: { torn-wrap: La gaine est déchirée. }\n')
  await words('fr/2.yaml', 'rules: { torn-ring: L’anneau est déchiré. }\n')
  expect(Object.keys((await load())?.words['fr']?.rules ?? {})).toEqual(['torn-wrap', 'torn-ring'])
  await words('fr/3.yaml', 'rules: { torn-ring: Encore. }\n')
  const { problems } = await loadPacks(folder)
  expect(problems.map(({ problem }) => sayProblem(sayIn('en'), problem)).join()).toMatch(/“torn-ring” appears twice/)
})
