// cellwary rules try: how many of a server's checks of closed weeks a pack of one's own would judge otherwise, in three words.
import { Command } from 'commander'
import { compile } from '../../engine/compile.ts'
import { dayOf } from '../../engine/day-of.ts'
import { backTest, leastOutcomes } from '../../families/weigh/back-test.ts'
import { installedPacks } from '../../packs/installed-packs.ts'
import { openFamilyStore } from '../../stores/family-store.ts'
import { openSettingsStore } from '../../stores/settings-store.ts'
import { weekOf } from '../../trends/week.ts'
import { sayProblem } from '../../words/problem-words.ts'
import { sayIn } from '../../words/say.ts'
import { openForReading } from './open-for-reading.ts'

const year = 52 * 7 * 24 * 3600_000
const week = 7 * 24 * 3600_000
const mostOutcomes = 5000

export function tryCommand(): Command {
  return new Command('try')
    .description('Try a pack on checks of closed weeks: few, some or many would come out otherwise.')
    .argument('<dir>', 'a folder with the pack')
    .requiredOption('--db <file>', "the bot's database, a file or postgres://…; nothing in it is changed")
    .option('--json', 'print one JSON object')
    .action(async (dir: string, { db: file, json }: { db: string; json?: true }) => {
      const say = sayIn('en')
      const { packs, leftOut } = await installedPacks(dir)
      for (const sentence of leftOut) console.error(sentence)
      const own = packs.filter(pack => !['any-cell', 'paper-harbour'].includes(pack.id))
      if (own.length === 0 || leftOut.length > 0) {
        if (own.length === 0) console.error(`${dir}: no pack of your own here. Name a folder that holds a pack.yaml.`)
        process.exitCode = 1
        return
      }
      const now = Date.now()
      const opened = await openForReading(file)
      if (!opened.ok) {
        console.error(`${file}: this is no database of this version of the bot. Name its cellwary.db, or postgres://…`)
        process.exitCode = 2
        return
      }
      const { db } = opened
      const store = openFamilyStore(db)
      const tried: { family: string; server: string; otherwise: string | null }[] = []
      for (const { server } of await openSettingsStore(db).all())
        for (const family of own.flatMap(pack => pack.families)) {
          const after = compile(packs, dayOf(now), family.id)
          const before = compile(packs, dayOf(now))
          if (!after.ok || !before.ok) {
            for (const problem of after.ok ? [] : after.problems) console.error(sayProblem(say, problem))
            process.exitCode = 1
            continue
          }
          const outcomes = await store.outcomes(server, null, weekOf(now - year), weekOf(now - week), mostOutcomes)
          const tested = backTest(outcomes, before.program, after.program, '0')
          tried.push({ family: family.id, server, otherwise: tested.ok ? tested.change : null })
        }
      await db.destroy()
      if (json) return console.log(JSON.stringify({ tried }, null, 2))
      for (const { family, server, otherwise } of tried)
        console.log(
          `${family}, server ${server}: ${otherwise ? `${otherwise} would come out otherwise` : `fewer than ${leastOutcomes} checks to look at`}`,
        )
    })
}
