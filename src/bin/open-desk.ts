// Wires the rooms together: packs into programs, a database behind the stores, and the desk every handler is given.
import { randomBytes } from 'node:crypto'
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Logger } from 'pino'
import type { Desk, Pictures } from '../discord/desk.ts'
import { openLanes } from '../discord/lanes.ts'
import { openCheckStore } from '../stores/check-store.ts'
import { KeptValues } from '../stores/kept-values.ts'
import { openPostgres } from '../stores/open-postgres.ts'
import { openSqlite } from '../stores/open-sqlite.ts'
import type { Config } from './config.ts'
import { loadPrograms } from './load-programs.ts'

export type OpenedDesk = { readonly desk: Desk; close(): Promise<void> }

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
