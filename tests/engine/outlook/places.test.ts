// Where answers stand: in which state each lies, how rules weigh that, which of them fire, and what is shared by programs on one bench.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Answer, type Answers, cantTell, option, reading } from '../../../src/engine/answers.ts'
import { type Condition, weigh } from '../../../src/engine/conditions.ts'
import { firing } from '../../../src/engine/firing.ts'
import { judge, placesOf, verdictAt } from '../../../src/engine/judge.ts'
import { openBench } from '../../../src/engine/outlook/bench.ts'
import { atomsByQuestion, compileModel, groupModel, type Model, solveModel } from '../../../src/engine/outlook/model.ts'
import { openOutlook } from '../../../src/engine/outlook/outlook.ts'
import { finderOf } from '../../../src/engine/outlook/place-of.ts'
import { openSpace } from '../../../src/engine/outlook/space.ts'
import { countStates, statesOf } from '../../../src/engine/outlook/states.ts'
import type { Question } from '../../../src/engine/pack/pack.ts'
import { scaleProgram } from '../scale-pack.ts'

const legs = {
  ...{ id: 'legs', ask: '', care: 'look', effort: 1, quick: false, unsureOdds: 0.5 },
  answer: {
    kind: 'options',
    options: ['three', 'four', 'five'].map((id, i) => ({ id, label: '', odds: i + 1, show: {} })),
  },
} as Question
const mass = {
  ...{ id: 'mass', ask: '', care: 'meter', effort: 2, quick: false, unsureOdds: 0.5 },
  answer: { kind: 'reading', quantity: 'mass', unit: 'g', least: 0, most: 100 },
} as Question
const claim = { ...mass, id: 'claim', answer: { ...mass.answer, quantity: 'claimed-capacity' } } as Question
const is = (...options: string[]): Condition => ({ op: 'is', question: 'legs', options })
const light: Condition = { op: 'below', question: 'mass', limit: 40 }
const heavy: Condition = { op: 'above', question: 'mass', limit: 60 }
const atoms = atomsByQuestion([is('four', 'five'), light, heavy])
const bench = openBench()
const variableOf = (question: Question, list = atoms.get(question.id) ?? [], on = bench) =>
  on.variable(question, question.id, list, () => statesOf(question, list))
const space = openSpace([legs, mass].map(one => ({ id: one.id, variable: variableOf(one) })))

const answer = fc.constantFrom<Answer[]>(...[option('three'), option('four'), option('five'), cantTell])
const weighed = fc.oneof(
  fc.constant(cantTell as Answer),
  fc
    .tuple(fc.integer({ min: 0, max: 100 }), fc.constantFrom(0, 1, 6, 30))
    .map(([value, u]) => reading(value, u) as Answer),
)
const answers = fc.record({ legs: answer, mass: weighed }, { requiredKeys: [] }) as fc.Arbitrary<Answers>
const { condition } = fc.letrec<{ condition: Condition }>(tie => ({
  condition: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom(is('four', 'five'), light, heavy),
    fc.record({ op: fc.constant('not' as const), of: tie('condition') }),
    fc.record({
      op: fc.constantFrom('all' as const, 'any' as const),
      of: fc.array(tie('condition'), { maxLength: 3 }),
    }),
  ),
}))
const truth = { false: 0, unknown: 1, true: 2 } as const

describe('a space', () => {
  test('weighs places as conditions weigh answers, as they are and as they stand', () => {
    fc.assert(
      fc.property(condition, answers, (one, given) => {
        const places = space.place(given)
        const weigher = space.weigher(one)
        expect(weigher(places)).toBe(truth[weigh(one, given)])
        expect(weigher(space.asItStands(places))).toBe(truth[weigh(one, given, cantTell)])
        expect(space.weigher(one)).toBe(weigher)
      }),
      { numRuns: 300 },
    )
  })
  test('places every question in its order, -1 where nothing is known, and knows no others', () => {
    const given = { mass: reading(30), colour: option('red') }
    expect(space.place(given)[0]).toBe(-1)
    expect(space.place(given)).toBe(space.place(given))
    expect(space.asItStands(space.place({}))).toEqual(space.questions.map(one => one.variable.unsure))
    expect([...space.indexOf]).toEqual([
      ['legs', 0],
      ['mass', 1],
    ])
    expect(() => space.weigher({ op: 'is', question: 'colour', options: ['red'] })).toThrow('no question colour')
    expect(() => space.place({ legs: option('nine') })).toThrow(RangeError)
  })
  test('shares its weighers with one in which the questions stand alike, and with no other', () => {
    const kept: NonNullable<Parameters<typeof openSpace>[1]> = new WeakMap()
    const of = (...list: Question[]) =>
      openSpace(
        list.map(one => ({ id: one.id, variable: variableOf(one) })),
        kept,
      )
    const both: Condition = { op: 'all', of: [is('four', 'five'), light] }
    const one = of(legs, mass).weigher(both)
    expect(of(legs, mass).weigher(both)).toBe(one)
    expect(of(mass, legs).weigher(both)).not.toBe(one)
    const given = { legs: option('four'), mass: reading(10) }
    expect(of(mass, legs).weigher(both)(of(mass, legs).place(given))).toBe(2)
  })
})

