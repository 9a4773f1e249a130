// Bench of servers' families: the first question of a check of one against a shipped one's, cold and warm, and what 40,000 cost a start.
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { type Kysely, sql } from 'kysely'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { nextOf } from '../../src/check/next.ts'
import { start as begin } from '../../src/check/step.ts'
import type { Program } from '../../src/engine/compile.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { openFamilyPrograms } from '../../src/families/family-programs.ts'
import type { FamilyStore } from '../../src/families/family-store.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { openFamilyDesk } from '../../src/services/family-desk.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openSqlite } from '../../src/stores/open-sqlite.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { inventedFamilies, unnamedFamilies } from '../families/known-families.ts'
import { draftOf, sha256, versionOf } from '../families/made-families.ts'
import { openRoom } from '../flows/open-room.ts'
import { room } from './clicks.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, quantile } from './table.ts'

const day = '2026-11-25'
const known = Object.values({ ...unnamedFamilies, ...inventedFamilies })
const factsOf = (i: number): Facts => {
  const facts = known[i % known.length]
  if (!facts) throw new Error('no family is known')
  return { ...facts, identity: { ...facts.identity, id: `f-bench${String(i).padStart(3, '0')}`, name: `Bench ${i}` } }
}

export const benchFamilies = async (): Promise<Line[]> => [
  await coldLine(),
  await warmLine(),
  ...(await crowdedLines()),
]

/** Processor time of this process in ms: one thing is done at a time, and others on the machine do not count. */
function spent(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

async function put(store: FamilyStore, server: string, facts: Facts): Promise<void> {
  const draft = draftOf(server, facts, { revision: 0 })
  if ((await store.create(draft, facts.identity.name)) !== 'saved') throw new Error('no family was made')
  const inForce = { ...draft, state: 'in-force' as const, head: 1, revision: 1, draft: null, changedBy: 'put' }
  if ((await store.putInForce(inForce, facts.identity.name, versionOf(facts, 1))) !== 'saved')
    throw new Error('no family is in force')
}

/** The first question, as a check asks it once its program is there. */
function firstQuestion(program: Program | undefined, family: string): void {
  if (!program) throw new Error(`${family} has no program`)
  const started = begin(program, { id: 'c', holder: 'h', server: 's', family, mode: 'quick', cells: 1 }, 0)
  if (!started.ok || nextOf(program, started.check).is !== 'ask') throw new Error('nothing is asked')
}

/** What all programs share is there in both: facts read, derived and compiled, against a shipped family compiled. */
async function coldLine(): Promise<Line> {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-families-'))
  const db = await openSqlite(join(folder, 'cellwary.db'))
  const store = openFamilyStore(db)
  // The same cells on both sides: those that ship with the demo pack, and as a server's moderators would describe them.
  const twins = Object.entries(inventedFamilies).map(([shipped, facts], i) => {
    const identity = { ...facts.identity, id: `f-twin${String(i).padStart(4, '0')}` }
    return { shipped, facts: { ...facts, identity } }
  })
  for (const { facts } of twins) await put(store, 's', facts)
  const packs = (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack)
  const [ours, theirs]: [number[], number[]] = [[], []]
  const rounds = usually(20, 6)
  for (let round = 0; round < rounds; round++) {
    const programs = openPrograms(packs)
    if (!programs.programFor(null, day)) throw new Error('the shipped packs do not compile')
    for (const { shipped, facts } of twins) {
      const { id } = facts.identity
      const desk = openFamilyDesk(store, programs, openFamilyPrograms(programs), [], sha256, () => 0)
      const a = spent()
      const compiled = programs.compileFor(shipped, day)
      firstQuestion(compiled.ok ? compiled.program : undefined, shipped)
      const b = spent()
      firstQuestion(await desk.programToStart('s', id, day), id)
      const c = spent()
      if (round === 0) continue
      theirs.push(b - a)
      ours.push(c - b)
    }
  }
  await db.destroy()
  await rm(folder, { recursive: true })
  return {
    what: "First question of a check of a server's family, cold",
    ours: ms(quantile(ours, 0.5)),
    baseline: `a shipped family compiled cold ${ms(quantile(theirs, 0.5))}`,
    ...compared(ours, theirs),
    atMost: 1.5,
  }
}

const people = Array.from({ length: 24 }, (_, i) => ({
  id: `9000000000000006${String(i).padStart(2, '0')}`,
  ...{ name: `P${i}`, locale: 'en-GB', roles: [] },
}))

/** As people meet it: from the command to the message with the first question, in turns, once both programs are there. */
async function warmLine(): Promise<Line> {
  const scenario = { ...demoServer, people: [...demoServer.people, ...people] }
  const opened = await openRoom(undefined, scenario, { CELLWARY_PICTURES: 'off' })
  const { store } = opened.services.families
  const own = factsOf(0)
  await put(store, demoServer.server.id, own)
  const shipped = opened.services.programs.families[0]?.id ?? ''
  const [ours, theirs]: [number[], number[]] = [[], []]
  const sides: [string, number[]][] = [
    [own.identity.id, ours],
    [shipped, theirs],
  ]
  for (let i = 0; i < 4; i++)
    // Who goes first takes turns as well: a second command finds what the first has woken.
    for (const { id } of people.slice(0, usually(24, 12)))
      for (const [family, took] of i % 2 ? sides : sides.toReversed()) {
        const begun = spent()
        const reply = await opened.standIn.as(id).run('check start', { family, depth: 'quick' })
        if (reply.kind !== 'message') throw new Error(`no message but ${reply.kind}`)
        if (i > 0) took.push(spent() - begun)
      }
  await opened.close()
  return {
    what: "First question of a check of a server's family, warm, command to message",
    ours: ms(quantile(ours, 0.5)),
    baseline: `a shipped family ${ms(quantile(theirs, 0.5))}`,
    ...compared(ours, theirs),
    atMost: 1.05,
  }
}

const entry = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))
const servers = usually(2000, 200)
const perServer = 20
/** Long enough for what was only needed at the start to be let go of, in ms. */
const settling = usually(6000, 2000)

