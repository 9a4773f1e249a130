// Moves a stopped bot from the embedded database to PostgreSQL: says in a sentence what keeps it from that, and changes nothing then.
import { access } from 'node:fs/promises'
import { join } from 'node:path'
import { type Kysely, sql } from 'kysely'
import { newerDatabase, stepsAhead } from '../stores/migrations.ts'
import { firstHeld, moveTables } from '../stores/move-tables.ts'
import { openPostgres, openPostgresAsIs } from '../stores/open-postgres.ts'
import { openAsIs } from '../stores/open-sqlite.ts'
import type { Tables } from '../stores/tables.ts'
import { codeOf } from './cannot-start.ts'

export type Move =
  | { readonly ok: true; readonly rows: Readonly<Record<string, number>> }
  | { readonly ok: false; readonly sentence: string }

const refused = (sentence: string): Move => ({ ok: false, sentence })

/** `data`: the folder of the embedded database; `url`: postgres://… */
export async function moveDatabase(data: string, url: string): Promise<Move> {
  const file = join(data, 'cellwary.db')
  if (!(await isThere(file))) return refused(`CELLWARY_DATA: there is no ${file}. Name the folder the bot keeps it in.`)
  let from: Kysely<Tables> | undefined
  let into: Kysely<Tables> | undefined
  try {
    from = openAsIs(file, true)
    const wrong = (await holdAlone(from, file)) ?? (await wrongVersion(from, file)) ?? (await wrongTarget(url))
    if (wrong !== undefined) return refused(wrong)
    into = await openPostgres(url)
    const done = await moveTables(from, into)
    return done.ok ? done : refused(notEmpty(done.held))
  } catch (error) {
    return refused(`Nothing was moved: ${sayError(error)}`)
  } finally {
    await into?.destroy()
    await from?.destroy()
  }
}

/** Keeps every other process away from the file until it is closed: one that has it open is in the way. */
async function holdAlone(db: Kysely<Tables>, file: string): Promise<string | undefined> {
  try {
    await sql`pragma locking_mode = exclusive`.execute(db)
    await sql`begin immediate`.execute(db)
    await sql`commit`.execute(db)
    return undefined
  } catch (error) {
    if (!(error instanceof Error) || !/locked/.test(error.message)) throw error
    return `${file} is in use. Stop the bot first, and whatever else has it open.`
  }
}

async function wrongVersion(db: Kysely<Tables>, file: string): Promise<string | undefined> {
  const newer = await newerDatabase(db)
  if (newer) return newer.message
  if ((await stepsAhead(db)) === 0) return undefined
  return `${file} is of an older version, or not the bot’s. Make a back-up, start this version once without DATABASE_URL, stop it, and try again.`
}

/** What is there is looked at as it is, so that a database that is not ours, or not empty, stays as it was. */
async function wrongTarget(url: string): Promise<string | undefined> {
  const db = openPostgresAsIs(url)
  try {
    const newer = await newerDatabase(db)
    if (newer) return newer.message
    // Without tables of ours nothing of ours is in it.
    const held = await firstHeld(db).catch(error => (codeOf(error) === '42P01' ? undefined : Promise.reject(error)))
    return held === undefined ? undefined : notEmpty(held)
  } finally {
    await db.destroy()
  }
}

const notEmpty = (table: string): string =>
  `DATABASE_URL: the database is not empty (${table}). Name a new one; nothing was changed in this.`

function sayError(error: unknown): string {
  const code = codeOf(error) ?? ''
  if (/^(ECONN|ENOTFOUND|ETIMEDOUT|EAI_AGAIN|57P03)/.test(code))
    return `DATABASE_URL: the database does not answer (${code}). Start it, or correct the address.`
  if (['28P01', '28000', '3D000', '42501'].includes(code))
    return `DATABASE_URL: the database does not let the bot in (${code}). Correct the name, the password or the rights.`
  return `${error instanceof Error ? error.message : error}.`
}

const isThere = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  )
