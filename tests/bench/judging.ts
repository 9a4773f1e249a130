// Bench of judging: verdict, findings and the next question, against json-rules-engine judging the same rules only.
import { Engine, type NestedCondition, type TopLevelCondition } from 'json-rules-engine'
import type { Answers } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import type { Condition } from '../../src/engine/conditions.ts'
import { judge } from '../../src/engine/judge.ts'
import type { State } from '../../src/engine/outlook/states.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { openFamilyPrograms } from '../../src/families/family-programs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { inventedFamilies, unnamedFamilies } from '../families/known-families.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, quantile } from './table.ts'

const day = '2026-11-25'

/** The same condition for json-rules-engine; its facts are option ids and plain values. */
function translate(condition: Condition): NestedCondition {
  switch (condition.op) {
    case 'all':
      return { all: condition.of.map(translate) }
    case 'any':
      return { any: condition.of.map(translate) }
    case 'not':
      return { not: translate(condition.of) }
    case 'is':
      return { fact: condition.question, operator: 'in', value: [...condition.options] }
    case 'unless':
      return { fact: condition.question, operator: 'notIn', value: [...condition.options] }
    default:
      return {
        fact: condition.question,
        operator: condition.op === 'below' ? 'lessThan' : 'greaterThan',
        value: condition.limit,
      }
  }
}

function otherEngine(program: Program): Engine {
  const engine = new Engine([], { allowUndefinedFacts: true })
  for (const rule of program.rules) {
    const translated = translate(rule.when)
    const conditions = 'fact' in translated ? { all: [translated] } : (translated as TopLevelCondition)
    engine.addRule({ conditions, event: { type: rule.id } })
  }
  return engine
}

