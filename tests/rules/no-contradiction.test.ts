// No verdict's words contradict one another: random walks to a verdict in three languages, read line by line and held against the judge.
import { ComponentType } from 'discord.js'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { screenOf, type VerdictScreen } from '../../src/check/screen.ts'
import { start, step } from '../../src/check/step.ts'
import { detailPages, showDetails } from '../../src/discord/check/show/details.ts'
import type { ShownMessage } from '../../src/discord/message/parts.ts'
import { type Answer, type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import { guard } from '../../src/ground/guard-band.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { shippedPrograms } from './shipped-programs.ts'
import { sound } from './sound-looks.ts'

const now = Date.UTC(2026, 10, 29)
const programs = shippedPrograms()

const linesOf = (message: ShownMessage): string[] =>
  message.components.flatMap(part => (part.type === ComponentType.TextDisplay ? part.content.split('\n') : []))
const pagesOf = (language: string, program: Program, screen: VerdictScreen): string[] => {
  const told = inLanguage(program, language)
  return Array.from({ length: detailPages }, (_, i) => showDetails(sayIn(language), told, screen, i + 1)).flatMap(
    linesOf,
  )
}

function finished(program: Program, check: Check): VerdictScreen {
  const screen = screenOf(program, { ...check, phase: { is: 'done' } })
  if (screen.kind !== 'verdict') throw new Error(screen.kind)
  return screen
}

/** A walk to a verdict: mostly what a sound cell answers, with some of any answer in between. */
function walk(program: Program, picks: readonly number[]): VerdictScreen {
  const begun = start(
    program,
    { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', cells: 3, family: program.family?.id ?? null },
    now,
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  let { check } = begun
  for (const pick of picks) {
    const { phase } = check
    if (phase.is === 'consent') {
      const next = step(program, check, { is: 'consent', to: phase.to, given: phase.to === 'touch' }, now)
      if (next.ok) check = next.check
      continue
    }
    if (phase.is !== 'asking' && phase.is !== 'second-look') break
    const next = step(
      program,
      check,
      { is: 'answer', question: phase.question, answer: answerTo(program, phase, pick) },
      now,
    )
    if (!next.ok) throw new Error(JSON.stringify(next.refusal))
    check = next.check
  }
  return finished(program, check)
}

function answerTo(program: Program, phase: Extract<Check['phase'], { question: string }>, pick: number): Answer {
  if (phase.is === 'second-look' && pick % 3 > 0) return phase.answer
  const asked = program.questions.get(phase.question)?.answer
  const states = program.states.get(phase.question) ?? []
  const any = states[pick % states.length]?.answers[0] ?? cantTell
  if (pick % 5 === 0) return cantTell
  if (asked?.kind === 'reading' && asked.quantity === 'voltage') return reading(1.8 + (pick % 28) / 10, 0.02)
  return pick % 4 > 0 ? (sound[phase.question] ?? any) : any
}

const walks = fc.tuple(
  fc.nat({ max: programs.length - 1 }),
  fc.array(fc.nat({ max: 997 }), { minLength: 90, maxLength: 90 }),
)

/** Everything a verdict's explanation says, held against the judge itself. */
function holdsTrue(program: Program, { check, judgement, explanation }: VerdictScreen): void {
  const verdictOn = (question: string, answer: Answer) =>
    judge(program, { ...check.answers, [question]: answer }).verdict
  for (const change of explanation.changes()) {
    const given = check.answers[change.question]
    if (change.is === 'option') {
      expect(verdictOn(change.question, change.answer)).toBe(change.verdict)
      expect(change.verdict).not.toBe(judgement.verdict)
      continue
    }
    // Nothing measured is said to change a danger.
    expect(judgement.verdict).not.toBe('danger')
    const asked = program.questions.get(change.question)?.answer
    if (asked?.kind !== 'reading') throw new Error(change.question)
    const { from = asked.least, to = asked.most } = change.range
    expect(from).toBeLessThan(to)
    const u = given?.kind === 'reading' ? given.u : 0
    if (change.is === 'undecided') {
      expect(u).toBeGreaterThan(0)
      continue
    }
    expect(change.verdict).not.toBe(judgement.verdict)
    for (const part of [0.1, 0.5, 0.9])
      expect(verdictOn(change.question, reading(from + part * (to - from), u))).toBe(change.verdict)
  }
  const unclear = explanation.unchecked.filter(one => program.hazards.has(one.question) && one.why !== 'not-asked')
  if (unclear.length > 0) expect(judgement.verdict).not.toBe('nothing-found')
  const counted = judgement.findings.filter(({ rule, outOfDate }) => rule.kind !== 'no-bearing' && !outOfDate)
  for (const { rule } of judgement.findings.filter(one => one.rule.kind === 'no-bearing')) {
    const reads = program.reads.get(rule.id) ?? []
    for (const other of counted)
      expect(
        reads.every(id => (program.reads.get(other.rule.id) ?? []).includes(id)),
        rule.id,
      ).toBe(false)
  }
}

test('whatever was answered, what is said would change a verdict does, and nothing tells nothing that also counts', () => {
  fc.assert(
    fc.property(walks, ([which, picks]) => {
      const program = programs[which] as Program
      holdsTrue(program, walk(program, picks))
    }),
    { numRuns: 250 },
  )
}, 120_000)

test('the words of all languages say the same: dangers not cleared, nothing measured under a danger, one verdict', () => {
  fc.assert(
    fc.property(walks, ([which, picks]) => {
      const program = programs[which] as Program
      const screen = walk(program, picks)
      const { judgement, explanation } = screen
      for (const language of languages) {
        const say = sayIn(language)
        const lines = pagesOf(language, program, screen)
        const whole = lines.join('\n')
        const near = explanation.unchecked.filter(
          one => one.why === 'undecided' && program.hazards.has(one.question),
        ).length
        const leave = judgement.findings.some(
          ({ rule, carries }) => carries && rule.kind === 'hazard' && rule.act === 'get-away',
        )
        if (near > 0 && judgement.verdict !== 'danger' && !leave)
          expect(whole, language).toContain(say('next.hazard-undecided', { count: near }))
        if (judgement.verdict === 'danger') {
          expect(whole).toContain(say('unchecked.danger'))
          for (const [, { ask, answer }] of inLanguage(program, language).questions)
            if (answer.kind === 'reading')
              for (const line of lines.filter(one => one.includes(ask)))
                expect(line, language).not.toContain(say('verdict.open'))
        }
        for (const other of ['danger', 'ruled-out', 'doubtful', 'open', 'nothing-found'] as const)
          expect(whole.includes(`### ${say(`verdict.${other}`)}`), language).toBe(other === judgement.verdict)
        expect(whole).toContain(say('caution.full'))
      }
    }),
    { numRuns: 60 },
  )
}, 120_000)

const [anyCell] = programs
if (!anyCell) throw new Error('no program')
const at = (answers: Answers): VerdictScreen => {
  const begun = start(
    anyCell,
    { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', cells: 1, family: null, known: answers },
    now,
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  return finished(anyCell, begun.check)
}

test('at 2.2 V nothing says what a better reading would make of it', () => {
  const screen = at({ chemistry: option('nickel-or-cobalt'), voltage: reading(2.2, 0.018) })
  expect(screen.judgement.verdict).toBe('danger')
  expect(screen.explanation.changes().filter(change => change.question === 'voltage')).toEqual([])
  for (const language of languages)
    for (const line of pagesOf(language, anyCell, screen)) expect(line).not.toMatch(/2[.,]25/)
})

test.each([
  [4.28, 'more'],
  [2.48, 'less'],
])('%d V by a basic meter is not cleared, in words', value => {
  const screen = at({ chemistry: option('nickel-or-cobalt'), voltage: reading(value, 0.024) })
  expect(screen.judgement.verdict).toBe('open')
  expect(screen.explanation.unchecked).toContainEqual({ question: 'voltage', why: 'undecided' })
  for (const language of languages)
    expect(pagesOf(language, anyCell, screen).join('\n')).toContain(
      sayIn(language)('next.hazard-undecided', { count: 1 }),
    )
})

test('an undecided stretch is a range, as wide as the guard band, and so is what would change a verdict', () => {
  const u = 0.5
  const screen = at({ format: option('18650'), chemistry: option('nickel-or-cobalt'), mass: reading(34, u) })
  const answers = { format: option('18650'), chemistry: option('nickel-or-cobalt'), mass: reading(34, u) }
  const over = finished(anyCell, { ...screen.check, answers: { ...screen.check.answers, ...answers } })
  expect(over.judgement.verdict).toBe('doubtful')
  const changes = over.explanation.changes().filter(change => change.question === 'mass')
  const undecided = changes.flatMap(change => (change.is === 'undecided' ? [change.range] : []))
  expect(undecided).toContainEqual({ from: 36 - guard * u, to: 36 + guard * u })
  for (const change of changes) expect(change.is).not.toBe('option')
})

test('two measured limits are told apart in what would change a verdict', () => {
  const screen = at({ format: option('18650'), chemistry: option('nickel-or-cobalt') })
  const ranges = screen.explanation
    .changes()
    .flatMap(change => (change.question === 'claimed-capacity' && change.is === 'range' ? [change] : []))
  expect(ranges.map(change => change.verdict)).toEqual(['ruled-out', 'doubtful'])
  expect(ranges.map(change => change.range)).toEqual([{ from: 4999 }, { from: 4200, to: 4999 }])
})
