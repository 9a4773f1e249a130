// The laws of families: what holds for all facts, all reference cells and all answers.
import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Answers, cantTell, option } from '../../src/engine/answers.ts'
import { openCoverage, runCase, uncovered } from '../../src/engine/cases.ts'
import type { Program } from '../../src/engine/compile.ts'
import { placesOf, verdictAt } from '../../src/engine/judge.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { factsDigest } from '../../src/families/derive/facts-digest.ts'
import { exported, imported } from '../../src/families/exchange/exchange.ts'
import type { Construction, Facts } from '../../src/families/facts/facts-schema.ts'
import { unearnedMusts, withEarned } from '../../src/families/strength/earned.ts'
import type { Reference } from '../../src/families/strength/references.ts'
import { severity } from '../../src/ground/verdicts.ts'
import { anyLooks, arbitraryFacts, fakeFor, featureAnswers, looksOf, referenceOf } from './arbitrary.ts'
import { anyCell, compileFamily } from './base.ts'

const day = anyCell.written
const sha256 = (text: string) => createHash('sha256').update(text).digest('hex')
const digest = (facts: Facts) => factsDigest(facts, sha256)

/** Undefined where the facts are refused with a problem named. */
function programOf(facts: Facts): Program | undefined {
  const result = derive(facts, anyCell)
  if (!result.ok) {
    expect(result.problems.length).toBeGreaterThan(0)
    return undefined
  }
  const compiling = compileFamily(result.pack)
  if (!compiling.ok) throw new Error(JSON.stringify(compiling.problems).slice(0, 300))
  return compiling.program
}
const verdictOf = (program: Program, answers: Answers) =>
  verdictAt(program, placesOf(program, { ...program.given, ...answers }))

test('derivation gives a pack that passes the checker with every firing shown, or names what is wrong', () => {
  let passed = 0
  fc.assert(
    fc.property(arbitraryFacts(), facts => {
      const result = derive(facts, anyCell)
      if (!result.ok) return expect(result.problems.length).toBeGreaterThan(0)
      const program = programOf(facts)
      if (!program) throw new Error('derived once, and not again')
      const coverage = openCoverage(result.pack.rules)
      const problems = result.cases.flatMap(one => runCase(program, one, one.case, coverage))
      expect([...problems, ...uncovered(coverage, result.pack.id)]).toEqual([])
      passed++
    }),
    { numRuns: 66 },
  )
  expect(passed).toBeGreaterThan(40)
})

test('the cell as made is never worse than open, whatever part of it was looked at', () => {
  fc.assert(
    fc.property(
      arbitraryFacts().chain(facts =>
        fc.tuple(
          fc.constant(facts),
          looksOf(facts, trait => trait.made),
        ),
      ),
      ([facts, looks]) => {
        const program = programOf(facts)
        if (!program) return
        // Of looks that any cell's rules hold against it as a whole, a family's own say nothing.
        const own = Object.entries(looks).filter(([id]) => !anyCellHolds(id))
        const answers = Object.fromEntries(own.map(([id, one]) => [id, option(one)]))
        expect(['open', 'nothing-found']).toContain(verdictOf(program, answers))
      },
    ),
    { numRuns: 50 },
  )
})

/** Looks that count against every cell, whoever says that it is made so. */
const anyCellHolds = (feature: string): boolean =>
  anyCell.rules.some(
    rule => rule.kind !== 'no-bearing' && JSON.stringify(rule.when).includes(`"question":"${feature}"`),
  )

const withReferences = (of: (trait: Facts['traits'][string], options: string[]) => string[]) =>
  arbitraryFacts({ figures: false }).chain(facts =>
    fc.record({
      facts: fc.constant(facts),
      before: fc.array(referenceOf(anyLooks(facts)), { maxLength: 6 }),
      more: referenceOf(looksOf(facts, of)).map((one): Reference => ({ ...one, state: 'accepted' })),
      answers: fc.array(featureAnswers(), { minLength: 6, maxLength: 6 }),
    }),
  )

test('a further reference that agrees never lowers a verdict', () => {
  fc.assert(
    fc.property(
      withReferences(trait => trait.made),
      ({ facts, before, more, answers }) => {
        const [a, b] = [before, [...before, more]].map(list => programOf(withEarned(facts, undefined, list)))
        if (!a || !b) return
        for (const said of answers)
          expect(severity[verdictOf(b, said)]).toBeGreaterThanOrEqual(severity[verdictOf(a, said)])
      },
    ),
    { numRuns: 40 },
  )
})

test('a further reference that contradicts never raises a verdict, also where a construction says how strongly it tells', () => {
  fc.assert(
    fc.property(
      withReferences((trait, options) =>
        trait.made.length === 0 ? [] : options.filter(one => !trait.made.includes(one)),
      ),
      fc.boolean(),
      ({ facts, before, more, answers }, built) => {
        const [a, b] = [before, [...before, more]].map(list =>
          programOf(withEarned(facts, built ? builtAs(facts) : undefined, list)),
        )
        if (!a || !b) return
        for (const said of answers)
          expect(severity[verdictOf(b, said)]).toBeLessThanOrEqual(severity[verdictOf(a, said)])
      },
    ),
    { numRuns: 60 },
  )
})

/** A construction that says all that the facts say. */
const builtAs = (facts: Facts): Construction => ({
  ...{
    construction: 'drawn',
    version: '1.0.0',
    written: day,
    title: { en: 'Drawn' },
    formats: [facts.identity.format],
  },
  ...{ kinds: [facts.identity.kind], sibling: {}, show: {}, sources: {}, traits: facts.traits },
})

