// Makes the data folder and tries it out, and opens the database; what is wrong is said by the name of the setting.
import { mkdir, open, rm, stat, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { Kysely, LogEvent } from 'kysely'
import type { Logger } from 'pino'
import { openSqlite } from '../stores/open-sqlite.ts'
import type { Tables } from '../stores/tables.ts'
import { CannotStart, codeOf, exitCodes } from './cannot-start.ts'
import type { Config } from './config.ts'

/** The folder is made for this user alone, and one file is written and removed. Throws `CannotStart`. */
export async function prepareFolder(data: string): Promise<void> {
  const trial = join(data, `.trial-${process.pid}`)
  try {
    await makeFolder(resolve(data))
    await writeFile(trial, '')
    await rm(trial)
  } catch (error) {
    throw new CannotStart(
      `CELLWARY_DATA: ${data} is no folder that the bot can write to (${codeOf(error)}). Name another one, or mend its rights or the disk.`,
      codeOf(error) === 'ENOSPC' ? exitCodes.trouble : exitCodes.operator,
      { cause: error },
    )
  }
}

/** Folder by folder, since Node's own way of making them all at once never ends where the system refuses some (/proc). */
async function makeFolder(folder: string): Promise<void> {
  const made = await mkdir(folder, { mode: 0o700 }).catch(error => codeOf(error))
  if (made === undefined || made === 'EEXIST') return
  const above = dirname(folder)
  if (made !== 'ENOENT' || above === folder || (await isFolder(above))) await mkdir(folder)
  await makeFolder(above)
  await mkdir(folder, { mode: 0o700 })
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false

/** The database of the settings, up to date. Throws `CannotStart`, and `NewerDatabase` as it is. */
export async function openDatabase(
  { database, data }: Config,
  log: Logger,
  queried?: (seconds: number) => void,
): Promise<Kysely<Tables>> {
  const timed = queried && (({ queryDurationMillis }: LogEvent) => queried(queryDurationMillis / 1000))
  const lost = (error: Error) => log.warn({ err: error }, 'a connection to the database was lost; another is made')
  try {
    // PostgreSQL's driver is loaded only where it is used.
    if (database !== undefined)
      return await (await import('../stores/open-postgres.ts')).openPostgres(database, undefined, lost, timed)
    await tryFile(join(data, 'cellwary.db'))
    return await openSqlite(join(data, 'cellwary.db'), timed)
  } catch (error) {
    if (codeOf(error) === 'newer-database' || error instanceof CannotStart) throw error
    throw database === undefined ? ofFile(join(data, 'cellwary.db'), error) : ofServer(error)
  }
}

/** What only the operator mends: a wrong name or password, no such database, no right to it (PostgreSQL's documentation, appendix A). */
const refusedByServer = ['28P01', '28000', '3D000', '42501']

function ofServer(error: unknown): CannotStart {
  const code = codeOf(error) ?? (error instanceof Error ? error.message : '')
  const refused = refusedByServer.includes(code)
  return new CannotStart(
    refused
      ? `DATABASE_URL: the database does not let the bot in (${code}). Correct the name, the password or the rights.`
      : `DATABASE_URL: the database does not answer (${code}). Start it, or correct the address.`,
    refused ? exitCodes.operator : exitCodes.trouble,
    { cause: error },
  )
}

/** SQLite's result codes (sqlite.org/rescode.html). */
const sentences: Readonly<Record<number, string>> = {
  8: 'may only be read. Mend its rights, or name another folder',
  11: 'is damaged. Restore it from a back-up, or move it away to begin with an empty one',
  13: 'cannot grow: the disk is full. Make room',
  14: 'cannot be opened. Mend its rights, or name another folder',
  26: 'is no database, or is damaged. Restore it from a back-up, or move it away to begin with an empty one',
}

/** SQLite opens a file that may only be read, and fails at some write later. */
async function tryFile(file: string): Promise<void> {
  const code = await open(file, 'r+').then(
    handle => handle.close(),
    error => codeOf(error),
  )
  if (code === 'EROFS' || code === 'EACCES' || code === 'EPERM')
    throw new CannotStart(`CELLWARY_DATA: ${file} ${sentences[8]} (${code}).`, exitCodes.operator)
}

function ofFile(file: string, error: unknown): unknown {
  const code = error instanceof Error && 'errcode' in error ? Number(error.errcode) & 0xff : 0
  const sentence = sentences[code]
  if (sentence === undefined) return error
  return new CannotStart(`CELLWARY_DATA: ${file} ${sentence}.`, code === 13 ? exitCodes.trouble : exitCodes.operator, {
    cause: error,
  })
}
