// The engine against figures computed elsewhere; each source is named beside its check.
import { describe, expect, test } from 'vitest'
import { type Answers, option } from '../../src/engine/answers.ts'
import { smallestEnough } from '../../src/engine/enough.ts'
import { entropy, informationGain } from '../../src/engine/outlook/gain.ts'
import { compileModel, type Model, type ModelRule } from '../../src/engine/outlook/model.ts'
import { type OutlookReader, openOutlook } from '../../src/engine/outlook/outlook.ts'
import { and, not, or, type Truth } from '../../src/engine/truth.ts'
import { verdicts } from '../../src/ground/verdicts.ts'
import figures from './figures.json' with { type: 'json' }
import zoo from './zoo.json' with { type: 'json' }

/** The figures' severities 0 to 3 are our open, doubtful, ruled out and danger; their questions have no "can't tell". */
const severities = ['open', 'doubtful', 'ruled-out', 'danger'] as const
type Figure = { domains: number[]; rules: { severity: number; when: Record<string, number[]> }[] }

function modelOf({ domains, rules }: Figure, odds?: number[][], efforts?: number[]): Model {
  return {
    enough: undefined,
    questions: domains.map((size, q) => ({
      id: `${q}`,
      effort: efforts?.[q] ?? 1,
      states: Array.from({ length: size }, (_, s) => ({ answers: [option(`${s}`)], odds: odds?.[q]?.[s] ?? 1 })),
    })),
    rules: rules.map(({ severity, when }, r): ModelRule => {
      const of = Object.entries(when).map(([question, states]) => ({
        op: 'is' as const,
        question,
        options: states.map(String),
      }))
      const common = { id: `${r}`, when: { op: 'all' as const, of } }
      if (severity === 1) return { ...common, kind: 'sign', strength: 'strong' }
      return { ...common, kind: severity === 2 ? 'must' : 'hazard' }
    }),
  }
}

function readerOf(model: Model): OutlookReader {
  const result = compileModel(model)
  if (!result.ok) throw new Error('too tangled')
  return openOutlook(result.compiled)
}
const answersOf = (given: Record<string, number | undefined>): Answers =>
  Object.fromEntries(Object.entries(given).map(([question, state]) => [question, option(`${state}`)]))

describe("Kleene's strong tables (Kleene 1938/1952, as given in Kleene's own notation)", () => {
  const truth: Record<string, Truth> = { F: 'false', U: 'unknown', T: 'true' }
  test.each([
    ['FF', 'F', 'F'],
    ['FU', 'F', 'U'],
    ['FT', 'F', 'T'],
    ['UF', 'F', 'U'],
    ['UU', 'U', 'U'],
    ['UT', 'U', 'T'],
    ['TF', 'F', 'T'],
    ['TU', 'U', 'T'],
    ['TT', 'T', 'T'],
  ])('%s: and is %s, or is %s', (pair, both, either) => {
    const values = [...pair].map(letter => truth[letter] as Truth)
    expect(and(values[0] as Truth, values[1] as Truth)).toBe(truth[both])
    expect(or(values[0] as Truth, values[1] as Truth)).toBe(truth[either])
  })
  test('not swaps true and false and leaves unknown', () => {
    expect([not('false'), not('unknown'), not('true')]).toEqual(['true', 'unknown', 'false'])
  })
})

describe('reachable verdicts and minimal reasons (our exhaustive enumeration in Python, 13 random instances)', () => {
  test.each(figures.logic)('$name', figure => {
    const read = readerOf(modelOf(figure as unknown as Figure))
    const reachable = read(answersOf(figure.answers as Record<string, number>)).reachable
    expect(reachable.map(verdict => severities.indexOf(verdict as 'open')).sort()).toEqual(
      [...figure.exact_reachable].sort(),
    )
    const full = figure.full_answers as Record<string, number> | undefined
    if (!full || !figure.all_minimal_sufficient_reasons) return
    const verdict = severities[figure.verdict as number]
    const found = smallestEnough(Object.keys(full), ids => {
      const only = read(answersOf(Object.fromEntries(ids.map(id => [id, full[id]])))).reachable
      return only.length === 1 && only[0] === verdict
    })
    const reasons = figure.all_minimal_sufficient_reasons.map(reason => [...reason].sort())
    expect(reasons).toContainEqual(found.map(Number).sort())
    expect(found).toHaveLength(Math.min(...reasons.map(reason => reason.length)))
  })
})

