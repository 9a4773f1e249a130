// Closes a stream week by week, asks for releases in a random order meanwhile, and turns what came back into statements.
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { type CellKey, cellOf, sortCounts, wholeFamily } from '../../../src/trends/counts.ts'
import { minimumReporters, reportersIn } from '../../../src/trends/fives.ts'
import { type Outcome, unknownFamily } from '../../../src/trends/outcome.ts'
import type { Scope } from '../../../src/trends/outcome-log.ts'
import { readRelease } from '../../../src/trends/release/freeze-week.ts'
import { minimumServers } from '../../../src/trends/release/pool.ts'
import type { Release, ShownFamily } from '../../../src/trends/release/release.ts'
import type { ReleaseState } from '../../../src/trends/release/state.ts'
import { type Week, weekPlus, weeksFrom } from '../../../src/trends/week.ts'
import { closeDue } from '../close-due.ts'
import { countOutcomes, openMemoryOutcomes, openMemoryReleases } from '../memory-log.ts'
import type { Kind, Stream } from './streams.ts'
import type { Statement } from './worlds.ts'

const here: Scope = { kind: 'server', server: 'here' }
/** Rises and patterns are told of early here, so that what they publish is audited too. */
const history = 3

export type Publication = {
  /** Every answer to every request, in the order asked. */
  readonly answers: readonly { readonly week: Week; readonly bytes: string }[]
  readonly releases: readonly Release[]
  /** After each week: the private state, and the outcomes that were there when it was closed. */
  readonly private: readonly { readonly state: ReleaseState; readonly outcomes: readonly Outcome[] }[]
}

/** Publishes a stream, of one server or of the pool; requests for any closed week come at any time, before and after deletions. */
export async function publish(stream: Stream, scope: Scope = here): Promise<Publication> {
  const random = xoroshiro128plus(stream.seed ^ 0x5eed)
  const memory = openMemoryOutcomes()
  // As if every family had been brought by servers enough: what the pool tells then has to hold by itself.
  const outcomes: typeof memory = {
    ...memory,
    async poolContributions(from, to) {
      const all = (await memory.weekCounts({ kind: 'pool' }, from, to)).filter(one => one.facet === 'all')
      return all.flatMap(({ week, family }) =>
        Array.from({ length: minimumServers }, (_, i) => ({
          week,
          family,
          server: `${i}`,
          reporters: minimumReporters,
        })),
      )
    },
  }
  const releases = openMemoryReleases()
  const answers: { week: Week; bytes: string }[] = []
  const behind: { state: ReleaseState; outcomes: readonly Outcome[] }[] = []
  const ask = async () => {
    const weeks = await releases.weeks(scope)
    for (let i = uniformInt(random, 0, 3); i > 0 && weeks.length > 0; i--) {
      const week = weeks[uniformInt(random, 0, weeks.length - 1)]!
      answers.push({ week, bytes: (await releases.bytes(scope, week))! })
    }
  }
  for (let w = 0; w < stream.weeks; w++) {
    const week = weekPlus(stream.first, w)
    for (const outcome of stream.outcomes) if (outcome.week === week) await outcomes.record(outcome)
    await ask()
    await closeDue(outcomes, releases, scope, week, history)
    const latest = await releases.latest(scope)
    if (latest?.state) behind.push({ state: latest.state, outcomes: outcomes.all() })
    await ask()
    await outcomes.forget(stream.deletions.filter(d => d.afterWeek === w).map(d => d.reporter))
    await ask()
  }
  const weeks = await releases.weeks(scope)
  for (const week of weeks) answers.push({ week, bytes: (await releases.bytes(scope, week))! })
  const read = answers.slice(-weeks.length || answers.length).map(({ bytes }) => {
    const result = readRelease(bytes)
    if (!result.ok) throw new Error(result.refusal.code)
    return result.release
  })
  return { answers, releases: weeks.length === 0 ? [] : read, private: behind }
}

export type Cell = { readonly key: CellKey; readonly has: (kind: Kind) => boolean }

export const cellsOf = (kinds: readonly Kind[]): Cell[] => {
  const keys = new Set<CellKey>(
    kinds.flatMap(k => [
      `verdict:${k.verdict}` as const,
      `bought:${k.bought}` as const,
      ...k.fired.map(r => `rule:${r}` as const),
    ]),
  )
  return [...keys].sort().map(key => ({ key, has: kind => inCell(kind, key) }))
}

function inCell(kind: Kind, key: CellKey): boolean {
  if (key === wholeFamily) return true
  const [facet, value] = key.split(':')
  if (facet === 'verdict') return kind.verdict === value
  return facet === 'bought' ? kind.bought === value : kind.fired.includes(value!)
}

/** What a cell of a family shows in a release; 0 if it is withheld. */
export function shownIn(release: Release, family: string, key: CellKey): number {
  const shown: ShownFamily | undefined = release.families.find(f => f.family === family)
  const [facet, value] = key.split(':')
  if (facet === 'verdict') return shown?.verdicts.find(v => v.verdict === value)?.checks ?? 0
  if (facet === 'rule') return shown?.rules.find(r => r.rule === value)?.checks ?? 0
  return shown?.bought.find(b => b.bought === value)?.checks ?? 0
}

