// cellwary measure and cellwary claim as a person uses them: words, JSON, questions and mistakes.
import { spawn } from 'node:child_process'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { parseSvg, partsNamed } from '../pictures/svg-tree.ts'
import { discharge } from '../readings/generate-log.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
const kept = (name: string) => fileURLToPath(new URL(`../readings/logs/${name}.csv`, import.meta.url))
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-cli-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

async function run(...words: string[]): Promise<{ code: number | null; out: string; err: string }> {
  const child = spawn(process.execPath, [entry, ...words], { stdio: ['ignore', 'pipe', 'pipe'] })
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { code, out, err }
}

describe('cellwary measure', () => {
  test('draws the curve with what the label claims, beside its words or JSON', async () => {
    const file = join(folder, 'curve.svg')
    const { code, out } = await run(
      'measure',
      kept('german-semicolon'),
      '--claimed-capacity',
      '3000mAh',
      '--json',
      '--picture',
      file,
    )
    expect({ code, runs: JSON.parse(out).runs.length }).toEqual({ code: 0, runs: 1 })
    expect(partsNamed(parseSvg(await readFile(file, 'utf8')), 'promised')).toHaveLength(1)
    const unwritten = await run('measure', kept('german-semicolon'), '--picture', join(folder, 'nowhere', 'curve.svg'))
    expect(unwritten).toMatchObject({ code: 1, err: expect.stringMatching(/cannot be written \(ENOENT\)/) })
  })

  test('every figure as JSON: value, unit, u, k, method and notes', async () => {
    const { code, out } = await run(
      'measure',
      kept('german-semicolon'),
      '--claimed-capacity',
      '9900 mAh',
      '--cutoff',
      '2.8V',
      '--json',
    )
    expect(code).toBe(0)
    const { runs, caution } = JSON.parse(out)
    for (const figure of Object.values(runs[0].figures).filter(Boolean))
      expect(figure).toMatchObject({
        unit: expect.any(String),
        u: expect.any(Number),
        k: 2,
        method: expect.any(String),
        notes: expect.any(Array),
      })
    expect(runs[0].figures.capacity.value).toBeCloseTo(2889, 0)
    expect(runs[0].findings[0]).toMatchObject({
      code: 'far-below-label',
      bearing: 'strong',
      sentence: expect.any(String),
    })
    expect(caution).toMatch(/do not use or charge the cell/)
  })

  test('words for people, with the cautions of a test', async () => {
    const { code, out } = await run('measure', kept('plain-seconds'), '--cutoff', '2,8 V', '--locale', 'de')
    expect(code).toBe(0)
    expect(out).toMatch(/Capacity: 2,889 ± \d\d mAh \(down to 2.8 V\)/)
    expect(out).toMatch(/Never leave the test unattended/)
    expect(out).toMatch(/do not use or charge the cell/)
  })

  test('asks what the file does not say, and names the option that answers', async () => {
    const file = join(folder, 'unknown.csv')
    await writeFile(file, ['aika;jännite;virta', ...discharge().map(s => `${s.t};${s.V};${s.I}`)].join('\n'))
    const asked = await run('measure', file)
    expect(asked.code).toBe(1)
    expect(asked.err).toMatch(/--column time=1: Column 1: aika/)
    const told = await run('measure', file, '--column', 'time=1', 'voltage=2', 'current=3', '--cutoff', '2.8V')
    expect(told.out).toMatch(/Capacity: 2,88\d/)
    expect(told.code).toBe(0)
  })

  test.each([
    [['--column', 'time=zero'], /--column: “time=zero” is not understood/],
    [['--unit', 'time=fortnight'], /--unit: “time=fortnight” is not understood.*time=ms\|s/],
    [['--clock', 'sundial'], /--clock: “sundial”/],
    [['--cutoff', '28 V'], /Cut-off: 28 V cannot be right/],
    [['--instrument', 'ruler'], /hobby-load, lab-load/],
  ])('%j is a mistake with its sentence', async (words, sentence) => {
    const { code, err } = await run('measure', kept('plain-seconds'), ...words)
    expect(err).toMatch(sentence)
    expect(code).toBeGreaterThan(0)
  })

  test('a file that is no log, and one that is not there', async () => {
    const file = join(folder, 'formula.csv')
    await writeFile(file, 'Time (s),Voltage (V),Current (A)\n0,=A1*2,1\n')
    expect(await run('measure', file)).toMatchObject({
      code: 1,
      err: expect.stringMatching(/formula in row 2, column 2 \(“=A1\*2”\)/),
    })
    expect(await run('measure', join(folder, 'nowhere.csv'))).toMatchObject({
      code: 2,
      err: expect.stringMatching(/cannot be read \(ENOENT\)/),
    })
  })
})

describe('cellwary claim', () => {
  test('as JSON, with each fact’s place in the text', async () => {
    const { out, code } = await run('claim', '9900mAh 18650', '--json')
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject({
      facts: [
        { kind: 'capacity', mAh: 9900, span: { from: 0, to: 7 } },
        { kind: 'format', format: '18650' },
      ],
      findings: [{ code: 'capacity', weight: 'impossible', validUntil: null, sentence: expect.any(String) }],
      caution: expect.stringMatching(/do not use or charge the cell/),
    })
  })

  test('in words, with numbers as another locale writes them', async () => {
    expect((await run('claim', '18650 3,5Ah', '--locale', 'de')).out).toMatch(/Capacity: 3,500 mAh/)
    expect((await run('claim', 'hello')).out).toMatch(/No claim about a cell was found/)
  })

  test('a locale that is none is a mistake', async () => {
    expect(await run('claim', '18650', '--locale', 'no such')).toMatchObject({
      code: 2,
      err: expect.stringMatching(/not a language/),
    })
  })
})

describe('cellwary batch', () => {
  test('masses that are not one lot, in words that do not call them counterfeit, with the caution', async () => {
    const { out, code } = await run('batch', '43.1, 44.9, 46.8 g')
    expect(code).toBe(0)
    expect(out).toMatch(/They are not from one batch/)
    expect(out).toMatch(/does not mean “counterfeit”/)
    expect(out).toMatch(/do not use or charge the cell/)
  })

  test('as JSON, with its statistics', async () => {
    const { out } = await run('batch', '2500 2510 2490 mAh', '--quantity', 'capacity', '--json')
    expect(JSON.parse(out)).toMatchObject({
      quantity: 'capacity',
      count: 3,
      found: 'one-lot-possible',
      tells: 'nothing',
      chiSquare: { degreesOfFreedom: 2 },
      sentences: expect.arrayContaining([expect.stringMatching(/2,490 to 2,510 mAh/)]),
      caution: expect.stringMatching(/do not use or charge the cell/),
    })
  })

  test.each([
    [['45.1'], 1, /There is 1 figure in it; at least 2/],
    [['45.1 46 V'], 1, /Figure 1 \(“45.1 V”\): “V” does not fit here/],
    [['45.1 460 45.2'], 1, /Figure 2 is 460 g, about ten times more or less than the others. Did you mean 46 g\?/],
    [['45 46', '--quantity', 'colour'], 2, /mass, capacity/],
  ])('%j is a mistake with its sentence', async (words, code, sentence) => {
    expect(await run('batch', ...words)).toMatchObject({ code, err: expect.stringMatching(sentence) })
  })
})
