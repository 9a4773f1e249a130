// npm run bench: runs the benchmarks named on the command line (all of them without one); exit code 1 if a ratio is missed.
import packageJson from '../../package.json' with { type: 'json' }
import { benchClicks } from './clicks.ts'
import { benchClosings } from './closings.ts'
import { benchCrowd } from './crowd.ts'
import { benchFamilies } from './families.ts'
import { benchJudging } from './judging.ts'
import { keep, worseThanKept } from './kept.ts'
import { benchLogClicks } from './log-clicks.ts'
import { benchMemory } from './memory.ts'
import { tooNoisy, waitedShare } from './noise.ts'
import { benchPictures } from './pictures.ts'
import { benchReadings } from './readings.ts'
import { benchReleases } from './releases.ts'
import { type Line, printTable } from './table.ts'
import { benchTrends } from './trends.ts'

const benches: Record<string, { title: string; run(): Promise<Line[]> }> = {
  judging: { title: 'Judging', run: benchJudging },
  families: { title: 'Families of servers', run: benchFamilies },
  clicks: { title: 'Clicks and start', run: benchClicks },
  pictures: { title: 'Pictures', run: benchPictures },
  readings: { title: 'Reading logs', run: benchReadings },
  'log-clicks': { title: 'Clicks while logs are read', run: benchLogClicks },
  trends: { title: 'Trends', run: benchTrends },
  crowd: { title: 'Quiet people beside a crowd', run: benchCrowd },
  closings: { title: 'Closing checks', run: benchClosings },
  memory: { title: 'Memory', run: benchMemory },
  releases: { title: 'Weekly releases', run: benchReleases },
}

const options = process.argv.slice(2).filter(one => one.startsWith('--'))
const wanted = process.argv.slice(2).filter(one => !one.startsWith('--'))
for (const name of wanted)
  if (!benches[name]) {
    console.error(`There is no benchmark “${name}”. There are: ${Object.keys(benches).join(', ')}.`)
    process.exit(2)
  }
for (const option of options)
  if (option !== '--quick' && option !== '--keep') {
    console.error(`There is no option “${option}”. There are: --quick, --keep.`)
    process.exit(2)
  }

let held = true
const all: Line[] = []
for (const [name, { title, run }] of Object.entries(benches)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue
  const before = waitedShare()
  const lines = await run()
  const waited = Math.max(before, waitedShare())
  held = printTable(title, lines) && held
  if (waited > tooNoisy)
    console.log(
      `  The machine was too noisy to tell: this process waited ${Math.round(waited * 100)} % of the time for a core.`,
    )
  all.push(...lines)
}
const worse = await worseThanKept(all)
if (worse.length > 0) console.log(`\nWorse than the last release, beyond both spreads:\n  ${worse.join('\n  ')}`)
if (options.includes('--keep')) await keep(all, packageJson.version)
process.exitCode = held ? 0 : 1
