// The weekly job on a database of its own, with a clock that is set by hand, and as many processes' worth of it as a test asks for.
import { randomUUID } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Keyv from 'keyv'
import type { Kysely } from 'kysely'
import { afterEach, beforeEach } from 'vitest'
import { openTrends } from '../../src/bin/open-trends.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import type { Job } from '../../src/jobs/weekly-job.ts'
import { unsettled } from '../../src/server/settings.ts'
import { KeptValues } from '../../src/stores/cache-adapter.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openOfferClaims } from '../../src/stores/offer-claims.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { noPosts } from '../flows/no-posts.ts'
import type { Kind } from '../stores/databases.ts'

export type TestJob = {
  readonly job: Job
  /** Lines logged so far. */
  readonly log: string[]
  readonly db: Kysely<Tables>
  /** Sets the clock of all of them, ms since 1970. */
  at(now: number): void
  /** The same job on a connection of its own, as another process has it. */
  another(): Promise<Job>
  /** A server that has its checks counted. */
  server(id: string, keepWeeks?: number): Promise<void>
  close(): Promise<void>
}

/** One for each test of the describe it stands in, with these servers; a test asks for it. */
export function useJob(kind: Kind, ...servers: readonly string[]): () => TestJob {
  let opened: TestJob
  beforeEach(async () => {
    opened = await openJob(kind)
    for (const server of servers) await opened.server(server)
  })
  afterEach(() => opened.close())
  return () => opened
}

export async function openJob(kind: Kind, packs: Parameters<typeof openPrograms>[0] = []): Promise<TestJob> {
  const opened = await kind.open()
  const data = await mkdtemp(join(tmpdir(), 'cellwary-job-'))
  const log: string[] = []
  const logger = openLog('debug', { write: line => void log.push(line) })
  let now = 0
  let holders = 0
  const jobOn = (db: Kysely<Tables>): Job => {
    const trends = openTrends(db, data, logger)
    const services = {
      trends: trends.services,
      servers: openSettingsStore(db),
      programs: openPrograms(packs),
      now: () => now,
      newId: () => randomUUID().replaceAll('-', '').slice(0, 20),
      posts: noPosts,
      pictures: { ofDrawing: async () => undefined },
      traces: openTraces(db, trends.seal),
      offers: openOfferClaims(db),
      families: { programsFor: async () => openPrograms(packs), store: openFamilyStore(db) },
      log: logger,
    }
    return {
      services,
      keys: trends.keys,
      sealKeys: trends.sealKeys,
      leases: trends.leases,
      // A clock that has run steadily for as long as anybody knows.
      clock: {
        memory: { get: async () => ({ at: now, steadySince: 0 }), set: async () => true },
        databaseTime: async () => null,
      },
      holder: `holder-${++holders}`,
      absences: new Keyv({ store: new KeptValues(db, 'absences', () => now) }),
      whereabouts: () => 'elsewhere',
    }
  }
  const job = jobOn(opened.db)
  return {
    job,
    log,
    db: opened.db,
    at(ms) {
      now = ms
    },
    another: async () => jobOn(await opened.again()),
    async server(id, keepWeeks) {
      const { revision } = await job.services.servers.load(id)
      await job.services.servers.save({
        ...unsettled(id),
        outcomes: true,
        ...(keepWeeks !== undefined && { keepWeeks }),
        revision: revision + 1,
      })
    },
    async close() {
      await opened.close()
      await rm(data, { recursive: true, force: true })
    },
  }
}
