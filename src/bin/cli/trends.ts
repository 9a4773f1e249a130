// cellwary trends: prints a frozen release, for people or byte by byte; detect, patterns and close are its subcommands.
import { Command } from 'commander'
import type { Kysely } from 'kysely'
import { dayOf } from '../../engine/day-of.ts'
import { openPrograms } from '../../engine/programs.ts'
import { installedPacks } from '../../packs/installed-packs.ts'
import { drawShares } from '../../pictures/from-trends/draw-shares.ts'
import { openReleaseLog } from '../../stores/release-log.ts'
import type { Tables } from '../../stores/tables.ts'
import type { Scope } from '../../trends/outcome-log.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import type { Release } from '../../trends/release/release.ts'
import { isWeek } from '../../trends/week.ts'
import { unmarked } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import {
  sayChecks,
  sayCount,
  sayPatterns,
  sayRises,
  saySpikes,
  sayTitle,
  sayVerdicts,
} from '../../words/trend-words.ts'
import { fail } from './fail.ts'
import { openForReading } from './open-for-reading.ts'
import { closeCommand } from './trends-close.ts'
import { detectCommand } from './trends-detect.ts'
import { patternsCommand } from './trends-patterns.ts'
import { isPictureFile, writeDrawing } from './write-drawing.ts'

type Options = {
  db?: string
  week?: string
  server?: string
  pool?: true
  json?: true
  picture?: string
  rules?: string
}

export function trendsCommand(): Command {
  return new Command('trends')
    .description('Print the frozen release of a week; or watch a series, search a table, close weeks.')
    .option('--db <database>', 'the file cellwary.db, or postgres://…')
    .option('--week <week>', 'such as 2026-W07; the latest without it')
    .option('--server <id>', "whose release; the only server's without it")
    .option('--pool', 'the release of all servers that pool')
    .option('--json', 'print the release exactly as it was frozen')
    .option('--picture <file>', 'draw the shares of the verdicts as .png or .svg')
    .option('--rules <dir>', 'more rule packs, for their names')
    .enablePositionalOptions()
    .action(show)
    .addCommand(detectCommand())
    .addCommand(patternsCommand())
    .addCommand(closeCommand())
}

async function show({ db: named, week, server, pool, json, picture, rules }: Options): Promise<void> {
  const say = sayIn('en')
  if (picture !== undefined && !isPictureFile(picture, '--picture')) return
  if (named === undefined) {
    fail([say('trend-input.no-db')])
    process.exitCode = 2
    return
  }
  if (week !== undefined && !isWeek(week)) return fail([say('trend-input.not-a-week', { week })])
  const opened = await openForReading(named)
  if (!opened.ok) return fail([say(`trend-input.${opened.why}`, { db: named, says: opened.says })])
  try {
    const scope = pool ? ({ kind: 'pool' } as const) : await scopeOf(say, opened.db, server)
    if (typeof scope === 'string') return fail([scope])
    const bytes = await findBytes(say, opened.db, scope, week)
    if (!bytes.ok) return fail([bytes.sentence])
    if (json) process.stdout.write(`${bytes.text}\n`)
    if (json && picture === undefined) return
    const read = readRelease(bytes.text)
    if (!read.ok) return fail([say('trend-input.damaged', { week: bytes.week })])
    if (!json) console.log(unmarked(wordsOf(say, read.release, openPrograms((await installedPacks(rules)).packs))))
    if (picture !== undefined) await writeDrawing(picture, drawShares(say, read.release), say)
  } finally {
    await opened.db.destroy()
  }
}

/** The scope that was asked for, or a sentence that says which there are. */
async function scopeOf(say: Say, db: Kysely<Tables>, wanted: string | undefined): Promise<Scope | string> {
  const rows = await db.selectFrom('releases').select('scope').distinct().orderBy('scope').execute()
  const servers = rows.flatMap(({ scope }) => (scope.startsWith('server:') ? [scope.slice('server:'.length)] : []))
  const [only] = servers
  if (wanted === undefined && servers.length > 1)
    return say('trend-input.which-server', { servers: servers.join(', ') })
  if (wanted !== undefined && !servers.includes(wanted))
    return say('trend-input.no-server', { server: wanted, servers: servers.join(', ') || '-' })
  return { kind: 'server', server: wanted ?? only ?? '' }
}

type Found =
  | { readonly ok: true; readonly week: string; readonly text: string }
  | { readonly ok: false; readonly sentence: string }

async function findBytes(say: Say, db: Kysely<Tables>, scope: Scope, wanted: string | undefined): Promise<Found> {
  const releases = openReleaseLog(db)
  const weeks = await releases.weeks(scope)
  const week = wanted ?? weeks.at(-1)
  const text = week === undefined ? null : await releases.bytes(scope, week)
  if (week !== undefined && text !== null) return { ok: true, week, text }
  const [first, last] = [weeks[0], weeks.at(-1)]
  const there = first === undefined ? 'none' : first === last ? first : `${first} … ${last}`
  return { ok: false, sentence: say('trend-input.no-release', { week: week ?? '-', weeks: there }) }
}

function wordsOf(say: Say, release: Release, programs: ReturnType<typeof openPrograms>): string {
  const names = openTrendNames(say, programs, dayOf(Date.now()))
  const part = (title: string, lines: readonly string[]) =>
    lines.length > 0 ? ['', title, ...lines.map(line => `  - ${line}`)] : []
  return [
    sayTitle(say, release),
    sayChecks(say, release),
    ...part(say('trends.verdicts'), sayVerdicts(say, release)),
    ...part(
      say('trends.families'),
      release.families.map(one => sayCount(say, names.family(one.family), one)),
    ),
    ...part(say('trends.rises'), sayRises(say, names, release)),
    ...part(say('trends.patterns'), sayPatterns(say, names, release)),
    ...part(say('trends.spikes'), saySpikes(say, names, release)),
    '',
    say('trends.fives'),
    say('caution.line'),
  ].join('\n')
}
