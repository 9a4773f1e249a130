// What the doctor sees on this machine: the data folder, the database, the rules and the ports. Nothing is migrated, and what is made is taken away again.
import { stat } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { type Finding, of } from '../discord/doctor/finding.ts'
import { demoPack, installedPacks } from '../packs/installed-packs.ts'
import { UnusablePacks } from '../packs/unusable-packs.ts'
import { newerDatabase } from '../stores/migrations.ts'
import { isMissing } from '../stores/newer-database.ts'
import { codeOf, type Ending, endingOf, exitCodes } from './cannot-start.ts'
import { openForReading } from './cli/open-for-reading.ts'
import type { Config } from './config.ts'
import { lookAtPorts } from './look-at-ports.ts'
import { prepareFolder, removeFolders, tryFile } from './prepare-data.ts'
import { whyNoDatabase } from './say-database.ts'

export async function lookAtMachine(config: Config): Promise<Finding[]> {
  return [
    await lookAtFolder(config),
    await lookAtDatabase(config),
    await lookAtRules(config),
    ...(await lookAtPorts(config)),
  ]
}

/** As a start tries it out; what had to be made for that is taken away again. */
async function lookAtFolder(config: Config): Promise<Finding> {
  const { data } = config
  const folder = of('data folder')
  try {
    const made = await prepareFolder(data)
    await removeFolders(made)
    if (made.includes(resolve(data))) return folder.fine(`${data} is not there yet; the first start makes it.`)
    if (process.platform !== 'win32' && ((await stat(data)).mode & 0o077) !== 0)
      return folder.note(`${data} can be read by other users of this machine. Run: chmod 700 ${data}`)
    return folder.fine(`${data} can be written to.`)
  } catch (error) {
    return said(folder, endingOf(error, config)) ?? folder.wrong(`${data} cannot be used (${codeOf(error)}).`)
  }
}

async function lookAtDatabase(config: Config): Promise<Finding> {
  const database = of('database')
  const file = join(config.data, 'cellwary.db')
  try {
    if (config.database === undefined) await tryFile(file)
    const opened = await openForReading(config.database ?? file)
    if (opened.ok) {
      const newer = await newerDatabase(opened.db).catch(() => undefined)
      await opened.db.destroy()
      if (newer) return database.wrong(newer.message)
      return database.fine('It opens, and it is of this version.')
    }
    if (opened.why === 'no-database') return database.fine('It is not there yet; the first start makes it.')
    if (isMissing(opened.error))
      return database.fine('It is empty or of an older version; the first start brings it up to date.')
    throw opened.error
  } catch (error) {
    const why = whyNoDatabase(config, error)
    return (
      (why && said(database, why.ending)) ??
      database.wrong(`It cannot be opened (${codeOf(error) ?? error}). Restore it from a back-up.`)
    )
  }
}

async function lookAtRules(config: Config): Promise<Finding> {
  const rules = of('rules')
  try {
    const { packs, leftOut } = await installedPacks(config.rules)
    if (leftOut.length > 0) return rules.wrong(leftOut.join(' '))
    const used = packs.filter(one => one.id !== demoPack)
    return rules.fine(`${used.length} in use on servers: ${used.map(one => `${one.id} ${one.version}`).join(', ')}.`)
  } catch (error) {
    if (error instanceof UnusablePacks) return rules.wrong(error.sentences.join(' '))
    const ending = endingOf(error, config)
    return said(rules, ending) ?? rules.trouble(`They cannot be read (${codeOf(error) ?? error}).`)
  }
}

/** What a start would say, and end with. */
function said(about: ReturnType<typeof of>, { sentences, code }: Ending): Finding | undefined {
  if (sentences.length === 0) return undefined
  return about[code === exitCodes.operator ? 'wrong' : 'trouble'](sentences.join(' '))
}