describe('a state', () => {
  test('is found for each answer by what all rules say of it; an answer that is none is refused', () => {
    const list = atoms.get('mass') ?? []
    const states = statesOf(mass, list)
    const find = finderOf({ id: 'mass', states }, list)
    for (const [i, { answers: those }] of states.entries()) for (const one of those) expect(find(one)).toBe(i)
    expect(find(reading(39, 0.4))).toBe(find(reading(3)))
    expect(find(reading(39, 0.6))).not.toBe(find(reading(3)))
    const options = finderOf({ id: 'legs', states: statesOf(legs, atoms.get('legs') ?? []) }, [])
    expect(options(option('four'))).toBe(options(option('five')))
    expect(() => options(option('nine'))).toThrow(new RangeError('no state of legs fits this answer'))
    expect(() => options(reading(3))).toThrow(RangeError)
  })
  test('of a printed figure knows no guard band: a value with one is where it would be without', () => {
    const list = (['below', 'above'] as const).map(op => ({ op, question: 'claim', limit: 50 }))
    const states = statesOf(claim, list)
    const find = finderOf({ id: 'claim', states }, list)
    expect(states.length).toBe(countStates(claim, list))
    expect(find(reading(51, 9))).toBe(find(reading(51)))
    expect(find(reading(49, 9))).toBe(find(reading(49)))
  })
  test('has the odds of all its answers; as many are counted as there are', () => {
    const list = atoms.get('legs') ?? []
    expect(statesOf(legs, list).map(one => one.odds)).toEqual([1, 5, 0.5])
    expect(countStates(legs, list)).toBe(4)
    expect(statesOf(legs, []).map(one => one.odds)).toEqual([6.5])
    expect(countStates(mass, [])).toBe(2)
  })
})

describe('a bench', () => {
  test('makes a question once for the same rules, in whatever order they stand, and anew for others', () => {
    const own = openBench()
    const list = atoms.get('mass') ?? []
    const one = variableOf(mass, list, own)
    expect(variableOf(mass, [...list].reverse(), own)).toBe(one)
    expect(own.variableAt(one.number)).toBe(one)
    expect(variableOf(mass, list.slice(1), own)).not.toBe(one)
    expect(own.variable({ ...mass }, 'mass', list, () => statesOf(mass, list))).not.toBe(one)
    expect(one.chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12)
    expect(one.states[one.unsure]?.answers).toContainEqual(cantTell)
    expect(one.truthsOf(light as never)).toBe(one.truthsOf({ ...light } as never))
    expect(own.full).toBe(false)
  })
  test('is full once there is too much on it', () => {
    const own = openBench()
    for (let i = 0; i < 3000; i++) own.variable({}, `q${i}`, [], () => [{ answers: [cantTell], odds: 1 }])
    expect(own.full).toBe(false)
    own.variable({}, 'last', [], () => [{ answers: [cantTell], odds: 1 }])
    expect(own.full).toBe(true)
  })
})

describe('judged', () => {
  const program = scaleProgram()
  const given = fc.record(
    {
      wrap: fc.constantFrom<Answer[]>(option('whole'), option('torn'), cantTell),
      legs: fc.constantFrom<Answer[]>(option('three'), option('four'), cantTell),
      code: fc.constantFrom<Answer[]>(option('there'), option('missing'), cantTell),
      shop: fc.constantFrom<Answer[]>(option('known'), option('new'), cantTell),
      mass: weighed.filter(one => one.kind !== 'reading' || one.value >= 5),
    },
    { requiredKeys: [] },
  ) as fc.Arbitrary<Answers>
  test('the rules that fire are those that hold with everything else untold, in their order', () => {
    fc.assert(
      fc.property(given, one => {
        const places = program.space.asItStands(placesOf(program, one))
        const plain = program.rules.filter(rule => weigh(rule.when, one, cantTell) === 'true')
        expect(firing(program, places)).toEqual(plain)
        const { verdict, findings, score } = judge(program, one)
        expect(verdictAt(program, places)).toBe(verdict)
        expect(judge(program, one)).toBe(judge(program, one))
        const counted = findings.filter(({ rule, outOfDate }) => rule.kind !== 'no-bearing' && !outOfDate)
        const weight = { weak: 1, moderate: 2, strong: 4 } as const
        expect(score).toBe(
          counted.reduce((sum, { rule }) => sum + (rule.kind === 'sign' ? weight[rule.strength] : 0), 0),
        )
        const worst = counted.some(({ rule }) => rule.kind === 'hazard')
          ? 'danger'
          : counted.some(({ rule }) => rule.kind === 'must')
            ? 'ruled-out'
            : score >= 4
              ? 'doubtful'
              : 'open'
        expect(verdict).toBe(worst)
        const carrier = { danger: 'hazard', 'ruled-out': 'must', doubtful: 'sign' }[worst as 'danger']
        for (const { rule, carries, outOfDate } of findings) {
          expect(carries).toBe(rule.kind === carrier && !outOfDate)
          expect(outOfDate).toBe(rule.id === 'aged')
        }
      }),
      { numRuns: 300 },
    )
  })
  test('what tells nothing is said, unless something that counts takes the same answers', () => {
    const said = (one: Answers) => judge(program, one).findings.map(({ rule }) => rule.id)
    expect(said({ shop: option('new') })).toEqual(['shop-says-nothing'])
    expect(said({ mass: reading(150) })).toEqual(['heavy', 'shop-says-nothing'])
    // Another rule that reads all it reads silences it.
    const both = program.rules.find(one => one.id === 'shop-says-nothing')
    expect(program.reads.get(both?.id ?? '')).toEqual(['shop', 'mass'])
  })
})

