// Breaks the rooms that only think in places drawn by chance, one fault at a time, and counts how many the room's own tests notice.
//
//   npm run mutants -- [--lines 50] [--seed 1] [--room engine]… [--without tests/check/walks.test.ts]…
//
// Tests that walk at random take most of the time. Without them, what it says is the least; what is left is run against them by hand.
//
// Stryker makes the faults and runs the tests; `npm run mutants` fetches it first, beside the locked packages, since nothing else needs it.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

const { values } = parseArgs({
  options: {
    lines: { type: 'string', default: '50' },
    seed: { type: 'string', default: '1' },
    room: { type: 'string', multiple: true },
    workers: { type: 'string', default: '2' },
    without: { type: 'string', multiple: true, default: [] },
  },
})
const root = join(import.meta.dirname, '../..')
const rooms = values.room ?? ['engine', 'check', 'families', 'trends', 'server', 'answers']

type Line = { readonly file: string; readonly line: number }

/** Lines with something to break: no comments, imports, types or braces alone. */
function linesOf(room: string): Line[] {
  const files = readdirSync(join(root, 'src', room), { recursive: true, encoding: 'utf8' })
  return files
    .filter(name => name.endsWith('.ts'))
    .flatMap(name => {
      const file = `src/${room}/${name}`
      return readFileSync(join(root, file), 'utf8')
        .split('\n')
        .flatMap((text, i) =>
          /[<>=!&|?+\-*/%]|return|\.\w+\(/.test(text) && !isSilent(text) ? [{ file, line: i + 1 }] : [],
        )
    })
}
const isSilent = (text: string): boolean =>
  /^\s*(\/\/|\/?\*|import |export type |type |readonly |export \{|\| \{)/.test(text) || text.trim().length < 6

function drawn(lines: Line[], count: number, seed: number): Line[] {
  const random = xoroshiro128plus(seed)
  const left = [...lines]
  const out: Line[] = []
  while (out.length < count && left.length > 0) out.push(...left.splice(uniformInt(random, 0, left.length - 1), 1))
  return out
}

// Known only where it was fetched: the house is checked without it.
const core: string = '@stryker-mutator/core'
const { Stryker } = (await import(core)) as {
  Stryker: new (options: object) => { runMutationTest(): Promise<Mutant[]> }
}
type Mutant = {
  readonly fileName: string
  readonly location: { readonly start: { readonly line: number } }
  readonly mutatorName: string
  readonly replacement: string
  readonly status: string
}

const percent = (part: number, whole: number): string => (whole === 0 ? '-' : `${Math.round((100 * part) / whole)} %`)

async function breakRoom(room: string): Promise<readonly [number, number]> {
  process.env['CELLWARY_MUTATED'] = room
  process.env['CELLWARY_MUTATED_WITHOUT'] = values.without.join()
  const sample = drawn(linesOf(room), Number(values.lines), Number(values.seed))
  const mutants = await new Stryker({
    mutate: sample.map(({ file, line }) => `${file}:${line}-${line}`),
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'tests/mutants/vitest.config.ts', related: false },
    tsconfigFile: 'none.json',
    coverageAnalysis: 'perTest',
    // A fault in what is made once, when a file is read, would run every test for itself.
    ignoreStatic: true,
    concurrency: Number(values.workers),
    dryRunTimeoutMinutes: 40,
    // On a busy machine a test may be late for a long time before what it waits for will never come.
    timeoutMS: 600_000,
    reporters: ['progress-append-only'],
    logLevel: 'error',
    tempDirName: 'node_modules/.mutants',
    disableTypeChecks: false,
  }).runMutationTest()
  const tested = mutants.filter(one => !['Ignored', 'CompileError', 'RuntimeError'].includes(one.status))
  const left = tested.filter(one => one.status !== 'Killed' && one.status !== 'Timeout')
  const noticed = tested.length - left.length
  const ended = tested.filter(one => one.status === 'Timeout').length
  console.log(
    `${room}: ${noticed} of ${tested.length} noticed (${percent(noticed, tested.length)}; ${ended} never came to an end), ${sample.length} lines`,
  )
  for (const { fileName, location, status, mutatorName, replacement } of left)
    console.log(
      `  ${status} ${fileName.split(`${root}/`)[1]}:${location.start.line} ${mutatorName} -> ${replacement.slice(0, 100)}`,
    )
  return [noticed, tested.length]
}

let noticed = 0
let tested = 0
for (const room of rooms) {
  const [more, of] = await breakRoom(room)
  noticed += more
  tested += of
}
console.log(`all: ${noticed} of ${tested} noticed (${percent(noticed, tested)}), seed ${values.seed}`)
