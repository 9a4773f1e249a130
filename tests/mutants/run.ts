// Breaks the rooms that only think in places drawn by chance, one fault at a time, and counts how many the tests notice.
//
//   npm run mutants -- [--lines 300] [--seed 1] [--room engine]
//
// Stryker makes the faults and runs the tests; `npm run mutants` fetches it first, beside the locked packages, since nothing else needs it.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

const { values } = parseArgs({
  options: {
    lines: { type: 'string', default: '300' },
    seed: { type: 'string', default: '1' },
    room: { type: 'string', multiple: true },
    workers: { type: 'string', default: '2' },
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

const sample = drawn(rooms.flatMap(linesOf), Number(values.lines), Number(values.seed))

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
  timeoutMS: 120_000,
  reporters: ['progress-append-only'],
  tempDirName: 'node_modules/.mutants',
  disableTypeChecks: false,
}).runMutationTest()

const tested = mutants.filter(one => !['Ignored', 'CompileError', 'RuntimeError'].includes(one.status))
const noticed = tested.filter(one => one.status === 'Killed' || one.status === 'Timeout')
const percent = (part: number, whole: number): string => (whole === 0 ? '-' : `${Math.round((100 * part) / whole)} %`)
const roomOf = (one: Mutant): string => one.fileName.split('/src/')[1]?.split('/')[0] ?? ''
for (const room of rooms) {
  const mine = tested.filter(one => roomOf(one) === room)
  const found = mine.filter(one => noticed.includes(one))
  console.log(`${room}: ${found.length} of ${mine.length} noticed (${percent(found.length, mine.length)})`)
}
console.log(
  `all: ${noticed.length} of ${tested.length} noticed (${percent(noticed.length, tested.length)}), seed ${values.seed}, ${sample.length} lines`,
)
for (const one of tested.filter(one => !noticed.includes(one)))
  console.log(
    `not noticed (${one.status}): ${one.fileName.split(`${root}/`)[1]}:${one.location.start.line} ${one.mutatorName} -> ${one.replacement.slice(0, 100)}`,
  )
