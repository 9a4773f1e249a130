// Copies the embedded database before this version changes it for good, so that the version before can be put back.
import { rename, rm, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { sql } from 'kysely'
import type { Logger } from 'pino'
import manifest from '../../package.json' with { type: 'json' }
import { newerDatabase, stepsAhead } from '../stores/migrations.ts'
import { stepsTaken } from '../stores/newer-database.ts'
import { openAsIs } from '../stores/open-sqlite.ts'
import { CannotStart, exitCodes } from './cannot-start.ts'

/**
 * Leaves one copy beside `file`, for this user alone, where steps of this version are still to be taken; one that is there already was made
 * before the first of them, and is told of at each start. Throws `CannotStart` where there is no room for it: nothing is changed then.
 */
export async function copyBefore(file: string, log: Logger): Promise<void> {
  if (!(await stat(file).catch(() => undefined))?.size) return
  const copy = join(dirname(file), `cellwary-before-${manifest.version}.db`)
  const growing = `${copy}.part`
  const umask = process.umask(0o077)
  const db = openAsIs(file, true)
  try {
    const outdated = (await stepsTaken(db)).length > 0 && (await stepsAhead(db)) > 0
    if (await stat(copy).catch(() => undefined))
      return log.warn(
        { copy },
        'a copy of the database as it was still lies here, with what people had deleted since: delete it',
      )
    if (!outdated || (await newerDatabase(db))) return
    try {
      await rm(growing, { force: true })
      await sql`vacuum into ${growing}`.execute(db)
      await rename(growing, copy)
    } catch (cause) {
      const why = cause instanceof Error ? cause.message : cause
      throw new CannotStart(
        `CELLWARY_DATA: this version changes the database, and it could not be copied to ${copy} before (${why}). Make room there; nothing was changed.`,
        exitCodes.trouble,
        { cause },
      )
    }
    log.warn({ copy }, 'the database is brought up to date; as it was it lies in this copy: delete it once all is well')
  } finally {
    await db.destroy()
    process.umask(umask)
  }
}