/** Starts with the families of many servers in the database and without, in turns. */
async function crowdedLines(): Promise<Line[]> {
  const folder = await mkdtemp(join(tmpdir(), 'cellwary-families-'))
  const [full, empty] = [join(folder, 'full'), join(folder, 'empty')]
  await fill(full)
  const [ours, theirs]: [Started[], Started[]] = [[], []]
  for (let round = 0; round < usually(6, 3); round++) {
    theirs.push(await started(empty))
    ours.push(await started(full))
  }
  await rm(folder, { recursive: true })
  const of = (all: readonly Started[], what: keyof Started) => all.slice(1).map(one => one[what])
  const middle = (all: readonly Started[], what: keyof Started) => quantile(of(all, what), 0.5)
  return [
    {
      what: `Start with ${servers} servers of ${perServer} families each`,
      ours: ms(middle(ours, 'ms')),
      baseline: `without any ${ms(middle(theirs, 'ms'))}`,
      ...compared(of(ours, 'ms'), of(theirs, 'ms')),
      atMost: 1.05,
    },
    {
      what: `Memory with ${servers} servers of ${perServer} families each`,
      ours: `${middle(ours, 'mb')} MB`,
      baseline: `without any ${middle(theirs, 'mb')} MB`,
      ...compared(of(ours, 'mb'), of(theirs, 'mb')),
      atMost: 1.1,
    },
  ]
}

/** One server's families through the store, and the same for all others by copying rows. */
async function fill(data: string): Promise<void> {
  await mkdir(data)
  const db = await openSqlite(join(data, 'cellwary.db'))
  const store = openFamilyStore(db)
  for (let i = 0; i < perServer; i++) await put(store, 's', factsOf(i))
  await copied(db, 'families', 'id, state, head, revision, name_key, named, body, opened_by, changed_by, putting')
  await copied(db, 'family_versions', 'family, number, digest, body, "by", agreed_by')
  await db.destroy()
}

const copied = (db: Kysely<Tables>, table: string, columns: string) =>
  sql`with recursive n(i) as (select 1 union all select i + 1 from n where i < ${servers - 1})
    insert into ${sql.table(table)} (server, ${sql.raw(columns)})
    select 's' || n.i, ${sql.raw(columns)} from ${sql.table(table)}, n where server = 's'`.execute(db)

type Started = { readonly ms: number; readonly mb: number }

/** How long a process takes until it is ready, and what it holds a while later (Linux). */
async function started(data: string): Promise<Started> {
  const standIn = await room()
  const env = {
    ...{ PATH: process.env['PATH'], DISCORD_TOKEN: standIn.botToken, CELLWARY_DISCORD_API: standIn.apiUrl },
    ...{ CELLWARY_DATA: data, CELLWARY_LOG: 'warn' },
  }
  const begun = performance.now()
  const bot = fork(entry, { env })
  const ended = once(bot, 'close')
  await Promise.race([once(bot, 'message'), ended.then(([code]) => Promise.reject(new Error(`ended with ${code}`)))])
  const took = performance.now() - begun
  await after(settling)
  const kilobytes = /^RssAnon:\s+(\d+)/m.exec(await readFile(`/proc/${bot.pid}/status`, 'utf8'))?.[1]
  bot.kill('SIGTERM')
  await ended
  await standIn.close()
  return { ms: took, mb: Math.round(Number(kilobytes) / 1024) }
}
