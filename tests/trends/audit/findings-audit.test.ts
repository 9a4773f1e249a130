// Nobody is singled out by what findings, earlier weeks, the volume statement, the kind of a week and its note say: random streams, audited by linear programming.
//
// CELLWARY_AUDIT_STREAMS (npm run audit-streams) says how many; without it a few, so that the ordinary run stays short.
import { expect, test } from 'vitest'
import { isFailing } from '../../../src/ground/verdicts.ts'
import { epochOf } from '../../../src/trends/epoch.ts'
import { begin, type Finding } from '../../../src/trends/findings/finding.ts'
import { pastOf, thingOf } from '../../../src/trends/findings/past.ts'
import { tellStories } from '../../../src/trends/findings/stories.ts'
import { minimumReporters } from '../../../src/trends/fives.ts'
import { kindOfWeek } from '../../../src/trends/kind-of-week.ts'
import { volumeOf } from '../../../src/trends/noticeable.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import { weekPlus, weeksFrom } from '../../../src/trends/week.ts'
import { noteOf } from '../../../src/trends/weekly-note.ts'
import { audit, puzzleOf, truthOf } from './audit.ts'
import { publish, shownIn, statementsOf } from './publish.ts'
import { type Kind, randomStream, type Stream } from './streams.ts'
import type { Statement, World } from './worlds.ts'

const streams = Number(process.env['CELLWARY_AUDIT_STREAMS'] ?? 120)
/** One in so many is long enough for a sentence about the volume, which needs a quarter of a year. */
const longEvery = 7
const streamOf = (seed: number, deleting: boolean): Stream =>
  randomStream(seed, deleting, seed % longEvery === 0 ? 24 : 12)

/** How the findings of a server stand after each release. */
function told(releases: readonly Release[]): { release: Release; findings: Finding[] }[] {
  const findings = new Map<string, Finding>()
  return releases.map(release => {
    const { begun, grown } = tellStories(release, [...findings.values()])
    for (const one of grown) findings.set(one.id, one)
    for (const one of begun) findings.set(one.key, begin(one, one.key, 'here'))
    return { release, findings: [...findings.values()] }
  })
}

const hasItem = (kind: Kind, item: string): boolean => {
  const [facet, value = ''] = [item.slice(0, item.indexOf(':')), item.slice(item.indexOf(':') + 1)]
  if (facet === 'rule') return kind.fired.includes(value)
  return facet === 'bought' ? kind.bought === value : false
}

const epochAt = (stream: Stream, week: number) => epochOf(weekPlus(stream.first, week))
const epochsOf = (stream: Stream) => [...new Set(Array.from({ length: stream.weeks }, (_, w) => epochAt(stream, w)))]

/** What a reader takes from the sentences of the findings of a family: at least so many, fewer than so many, fewer than five in each quarter. */
function saidOf(stream: Stream, releases: readonly Release[], family: string): Statement[] {
  return told(releases).flatMap(({ release, findings }) => {
    const now = weeksFrom(stream.first, release.week)
    const seen = findings.filter(one => one.family === family && one.seen === release.week)
    return seen.flatMap(({ parts }) =>
      parts.flatMap(part => {
        // A pattern that an earlier release told of is what that one said.
        if (
          part.is !== 'pattern' ||
          !release.patterns.some(one => JSON.stringify(one) === JSON.stringify(part.pattern))
        )
          return []
        const { items, recent, recentOf, earlier } = part.pattern
        const has = (kind: Kind) => items.every(item => hasItem(kind, item))
        const between = (shown: number) => ({ least: shown, most: shown + minimumReporters - 1 })
        return [
          { group: (kind, week) => has(kind) && week <= now && week > now - 8, ...between(recent) },
          { group: (_, week) => week <= now && week > now - 8, ...between(recentOf) },
          ...(earlier > 0
            ? [{ group: (kind: Kind, week: number) => has(kind) && week <= now - 8, ...between(earlier) }]
            : epochsOf(stream).map(epoch => ({
                group: (kind: Kind, week: number) => has(kind) && week <= now - 8 && epochAt(stream, week) === epoch,
                ...between(0),
              }))),
        ] satisfies Statement[]
      }),
    )
  })
}

/** What is said and is not so. */
function untrue(stream: Stream, statements: readonly Statement[], truth: World): (readonly [number, number, number])[] {
  const kinds = stream.kinds.length
  return statements.flatMap(({ group, least, most }) => {
    const size = truth.reduce(
      (sum, n, i) => (group(stream.kinds[i % kinds]!, Math.floor(i / kinds)) ? sum + n : sum),
      0,
    )
    return size < least || size > most ? [[size, least, most] as const] : []
  })
}

