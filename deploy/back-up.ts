// Copies the embedded database while the bot runs: one file, checked, named by the time it was taken.
import { chmod, mkdir, open, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { backup, DatabaseSync } from 'node:sqlite'
import { readConfig } from '../src/bin/config.ts'

export type BackingUp = { readonly ok: true; readonly file: string } | { readonly ok: false; readonly sentence: string }

/**
 * Copies `cellwary.db` of the folder `data` into the folder `into` (made if missing) as of `now`, in ms since 1970.
 * SQLite's own online back-up (sqlite.org/backup.html) takes one consistent state without stopping writers. The file gets
 * its name only once it is whole, proved sound and on the disk, so whatever bears the name can be restored.
 */
export async function backUp(data: string, into: string, now: number): Promise<BackingUp> {
  const source = join(data, 'cellwary.db')
  if (!(await exists(source)))
    return { ok: false, sentence: `There is no ${source}. Name the folder the bot keeps it in.` }
  const file = join(into, `cellwary-${new Date(now).toISOString().slice(0, 19).replaceAll(':', '')}Z.db`)
  if (await exists(file))
    return { ok: false, sentence: `${file} exists already and was left alone. Try again in a second.` }

  const growing = `${file}.part`
  await mkdir(into, { recursive: true, mode: 0o700 })
  try {
    const database = new DatabaseSync(source, { readOnly: true, timeout: 5000 })
    try {
      await backup(database, growing)
    } finally {
      database.close()
    }
    await chmod(growing, 0o600)
    const complaint = proveSound(growing)
    if (complaint) return { ok: false, sentence: `The copy is not sound: ${complaint}. Nothing was kept.` }
    await toDisk(growing)
    await rename(growing, file)
    await toDisk(into)
    return { ok: true, file }
  } finally {
    await rm(growing, { force: true })
  }
}

/** What SQLite says against the file, or undefined. It also leaves WAL mode, so that the back-up is a single file. */
function proveSound(path: string): string | undefined {
  const copy = new DatabaseSync(path)
  try {
    copy.exec('pragma journal_mode = delete')
    const said = copy.prepare('pragma integrity_check').get()?.['integrity_check']
    return said === 'ok' ? undefined : String(said)
  } finally {
    copy.close()
  }
}

const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  )

async function toDisk(path: string): Promise<void> {
  const handle = await open(path, 'r')
  await handle.sync().finally(() => handle.close())
}

if (import.meta.main) {
  const [into, named, ...rest] = process.argv.slice(2)
  const stop = (code: number, ...sentences: readonly string[]) => {
    for (const sentence of sentences) console.error(sentence)
    process.exit(code)
  }
  const { DATABASE_URL: database, ...env } = process.env
  // Whether there is a token does not matter here.
  const read = readConfig(env)
  if (into === undefined || rest.length > 0)
    stop(2, 'Usage: node deploy/back-up.ts FOLDER [DATA]   DATA is the bot’s data folder, CELLWARY_DATA if left out.')
  else if (!read.ok) stop(2, ...read.sentences)
  else if (database) stop(2, 'DATABASE_URL is set: back up PostgreSQL with its own pg_dump.')
  else {
    const done = await backUp(named ?? read.config.data, into, Date.now()).catch(error => ({
      ok: false as const,
      sentence: `The back-up failed and nothing was kept: ${error instanceof Error ? error.message : error}`,
    }))
    if (done.ok) console.log(done.file)
    else stop(1, done.sentence)
  }
}
