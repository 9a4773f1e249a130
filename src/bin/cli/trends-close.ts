// cellwary trends close: closes the weeks that are due on a database no bot may close, because the gap is longer than a year.
import { dirname, join } from 'node:path'
import { Command } from 'commander'
import { closeWeeks } from '../../jobs/close-weeks.ts'
import { sayJobRefusal } from '../../jobs/say-job-refusal.ts'
import { openEpochKeys } from '../../stores/epoch-keys.ts'
import { openFamilyCodes } from '../../stores/family-codes.ts'
import { openOutcomeLog } from '../../stores/outcome-log.ts'
import { openReleaseLog } from '../../stores/release-log.ts'
import { openSeal } from '../../stores/seal.ts'
import type { Scope } from '../../trends/outcome-log.ts'
import { sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { openForReading } from './open-for-reading.ts'

export function closeCommand(): Command {
  return new Command('close')
    .description(
      "Close the weeks that are due by this machine's clock, after however long a gap. Look at the clock first.",
    )
    .requiredOption('--db <database>', 'the file cellwary.db, or postgres://…')
    .option('--json', 'print one JSON object')
    .action(async ({ db: named, json }: { db: string; json?: true }) => {
      const say = sayIn('en')
      const opened = await openForReading(named, true)
      if (!opened.ok) return fail([say(`trend-input.${opened.why}`, { db: named, says: opened.says })])
      const { db } = opened
      try {
        // The keys lie in the data folder: beside the file, or where the bot is told to have it.
        const data = /^postgres(ql)?:/.test(named) ? (process.env['CELLWARY_DATA'] ?? '.cellwary') : dirname(named)
        const seal = openSeal(openEpochKeys(join(data, 'keys', 'seals')))
        const codes = openFamilyCodes(openEpochKeys(join(data, 'keys')))
        const lost = (rows: number) => fail([say('close.sealed', { count: rows, folder: join(data, 'keys') })])
        const logs = { outcomes: openOutcomeLog(db, seal, codes, undefined, lost), releases: openReleaseLog(db) }
        const closed: { scope: string; weeks: number }[] = []
        const rows = await db.selectFrom('releases').select('scope').distinct().execute()
        for (const { scope: key } of rows) {
          const scope: Scope =
            key === 'pool' ? { kind: 'pool' } : { kind: 'server', server: key.slice('server:'.length) }
          const closing = await closeWeeks(logs, scope, Date.now(), { anyGap: true })
          closed.push({ scope: key, weeks: closing.frozen.length })
          if (!json) console.log(say('close.done', { scope: key, count: closing.frozen.length }))
          if (!closing.ok) fail([sayJobRefusal(closing.refusal)])
        }
        if (json) console.log(JSON.stringify({ closed }, null, 2))
      } finally {
        await db.destroy()
      }
    })
}