/**
 * What a reader takes from the notes of all weeks, where the server has one kind of cell: so many checks by then and so many of each
 * verdict, at least and fewer than five more. A number that has not moved since was said of an earlier week.
 */
function notedOf(stream: Stream, releases: readonly Release[], findings: readonly Finding[]): Statement[] {
  if (stream.families.length > 1) return []
  return releases.flatMap(release => {
    const { counts } = noteOf(release, findings)
    const now = weeksFrom(stream.first, release.week)
    return (counts?.verdicts ?? [])
      .filter(one => one.more > 0)
      .map(({ verdict, checks }) => ({
        group: (kind, week) => kind.verdict === verdict && week <= now,
        least: checks,
        most: checks + minimumReporters - 1,
      }))
  })
}

const asWeeks = (list: readonly Release[]) => list.map(release => ({ week: release.week, release }))

/**
 * What a reader takes from the kinds of all weeks, where the server has one kind of cell: so many new checks in four weeks, and so many of
 * them that failed, were shown by then; and what is usual at most came to pass in some four weeks before.
 */
function kindsSaidOf(stream: Stream, releases: readonly Release[]): Statement[] {
  if (stream.families.length > 1) return []
  return releases.flatMap((release, at) => {
    const { usual } = kindOfWeek(asWeeks(releases.slice(0, at + 1))) ?? {}
    if (!usual) return []
    const now = weeksFrom(stream.first, release.week)
    const open = { most: Number.POSITIVE_INFINITY }
    return [
      { group: (_, week) => week <= now, least: usual.checks + usual.usualChecks.low, ...open },
      { group: (_, week) => week <= now - 4, least: usual.usualChecks.high, ...open },
      { group: (kind, week) => isFailing(kind.verdict) && week <= now, least: usual.failed, ...open },
    ] satisfies Statement[]
  })
}

/**
 * What a reader takes from the sentence about what the server could notice, where it has one kind of cell: it was made for so many checks
 * and so many failures a week, both rounded, so at least so many were shown, and there were no fewer.
 */
function volumeSaidOf(stream: Stream, releases: readonly Release[]): Statement[] {
  if (stream.families.length > 1) return []
  return releases.flatMap((release, at) => {
    const all = releases.slice(0, at + 1)
    const volume = volumeOf(all)
    if (!volume) return []
    const now = weeksFrom(stream.first, release.week)
    const least = (of: number, rounding: number) => Math.max(0, Math.ceil((of - rounding) * all.length - 1e-6))
    const open = { most: Number.POSITIVE_INFINITY }
    return [
      { group: (_, week) => week <= now, least: least(volume.checks, 0.5), ...open },
      {
        group: (kind, week) => isFailing(kind.verdict) && week <= now,
        // A tenth stands for less, too.
        least: volume.failed > 0.1 ? least(volume.failed, 0.05) : 0,
        ...open,
      },
    ] satisfies Statement[]
  })
}

test(`what findings say pins no one to four people, in ${streams} streams`, async () => {
  let findings = 0
  let said = 0
  let noted = 0
  let volumes = 0
  let kinds = 0
  for (let seed = 1; seed <= streams; seed++) {
    const stream = streamOf(seed, false)
    const publication = await publish(stream)
    const last = told(publication.releases).at(-1)?.findings ?? []
    findings += last.length
    for (const family of stream.families) {
      const sentences = saidOf(stream, publication.releases, family)
      said += sentences.length
      const notes = notedOf(stream, publication.releases, last)
      noted += notes.length
      const volume = volumeSaidOf(stream, publication.releases)
      volumes += volume.length
      const kind = kindsSaidOf(stream, publication.releases)
      kinds += kind.length
      const statements = [...statementsOf(stream, publication, family), ...sentences, ...notes, ...volume, ...kind]
      const truth = truthOf(stream, family)
      expect({ seed, family, untrue: untrue(stream, statements, truth) }).toEqual({ seed, family, untrue: [] })
      const found = audit(puzzleOf(stream, statements), truth, seed)
      expect({ seed, family, pinned: found.pinned, undecided: found.undecided }).toEqual({
        seed,
        family,
        pinned: [],
        undecided: 0,
      })
    }
  }
  // Not vacuous: there are findings, and they say numbers.
  expect(findings).toBeGreaterThan(streams / 10)
  expect(said).toBeGreaterThan(0)
  expect(noted).toBeGreaterThan(streams / 10)
  expect(volumes).toBeGreaterThan(streams / 10)
  expect(kinds).toBeGreaterThan(streams / 20)
}, 3_600_000)

