// Invented outcomes by the million: sixty weeks of one server, like a real one's or fully at random.
//
// Like a server's: 40 families and the unknown one, the n-th with 1/n of the first one's checks; the server grows threefold. Each family
// has three faults of one to three failed checks, each with the answers behind it, and 8 to 30 % of its checks have one of them; beside
// that, each of ten other checks fails in 2 %. Twelve questions are answered in each check, nine times of ten as is usual for the family.
// In the last four weeks two families have a new fault. At random: every verdict, place and answer as likely, each of twenty checks
// failing in a seventh of all: hardly two rows alike, which no server is.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { Verdict } from '../../src/ground/verdicts.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { type Week, weekPlus } from '../../src/trends/week.ts'

export type Shape = 'like-a-server' | 'at-random'

const weeks = 60
const families = 40
const questions = 12
const places = ['known-shop', 'marketplace', 'no-name', 'second-hand', 'salvaged-pack', 'not-said'] as const
const verdicts: readonly Verdict[] = ['danger', 'ruled-out', 'doubtful', 'open', 'nothing-found']
const packs = ['invented-cells', 'invented-makers'].map(id => ({ id, version: '1.0.0', digest: 'a1'.repeat(32) }))

type Fault = { readonly verdict: Verdict; readonly fired: readonly string[]; readonly answers: readonly number[] }

/** `count` outcomes of `server` in the sixty weeks that end with `last`, in any order; the same every time. */
export function* inventOutcomes(shape: Shape, server: string, last: Week, count: number): Generator<Outcome> {
  const random = xoroshiro128plus(2026)
  const int = (most: number): number => uniformInt(random, 0, most)
  const chance = (share: number): boolean => uniformFloat64(random) < share
  const hex = () => Array.from({ length: 8 }, () => int(0x7fffffff).toString(16).padStart(8, '0')).join('')
  const faultOf = (): Fault => {
    const rules = Array.from({ length: 1 + int(2) }, () => int(29))
    return {
      verdict: verdicts[int(2)]!,
      fired: [...new Set(rules)].map(rule => `fault-${rule}`),
      answers: rules.map(() => int(questions - 1)),
    }
  }
  const cast = Array.from({ length: families + 1 }, (_, i) => ({
    family: i === 1 ? null : `family-${i}`,
    part: 1 / (i + 1),
    failing: 0.08 + 0.22 * uniformFloat64(random),
    faults: [faultOf(), faultOf(), faultOf()],
    recent: i === 2 || i === 5 ? faultOf() : undefined,
  }))
  const ends = cast.map((_, i) => cast.slice(0, i + 1).reduce((sum, { part }) => sum + part, 0))
  const parts = ends.at(-1)!
  const pick = () => {
    const at = uniformFloat64(random) * parts
    return cast[ends.findIndex(end => at < end)] ?? cast[0]!
  }
  const growth = Array.from({ length: weeks }, (_, w) => 1 + (2 * w) / (weeks - 1))
  const whole = growth.reduce((a, b) => a + b)
  for (const [w, size] of growth.entries()) {
    const week = weekPlus(last, w - weeks + 1)
    const until = Math.round((count * size) / whole)
    for (let i = 0; i < until; i++) {
      const { family, failing, faults, recent } = pick()
      const fault = recent && w >= weeks - 4 && chance(0.3) ? recent : chance(failing) ? faults[int(2)] : undefined
      const alike = shape === 'like-a-server'
      const others = alike ? spread(10, 0.02, chance) : spread(20, 1 / 7, chance)
      yield {
        server,
        reporter: hex(),
        pooled: null,
        week,
        family,
        verdict: alike ? (fault?.verdict ?? (chance(0.6) ? 'nothing-found' : 'open')) : verdicts[int(4)]!,
        fired: [...(alike ? (fault?.fired ?? []) : []), ...others.map(n => `other-${n}`)].sort(),
        options: Object.fromEntries(
          Array.from({ length: questions }, (_, q) => {
            const usual = alike && !fault?.answers.includes(q) && chance(0.9)
            return [`question-${q}`, `answer-${usual ? 0 : 1 + int(2)}`]
          }),
        ),
        bought: places[Math.min(int(5), alike ? int(5) : 5)]!,
        packs,
      }
    }
  }
}

const spread = (most: number, share: number, chance: (share: number) => boolean): number[] =>
  Array.from({ length: most }, (_, n) => n).filter(() => chance(share))