test('a further cell of the same person, or of the same order, changes no strength', () => {
  fc.assert(
    fc.property(
      withReferences(trait => trait.made),
      ({ facts, before, more }) => {
        const first: Reference = { ...more, id: 'first' }
        const list = [...before, first]
        const again = { ...more, id: 'again' }
        const others = before.filter(one => one.by !== more.by && one.order !== more.order)
        // As one of the same person from an order that is known, and the other way round.
        const known = others[0]
        const same = withEarned(facts, undefined, [...list, again])
        expect(digest(same)).toBe(digest(withEarned(facts, undefined, list)))
        if (known) {
          const mixed = { ...again, order: known.order, looks: more.looks, how: more.how }
          const bySame = withEarned(facts, undefined, [
            ...[known, first].map(one => ({ ...one, state: 'accepted' as const })),
            mixed,
          ])
          expect(digest(bySame)).toBe(
            digest(
              withEarned(
                facts,
                undefined,
                [known, first].map(one => ({ ...one, state: 'accepted' as const })),
              ),
            ),
          )
        }
      },
    ),
    { numRuns: 66 },
  )
})

test('the order in which facts are written changes neither digest nor pack', () => {
  const shuffledFacts = arbitraryFacts().chain(facts =>
    fc
      .record({
        traits: fc.shuffledSubarray(Object.entries(facts.traits), { minLength: Object.keys(facts.traits).length }),
        turn: fc.boolean(),
      })
      .map(({ traits, turn }) => ({
        facts,
        other: { ...facts, traits: Object.fromEntries(traits.map(([id, one]) => [id, turn ? turned(one) : one])) },
      })),
  )
  fc.assert(
    fc.property(shuffledFacts, ({ facts, other }) => {
      expect(digest(other)).toBe(digest(facts))
      expect(derive(other, anyCell)).toEqual(derive(facts, anyCell))
    }),
    { numRuns: 66 },
  )
})

type Trait = Facts['traits'][string]
const turned = ({ made, against, remarks }: Trait): Trait => ({
  remarks: [...remarks].reverse(),
  against: [...against].reverse().map(one => ({ ...one, options: [...one.options].reverse() })),
  made: [...made].reverse(),
})

test('what is exported comes back as it was, and goes out again byte for byte', () => {
  fc.assert(
    fc.property(arbitraryFacts(), facts => {
      const file = JSON.stringify(exported(facts))
      const back = imported(JSON.parse(file), facts.identity.id)
      if (!back.ok) throw new Error(JSON.stringify(back.problems))
      expect(digest(back.facts)).toBe(digest(facts))
      expect(JSON.stringify(exported(back.facts))).toBe(file)
    }),
    { numRuns: 66 },
  )
})

test('a known fake fires on no answers that contradict nothing in how it is made, and never lowers a verdict', () => {
  fc.assert(
    fc.property(
      arbitraryFacts({ figures: false }).chain(facts =>
        fc.record({
          facts: fc.constant(facts),
          fake: fakeFor(facts),
          looks: looksOf(facts, trait => trait.made),
          answers: fc.array(featureAnswers(), { minLength: 4, maxLength: 4 }),
        }),
      ),
      ({ facts, fake, looks, answers }) => {
        if (!fake) return
        const [a, b] = [facts, { ...facts, fakes: [fake] }].map(programOf)
        if (!a || !b) return
        const rule = b.rules.findIndex(one => one.id === 'f-drawn1-fake-k1')
        expect(rule).toBeGreaterThanOrEqual(0)
        const asMade = Object.fromEntries(Object.entries(looks).map(([id, one]) => [id, option(one)]))
        expect(b.weighers[rule]?.(placesOf(b, asMade))).not.toBe(2)
        for (const said of answers)
          expect(severity[verdictOf(b, said)]).toBeGreaterThanOrEqual(severity[verdictOf(a, said)])
      },
    ),
    { numRuns: 40 },
  )
})

test('a must about a look is left of no facts without a construction or five independent references', () => {
  fc.assert(
    fc.property(
      arbitraryFacts({ figures: false }).chain(facts =>
        fc.tuple(fc.constant(facts), fc.array(referenceOf(anyLooks(facts)), { maxLength: 4 })),
      ),
      ([facts, references]) => {
        const earned = withEarned(facts, undefined, references)
        expect(Object.values(earned.traits).flatMap(trait => trait.against.map(one => one.tells))).not.toContain('must')
        expect(unearnedMusts(earned, anyCell, undefined, references)).toEqual([])
      },
    ),
    { numRuns: 66 },
  )
})

test("can't tell everywhere is open, and a check in which an exception held is never “nothing found”", () => {
  fc.assert(
    fc.property(arbitraryFacts(), featureAnswers(), (facts, answers) => {
      const program = programOf(facts)
      if (!program) return
      const unsure = Object.fromEntries([...program.questions.keys()].map(id => [id, cantTell]))
      expect(verdictOf(program, { ...unsure, ...program.given })).toBe('open')
      const held = { ...answers, 'sold-as': option('new-rewrap') }
      const used = program.rules.some(
        (rule, i) => rule.id.endsWith('-x') && program.weighers[i]?.(placesOf(program, held)) === 2,
      )
      if (used && program.family?.notWhile?.length) {
        const ids = program.family.notWhile
        const mine = program.rules.some(
          (rule, i) => ids.includes(rule.id) && program.weighers[i]?.(placesOf(program, held)) === 2,
        )
        if (mine) expect(program.outlook({ ...program.given, ...held }).reachable).not.toContain('nothing-found')
      }
    }),
    { numRuns: 50 },
  )
})
