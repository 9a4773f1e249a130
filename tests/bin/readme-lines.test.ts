// The command line as README writes it: npm says nothing of its own, so that what is printed can be read by a program.
import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../..', import.meta.url))
const lines = [...(await readFile(join(root, 'README.md'), 'utf8')).matchAll(/npm run (\S+ )?cellwary -- (\w+)/g)]

test('every line is quiet', () => {
  expect(lines.length).toBeGreaterThan(7)
  // What only says a sentence may be preceded by npm’s.
  const loud = lines.filter(([, flag]) => !/^(-s|--silent) $/.test(flag ?? '')).map(([, , command]) => command)
  expect(loud.filter(command => command !== 'move' && command !== 'practice')).toEqual([])
})

test('a verdict as JSON is JSON, and so is what stands in README as a case', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-readme-'))
  try {
    const written = /`(answers: \{.*?\})`/.exec(await readFile(join(root, 'README.md'), 'utf8'))?.[1] ?? ''
    await writeFile(join(folder, 'case.yaml'), written)
    const flag = lines.find(([, , command]) => command === 'judge')?.[1]?.trim() ?? ''
    const words = ['run', ...(flag ? [flag] : []), 'cellwary', '--', 'judge', join(folder, 'case.yaml'), '--json']
    const { stdout } = await promisify(execFile)('npm', words, { cwd: root })
    expect(JSON.parse(stdout)).toMatchObject({ verdict: 'ruled-out' })
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
})