/** A small generator of its own, so that every run judges the same answers (mulberry32, public domain). */
function chance(seed: number): () => number {
  let a = seed
  return () => {
    a = (a + 0x6d2b79f5) | 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** The state on which `at` (0 to 1) of the odds falls. */
function drawn(states: readonly State[], at: number): State | undefined {
  let left = at * states.reduce((sum, state) => sum + state.odds, 0)
  for (const state of states) {
    left -= state.odds
    if (left <= 0) return state
  }
  return states.at(-1)
}

/** Answers as a check would have them: each by its odds, asked in the engine's own order, stopped somewhere on the way. */
function checkAnswers(program: Program, next: () => number): Answers {
  let answers: Answers = { ...program.given }
  for (let steps = Math.floor(next() * program.questions.size); steps > 0; steps--) {
    const [best] = program.outlook(answers).prospects
    const states = best && program.states.get(best.question)
    if (!best || !states) break
    const state = drawn(states, next())
    const answer = state?.answers[Math.floor(next() * state.answers.length)]
    if (answer) answers = { ...answers, [best.question]: answer }
  }
  return answers
}

function factsOf(answers: Answers): Record<string, string | number> {
  const facts: Record<string, string | number> = {}
  for (const [id, one] of Object.entries(answers)) {
    if (one.kind === 'option') facts[id] = one.option
    if (one.kind === 'reading') facts[id] = one.value
  }
  return facts
}

export async function benchJudging(): Promise<Line[]> {
  const packs = (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack)
  // First, while nothing lies about that is collected meanwhile.
  const memory = memoryLines(packs)
  const family = packs.flatMap(pack => pack.families)[0]?.id
  const compiled = compile(packs, day, family)
  if (!compiled.ok) throw new Error('the shipped packs do not compile')
  const { program } = compiled
  const engine = otherEngine(program)
  const next = chance(7)
  // Each is judged once, by a program that has not seen it; the first thousand only warm both engines up.
  const maker = compile(packs, day, family)
  if (!maker.ok) throw new Error('the shipped packs do not compile')
  const cases = Array.from({ length: usually(3000, 1500) }, () => checkAnswers(maker.program, next))
  const facts = cases.map(factsOf)
  const ours: number[] = []
  const theirs: number[] = []
  for (const [i, answers] of cases.entries()) {
    const start = performance.now()
    judge(program, answers)
    program.outlook(answers)
    ours.push(performance.now() - start)
    if (i % 3 > 0) continue
    const before = performance.now()
    await engine.run(facts[i] ?? {})
    theirs.push(performance.now() - before)
  }
  const mine = quantile(ours.slice(1000), 0.5)
  const other = quantile(theirs.slice(333), 0.5)
  const meanMine = mean(ours.slice(1000))
  const meanOther = mean(theirs.slice(333))
  return [
    {
      what: `judge and next question, median (${program.rules.length} rules, ${program.questions.size} questions)`,
      ours: ms(mine),
      baseline: `json-rules-engine judging only ${ms(other)}`,
      ...compared(theirs.slice(333), ours.slice(1000)),
      atLeast: 30,
    },
    {
      what: 'the same, mean',
      ours: ms(meanMine),
      baseline: `json-rules-engine judging only ${ms(meanOther)}`,
      ratio: meanOther / meanMine,
    },
    ...compileLines(packs),
    serverFamilyLine(packs),
    ...memory,
  ]
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** The first is compiled for cells of no family, the others after it: what they share is there then. */
function compileLines(packs: readonly Pack[]): Line[] {
  const programs = openPrograms(packs)
  const took = [null, ...programs.families.map(known => known.id)].map(one => {
    const begun = performance.now()
    if (!programs.compileFor(one, day).ok) throw new Error('the shipped packs do not compile')
    return performance.now() - begun
  })
  const all = took.reduce((sum, one) => sum + one, 0)
  const further = quantile(took.slice(1), 0.5)
  return [
    {
      what: 'compile of all shipped packs, every family',
      ours: ms(all),
      baseline: '200 ms',
      ratio: all / 200,
      atMost: 1,
    },
    { what: 'compile of one further family', ours: ms(further), baseline: '10 ms', ratio: further / 10, atMost: 1 },
  ]
}

/** As a server's moderators describe one: derived from its facts, and compiled beside what is there already. */
function serverFamilyLine(packs: readonly Pack[]): Line {
  const programs = openPrograms(packs)
  if (!programs.programFor(null, day)) throw new Error('the shipped packs do not compile')
  const families = openFamilyPrograms(programs)
  const facts = Object.values({ ...unnamedFamilies, ...inventedFamilies })
  const took = facts.map((one, i) => {
    const begun = performance.now()
    const described = { facts: { ...one, identity: { ...one.identity, id: `f-${i}` } }, digest: `${i}`, number: 1 }
    if (!families.program(described, day)) throw new Error(`${one.identity.name} does not compile`)
    return performance.now() - begun
  })
  const each = quantile(took, 0.5)
  return {
    what: "derive and compile one of a server's families, median",
    ours: ms(each),
    baseline: '30 ms',
    ratio: each / 30,
    atMost: 1,
  }
}

/** As a process holds them: the first program with all that others share, then those of a server's families beside it. */
function memoryLines(packs: readonly Pack[]): Line[] {
  const used = () => {
    globalThis.gc?.()
    return process.memoryUsage().heapUsed
  }
  const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(2)} MB`
  const none = used()
  const programs = openPrograms(packs)
  if (!programs.programFor(null, day)) throw new Error('the shipped packs do not compile')
  const first = used() - none
  const families = openFamilyPrograms(programs)
  const facts = Object.values({ ...unnamedFamilies, ...inventedFamilies })
  for (const [i, one] of facts.entries()) {
    const described = { facts: { ...one, identity: { ...one.identity, id: `f-${i}` } }, digest: `${i}`, number: 1 }
    if (!families.program(described, day)) throw new Error(`${one.identity.name} does not compile`)
  }
  const each = (used() - none - first) / facts.length
  return [
    {
      what: 'memory of a first program, with what all others share (printed only)',
      ours: megabytes(first),
      baseline: '0.5 MB',
      ratio: first / 5e5,
    },
    {
      what: 'memory of each further program, of a server’s family',
      ours: megabytes(each),
      baseline: '0.5 MB',
      ratio: each / 5e5,
      atMost: 1,
    },
  ]
}
