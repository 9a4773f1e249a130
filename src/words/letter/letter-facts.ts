// The facts a letter to a seller rests on: of each sure finding as little as makes it fire, each fact once, with why it cannot be so.
import type { VerdictScreen } from '../../check/screen.ts'
import { type Answers, cantTell, type QuestionId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { atomsOf, weigh } from '../../engine/conditions.ts'
import { answersRead, type Finding } from '../../engine/judge.ts'
import type { Rule } from '../../engine/pack/pack.ts'
import { accusationIn } from '../accusing.ts'
import type { Say } from '../say.ts'
import { type LetterWords, letterWords, oneLine } from './letter-words.ts'

export type LetterFact = { readonly kind: Rule['kind']; readonly line: string }

/** Findings a letter may name: not those that tell nothing, nor those whose figure is out of date. */
export const sureFindings = ({ judgement }: VerdictScreen): Finding[] =>
  judgement.findings.filter(({ rule, outOfDate }) => rule.kind !== 'no-bearing' && !outOfDate)

const weight = ({ rule }: Finding): number =>
  rule.kind === 'hazard'
    ? 0
    : rule.kind === 'must'
      ? 1
      : { strong: 2, moderate: 3, weak: 4 }['strength' in rule ? rule.strength : 'weak']

/** What speaks most first; a finding all of whose facts were told before is not told again. */
export function letterFacts(say: Say, program: Program, screen: VerdictScreen): LetterFact[] {
  const words = letterWords(say, program)
  const told = new Set<QuestionId>()
  return [...sureFindings(screen)]
    .sort((a, b) => weight(a) - weight(b))
    .flatMap(finding => {
      const enough = enoughToFire(program, screen.check.answers, finding)
      const facts = Object.entries(enough).flatMap(([id, answer]) => {
        const question = program.questions.get(id)
        if (!question || told.has(id) || program.given[id] !== undefined) return []
        const fact = words.fact(question, answer)
        if (fact === undefined) return []
        told.add(id)
        return accusationIn(fact) === undefined ? [withExpected(say, program, words, finding, id, enough, fact)] : []
      })
      if (facts.length === 0) return []
      const reason = words.reason(finding.rule)
      const kept = reason !== undefined && accusationIn(reason) === undefined ? [oneLine(reason, 200)] : []
      return [{ kind: finding.rule.kind, line: [`${facts.join(' · ')}.`, ...kept].join(' ') }]
    })
}

/** What was answered and makes the rule fire: as little of it as is enough, question by question. */
function enoughToFire(program: Program, answers: Answers, finding: Finding): Answers {
  let enough: Answers = answersRead(program, { ...program.given, ...answers }, finding)
  for (const id of Object.keys(enough)) {
    const without = { ...enough, [id]: cantTell }
    if (weigh(finding.rule.when, without, cantTell) === 'true') enough = without
  }
  return enough
}

/** How the model it is sold as is made, where its own pack leaves one answer that speaks against nothing. */
function withExpected(
  say: Say,
  { family, rules, questions }: Program,
  words: LetterWords,
  { rule }: Finding,
  id: QuestionId,
  enough: Answers,
  fact: string,
): string {
  const question = questions.get(id)
  const answer = enough[id]
  if (!family || rule.pack !== family.pack || question?.answer.kind !== 'options' || !answer) return fact
  if (!words.isNamed(question, answer)) return fact
  const against = rules
    .filter(one => one.pack === family.pack && one.kind !== 'no-bearing')
    .flatMap(one => atomsOf(one.when))
    .flatMap(atom => (atom.op === 'is' && atom.question === id ? atom.options : []))
  const [only, ...more] = question.answer.options.filter(option => !against.includes(option.id))
  return only && more.length === 0 ? say('letter.expected', { fact, value: oneLine(only.label, 100) }) : fact
}

/** What was looked at and could not be told, by its name: nothing about danger, and nothing about the writer. */
export function notToTell(say: Say, program: Program, { check }: VerdictScreen): string[] {
  const words = letterWords(say, program)
  return [...program.questions.values()]
    .filter(({ id }) => check.answers[id]?.kind === 'cant-tell' && !program.hazards.has(id))
    .flatMap(question => words.name(question) ?? [])
    .filter((name, i, all) => all.indexOf(name) === i && accusationIn(name) === undefined)
}
