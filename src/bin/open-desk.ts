// Wires the rooms together: packs into programs, a database behind the stores, and the desk every handler is given.
import { randomBytes } from 'node:crypto'
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Logger } from 'pino'
import type { Desk, Pictures } from '../discord/desk.ts'
import { openLanes } from '../discord/lanes.ts'
import { sayProblem } from '../discord/words/problem-words.ts'
import { sayIn } from '../discord/words/say.ts'
import { openPrograms, type Programs } from '../engine/programs.ts'
import { openCheckStore } from '../stores/check-store.ts'
import { KeptValues } from '../stores/kept-values.ts'
import { openPostgres } from '../stores/open-postgres.ts'
import { openSqlite } from '../stores/open-sqlite.ts'
import type { Config } from './config.ts'
import { loadPacks } from './load-packs.ts'
import { shippedRules } from './shipped-rules.ts'

export type OpenedDesk = { readonly desk: Desk; close(): Promise<void> }

/** A pack that cannot be used: each sentence says what to change. */
export class UnusablePacks extends Error {
  readonly sentences: readonly string[]
  constructor(sentences: readonly string[]) {
    super(sentences.join('\n'))
    this.sentences = sentences
  }
}

/** How often expired checks and values are swept out, in ms. */
const sweepEvery = 3600_000

export async function openDesk(config: Config, log: Logger): Promise<OpenedDesk> {
  const now = Date.now
  const programs = await loadPrograms(config.rules, now())
  if (config.database === undefined) await mkdir(config.data, { recursive: true })
  const db = config.database ? await openPostgres(config.database) : await openSqlite(join(config.data, 'cellwary.db'))
  const checks = openCheckStore(db)
  const kept = new KeptValues(db)
  const lanes = openLanes()
  const sweep = () =>
    lanes
      .inBackground(async () => {
        const gone = await checks.purge(now())
        log.debug({ checks: gone, values: await kept.purge() }, 'swept')
      })
      .catch(error => log.warn({ err: error }, 'sweeping failed'))
  const timer = setInterval(sweep, sweepEvery).unref()
  const desk: Desk = {
    programs,
    checks,
    lanes,
    pictures: noPictures,
    now,
    newId: () => randomBytes(10).toString('hex'),
    log,
  }
  return {
    desk,
    async close() {
      clearInterval(timer)
      await lanes.idle()
      await db.destroy()
    },
  }
}

const noPictures: Pictures = { forQuestion: async () => undefined }

/** The shipped packs and those in `folder`, compiled as of `now`. */
export async function loadPrograms(folder: string | undefined, now: number): Promise<Programs> {
  const say = sayIn('en')
  const shipped = await loadPacks(shippedRules)
  const base = shipped.packs.map(loaded => loaded.pack)
  const more = folder === undefined ? { packs: [], problems: [] } : await loadPacks(folder, base)
  const problems = [...shipped.problems, ...more.problems]
  if (problems.length > 0)
    throw new UnusablePacks(problems.map(({ file, problem }) => `${file}: ${sayProblem(say, problem)}`))
  const today = new Date(now).toISOString().slice(0, 10)
  const opened = openPrograms([...base, ...more.packs.map(loaded => loaded.pack)], today)
  if (!opened.ok) throw new UnusablePacks(opened.problems.map(problem => sayProblem(say, problem)))
  return opened.programs
}
