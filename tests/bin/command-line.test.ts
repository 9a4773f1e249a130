// The command line as a person uses it: real processes, exit codes 0 fine, 1 findings about the input, 2 misuse.
import { spawn } from 'node:child_process'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
const rules = fileURLToPath(new URL('../../rules', import.meta.url))
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-cli-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

async function run(words: readonly string[], input = ''): Promise<{ code: number | null; out: string; err: string }> {
  const child = spawn(process.execPath, [entry, ...words], { stdio: 'pipe' })
  child.stdin.end(input)
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { code, out, err }
}
const judged = async (input: string) => {
  const { code, out } = await run(['judge', '-', '--json'], input)
  expect(code).toBe(0)
  return JSON.parse(out)
}

describe('cellwary judge', () => {
  test('prints a verdict for people, always with the caution', async () => {
    const { code, out } = await run(['judge', '-'], 'answers:\n  format: "18650"\n  claimed-capacity: 9900 mAh\n')
    expect(code).toBe(0)
    expect(out).toMatch(/^Ruled out/)
    expect(out).toMatch(/Consumer Product Safety Commission/)
  })

  test('prints one JSON object with all its keys', async () => {
    const report = await judged(
      '{"answers":{"format":"18650","claimed-capacity":"9900 mAh","mass":{"typed":"32,5 g","with":"kitchen-scale"}}}',
    )
    expect(report).toMatchObject({
      verdict: 'ruled-out',
      enough: ['format', 'claimed-capacity'],
      pack: { id: 'any-cell', version: expect.any(String), digest: expect.stringMatching(/^sha256:[0-9a-f]{64}$/) },
      next: { question: expect.any(String), ask: expect.any(String) },
      caution: expect.stringMatching(/do not use or charge the cell/),
    })
    const carrying = report.findings.filter((one: { carries: boolean }) => one.carries)
    expect(carrying[0]).toMatchObject({
      kind: 'must',
      reason: expect.any(String),
      source: expect.arrayContaining([expect.objectContaining({ kind: expect.any(String), text: expect.any(String) })]),
      answers: {
        format: { kind: 'option', option: '18650' },
        'claimed-capacity': { kind: 'reading', value: 9900, u: 0 },
      },
    })
    expect(report.unchecked.length).toBeGreaterThan(10)
  })

  test('units are converted, and a reading carries what it was measured with', async () => {
    const report = await judged('answers:\n  format: "18650"\n  mass: { typed: 1.1 oz, with: tenth-gram-scale }')
    const light = report.findings.find((one: { rule: string }) => one.rule.startsWith('mass'))
    expect(light.answers.mass.value).toBeCloseTo(1.1 * 28.349523125, 6)
    expect(light.answers.mass.u).toBeGreaterThan(0)
  })

  test('a measured figure without uncertainty or instrument is not taken as exact', async () => {
    const claim = 'format: "18650", claimed-capacity: 3000 mAh, chemistry: nickel-or-cobalt'
    const mass = (more: string) => judged(`answers: { ${claim}, mass: { reading: 41.5${more} } }`)
    const rules = (report: { findings: { rule: string }[] }) => report.findings.map(one => one.rule)
    expect(rules(await mass(', u: 0'))).toContain('light-for-its-claim-18650')
    expect(rules(await mass(''))).not.toContain('light-for-its-claim-18650')
  })

  test.each([
    ['an unknown option', 'answers: { format: "1865" }', /no option “1865”; did you mean “18650”\?/],
    ['an unknown question', 'answers: { formt: "18650" }', /no question “formt”; did you mean “format”\?/],
    ['an unknown family', 'family: nobody\nanswers: {}', /no family “nobody”/],
    ['a unit that does not fit', 'answers: { mass: 44 V }', /“V” does not fit here/],
    ['a unit that does not fit, as a number', 'answers: { mass: { reading: 44, unit: V } }', /given in g, not in V/],
    ['a reading that is no number', 'answers: { mass: { reading: .nan } }', /needs a plain number/],
    ['a value no cell has', 'answers: { mass: { reading: 9000 } }', /cannot be right for “mass”/],
    ['a reading where an option is wanted', 'answers: { format: { reading: 3 } }', /answered with one of its options/],
    ['a key that is not known', 'answer: { format: "18650" }', /“answer”/],
    ['no YAML at all', 'answers: [1, 2', /not valid YAML/],
    ['nothing', '', /answers|expected/i],
  ])('%s: one sentence and exit code 1', async (_, input, sentence) => {
    const { code, out, err } = await run(['judge', '-'], input)
    expect(err).toMatch(sentence)
    expect(err).not.toMatch(/\bat .*\.ts:\d+/)
    expect([code, out]).toEqual([1, ''])
  })
})

