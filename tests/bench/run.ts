// npm run bench: runs the benchmarks named on the command line (all of them without one); exit code 1 if a ratio is missed.
import { benchClicks } from './clicks.ts'
import { benchClosings } from './closings.ts'
import { benchJudging } from './judging.ts'
import { benchLogClicks } from './log-clicks.ts'
import { benchPictures } from './pictures.ts'
import { benchReadings } from './readings.ts'
import { benchReleases } from './releases.ts'
import { type Line, printTable } from './table.ts'
import { benchTrends } from './trends.ts'

const benches: Record<string, { title: string; run(): Promise<Line[]> }> = {
  judging: { title: 'Judging', run: benchJudging },
  clicks: { title: 'Clicks and start', run: benchClicks },
  pictures: { title: 'Pictures', run: benchPictures },
  readings: { title: 'Reading logs', run: benchReadings },
  'log-clicks': { title: 'Clicks while logs are read', run: benchLogClicks },
  trends: { title: 'Trends', run: benchTrends },
  closings: { title: 'Closing checks', run: benchClosings },
  releases: { title: 'Weekly releases', run: benchReleases },
}

const wanted = process.argv.slice(2)
for (const name of wanted)
  if (!benches[name]) {
    console.error(`There is no benchmark “${name}”. There are: ${Object.keys(benches).join(', ')}.`)
    process.exit(2)
  }
let held = true
for (const [name, { title, run }] of Object.entries(benches))
  if (wanted.length === 0 || wanted.includes(name)) held = printTable(title, await run()) && held
process.exitCode = held ? 0 : 1
