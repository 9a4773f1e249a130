// Finished checks to write letters from: of the shipped packs, and of a pack with wording of its own.
import { ComponentType } from 'discord.js'
import type { Check } from '../../src/check/check.ts'
import { type Screen, screenOf } from '../../src/check/screen.ts'
import { start } from '../../src/check/step.ts'
import type { ShownMessage } from '../../src/discord/message/parts.ts'
import type { Answer, Answers } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { writeLetter } from '../../src/words/letter/draft-letter.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedPrograms } from '../rules/shipped-programs.ts'

export type VerdictScreen = Extract<Screen, { kind: 'verdict' }>
const now = Date.UTC(2026, 10, 27)

export function finished(program: Program, answers: Answers, cells = 1): VerdictScreen {
  const who = { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', family: program.family?.id ?? null } as const
  const begun = start(program, { ...who, cells }, now)
  if (!begun.ok) throw new Error(begun.refusal.code)
  const all = { ...begun.check.answers, ...answers }
  const check: Check = { ...begun.check, answers: all, trail: Object.keys(answers), phase: { is: 'done' } }
  const screen = screenOf(program, check)
  if (screen.kind !== 'verdict') throw new Error(screen.kind)
  return screen
}
export const letterOf = (language: string, program: Program, screen: VerdictScreen): string =>
  writeLetter(sayIn(language), inLanguage(program, language), screen)
export const wordsOf = ({ components }: ShownMessage): string =>
  components.flatMap(part => (part.type === ComponentType.TextDisplay ? [part.content] : [])).join('\n')

export const programs = shippedPrograms()
export const heron = programs.find(program => program.family?.id === 'brindlewick-heron') as Program
export const pick = (option: string): Answer => ({ kind: 'option', option })

/** A pack with two questions of this wording and rules of these conditions. */
export function odd(rules: readonly { id: string; when: object }[], ask = 'Ask', label = 'Bad', name = 'F'): Program {
  const questions = [0, 1].map(i => ({
    id: `q${i}`,
    ask: `ask ${i}?`,
    look: 'x',
    care: 'look',
    effort: 1,
    options: [
      { id: 'good', label: 'Good' },
      { id: 'bad', label: 'Bad' },
    ],
  }))
  const read = readPack({
    pack: 'odd',
    version: '1.0.0',
    written: '2026-11-27',
    title: 'x',
    about: 'x',
    sources: { s: { kind: 'memory', text: 'x' } },
    questions,
    rules: [
      ...rules.map(rule => ({ kind: 'must', means: 'counterfeit', says: 'x', source: ['s'], ...rule })),
      { id: 'last', kind: 'sign', strength: 'weak', when: { q1: 'bad' }, says: 'x', source: ['s'] },
    ],
    families: [{ id: 'f', name, maker: 'M', given: {}, enough: ['last'] }],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  // The checker refuses some of such texts; whatever comes past it must stay text all the same.
  const asked = read.pack.questions.map((question, i) => ({
    ...question,
    ask: `${ask} ${i}?`,
    answer:
      question.answer.kind === 'options'
        ? {
            ...question.answer,
            options: question.answer.options.map(one => (one.id === 'bad' ? { ...one, label } : one)),
          }
        : question.answer,
  }))
  const compiled = compile([{ ...read.pack, questions: asked }], '2026-11-27', 'f')
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}