describe('cellwary rules check', () => {
  test('passes the shipped packs and counts what their cases show', async () => {
    const { code, out } = await run(['rules', 'check', rules])
    expect(code).toBe(0)
    expect(out).toMatch(
      /^any-cell \d+\.\d+\.\d+: \d+ questions, \d+ rules, 0 families, \d+ cases, (\d+) of \1 firings shown$/m,
    )
  })

  test('an empty run fails', async () => {
    await mkdir(join(folder, 'empty'))
    const { code, err } = await run(['rules', 'check', join(folder, 'empty')])
    expect([code, err]).toEqual([1, expect.stringMatching(/no rule pack here/)])
  })

  test('a rule without its three cases fails, and the sentence says which are missing', async () => {
    const home = join(folder, 'thin')
    await mkdir(join(home, 'cases'), { recursive: true })
    await writeFile(
      join(home, 'pack.yaml'),
      `pack: thin
version: 1.0.0
written: 2026-11-25
title: Thin
about: For a test.
sources: { s: { kind: memory, text: from memory } }
questions: [{ id: glow, ask: Does it glow?, care: look, effort: 1, options: [{ id: n, label: No }, { id: y, label: Yes }] }]
rules: [{ id: glowing, kind: hazard, act: get-away, when: { glow: y }, says: It glows., source: [s] }]
`,
    )
    await writeFile(
      join(home, 'cases', 'one.yaml'),
      '- case: it glows\n  answers: { glow: y }\n  rules: { glowing: fires }\n  verdict: doubtful\n',
    )
    const { code, err } = await run(['rules', 'check', home])
    expect(code).toBe(1)
    expect(err).toMatch(/expected verdict to be “doubtful”, but it is “danger”/)
    expect(err).toMatch(/no case shows the rule “glowing” as quiet, unknown/)
  })
})

describe('misuse', () => {
  test.each([
    [[]],
    [['judge']],
    [['jugde', 'x']],
    [['judge', '--no-such', 'x']],
    [['judge', '/no/such/file']],
    [['rules', 'check', '/no/such/folder']],
  ])('%j: exit code 2 and a sentence', async words => {
    const { code, err } = await run(words)
    expect(code).toBe(2)
    expect(err.length).toBeGreaterThan(10)
    expect(err).not.toMatch(/\bat .*\.ts:\d+/)
  })
  test('--help is fine', async () => expect((await run(['--help'])).code).toBe(0))
})

describe('what is no language, and what is nothing', () => {
  test.each(['xx', 'zzzzz_1'])('--locale %s is refused in words', async locale => {
    const { code, err } = await run(['claim', '18650 3000mAh', '--locale', locale])
    expect(err).toBe(`--locale: “${locale}” is not a language that is known here. Write one such as en, de or es-ES.\n`)
    expect(code).toBe(2)
  })

  test('a text without a claim says so', async () => {
    const { code, out } = await run(['claim', 'hello'])
    expect(out).toMatch(/^No claim about a cell was found/)
    expect(code).toBe(0)
  })

  test('--version', async () => {
    expect(await run(['--version'])).toMatchObject({ code: 0, out: expect.stringMatching(/^\d+\.\d+\.\d+\n$/) })
  })
})
