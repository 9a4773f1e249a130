// Six invented pasts of a server, drawn by chance: nothing happens, chance alone, growth, a rise, a pattern, and one that is over.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { DemoCast, DemoCourse, DemoFamily } from '../../src/trends/demo.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { poisson } from '../../src/trends/stats/poisson.ts'
import { type Week, weekPlus } from '../../src/trends/week.ts'

export const stories = ['quiet', 'noise', 'growth', 'rise', 'pattern', 'over'] as const
export type Story = (typeof stories)[number]

export const pastWeeks = 64

/** What a past is drawn with. */
export type Past = {
  /** Checks a week, on the average, before anything happens. */
  readonly checks: number
  /** What happens goes on from so many weeks before the end to so many. */
  readonly begins: number
  readonly ends: number
  /** Which of the families with a name a rise is of. */
  readonly rising: number
}

export function drawPast(story: Story, seed: number): Past {
  const random = xoroshiro128plus(seed)
  const int = (least: number, most: number) => uniformInt(random, least, most)
  const [checks, rising] = [int(18, 34), int(0, 2)]
  if (story === 'growth') return { checks: int(15, 18), begins: int(6, 9), ends: 0, rising }
  const ends = story === 'over' ? int(15, 18) : 0
  return { checks, begins: ends + int(3, 7), ends, rising }
}

/** The outcomes of `pastWeeks` weeks that end with `last`, oldest first; families and faults are drawn, so that they clump as life does. */
export function tellPast(story: Story, past: Past, cast: DemoCast, seed: number, last: Week): Outcome[] {
  const random = xoroshiro128plus(seed + 1)
  const chance = () => uniformFloat64(random)
  const pick: Pick = list => list[uniformInt(random, 0, list.length - 1)] as never
  const counted = new Set<string>()
  return Array.from({ length: pastWeeks }, (_, i) => {
    const back = pastWeeks - 1 - i
    const week = weekPlus(last, -back)
    const goesOn = back < past.begins && back >= past.ends
    const grown = story === 'growth' && goesOn ? 2.2 : 1
    return Array.from({ length: poisson(random, past.checks * grown) }, (): Outcome => {
      const family = drawn(cast.families, chance)
      const risen = cast.families[past.rising]
      const course = goesOn ? changed(story, family, cast, risen, chance, pick) : usual(family, chance, pick)
      const bought = course === cast.planted.course && chance() < 0.7 ? cast.planted.bought : pick(cast.bought)
      return {
        server: cast.server,
        reporter: someone(random, `${epochOf(week)} ${family.family}`, counted),
        pooled: null,
        week,
        family: family.family,
        verdict: course.verdict,
        fired: [...course.fired].sort(),
        options: course.options,
        bought,
        packs: cast.packs,
      }
    })
  }).flat()
}

type Pick = <T>(list: readonly T[]) => T

const usual = (family: DemoFamily, chance: () => number, pick: Pick): DemoCourse =>
  chance() < family.failing ? pick(family.faults) : family.sound

/** While something happens: a new counterfeit with two tells, or one fault of one family more often, so that nothing goes together. */
function changed(
  story: Story,
  family: DemoFamily,
  { planted }: DemoCast,
  risen: DemoFamily | undefined,
  chance: () => number,
  pick: Pick,
): DemoCourse {
  const [fault] = family.faults
  if (story === 'rise' && family === risen && fault && chance() < planted.share) return fault
  const fake = (story === 'pattern' || story === 'over') && family.family === planted.family
  return fake && chance() < planted.share ? planted.course : usual(family, chance, pick)
}

function drawn(families: readonly DemoFamily[], chance: () => number): DemoFamily {
  const all = families.reduce((sum, { part }) => sum + part, 0)
  let left = chance() * all
  for (const family of families) {
    left -= family.part
    if (left < 0) return family
  }
  return families[0] as DemoFamily
}

/** 64 hex digits that have not been counted yet; whoever checks here does so once a quarter for a family. */
function someone(random: Parameters<typeof uniformInt>[0], of: string, counted: Set<string>): string {
  for (;;) {
    const digits = Array.from({ length: 8 }, () => uniformInt(random, 0, 0xffffffff).toString(16).padStart(8, '0'))
    const key = `${of} ${digits.join('')}`
    if (counted.has(key)) continue
    counted.add(key)
    return digits.join('')
  }
}
