// Packs in other languages: only texts change, what is missing is shown in the pack's own language and says so.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { screenOf } from '../../src/check/screen.ts'
import { start, step } from '../../src/check/step.ts'
import type { Answer, Answers } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { explain } from '../../src/engine/explain.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

const now = Date.UTC(2026, 10, 25)
const day = '2026-11-25'
const programOf = (packs: readonly Pack[], family?: string): Program => {
  const result = compile(packs, day, family)
  if (!result.ok) throw new Error('does not compile')
  return result.program
}
const shipped = (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack)
const programs = [undefined, ...shipped.flatMap(pack => pack.families.map(one => one.id))].map(family =>
  programOf(shipped, family),
)

const explained = (program: Program, answers: Answers) => {
  const { changes, ...rest } = explain(program, answers, judge(program, answers))
  return { ...rest, changes: changes() }
}

/** Everything a text could hide behind, taken out: what is left is what was judged. */
const judged = (program: Program, answers: Answers): string =>
  JSON.stringify([judge(program, answers), explained(program, answers)], (key, value) =>
    ['says', 'ask', 'look', 'label', 'hint', 'about'].includes(key) ? undefined : value,
  )

const answersOf = (program: Program, picks: readonly number[]): Answers => {
  const all = [...program.states]
  return Object.fromEntries(
    picks.flatMap(pick => {
      const [question, states] = all[pick % all.length] ?? ['', []]
      const answer: Answer | undefined = states[pick % Math.max(1, states.length)]?.answers[0]
      return answer ? [[question, answer] as const] : []
    }),
  )
}

test.each(['de', 'es-419', 'fr'])('in %s everything is judged, explained and asked as before', locale => {
  fc.assert(
    fc.property(
      fc.constantFrom(...programs),
      fc.array(fc.nat({ max: 100_000 }), { maxLength: 25 }),
      (program, picks) => {
        const told = inLanguage(program, locale)
        const answers = answersOf(program, picks)
        expect(judged(told, answers)).toBe(judged(program, answers))
        expect(told.outlook(answers).reachable).toEqual(program.outlook(answers).reachable)
        expect([...told.questions.keys()]).toEqual([...program.questions.keys()])
      },
    ),
    { numRuns: 150 },
  )
})

test('a walk through a check asks the same questions in every language', () => {
  const walk = (program: Program): string[] => {
    const who = { id: 'c', holder: 'h', server: null, family: program.family?.id ?? null }
    const begun = start(program, { ...who, mode: 'full', cells: 1 }, now)
    if (!begun.ok) throw new Error('not begun')
    const asked: string[] = []
    let { check } = begun
    for (let i = 0; i < 30 && screenOf(program, check).kind === 'question'; i++) {
      const question = 'question' in check.phase ? check.phase.question : ''
      asked.push(question)
      const stepped = step(program, check, { is: 'answer', question, answer: { kind: 'cant-tell' } }, now)
      if (!stepped.ok) break
      check = stepped.check
    }
    return asked
  }
  for (const program of programs) expect(walk(inLanguage(program, 'de'))).toEqual(walk(program))
})
