// What .ci/run makes of a check's end: real counts in its last line, and an exit code that hides nothing. npm is a stand-in.
import { execFile } from 'node:child_process'
import { chmod, copyFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-ci-'))
  await mkdir(join(folder, '.ci'))
  await mkdir(join(folder, 'bin'))
  await copyFile(resolve(import.meta.dirname, '../../.ci/run'), join(folder, '.ci/run'))
  // Present, so that nothing is installed; the list of clusters is empty, so that nothing is started.
  for (const name of ['chromium', 'systemd-analyze', 'pg_lsclusters']) await program(name, '')
})
afterEach(() => rm(folder, { recursive: true }))

async function program(name: string, body: string): Promise<void> {
  await writeFile(join(folder, 'bin', name), `#!/bin/sh\n${body}\n`)
  await chmod(join(folder, 'bin', name), 0o755)
}

/** Runs .ci/run with an npm whose `run check` prints `says` and ends with `code`, and whose `ci` ends with `installs`. */
async function ciRun(says: string, code: number, installs = 0): Promise<{ code: number; lines: string[] }> {
  await writeFile(join(folder, 'says'), says)
  await program('npm', `[ "$1" = ci ] && exit ${installs}\n[ "$*" = "run check" ] || exit 99\ncat says\nexit ${code}`)
  return new Promise(done =>
    execFile(
      'bash',
      [join(folder, '.ci/run')],
      { env: { PATH: `${join(folder, 'bin')}:${process.env['PATH']}` } },
      (error, out, err) =>
        done({ code: error === null ? 0 : Number(error.code), lines: `${err}${out}`.trim().split('\n') }),
    ),
  )
}
const summary = (tests: string) =>
  `> cellwary@0.1.0 types\n\n Test Files  9 passed (9)\n      Tests  ${tests}\n   Start at  1\n`

test.each([
  ['305 passed (305)', 0, 0, '305 passed, 0 failed, 0 skipped'],
  ['1 failed | 304 passed (305)', 1, 1, '304 passed, 1 failed, 0 skipped'],
  ['300 passed | 4 skipped | 1 todo (305)', 0, 0, '300 passed, 0 failed, 5 skipped'],
  ['2 failed (2)', 1, 1, '0 passed, 2 failed, 0 skipped'],
  ['\u001b[1m\u001b[32m7 passed\u001b[39m\u001b[22m (7)', 0, 0, '7 passed, 0 failed, 0 skipped'],
  // A failure that npm did not pass on still fails; a file that never ran fails without a failed test.
  ['1 failed | 3 passed (4)', 0, 1, '3 passed, 1 failed, 0 skipped'],
  ['12 passed (12)', 1, 1, '12 passed, 0 failed, 0 skipped'],
])('%s, ended with %i', async (tests, code, ends, last) => {
  const ran = await ciRun(summary(tests), code)
  expect(ran.lines.at(-1)).toBe(last)
  expect(ran.code).toBe(ends)
})

test.each([
  ['the check stopped before the tests', 'error TS2322\n', 2],
  ['no test ran', summary('no tests'), 0],
  ['every test was skipped', summary('3 skipped (3)'), 0],
])('fails without a count when %s', async (_, says, code) => {
  const ran = await ciRun(says, code)
  expect(ran.code).toBe(1)
  expect(ran.lines.at(-1)).toBe('=== FAILED: no test ran')
})

test('stops when the packages cannot be installed', async () => {
  const ran = await ciRun(summary('3 passed (3)'), 0, 7)
  expect(ran.code).toBe(7)
  expect(ran.lines.join('\n')).not.toContain('passed')
})

test('says how long each part took and when each script of the check began', async () => {
  const { lines } = await ciRun(summary('3 passed (3)'), 0)
  for (const part of ['packages', 'tools', 'database', 'check'])
    expect(lines.join('\n')).toMatch(new RegExp(`^=== ${part} took \\d+ s$`, 'm'))
  expect(lines.join('\n')).toMatch(/^\[\d+ s\] > cellwary@0\.1\.0 types$/m)
})
