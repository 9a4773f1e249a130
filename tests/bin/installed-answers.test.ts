// The answers of a running bot: the shipped ones, an operator's own beside them or in their place, and what cannot be used left out.
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { openInstalledAnswers } from '../../src/packs/installed-answers.ts'

let folder: string
const log: string[] = []
const entry = (id: string, title: string, related = '[]') =>
  [
    `---\nid: ${id}\ncaution: line\nrelated: ${related}\nsources: [common-practice]`,
    `title:\n  en: ${title}\nkeywords:\n  en: [tram, tram stop, tram line, tram ride, tram ticket]\n---\n\n# en\n\nBy the harbour.\n`,
  ].join('\n')
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-own-answers-'))
  await mkdir(join(folder, 'answers'))
  await writeFile(join(folder, 'answers', 'tram.md'), entry('tram', 'Where does the tram stop?', '[disposal]'))
  await writeFile(join(folder, 'answers', 'weight.md'), entry('weight', 'What do we say of weight?'))
  await writeFile(join(folder, 'answers', 'lost.md'), entry('lost', 'Where is it?', '[nowhere]'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))
const open = (own?: string) => openInstalledAnswers(own, openLog('warn', { write: line => void log.push(line) }))()

test('an operator’s own answers stand beside the shipped ones, or in their place; one that cannot be used is logged', async () => {
  const [shipped, both] = await Promise.all([open(), open(folder)])
  expect(both.entries.length).toBe(shipped.entries.length + 1)
  expect(both.entry('tram')?.related).toEqual(['disposal'])
  expect(both.entry('weight')?.texts.en.title).toBe('What do we say of weight?')
  expect(both.entry('lost')).toBeUndefined()
  expect(log.join()).toMatch(/lost\.md.*unknown-related/)
})

test('they are read once, however many ask at once', async () => {
  const answers = openInstalledAnswers(undefined, openLog('silent'))
  const [one, two] = await Promise.all([answers(), answers()])
  expect(one).toBe(two)
})

test('a folder without answers has none', async () => {
  expect((await open(tmpdir())).entry('disposal')).toBeDefined()
})
