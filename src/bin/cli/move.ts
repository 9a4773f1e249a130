// cellwary move: from the embedded database to PostgreSQL, with the settings of a start, so that no password stands on a command line.
import { Command } from 'commander'
import { exitCodes } from '../cannot-start.ts'
import { readConfig } from '../config.ts'
import { moveDatabase } from '../move-database.ts'
import { fail } from './fail.ts'

export function moveCommand(): Command {
  return new Command('move')
    .description('Copy the embedded database (CELLWARY_DATA) of a stopped bot into an empty PostgreSQL (DATABASE_URL).')
    .option('--json', 'print one JSON object')
    .action(async ({ json }: { json?: true }) => {
      // Whether there is a token does not matter here.
      const { DISCORD_TOKEN_FILE: _, ...env } = process.env
      const read = readConfig({ ...env, DISCORD_TOKEN: 'none' })
      if (!read.ok) return misuse(read.sentences)
      const { data, database } = read.config
      if (database === undefined)
        return misuse(['DATABASE_URL is not set: put the empty PostgreSQL database there (postgres://…).'])
      const done = await moveDatabase(data, database)
      if (!done.ok) return fail([done.sentence])
      if (json) return console.log(JSON.stringify({ rows: done.rows }, null, 2))
      for (const [table, rows] of Object.entries(done.rows)) console.log(`${String(rows).padStart(9)}  ${table}`)
      console.log(
        `\nAll of it is in PostgreSQL. Start the bot with DATABASE_URL as it is now, and leave the folder keys in ${data}.\nOnce you have seen it work, delete cellwary.db there and its back-ups: they hold people’s checks.`,
      )
    })
}

function misuse(sentences: readonly string[]): void {
  fail(sentences)
  process.exitCode = exitCodes.operator
}
