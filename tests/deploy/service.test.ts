// The service unit under systemd's own eyes: `systemd-analyze verify` and `security`, on the unit and on broken copies.
import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { exitCodes } from '../../src/bin/cannot-start.ts'

const root = resolve(import.meta.dirname, '../..')
const unit = await readFile(join(root, 'deploy/cellwary.service'), 'utf8')

type Ran = { readonly code: number | undefined; readonly lines: readonly string[] }
const analyze = (...words: string[]) =>
  new Promise<Ran>(done =>
    execFile('systemd-analyze', words, { env: { ...process.env, LC_ALL: 'C' } }, (error, out, err) =>
      done({
        code: error === null ? 0 : typeof error.code === 'number' ? error.code : undefined,
        lines: `${out}\n${err}`.split('\n').filter(Boolean),
      }),
    ),
  )

const { lines } = await analyze('--version')
const version = Number(/^systemd (\d+)/.exec(lines[0] ?? '')?.[1] ?? 0)
if (version < 252) console.warn('SKIPPED: the service unit, because systemd-analyze (252 or later) is missing.')

/** What systemd before 254 rightly does not know; the unit says so itself. */
const tooNew = version < 254 ? /Unknown key.*'(RestartSteps|RestartMaxDelaySec)'/ : /^$/

describe.skipIf(version < 252)('the service unit', () => {
  let folder: string
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'cellwary-unit-'))
  })
  afterAll(() => rm(folder, { recursive: true }))

  /** What systemd has against a unit installed where this project lies, so that its program must exist. */
  async function complaints(text: string): Promise<string[]> {
    const path = join(folder, 'cellwary.service')
    await writeFile(path, text.replaceAll('/opt/cellwary', root))
    const ran = await analyze('verify', '--man=no', '--recursive-errors=no', path)
    const said = ran.lines.filter(line => !tooNew.test(line))
    return ran.code !== 0 && ran.lines.length === 0 ? [`systemd-analyze ended with ${ran.code}`] : said
  }
  /** Exposure from 0 (caged) to 10 (open), as systemd weighs it. */
  async function exposure(text: string): Promise<number> {
    const path = join(folder, 'cellwary.service')
    await writeFile(path, text)
    const ran = await analyze('security', '--offline=true', '--no-pager', path)
    return Number(/exposure level for \S+: ([\d.]+)/.exec(ran.lines.join('\n'))?.[1])
  }

  test('is understood whole, and the program it starts is there', async () => {
    expect(await complaints(unit)).toEqual([])
  })

  test.each([
    ['a misspelt key', 'NoNewPrivileges=', 'NoNewPrivilege=', /NoNewPrivilege/],
    ['a value that means nothing', 'Restart=on-failure', 'Restart=sometimes', /sometimes/],
    ['a program that is not there', '/.bin/node ', '/.bin/nod ', /not executable/],
    ['a system call group that is not there', '@system-service', '@system-servant', /system-servant/],
    ['a size without sense', 'MemoryMax=1G', 'MemoryMax=lots', /MemoryMax|lots/],
  ])('shows a slip: %s', async (_, from, to, says) => {
    expect(unit).toContain(from)
    expect((await complaints(unit.replace(from, to))).join('\n')).toMatch(says)
  })

  test('cages the bot: exposure at most 1.5 of 10, and each bar less is noticed', async () => {
    const whole = await exposure(unit)
    expect(whole).toBeLessThanOrEqual(1.5)
    for (const bar of [
      'CapabilityBoundingSet',
      'PrivateDevices',
      'RestrictNamespaces',
      'DynamicUser',
      'SystemCallFilter',
    ])
      expect(await exposure(unit.replaceAll(new RegExp(`^${bar}=.*$`, 'gm'), '')), bar).toBeGreaterThan(whole)
  })
})

test('is started again after trouble, and not after what only the operator can mend', () => {
  expect(unit).toMatch(/^Restart=on-failure$/m)
  expect(unit).toMatch(new RegExp(`^RestartPreventExitStatus=${exitCodes.operator}$`, 'm'))
})

// Discord's documentation of the gateway, "Session Start Limit": 1000 identifies in 24 hours, then the token is reset.
test('cannot start often enough a day to lose the token', () => {
  expect(/^StartLimitIntervalSec=(.*)$/m.exec(unit)?.[1]).toBe('1d')
  const starts = Number(/^StartLimitBurst=(\d+)$/m.exec(unit)?.[1])
  expect(starts).toBeGreaterThan(0)
  expect(starts).toBeLessThan(1000)
})
