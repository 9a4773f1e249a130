// Draws pasts until one is what its story says, by exact numbers and by what was planted, never by what the bot makes of it.
import { isFailing } from '../../src/ground/verdicts.ts'
import type { DemoCast } from '../../src/trends/demo.ts'
import type { ReleasedWeek } from '../../src/trends/findings/past.ts'
import { type Outcome, unknownFamily } from '../../src/trends/outcome.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { type Week, weeksFrom, weeksUpTo } from '../../src/trends/week.ts'
import { closeDue } from '../trends/close-due.ts'
import { openMemoryOutcomes, openMemoryReleases } from '../trends/memory-log.ts'
import { drawPast, type Past, type Story, tellPast } from './stories.ts'

export type DrawnWeek = {
  readonly story: Story
  readonly past: Past
  readonly seed: number
  readonly outcomes: readonly Outcome[]
  /** As they are frozen, oldest first. */
  readonly released: readonly ReleasedWeek[]
}

const mostTries = 2000

export async function drawWeek(story: Story, seed: number, cast: DemoCast, last: Week): Promise<DrawnWeek> {
  for (let i = 0; i < mostTries; i++) {
    const week = await draw(story, seed * 7919 + i * 104_729, cast, last)
    if (week) return week
  }
  throw new Error(`${story} was not drawn in ${mostTries} tries`)
}

/** The past of this very seed; undefined where chance has not made it what its story says. */
export async function draw(story: Story, seed: number, cast: DemoCast, last: Week): Promise<DrawnWeek | undefined> {
  const past = drawPast(story, seed)
  const outcomes = tellPast(story, past, cast, seed, last)
  if (!isSo(story, outcomes, last)) return undefined
  const released = await release(cast.server, outcomes, last)
  const planted = story === 'rise' ? cast.families[past.rising]?.family : cast.planted.family
  return isTold(story, released, planted ?? unknownFamily) ? { story, past, seed, outcomes, released } : undefined
}

/** The part of 51 earlier stretches of four weeks that was under the last, of checks and of the share of them that failed. */
function standOf(outcomes: readonly Outcome[], last: Week): { checks: number; share: number } {
  const weeks = weeksUpTo(last, 56).map(week => outcomes.filter(one => one.week === week))
  const stretches = weeks.slice(3).map((_, i) => weeks.slice(i, i + 4).flat())
  const past = stretches.slice(0, -4)
  const shareOf = (all: readonly Outcome[]) => all.filter(one => isFailing(one.verdict)).length / all.length
  const now = stretches.at(-1) ?? []
  const under = (of: (all: readonly Outcome[]) => number) => past.filter(one => of(one) < of(now)).length / past.length
  return { checks: under(one => one.length), share: under(shareOf) }
}

/** By exact numbers: a quiet week stands in the middle of its year, noise far up in it though nothing was planted, growth in numbers alone. */
function isSo(story: Story, outcomes: readonly Outcome[], last: Week): boolean {
  const { checks, share } = standOf(outcomes, last)
  const middling = (of: number) => of > 0.2 && of < 0.8
  if (story === 'quiet') return middling(checks) && middling(share)
  if (story === 'noise') return middling(checks) && share > 0.9
  return story !== 'growth' || (checks > 0.95 && middling(share))
}

/** A server that has never had a finding but the one of the story, which was first told of in this very week; or long ago. */
function isTold(story: Story, released: readonly ReleasedWeek[], planted: string): boolean {
  const found = released.flatMap(({ release }) => (release ? foundIn(release) : []))
  const last = released.at(-1)?.release
  if (!last) return false
  if (story === 'quiet' || story === 'noise' || story === 'growth')
    return found.length === 0 && (story !== 'noise' || looksWorse(released))
  if (found.length === 0 || found.some(one => one.family !== planted)) return false
  const since = (week: Week | undefined) => weeksFrom(week ?? '2000-W01', last.week)
  if (story === 'over') return since(found.at(-1)?.week) > 8 && since(found.at(-1)?.week) <= 11
  const together = last.patterns.some(one => one.items.length > 1)
  return since(found[0]?.week) === 0 && together === (story === 'pattern')
}

const foundIn = ({ week, rises, patterns }: Release) =>
  [...rises.filter(rise => rise.week === week), ...patterns].map(({ family }) => ({ family, week }))

/** Whether whoever reads the numbers as they are shown sees more failures than in most weeks, which is what makes noise worth a word. */
function looksWorse(released: readonly ReleasedWeek[]): boolean {
  const shown = released.map(({ release }) =>
    (release?.verdicts ?? []).reduce((sum, one) => sum + (isFailing(one.verdict) ? one.more : 0), 0),
  )
  const stretches = shown.slice(3).map((_, i) => shown.slice(i, i + 4).reduce((a, b) => a + b, 0))
  const now = stretches.at(-1) ?? 0
  const past = stretches.slice(-52, -4)
  return past.filter(one => one < now).length > 0.8 * past.length
}

async function release(server: string, all: readonly Outcome[], last: Week): Promise<ReleasedWeek[]> {
  const [outcomes, releases] = [openMemoryOutcomes(), openMemoryReleases()]
  for (const one of all) await outcomes.record(one)
  const scope = { kind: 'server', server } as const
  const weeks = await closeDue(outcomes, releases, scope, last)
  return Promise.all(
    weeks.map(async week => {
      const read = readRelease((await releases.bytes(scope, week)) ?? '')
      return { week, release: read.ok ? read.release : undefined }
    }),
  )
}
