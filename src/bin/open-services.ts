// Wires the rooms together: packs into programs, a database behind the stores, and the services every handler is given.
import { createHash, randomBytes } from 'node:crypto'
import { join } from 'node:path'
import Keyv from 'keyv'
import { type Kysely, sql } from 'kysely'
import type { Logger } from 'pino'
import type { Sharding } from '../discord/gateway/sharding.ts'
import type { Posts } from '../discord/posts/post.ts'
import { queuePosts } from '../discord/posts/queue-posts.ts'
import type { Drafts, Services } from '../discord/services.ts'
import { dayOf } from '../engine/day-of.ts'
import { openPrograms, type Programs } from '../engine/programs.ts'
import { toldIn } from '../families/facts/settle-facts.ts'
import { openFamilyPrograms } from '../families/family-programs.ts'
import { lookedAtAnyway } from '../families/features.ts'
import { sweep } from '../jobs/sweep.ts'
import type { Job } from '../jobs/weekly-job.ts'
import { ageingSoon } from '../packs/ageing.ts'
import { openInstalledAnswers } from '../packs/installed-answers.ts'
import { installedConstructions } from '../packs/installed-constructions.ts'
import { demoPack, installedPacks } from '../packs/installed-packs.ts'
import { openLogReader } from '../readers/log/open-log-reader.ts'
import { openPhotoReader } from '../readers/photo/open-photo-reader.ts'
import { openTextReader, type TextReader } from '../readers/text-file.ts'
import type { Traces } from '../server/traces.ts'
import { openServerLanes } from '../services/fair-use/server-lanes.ts'
import { type FamilyDesk, openFamilyDesk } from '../services/family-desk.ts'
import type { FamilyFiles } from '../services/family-files.ts'
import { openKeyedQueue } from '../services/keyed-queue.ts'
import type { PictureMemory } from '../services/pictures/open-pictures.ts'
import type { Pictures } from '../services/pictures/pictures.ts'
import { draftsNamespace, KeptValues } from '../stores/cache-adapter.ts'
import { openCheckStore } from '../stores/check-store.ts'
import { databaseTime } from '../stores/database-time.ts'
import { type Erasures, openErasures } from '../stores/erasures.ts'
import { openFamilyStore } from '../stores/family-store.ts'
import { openHelperLog } from '../stores/helper-log.ts'
import { namedIn } from '../stores/named-in.ts'
import { openNoticeStore } from '../stores/notice-store.ts'
import { openOfferClaims } from '../stores/offer-claims.ts'
import { type RememberingChecks, rememberChecks } from '../stores/remembering-checks.ts'
import { openSettingsStore } from '../stores/settings-store.ts'
import type { Tables } from '../stores/tables.ts'
import { openTraces } from '../stores/traces.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Config } from './config.ts'
import { eraseAgain, forgetCounted } from './erase-again.ts'
import { identifyTurns } from './identify-turns.ts'
import { openFairShares } from './open-fair-shares.ts'
import { openTrends } from './open-trends.ts'
import { openDatabase, prepareFolder } from './prepare-data.ts'

export type OpenedServices = {
  readonly services: Services
  readonly job: Omit<Job, 'services'>
  /** Turns for connections, among all processes on the same database. */
  readonly identifyTurn: Sharding['turn']
  /** Rejects where the database does not answer. */
  askDatabase(): Promise<unknown>
  close(): Promise<void>
}

/** How often expired checks and values are swept out, and how long read packs and drawn pictures are remembered, in ms. */
const sweepEvery = 3600_000
const rememberedFor = 90 * 24 * 3600_000

