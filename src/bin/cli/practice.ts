// cellwary practice: takes away what the practice room's moderators have described, so that making the first model can be tried.
import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import { Command } from 'commander'
import { readConfig } from '../config.ts'
import { practiceData } from '../practice-room/practice-data.ts'
import { fail } from './fail.ts'

export function practiceCommand(): Command {
  return new Command('practice')
    .description('Change what the practice room has been given to begin with.')
    .addCommand(
      new Command('empty-families')
        .description('Take away every family of the practice room, so that making the first one can be tried.')
        .option('--json', 'print one JSON object')
        .action(emptyFamilies),
    )
}

/** May be done while the room is open: it reads its families anew within seconds. */
async function emptyFamilies({ json }: { json?: true }): Promise<void> {
  const read = readConfig(process.env)
  if (!read.ok) return fail(read.sentences)
  const file = join(practiceData(read.config.data), 'cellwary.db')
  if (!(await stat(file).catch(() => undefined)))
    return fail([`There is no practice room yet (${file}). Open it once, with npm start.`])
  // The command line starts without the database.
  const [{ openSqlite }, { openFamilyStore }, { demoServer }] = await Promise.all([
    import('../../stores/open-sqlite.ts'),
    import('../../stores/family-store.ts'),
    import('../practice-room/demo-server.ts'),
  ])
  const db = await openSqlite(file)
  try {
    const store = openFamilyStore(db)
    const before = await store.heads(demoServer.server.id)
    await store.forget(demoServer.server.id)
    if (json) return console.log(JSON.stringify({ takenAway: before.length }, null, 2))
    console.log(`Taken away: ${before.length}. In the practice room, /family new makes the first one.`)
  } finally {
    await db.destroy()
  }
}
