// A PostgreSQL of a test's own, in a folder of its own, whose log can be read change by change (`wal_level=logical`).
import { type SpawnOptions, spawn } from 'node:child_process'
import { chown, mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openPostgres } from '../../src/stores/open-postgres.ts'
import type { Kind } from './databases.ts'

/** Where Debian keeps each version's programs; the newest. */
const versions = '/usr/lib/postgresql'
async function findPrograms(): Promise<string | undefined> {
  const found = (await readdir(versions).catch(() => [])).sort((a, b) => Number(b) - Number(a))
  for (const version of found) {
    const folder = join(versions, version, 'bin')
    const there: string[] = await readdir(folder).catch(() => [])
    if (['initdb', 'pg_ctl', 'postgres'].every(name => there.includes(name))) return folder
  }
  return undefined
}
const programs = await findPrograms()

/** PostgreSQL does not run as root: then somebody who may do nothing runs it. */
const nobody = 65534
const asSomebody: SpawnOptions = process.getuid?.() === 0 ? { uid: nobody, gid: nobody } : {}

function run(program: string, words: readonly string[], cwd: string): Promise<void> {
  const done = Promise.withResolvers<void>()
  const child = spawn(join(programs ?? '', program), words, { ...asSomebody, cwd, stdio: 'ignore' })
  child.on('error', done.reject)
  child.on('exit', code => (code === 0 ? done.resolve() : done.reject(new Error(`${program} ended with ${code}`))))
  return done.promise
}

const missing = programs === undefined ? `no initdb, pg_ctl and postgres below ${versions}` : undefined

export type OwnPostgres = {
  /** What an operator would name it by. */
  readonly url: string
  /** Ends it at once, as a crash would, and starts it again. */
  restart(): Promise<void>
  close(): Promise<void>
}

export async function openOwnPostgres(): Promise<OwnPostgres> {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-pg-'))
  if (asSomebody.uid !== undefined) await chown(folder, nobody, nobody)
  const data = join(folder, 'data')
  const settings = `-c wal_level=logical -c fsync=off -c listen_addresses= -c unix_socket_directories=${folder}`
  const control = (...words: string[]) => run('pg_ctl', ['-D', data, '-w', ...words], folder)
  const start = () => control('-l', join(folder, 'log'), '-o', settings, 'start')
  const stop = () => control('-m', 'immediate', 'stop')
  await run('initdb', ['-D', data, '-U', 'postgres', '-A', 'trust', '--no-sync', '-E', 'UTF8', '--locale=C'], folder)
  await start()
  return {
    url: `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}`,
    async restart() {
      await stop()
      await start()
    },
    async close() {
      await stop()
      await rm(folder, { recursive: true, force: true })
    },
  }
}

export const ownPostgres: Kind = {
  name: 'a PostgreSQL of its own',
  missing,
  dump: 'postgres.sql',
  async open() {
    const own = await openOwnPostgres()
    const opened = [await openPostgres(own.url)]
    return {
      db: opened[0] as (typeof opened)[0],
      async again() {
        const another = await openPostgres(own.url)
        opened.push(another)
        return another
      },
      async close() {
        for (const one of opened) await one.destroy()
        await own.close()
      },
    }
  },
}