/** `queried` is told of every statement of the database, in seconds. */
export async function openServices(
  config: Config,
  log: Logger,
  posts: Posts,
  queried?: (seconds: number) => void,
): Promise<OpenedServices> {
  const now = Date.now
  await prepareFolder(config.data)
  const db = await openDatabase(config, log, queried)
  const leftOut = (error: Error) => log.error({ err: error }, 'something in the database is left out')
  const trends = openTrends(db, config.data, log)
  const traces = openTraces(db, trends.seal, leftOut)
  const erasures = openErasures(join(config.data, 'keys', 'erased'), new KeptValues(db, 'erased'), now)
  await eraseAgain(erasures, () => namedIn(db, trends.seal, trends.codes), traces, trends.services.outcomes, log)
  const checks = rememberChecks(openCheckStore(db, trends.seal, leftOut))
  const kept = new KeptValues(db)
  await kept.purgeDrafts()
  const memory = new Keyv({ store: new KeptValues(db, 'installed-packs'), ttl: rememberedFor })
  const programs = openPrograms(await packsOf(config, memory, log), lookedAtAnyway)
  const families = await openFamilies(db, programs, log, now, config, memory)
  const pictures = config.pictures
    ? picturesWhenNeeded(new Keyv({ store: new KeptValues(db, 'pictures'), ttl: rememberedFor }), log)
    : noPictures
  const queue = openKeyedQueue()
  const clock = {
    memory: new Keyv({ store: new KeptValues(db, 'clock') }),
    databaseTime: () => databaseTime(db),
  }
  const shares = openFairShares(config, db, log)
  const sweepOnce = () =>
    queue
      .inBackground({ is: 'sweep' }, async () => {
        await shares.purge()
        await sweep(services, kept, clock)
      })
      .catch(error => log.warn({ err: error }, 'sweeping failed'))
  const timer = setInterval(sweepOnce, sweepEvery).unref()
  const newId = () => randomBytes(10).toString('hex')
  const servers = openSettingsStore(db, leftOut)
  const offers = openOfferClaims(db)
  const notices = openNoticeStore(db)
  const drafts = openDrafts(new Keyv({ store: new KeptValues(db, draftsNamespace) }), newId)
  const logs = openLogReader(config.attachmentOrigins)
  const photos = openPhotoReader(config.attachmentOrigins)
  const texts = openTextReader(config.attachmentOrigins)
  const services: Services = {
    programs,
    families,
    checks,
    notices,
    servers,
    offers,
    helpers: openHelperLog(db),
    queue,
    fairUse: shares.fairUse,
    lanes: openServerLanes(),
    pictures,
    drafts,
    logs,
    photos,
    texts,
    files: familyFiles(texts),
    answers: openInstalledAnswers(config.rules, log),
    trends: {
      ...trends.services,
      outcomes: { ...trends.services.outcomes, forget: forgetCounted(trends.services.outcomes, erasures) },
    },
    traces: tracesWith(traces, checks, erasures),
    posts: queuePosts(posts),
    now,
    newId,
    log,
  }
  return {
    services,
    job: {
      keys: trends.keys,
      sealKeys: trends.sealKeys,
      leases: trends.leases,
      clock,
      holder: newId(),
      absences: new Keyv({ store: new KeptValues(db, 'absences'), ttl: rememberedFor }),
      whereabouts: () => 'elsewhere',
    },
    identifyTurn: identifyTurns({
      leases: trends.leases,
      newId,
      now: async () => (await clock.databaseTime()) ?? now(),
      log,
    }),
    askDatabase: () => sql`select 1`.execute(db),
    async close() {
      clearInterval(timer)
      await queue.idle()
      await db.destroy()
    },
  }
}

/** The installed packs; the pseudo-language is only loaded where it is switched on. */
async function packsOf({ rules, pseudo, demo }: Config, memory: Keyv, log: Logger) {
  const { packs: all, leftOut } = await installedPacks(rules, memory)
  for (const sentence of leftOut) log.error({ sentence }, 'a rule pack is left out')
  const packs = demo ? all : all.filter(pack => pack.id !== demoPack)
  for (const ageing of ageingSoon(packs, dayOf(Date.now())))
    log.warn(ageing, 'signs of a rule pack stop counting on this day; their figures want looking up')
  if (!pseudo) return packs
  const { inPseudo, openPseudo } = await import('../words/pseudo.ts')
  openPseudo()
  return packs.map(inPseudo)
}

