// Completion of the command line, as bash itself does it with the script that is printed.
import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { beforeAll, expect, test } from 'vitest'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
const run = promisify(execFile)
let script: string
beforeAll(async () => {
  script = (await run(process.execPath, [entry, 'completion'])).stdout
})

/** What bash offers behind these words; the last is what has been begun. */
async function offered(...words: readonly string[]): Promise<readonly string[]> {
  const asked = `COMP_WORDS=(cellwary ${words.map(word => `'${word}'`).join(' ')}); COMP_CWORD=${words.length}
_cellwary; printf '%s\\n' "\${COMPREPLY[@]}"`
  const { stdout } = await run('bash', ['--norc', '-c', `${script}\n${asked}`])
  return stdout.split('\n').filter(Boolean)
}

test('commands, what is below them, and their options, by what has been begun', async () => {
  expect(await offered('ru')).toEqual(['rules'])
  expect(await offered('')).toEqual(expect.arrayContaining(['judge', 'doctor', 'completion', '--version']))
  expect(await offered('rules', 'ch')).toEqual(['check'])
  expect(await offered('rules', 'check', 'rules', '--j')).toEqual(['--json'])
  expect(await offered('doctor', '--ch')).toEqual(['--channel'])
  expect(await offered('measure', 'log.csv', '--cut')).toEqual(['--cutoff'])
})

test('every command that says something says it as JSON, too', async () => {
  const branches = [...script.matchAll(/^ {4}"([a-z -]+) "\*\) offered="([^"]*)"/gm)]
  const leaves = branches.filter(([, , offers = '']) => offers.startsWith('--'))
  expect(leaves.length).toBeGreaterThan(14)
  const silent = leaves.filter(([, , offers = '']) => !offers.includes('--json')).map(([, words]) => words)
  expect(silent).toEqual(['completion'])
})

test('what is no command is offered nothing, so that the shell offers files', async () => {
  expect(await offered('nonsense', '')).toEqual([])
})