/** What the published numbers of a family say: each time a cell moved, it had so many to so many plus four by then. */
export function statementsOf(stream: Stream, { releases }: Publication, family: string): Statement[] {
  const statements: Statement[] = []
  const cells = cellsOf(stream.kinds)
  for (const [i, release] of releases.entries()) {
    const now = weeksFrom(stream.first, release.week)
    for (const { key, has } of cells) {
      const shown = shownIn(release, family, key)
      const before = i === 0 ? 0 : shownIn(releases[i - 1]!, family, key)
      if (shown === before) continue
      statements.push({
        group: (kind, week) => has(kind) && week <= now,
        least: shown,
        most: shown + minimumReporters - 1,
      })
    }
    for (const pattern of release.patterns.filter(p => p.family === family)) {
      const recent = (week: number) => week <= now && week > now - 8
      const has = (kind: Kind) => pattern.items.every(item => inCell(kind, item as CellKey))
      statements.push(
        { group: (kind, week) => has(kind) && recent(week), ...upToFour(pattern.recent) },
        { group: (_, week) => recent(week), ...upToFour(pattern.recentOf) },
      )
      if (pattern.earlier > 0)
        statements.push({ group: (kind, week) => has(kind) && week <= now - 8, ...upToFour(pattern.earlier) })
      if (pattern.earlierOf > 0)
        statements.push({ group: (_, week) => week <= now - 8, ...upToFour(pattern.earlierOf) })
    }
    for (const rise of release.rises.filter(r => r.family === family && r.week === release.week)) {
      const has = (kind: Kind) => (rise.rule === null ? kind.fired.length > 0 : kind.fired.includes(rise.rule))
      statements.push({
        group: (kind, week) => has(kind) && week <= now,
        least: minimumReporters,
        most: Number.POSITIVE_INFINITY,
      })
      statements.push({ group: (kind, week) => has(kind) && week === now, least: 1, most: Number.POSITIVE_INFINITY })
    }
    for (const spike of release.spikes.filter(r => r.family === family)) {
      const has = (kind: Kind) => (spike.rule === null ? kind.fired.length > 0 : kind.fired.includes(spike.rule))
      statements.push({
        group: (kind, week) => has(kind) && week === now,
        least: minimumReporters,
        most: Number.POSITIVE_INFINITY,
      })
    }
  }
  return statements
}

const upToFour = (shown: number) => ({ least: shown, most: shown + minimumReporters - 1 })

/**
 * What someone adds who knows how releases are made and is told, for every week, whether the family opened, which cells had
 * fewer than five pending, and which part of a shown pattern picks it out (so that no check has that part and not the rest): more than
 * anyone can know.
 */
export function insights(stream: Stream, publication: Publication, family: string): Statement[] {
  const statements: Statement[] = []
  for (const [i, release] of publication.releases.entries()) {
    const now = weeksFrom(stream.first, release.week)
    const { state, outcomes } = publication.private[i]!
    const counts = sortCounts(
      countOutcomes(outcomes.filter(o => (o.family ?? unknownFamily) === family && o.week <= release.week)),
    )
    const before = i === 0 ? undefined : publication.private[i - 1]!.state.families[family]
    const opened = state.families[family]?.opened === release.week
    const cells: { key: CellKey; through: Week | null; moved: boolean }[] = cellsOf(stream.kinds).map(({ key }) => ({
      key,
      through: before?.cells[key]?.through ?? null,
      moved: state.families[family]?.cells[key]?.through === release.week,
    }))
    cells.push({ key: wholeFamily, through: before?.opened ?? null, moved: opened })
    for (const { key, through, moved } of cells) {
      const since = through === null ? -1 : weeksFrom(stream.first, through)
      const pending = reportersIn(cellOf(counts.get(family), key), through, release.week).all
      const group = (kind: Kind, week: number) => inCell(kind, key) && week > since && week <= now
      if (moved) statements.push({ group, least: minimumReporters, most: Number.POSITIVE_INFINITY })
      else if (pending < minimumReporters) statements.push({ group, least: 0, most: minimumReporters - 1 })
    }
  }
  // What holds up to a week holds up to every week before it: the last that says it is enough.
  const told = new Set<string>()
  for (const [i, release] of [...publication.releases.entries()].reverse()) {
    const now = weeksFrom(stream.first, release.week)
    const own = publication.private[i]!.outcomes.filter(
      o => (o.family ?? unknownFamily) === family && o.week <= release.week,
    )
    for (const { items } of release.patterns.filter(p => p.family === family))
      for (const part of partsOf(items)) {
        const name = `${part.join()} of ${items.join()}`
        const halved = (kind: Kind) =>
          part.every(item => inCell(kind, item as CellKey)) && !items.every(item => inCell(kind, item as CellKey))
        if (told.has(name) || own.some(halved)) continue
        told.add(name)
        statements.push({ group: (kind, week) => halved(kind) && week <= now, least: 0, most: 0 })
      }
  }
  return statements
}

/** Every part of a pattern but the whole. */
const partsOf = (items: readonly string[]): string[][] =>
  Array.from({ length: 2 ** items.length - 2 }, (_, bits) => items.filter((_, at) => ((bits + 1) >> at) & 1))
