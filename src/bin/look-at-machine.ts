// What the doctor sees on this machine: the data folder, the database and the rules. Nothing is made, migrated or kept.
import { access, constants, stat } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import { type Finding, of } from '../discord/doctor/finding.ts'
import { installedPacks } from '../packs/installed-packs.ts'
import { UnusablePacks } from '../packs/unusable-packs.ts'
import { newerDatabase } from '../stores/migrations.ts'
import { codeOf, endingOf, exitCodes } from './cannot-start.ts'
import { openForReading } from './cli/open-for-reading.ts'
import type { Config } from './config.ts'

export async function lookAtMachine(config: Config): Promise<Finding[]> {
  return [await lookAtFolder(config), await lookAtDatabase(config), await lookAtRules(config)]
}

async function lookAtFolder({ data }: Config): Promise<Finding> {
  const folder = of('data folder')
  const writable = (path: string) => access(path, constants.W_OK | constants.X_OK)
  try {
    const found = await stat(data).catch(error => (codeOf(error) === 'ENOENT' ? undefined : Promise.reject(error)))
    if (found && !found.isDirectory()) return folder.wrong(`CELLWARY_DATA: ${data} is no folder. Name another one.`)
    if (!found) {
      await writable(await nearest(dirname(resolve(data))))
      return folder.fine(`${data} is not there yet; the first start makes it.`)
    }
    await writable(data)
    if (process.platform !== 'win32' && (found.mode & 0o077) !== 0)
      return folder.note(`${data} can be read by other users of this machine. Run: chmod 700 ${data}`)
    return folder.fine(`${data} can be written to.`)
  } catch (error) {
    return folder.wrong(
      `CELLWARY_DATA: ${data} cannot be written to (${codeOf(error)}). Mend its rights or name another.`,
    )
  }
}

/** The nearest folder above that exists. */
async function nearest(path: string): Promise<string> {
  const there = await stat(path).catch(() => undefined)
  return there || dirname(path) === path ? path : nearest(dirname(path))
}

async function lookAtDatabase(config: Config): Promise<Finding> {
  const database = of('database')
  const named = config.database ?? join(config.data, 'cellwary.db')
  const setting = config.database === undefined ? `CELLWARY_DATA: ${named}` : 'DATABASE_URL: the database'
  try {
    const opened = await openForReading(named)
    if (opened.ok) {
      const newer = await newerDatabase(opened.db).catch(() => undefined)
      await opened.db.destroy()
      if (newer) return database.wrong(newer.message)
      return database.fine('It opens, and it is of this version.')
    }
    if (opened.why === 'no-database') return database.fine('It is not there yet; the first start makes it.')
    if (/ECONNREFUSED|ECONNRESET|ENOTFOUND|ETIMEDOUT|EAI_AGAIN|the connection was lost/.test(opened.says))
      return database.trouble(`${setting} does not answer (${opened.says}). Start it, or correct the address.`)
    if (/relation .* does not exist|no such table/.test(opened.says))
      return database.fine('It is empty or of an older version; the first start brings it up to date.')
    return database.wrong(
      `${setting} cannot be used (${opened.says}). Correct the address, name or password, or restore it.`,
    )
  } catch (error) {
    return database.wrong(`${setting} cannot be opened (${codeOf(error) ?? error}). Restore it from a back-up.`)
  }
}

async function lookAtRules(config: Config): Promise<Finding> {
  const rules = of('rules')
  try {
    const { packs, leftOut } = await installedPacks(config.rules)
    if (leftOut.length > 0) return rules.wrong(leftOut.join(' '))
    return rules.fine(`${packs.length} packs: ${packs.map(one => `${one.id} ${one.version}`).join(', ')}.`)
  } catch (error) {
    if (error instanceof UnusablePacks) return rules.wrong(error.sentences.join(' '))
    const { sentences, code } = endingOf(error, config)
    return sentences.length > 0 && code === exitCodes.operator
      ? rules.wrong(sentences.join(' '))
      : rules.trouble(`They cannot be read (${codeOf(error) ?? error}).`)
  }
}
