// Makes the data folder and tries it out, and opens the database; what is wrong is said by the name of the setting.
import { randomUUID } from 'node:crypto'
import { mkdir, open, rm, rmdir, stat, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { Kysely, LogEvent } from 'kysely'
import type { Logger } from 'pino'
import { openSqlite } from '../stores/open-sqlite.ts'
import type { Tables } from '../stores/tables.ts'
import { CannotStart, codeOf, exitCodes } from './cannot-start.ts'
import type { Config } from './config.ts'
import { copyBefore } from './copy-before.ts'
import { noFile, whyNoDatabase } from './say-database.ts'

/**
 * The folder, and those in it that are named, are made for this user alone, and one file is written in each and removed. What was made is
 * handed back, the innermost first. Throws `CannotStart`, and has then made nothing.
 */
export async function prepareFolder(data: string, within: readonly string[] = ['keys']): Promise<readonly string[]> {
  const made: string[] = []
  let folder = data
  try {
    for (folder of [data, ...within.map(name => join(data, name))]) {
      const trial = join(folder, `.trial-${randomUUID()}`)
      await makeFolder(resolve(folder), made)
      await writeFile(trial, '')
      await rm(trial)
    }
    return made
  } catch (error) {
    await removeFolders(made)
    throw new CannotStart(
      `CELLWARY_DATA: ${folder} is no folder that the bot can write to (${codeOf(error)}). Name another one, or mend its rights or the disk.`,
      codeOf(error) === 'ENOSPC' ? exitCodes.trouble : exitCodes.operator,
      { cause: error },
    )
  }
}

/** What is tried out and not to stay; a folder that somebody has put something into meanwhile stays. */
export async function removeFolders(made: readonly string[]): Promise<void> {
  for (const folder of made) await rmdir(folder).catch(() => undefined)
}

/** Folder by folder, since Node's own way of making them all at once never ends where the system refuses some (/proc). */
async function makeFolder(folder: string, made: string[]): Promise<void> {
  const failed = await mkdir(folder, { mode: 0o700 }).catch(error => codeOf(error))
  if (failed === undefined) made.unshift(folder)
  if (failed === undefined || failed === 'EEXIST') return
  const above = dirname(folder)
  if (failed !== 'ENOENT' || above === folder || (await isFolder(above))) await mkdir(folder)
  await makeFolder(above, made)
  await makeFolder(folder, made)
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false

/** The database of the settings, up to date. Throws `CannotStart`, and `NewerDatabase` as it is. */
export async function openDatabase(
  config: Config,
  log: Logger,
  queried?: (seconds: number) => void,
): Promise<Kysely<Tables>> {
  const { database, data } = config
  const timed = queried && (({ queryDurationMillis }: LogEvent) => queried(queryDurationMillis / 1000))
  const lost = (error: Error) => log.warn({ err: error }, 'a connection to the database was lost; another is made')
  try {
    // PostgreSQL's driver is loaded only where it is used.
    if (database !== undefined)
      return await (await import('../stores/open-postgres.ts')).openPostgres(database, undefined, lost, timed)
    await tryFile(join(data, 'cellwary.db'))
    await copyBefore(join(data, 'cellwary.db'), log)
    return await openSqlite(join(data, 'cellwary.db'), timed)
  } catch (error) {
    if (codeOf(error) === 'newer-database') throw error
    throw whyNoDatabase(config, error) ?? error
  }
}

/** SQLite opens a file that may only be read, and fails at some write later. Throws `CannotStart`. */
export async function tryFile(file: string): Promise<void> {
  const code = await open(file, 'r+').then(
    handle => handle.close(),
    error => codeOf(error),
  )
  if (code === 'EISDIR') throw noFile(file, 'is a folder. Move it away, or name another one')
  if (code === 'EROFS' || code === 'EACCES' || code === 'EPERM')
    throw noFile(file, `may only be read (${code}). Mend its rights, or name another folder`)
}