/** The expected effort of always asking the question that tells most for its effort, until one verdict is left. */
function expectedEffort(model: Model, read: OutlookReader, answers: Answers = {}): number {
  const [best] = read(answers).prospects
  if (!best) return 0
  const question = model.questions.find(one => one.id === best.question)
  return best.branches().reduce((sum, { chance, answers: [first] }) => {
    return sum + chance * expectedEffort(model, read, { ...answers, [best.question]: first as never })
  }, question?.effort ?? 0)
}

describe('the next question (exact dynamic programme over all strategies in Python)', () => {
  test.each(figures.random)(
    'verdict chances and the expected effort of asking by gain per effort: instance %#',
    figure => {
      const model = modelOf(figure as unknown as Figure, figure.prob, figure.cost)
      const read = readerOf(model)
      for (const [severity, chance] of Object.entries(figure.verdict_distribution))
        expect(read({}).chances[verdicts.indexOf(severities[Number(severity)] as 'open')]).toBeCloseTo(
          chance as number,
          12,
        )
      expect(expectedEffort(model, read)).toBeCloseTo(figure.greedy_ig_per_cost, 9)
      expect(figure.greedy_ig_per_cost / figure.optimal_expected_cost).toBeLessThan(1.3)
    },
  )

  test.each(figures.series)('a pure AND (theorem: ascending cost over 1 − p is optimal): instance %#', figure => {
    const size = figure.p_true.length
    const when = Object.fromEntries(figure.p_true.map((_, q) => [`${q}`, [1]]))
    const odds = figure.p_true.map(p => [1 - p, p])
    const model = modelOf({ domains: Array(size).fill(2), rules: [{ severity: 1, when }] }, odds, figure.cost)
    const effort = expectedEffort(model, readerOf(model))
    expect(effort).toBeCloseTo(figure.greedy_ig_per_cost, 9)
    expect(effort).toBeGreaterThanOrEqual(figure.expected_cost_theorem - 1e-9)
  })
})

type Row = readonly (string | undefined)[]
const share = (rows: readonly Row[], column: number): number[] => {
  const counts = new Map<string | undefined, number>()
  for (const row of rows) counts.set(row[column], (counts.get(row[column]) ?? 0) + 1)
  return [...counts.values()].map(count => count / rows.length)
}
function gainOf(rows: readonly Row[], column: number, outcome: number): number {
  const values = [...new Set(rows.map(row => row[column]))]
  const parts = values.map(value => rows.filter(row => row[column] === value))
  return informationGain(
    share(rows, outcome),
    parts.map(part => part.length / rows.length),
    parts.map(part => share(part, outcome)),
  )
}

describe('information gain', () => {
  test('UCI Zoo data, 101 animals, four partial answers (weka 3.6.14 and scipy agree)', () => {
    for (const state of zoo.states) {
      const rows = (zoo.rows as string[][]).filter(row =>
        Object.entries(state.answered).every(([name, value]) => row[zoo.attributes.indexOf(name) + 1] === value),
      )
      expect(rows).toHaveLength(state.remaining)
      expect(entropy(share(rows, 0))).toBeCloseTo(state.entropy, 12)
      for (const [name, gain] of Object.entries(state.gain))
        expect(gainOf(rows, zoo.attributes.indexOf(name) + 1, 0)).toBeCloseTo(gain, 12)
    }
  })

  test('weather data (Quinlan 1986; Witten & Frank give 0.247, 0.029, 0.152 and 0.048)', () => {
    const rows = [
      'sunny hot high no -',
      'sunny hot high yes -',
      'overcast hot high no +',
      'rain mild high no +',
      'rain cool normal no +',
      'rain cool normal yes -',
      'overcast cool normal yes +',
      'sunny mild high no -',
      'sunny cool normal no +',
      'rain mild normal no +',
      'sunny mild normal yes +',
      'overcast mild high yes +',
      'overcast hot normal no +',
      'rain mild high yes -',
    ].map(row => row.split(' '))
    const gains = [0, 1, 2, 3].map(column => gainOf(rows, column, 4))
    for (const [i, published] of [0.2467, 0.0292, 0.1518, 0.0481].entries()) expect(gains[i]).toBeCloseTo(published, 4)
  })
})