/** What servers describe themselves, and the constructions that come with the project; one that cannot be used is left out. */
async function openFamilies(
  db: Kysely<Tables>,
  programs: Programs,
  log: Logger,
  now: () => number,
  { pseudo }: Config,
  memory: Keyv,
): Promise<FamilyDesk> {
  const { constructions: shipped, problems } = await installedConstructions(memory)
  for (const { file, problem } of problems) log.warn({ file, problem }, 'a construction is left out')
  const sha256 = (text: string) => createHash('sha256').update(text).digest('hex')
  const { disguiseText } = pseudo ? await import('../words/pseudo.ts') : { disguiseText: undefined }
  const constructions = disguiseText
    ? shipped.map(one => ({ ...one, title: { en: disguiseText(toldIn(one.title, 'en')) } }))
    : shipped
  const made = openFamilyPrograms(programs)
  return openFamilyDesk(openFamilyStore(db), programs, made, constructions, sha256, now)
}

/** Families as files; YAML is loaded when the first is read or written. */
const familyFiles = (reader: TextReader): FamilyFiles => ({
  async read(link, id) {
    const [{ readFamilyFile }, { fileLimits }] = await Promise.all([
      import('../packs/read-family-file.ts'),
      import('../families/exchange/exchange.ts'),
    ])
    const file = await reader.read(link, fileLimits.bytes)
    if (file.ok) return readFamilyFile(file.text, id)
    return file.why === 'too-large' ? { ok: false, tooLarge: fileLimits.bytes / 1024 } : { ok: false, yaml: file.why }
  },
  write: async facts => (await import('../packs/read-family-file.ts')).writeFamilyFile(facts),
})

/** What is deleted is let go of in memory, too; another process meets it at its next save. */
function tracesWith(traces: Traces, checks: RememberingChecks<Outcome>, erasures: Erasures): Traces {
  return {
    ...traces,
    async forgetPerson(person) {
      const forgotten = await erasures.noting([{ is: 'person', word: person }], () => traces.forgetPerson(person))
      checks.letGo(check => JSON.stringify(check).includes(JSON.stringify(person)))
      return forgotten
    },
    async forgetServer(server) {
      await erasures.noting([{ is: 'server', word: server }], () => traces.forgetServer(server))
      checks.letGo(check => check.server === server)
    },
  }
}

/** The drawings are loaded when the first is asked for. */
function picturesWhenNeeded(kept: PictureMemory, log: Logger): Pictures {
  let opening: Promise<Pictures> | undefined
  const opened = () => {
    opening ??= import('../services/pictures/open-pictures.ts').then(drawn => drawn.openPictures(kept))
    return opening
  }
  // A message without its picture still says what it says.
  const without = (what: string) => (error: unknown) => {
    log.warn({ err: error, what }, 'no picture')
    return undefined
  }
  return {
    async forQuestion(question, say) {
      if (!question.picture) return undefined
      return (await opened()).forQuestion(question, say).catch(without(question.id))
    },
    forVerdict: async (program, judgement, answers, say) =>
      (await (await opened()).forVerdict(program, judgement, answers, say).catch(without('verdict'))) ?? [],
    forDetails: async (program, judgement, say) =>
      (await (await opened()).forDetails(program, judgement, say).catch(without('family'))) ?? [],
    forBench: async say => (await opened()).forBench(say).catch(without('safe-bench')),
    ofDrawing: async (name, drawing, say) => (await opened()).ofDrawing(name, drawing, say).catch(without(name)),
  }
}

const noPictures: Pictures = {
  forQuestion: async () => undefined,
  forVerdict: async () => [],
  forDetails: async () => [],
  forBench: async () => undefined,
  ofDrawing: async () => undefined,
}

function openDrafts(kept: Keyv, newId: () => string): Drafts {
  return {
    async keep(value, ms) {
      const key = newId()
      await kept.set(key, value, ms)
      return key
    },
    find: key => kept.get(key),
  }
}
