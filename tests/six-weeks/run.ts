// Six weeks for fresh readers: node tests/six-weeks/run.ts FOLDER KEY-FOLDER SEED writes what a moderator sees of each, in an order that only the key tells.
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { demoCastOf } from '../../src/bin/practice-room/demo-cast.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { dayOf } from '../../src/engine/day-of.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { kindOfWeek } from '../../src/trends/kind-of-week.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { drawWeek } from './draw-week.ts'
import { showWeek } from './show-week.ts'
import { stories } from './stories.ts'

const task = `Six servers, one week each. In each folder stands what a moderator of that server sees on Monday: "report" (what /trends shows first),
"report-rises" (one of its views), "findings" (its list), and "reports-channel" (what the bot has posted), with their pictures.
The checks of a server are made by its members; some of the cells they check are counterfeit.

Take one minute for each folder, and write down for it:
1. What kind of week was it: quiet, noise (chance alone), growth of the server, a rise (one thing fails more often), a pattern (several things
   fail together), or an old one that is over? Each of the six is there once.
2. What is new? 3. How sure is that? 4. What would you do now?
`

const [, , folder, keyFolder, seedText] = process.argv
const seed = Number(seedText)
if (!folder || !keyFolder || !Number.isSafeInteger(seed)) {
  console.error('Say a folder for the weeks, another for the key, and a whole number to draw by.')
  process.exit(2)
}
const now = Date.now()
const last = weekPlus(weekOf(now), -1)
const cast = demoCastOf(demoServer.server.id, openPrograms((await installedPacks(undefined)).packs), dayOf(now))
const key: Record<string, unknown> = {}
for (const [i, story] of shuffled(stories, seed).entries()) {
  const { past, outcomes, released, seed: drawn } = await drawWeek(story, seed, cast, last)
  const name = `week-${i + 1}`
  await mkdir(join(folder, name), { recursive: true })
  for (const screen of await showWeek(outcomes, last)) {
    const alts = screen.pictures.map(one => `[picture ${one.name}: ${one.alt}]`)
    await writeFile(join(folder, name, `${screen.name}.txt`), `${[screen.text, ...alts].join('\n')}\n`)
    for (const picture of screen.pictures) await writeFile(join(folder, name, picture.name), picture.bytes)
  }
  key[name] = { story, told: kindOfWeek(released.slice(-56))?.kind, drawn, past }
  console.log(`${name} is there.`)
}
await writeFile(join(folder, 'task.txt'), task)
await mkdir(keyFolder, { recursive: true })
await writeFile(join(keyFolder, 'key.json'), `${JSON.stringify({ seed, last, ...key }, null, 2)}\n`)

function shuffled<T>(list: readonly T[], by: number): T[] {
  const random = xoroshiro128plus(by)
  const left = [...list]
  return list.map(() => left.splice(uniformInt(random, 0, left.length - 1), 1)[0] as T)
}
