// cellwary picture as a person uses it: every kind of picture by the file's ending, its alt text printed, mistakes in a sentence.
import { spawn } from 'node:child_process'
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { decodePng } from '../pictures/pixels.ts'
import { parseSvg, partsNamed } from '../pictures/svg-tree.ts'

const entry = fileURLToPath(new URL('../../src/bin/cellwary.ts', import.meta.url))
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-picture-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

async function draw(words: readonly string[], file: string, input = '') {
  const path = join(folder, file)
  const child = spawn(process.execPath, [entry, 'picture', ...words, '-o', path], { stdio: 'pipe' })
  child.stdin.end(input)
  const closed = new Promise<number | null>(resolve => child.once('close', resolve))
  const [out, err, code] = await Promise.all([text(child.stdout), text(child.stderr), closed])
  return { code, out, err, path }
}
const svgOf = async (path: string) => parseSvg(await readFile(path, 'utf8'))
const fourLegs = 'family: brindlewick-rook\nanswers: { legs: four, claimed-capacity: 9900 mAh }\n'

describe('draws', () => {
  test.concurrent('a question, as a PNG twice as wide as it is drawn', async () => {
    const { code, out, path } = await draw(['question', 'ring'], 'ring.png')
    expect({ code, out }).toEqual({ code: 0, out: expect.stringMatching(/^3 drawings to compare\./) })
    expect(decodePng(await readFile(path)).width).toBe(720)
  })

  test.concurrent('a question that only families ask about, and one of its options', async () => {
    const { path: all } = await draw(['question', 'legs'], 'legs.svg')
    expect(partsNamed(await svgOf(all), 'option-D')).toHaveLength(1)
    const { path: one } = await draw(['option', 'legs', 'four'], 'four.SVG')
    expect(partsNamed(await svgOf(one), 'legs')[0]?.children).toHaveLength(4)
  })

  test.concurrent('a family', async () => {
    const { code, out } = await draw(['family', 'brindlewick-heron'], 'heron.svg')
    expect({ code, out }).toEqual({ code: 0, out: expect.stringMatching(/views of a cell as it should look\./) })
  })

  test.concurrent('the verdict of a case, with every reason and its caution', async () => {
    const file = join(folder, 'case.yaml')
    await writeFile(file, fourLegs)
    const { code, out, path } = await draw(['verdict', file], 'verdict.svg')
    expect(code).toBe(0)
    expect(out).toMatch(/^Result: Ruled out.*Mark 1:.*Caution: Unsure\?/)
    expect(partsNamed(await svgOf(path), 'mark')).toHaveLength(2)
  })

  test.concurrent('a case from standard input, in another language', async () => {
    const { code, out } = await draw(['verdict', '-', '--language', 'de'], 'de.svg', fourLegs)
    expect({ code, out }).toEqual({ code: 0, out: expect.stringMatching(/benutze und lade die Zelle nicht/) })
  })

  test.concurrent('a way to measure', async () => {
    const { code, out } = await draw(['measuring', 'scale'], 'scale.png')
    expect({ code, out: out.trim() }).toEqual({ code: 0, out: 'The cell lies alone and still on paper on a scale.' })
  })
})

describe('says what to change, and writes nothing', () => {
  test.concurrent.each([
    [['question', 'leggs'], 'x.png', 1, /no question “leggs”; did you mean “legs”/],
    [['question', 'price'], 'x.png', 1, /“price” has no drawing/],
    [['option', 'legs', 'seventeen'], 'x.png', 1, /no option “seventeen”.*three, four, five/],
    [['option', 'legs', 'other'], 'x.png', 1, /“other” has no drawing: its question is drawn/],
    [['family', 'nobody'], 'x.png', 1, /no family “nobody”.*brindlewick-heron/],
    [['measuring', 'scales'], 'x.png', 1, /did you mean “scale”/],
    [['question', 'legs'], 'x.jpg', 2, /ends neither in \.png nor in \.svg/],
    [['question', 'legs'], 'no-such-folder/x.png', 1, /cannot be written \(ENOENT\)/],
    [['question', 'legs', '--language', '?'], 'x.png', 2, /no|not a language tag/],
    [['verdict', 'no-such-case.yaml'], 'x.png', 2, /cannot be read/],
  ] as const)('%j to %s', async (words, file, expected, sentence) => {
    const { code, err, path } = await draw(words, `wrong-${words.join('-').replace(/\W/g, '')}-${file}`)
    expect({ code, err }).toEqual({ code: expected, err: expect.stringMatching(sentence) })
    await expect(stat(path)).rejects.toThrow()
  })

  test.concurrent('a case with a mistake in it', async () => {
    const { code, err } = await draw(['verdict', '-'], 'y.png', 'answers: { leggs: four }\n')
    expect({ code, err }).toEqual({ code: 1, err: expect.stringMatching(/there is no question “leggs”/) })
  })
})
