// A simulated busy month: people of a server walk through checks of the shipped packs, and answer as the packs say people do.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { Check } from '../../src/check/check.ts'
import { type Stepping, start, step } from '../../src/check/step.ts'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import type { Programs } from '../../src/engine/programs.ts'
import type { Quantity } from '../../src/ground/quantities.ts'
import { tools } from '../../src/ground/tools.ts'

const day = 24 * 3600_000

/** One check from its first screen to its verdict. */
export type Walked = { readonly program: Program; readonly check: Check; readonly at: number }

/** What is read off a good cell, more or less; one in eight is far off. */
const usual: Readonly<Record<Quantity, number>> = {
  mass: 46,
  diameter: 18.4,
  length: 65.1,
  voltage: 3.6,
  'ac-resistance': 30,
  'dc-resistance': 40,
  capacity: 2700,
  current: 10,
  temperature: 35,
  'rest-time': 48,
  'energy-per-volume': 600,
  'voltage-lost': 0.4,
  'voltage-lost-under-load': 0.6,
  'energy-per-mass': 220,
  'claimed-capacity': 3000,
  'claimed-current': 15,
}

export type Month = {
  readonly seed: number
  readonly server: string
  /** Ms since 1970, a Monday. */
  readonly from: number
  readonly weeks: number
  readonly checksAWeek: number
  readonly families: readonly (string | null)[]
}

/** Checks week by week, in the order in which they were finished; the same every time. */
export function* walkMonth(programs: Pick<Programs, 'programFor'>, month: Month): Generator<Walked> {
  const random = xoroshiro128plus(month.seed)
  const chance = (): number => uniformFloat64(random)
  const pick = <T>(list: readonly T[]): T => list[uniformInt(random, 0, list.length - 1)] as T
  for (let n = 0; n < month.weeks * month.checksAWeek; n++) {
    const at = month.from + Math.floor(((n + 0.5) * 7 * day) / month.checksAWeek)
    const family = pick(month.families)
    const program = programs.programFor(family, new Date(at).toISOString().slice(0, 10))
    if (!program) throw new Error(`no program for ${family}`)
    const begun = taken(
      start(
        program,
        {
          ...{ id: `check${n}`, holder: `person ${n}`, server: month.server, family },
          ...{ cells: pick([1, 1, 2, 4, 8]), mode: chance() < 0.6 ? 'quick' : 'full' },
          ...(chance() < 0.4 && { tools: tools.filter(() => chance() < 0.5) }),
        },
        at,
      ),
    )
    yield { program, check: walk(program, begun, at, chance, pick), at }
  }
}

function walk(
  program: Program,
  begun: Check,
  at: number,
  chance: () => number,
  pick: <T>(list: readonly T[]) => T,
): Check {
  let check = begun
  // Some have had enough before all is asked.
  const patience = 6 + Math.floor(40 * chance())
  for (let i = 0; i < 200 && check.phase.is !== 'done'; i++) {
    const { phase } = check
    if (phase.is === 'consent')
      check = taken(
        step(program, check, { is: 'consent', to: phase.to, given: phase.to === 'touch' || chance() < 0.2 }, at),
      )
    else if (phase.is === 'asking' && i >= patience) check = taken(step(program, check, { is: 'finish' }, at))
    else if (phase.is === 'asking' || phase.is === 'second-look') {
      const given = phase.is === 'second-look' ? phase.answer : answerTo(program, phase.question, chance, pick)
      check = taken(step(program, check, { is: 'answer', question: phase.question, answer: given }, at))
    } else throw new Error(phase.is)
  }
  return check
}

function answerTo(program: Program, id: string, chance: () => number, pick: <T>(list: readonly T[]) => T): Answer {
  const { answer, unsureOdds } = program.questions.get(id) as Question
  if (answer.kind === 'reading') {
    if (chance() < 0.3) return cantTell
    const middle = usual[answer.quantity]
    const off = chance() < 0.125 ? pick([0.5, 0.8, 1.3, 3]) : 0.96 + 0.08 * chance()
    const rounded = answer.quantity.startsWith('claimed')
      ? Math.round((middle * off) / 100) * 100 || middle
      : middle * off
    return reading(Math.min(answer.most, Math.max(answer.least, rounded)))
  }
  const likeliest = answer.options.toSorted((a, b) => b.odds - a.odds)[0]
  if (likeliest && chance() < 0.75) return option(likeliest.id)
  const total = answer.options.reduce((sum, one) => sum + one.odds, unsureOdds)
  const drawn = chance() * total
  let sum = 0
  for (const one of answer.options) {
    sum += one.odds
    if (drawn < sum) return option(one.id)
  }
  return cantTell
}

function taken(stepping: Stepping): Check {
  if (!stepping.ok) throw new Error(JSON.stringify(stepping.refusal))
  return stepping.check
}