describe('an outlook', () => {
  const model: Model = {
    questions: [legs, mass].map(one => ({
      id: one.id,
      effort: one.effort,
      states: statesOf(one, atoms.get(one.id) ?? []),
    })),
    rules: [
      { id: 'r1', when: is('four', 'five'), kind: 'must' },
      { id: 'r2', when: light, kind: 'sign', strength: 'strong' },
      { id: 'r3', when: heavy, kind: 'hazard' },
    ],
    enough: undefined,
  }
  const read = (change: Partial<Model> = {}) => {
    const compiled = compileModel({ ...model, ...change })
    if (!compiled.ok) throw new Error('too tangled')
    return openOutlook(compiled.compiled)
  }
  test('names each way a question can be answered, with its chance and what it leads to, what tells most for its effort first', () => {
    const { prospects, reachable } = read()({})
    expect(reachable).toEqual(['danger', 'ruled-out', 'doubtful', 'open'])
    expect(prospects.map(one => one.worth)).toEqual(prospects.map(one => one.worth).toSorted((x, y) => y - x))
    for (const one of prospects) {
      const effort = one.question === 'mass' ? 2 : 1
      expect(one.worth).toBeCloseTo(one.gain / effort, 12)
      const branches = one.branches()
      expect(branches.reduce((sum, branch) => sum + branch.chance, 0)).toBeCloseTo(1, 12)
      const question = model.questions.find(each => each.id === one.question)
      expect(branches.flatMap(branch => branch.answers)).toHaveLength(
        question?.states.flatMap(state => state.answers).length ?? 0,
      )
    }
    const [must] = prospects
      .filter(one => one.question === 'legs')
      .flatMap(one => one.branches())
      .filter(one => one.answers.length === 2 && one.answers[0]?.kind === 'option' && one.answers[0].option === 'four')
    expect(must?.answers).toEqual([option('four'), option('five')])
  })
  test('is over once a danger holds, and the same for the same answers', () => {
    const look = read()
    expect(look({ mass: reading(90) })).toEqual({ chances: [1, 0, 0, 0, 0], reachable: ['danger'], prospects: [] })
    expect(look({ legs: option('four') })).toBe(look({ legs: option('five') }))
    expect(read({ given: { mass: reading(90) } })({}).reachable).toEqual(['danger'])
    // What is given of a question that no rule reads settles nothing.
    expect(read({ given: { colour: reading(90) } })({}).reachable).toEqual(read()({}).reachable)
  })
  test('knows "nothing found" of a known family alone', () => {
    const known = read({ enough: [is('four', 'five'), light, heavy] })
    expect(known({ mass: reading(50), legs: option('three') }).reachable).toEqual(['nothing-found'])
    expect(read()({ mass: reading(50), legs: option('three') }).reachable).toEqual(['open'])
    expect(known({ mass: cantTell, legs: option('three') }).reachable).toEqual(['open'])
  })
  test('too tangled for so many steps says which rules and questions hang together', () => {
    const tangled = {
      ...model,
      rules: [{ id: 'both', when: { op: 'all', of: [is('four'), light] }, kind: 'must' }, model.rules[2]!],
    } as Model
    expect(compileModel(tangled, openBench(), undefined, 1)).toEqual({
      ok: false,
      tangle: { rules: ['both', 'r3'], questions: ['legs', 'mass'], cap: 1 },
    })
    expect(compileModel(tangled, openBench(), undefined, 9).ok).toBe(true)
    // In slices the same is said at the end of them, whoever asks meanwhile.
    const inSlices = (cap: number) => {
      const grouped = groupModel(tangled)
      const slices = solveModel(grouped, cap)
      for (let count = 1; ; count++) {
        expect(openOutlook(grouped)({ legs: cantTell }).reachable.length).toBeGreaterThan(0)
        const slice = slices.next()
        if (slice.done) return { count, tangle: slice.value }
      }
    }
    expect(inSlices(1).tangle).toEqual({ rules: ['both', 'r3'], questions: ['legs', 'mass'], cap: 1 })
    expect(inSlices(9).tangle).toBeUndefined()
    expect(inSlices(9).count).toBeGreaterThan(1)
    const apart = { ...model, rules: [model.rules[0]!, { id: 'alone', when: heavy, kind: 'hazard' }] } as Model
    expect(compileModel(apart, openBench(), undefined, 1).ok).toBe(true)
  })
})