test('the kind of every week is made of frozen bytes, in fives, and nothing of the private state or of what is deleted later changes it', async () => {
  let said = 0
  let found = 0
  for (let seed = 1; seed <= streams; seed++) {
    const { releases } = await publish(streamOf(seed, seed % 2 === 0))
    for (const [at] of releases.entries()) {
      const upTo = releases.slice(0, at + 1)
      const week = kindOfWeek(asWeeks(upTo))
      expect(kindOfWeek(asWeeks(structuredClone(upTo)))).toEqual(week)
      if (!week) continue
      said++
      // Each family that is named is named by a release that everybody here may read.
      const named = [...week.fresh, ...week.again, ...[...week.recent, ...week.over].map(one => one.family)]
      const told = new Set(upTo.flatMap(one => [...one.rises, ...one.patterns].map(({ family }) => family)))
      for (const family of named) expect(told).toContain(family)
      if (named.length > 0) found++
      const { checks = 0, failed = 0, usualChecks, usualFailed } = week.usual ?? {}
      const bands = [usualChecks, usualFailed].flatMap(band => (band ? [band.low, band.high] : []))
      for (const number of [checks, failed, ...bands]) expect(Math.abs(number % minimumReporters)).toBe(0)
    }
  }
  expect(said).toBeGreaterThan(streams)
  expect(found).toBeGreaterThan(0)
}, 3_600_000)

test('the note of a week says what its release says, in fives, and nothing of the private state or of what is deleted later changes it', async () => {
  let notes = 0
  for (let seed = 1; seed <= streams; seed++) {
    const { releases } = await publish(streamOf(seed, seed % 2 === 0))
    for (const { release, findings } of told(releases)) {
      const note = noteOf(release, findings)
      // Whoever kept the frozen bytes and the list of findings has it all.
      const kept = findings.map(({ state }) => ({ state }))
      expect(noteOf(structuredClone(release), kept)).toEqual(note)
      const { checks = 0, more = 0, verdicts = [] } = note.counts ?? {}
      for (const number of [checks, more, ...verdicts.flatMap(one => [one.checks, one.more])])
        expect(number % minimumReporters).toBe(0)
      expect(note.open + note.watching).toBeLessThanOrEqual(findings.length)
      notes++
    }
  }
  expect(notes).toBeGreaterThan(streams)
}, 3_600_000)

test('every number of a chart is a sum of what releases show, in fives, and nothing of the private state changes one', async () => {
  let numbers = 0
  let volumes = 0
  for (let seed = 1; seed <= streams; seed++) {
    const stream = streamOf(seed, seed % 2 === 0)
    const { releases } = await publish(stream)
    // What a reader has who only kept the frozen bytes.
    const kept = structuredClone(releases)
    const weeks = (list: readonly Release[]) => list.map(release => ({ week: release.week, release }))
    const volume = volumeOf(releases)
    expect(volumeOf(kept)).toEqual(volume)
    if (volume) volumes++
    for (const { findings } of told(releases).slice(-1))
      for (const finding of findings) {
        const thing = thingOf(finding)
        const past = pastOf(weeks(releases), thing, finding, 26)
        expect(pastOf(weeks(kept), thing, finding, 26)).toEqual(past)
        for (const [i, { failed = 0 }] of past.entries()) {
          expect(failed % minimumReporters).toBe(0)
          numbers++
          if (thing.rule === null) continue
          const shown = (at: number) => shownIn(releases[at] as Release, thing.family, `rule:${thing.rule}`)
          expect(failed).toBeLessThanOrEqual(shown(i))
        }
      }
  }
  expect(numbers).toBeGreaterThan(0)
  expect(volumes).toBeGreaterThan(streams / 40)
}, 3_600_000)

test('the audit finds the leak where the volume is the exact number of checks a week', () => {
  let leaking = 0
  const long = Array.from({ length: 60 }, (_, i) => randomStream(i * 2 + 1, false, 24)).filter(one => one.weeks >= 14)
  for (const stream of long.slice(0, 12)) {
    const [family = ''] = stream.families
    const truth = truthOf(stream, family)
    const kinds = stream.kinds.length
    const exactly = Array.from({ length: stream.weeks - 13 }, (_, i): Statement => {
      const size = truth.slice(0, (i + 14) * kinds).reduce((all, n) => all + n, 0)
      return { group: (_, week) => week <= i + 13, least: size, most: size }
    })
    if (audit(puzzleOf(stream, exactly), truth, stream.seed, 1).pinned.length > 0) leaking++
  }
  expect(leaking).toBeGreaterThan(2)
})
