// Sixty weeks of invented outcomes for the practice room: a server that grows, and one pattern that begins in week 52.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { FamilyId, OptionId, QuestionId, RuleId } from '../engine/answers.ts'
import type { Verdict } from '../ground/verdicts.ts'
import { epochOf } from './epoch.ts'
import type { Outcome, PackStamp } from './outcome.ts'
import { type Week, weekPlus } from './week.ts'

export const demoWeeks = 60
/** The week, counted from one, in which the planted pattern begins. */
export const plantedFrom = 52

/** What a check can come to: the rules that fire and the answers behind them. */
export type DemoCourse = {
  readonly verdict: Verdict
  readonly fired: readonly RuleId[]
  readonly options: Readonly<Record<QuestionId, OptionId>>
}

export type DemoFamily = {
  readonly family: FamilyId | null
  /** Its part of all checks, relative to the other families'. The same in every week: what grows is the server. */
  readonly part: number
  /** Share of its checks that fail, and the courses a failed one takes, each as likely. */
  readonly failing: number
  readonly faults: readonly DemoCourse[]
  readonly sound: DemoCourse
}

/** The names the outcomes are made of, from the pack the practice room uses. */
export type DemoCast = {
  readonly server: string
  readonly packs: readonly PackStamp[]
  readonly bought: readonly string[]
  readonly families: readonly DemoFamily[]
  /** The new counterfeit: from week 52 on, `share` of this family's checks take this course. */
  readonly planted: {
    readonly family: FamilyId | null
    readonly course: DemoCourse
    readonly share: number
    readonly bought: string
  }
}

/**
 * Invented outcomes of sixty weeks that end with `last`, oldest first. From `atFirst` checks a week the server grows evenly to `atLast`.
 * The same seed and cast give the same outcomes. Nobody counts twice for a family in an epoch. Families and faults are dealt evenly,
 * not drawn. Drawn ones clump, and any watch alarms falsely now and then: in 100 drawn demos, 45 had an alarm for the family that only
 * grows or for one of its two rules. A demo should not tell of an accident.
 */
export function demoOutcomes(seed: number, cast: DemoCast, last: Week, atFirst = 12, atLast = 48): Outcome[] {
  const random = xoroshiro128plus(seed)
  const pick = <T>(list: readonly T[]): T => list[uniformInt(random, 0, list.length - 1)]!
  const chance = () => uniformFloat64(random)
  const nextFamily = dealEvenly(
    cast.families.map(family => ({ of: family, part: family.part })),
    chance,
  )
  const nextCourse = new Map(cast.families.map(family => [family, dealEvenly(coursesOf(family), chance)]))
  const nextIsPlanted = dealEvenly(
    [
      { of: true, part: cast.planted.share },
      { of: false, part: 1 - cast.planted.share },
    ],
    chance,
  )
  const counted = new Set<string>()
  let people = 0

  const outcomes: Outcome[] = []
  for (let number = 1; number <= demoWeeks; number++) {
    const week = weekPlus(last, number - demoWeeks)
    const checks = Math.round(atFirst + ((atLast - atFirst) * (number - 1)) / (demoWeeks - 1))
    // Members join as the server grows; some come back for another family, or in another epoch.
    people = Math.max(people, checks * 20)
    for (let i = 0; i < checks; i++) {
      const family = nextFamily()
      const planted = number >= plantedFrom && family.family === cast.planted.family
      const course = planted && nextIsPlanted() ? cast.planted.course : nextCourse.get(family)!()
      // There are twenty people for each check of a week and at most fourteen weeks in an epoch, so someone is always left.
      let person: number
      let key: string
      do {
        person = uniformInt(random, 1, people)
        key = `${epochOf(week)} ${family.family} ${person}`
      } while (counted.has(key))
      counted.add(key)
      outcomes.push({
        server: cast.server,
        reporter: inventedCode(seed, epochOf(week), person * cast.families.length + cast.families.indexOf(family)),
        pooled: null,
        week,
        family: family.family,
        verdict: course.verdict,
        fired: [...course.fired].sort(),
        options: course.options,
        bought: course === cast.planted.course && chance() < 0.7 ? cast.planted.bought : pick(cast.bought),
        packs: cast.packs,
      })
    }
  }
  return outcomes
}

type Part<T> = { readonly of: T; readonly part: number }

function coursesOf({ sound, failing, faults }: DemoFamily): Part<DemoCourse>[] {
  return [{ of: sound, part: 1 - failing }, ...faults.map(fault => ({ of: fault, part: failing / faults.length }))]
}

/** Deals the parts out as evenly as whole checks allow, wherever one starts: each turn all gain their part, the fullest is dealt. */
function dealEvenly<T>(parts: readonly Part<T>[], chance: () => number): () => T {
  const all = parts.reduce((sum, { part }) => sum + part, 0)
  const credits = parts.map(() => chance() * all)
  return () => {
    for (const [i, { part }] of parts.entries()) credits[i]! += part
    const fullest = credits.indexOf(Math.max(...credits))
    credits[fullest]! -= all
    return parts[fullest]!.of
  }
}

/** 64 hex digits for an invented person and family in an epoch; no key and no hash, since there is nobody to protect. */
function inventedCode(seed: number, epoch: string, number: number): string {
  const quarter = Number(epoch.slice(0, 4)) * 4 + Number(epoch.slice(6))
  const random = xoroshiro128plus(Math.imul(seed ^ (quarter * 65_537), 2_654_435_761) ^ number)
  return Array.from({ length: 8 }, () => uniformInt(random, 0, 0xffffffff).toString(16).padStart(8, '0')).join('')
}
