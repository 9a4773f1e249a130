// Says the things of the domain in a sentence or a word: what is checked, an answer, a finding.
import type { Check } from '../check/check.ts'
import type { Answer } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Finding } from '../engine/judge.ts'
import type { Family, Question, Source } from '../engine/pack/pack.ts'
import type { Change, Range } from '../engine/what-if.ts'
import { bare, plain } from './plain.ts'
import type { Say } from './say.ts'

/** A family in a message. */
export function sayWhat(say: Say, family: Family | undefined): string {
  return family ? say('what.family', { name: plain(family.name), maker: plain(family.maker) }) : say('what.unknown')
}

/** A family in a label, a file or a terminal, where no markup is read. */
export function nameWhat(say: Say, family: Family | undefined): string {
  return family ? say('what.family', { name: bare(family.name), maker: bare(family.maker) }) : say('what.unknown')
}

export function sayAnswer(say: Say, question: Question, answer: Answer): string {
  if (answer.kind === 'cant-tell') return say('check.unsure')
  if (answer.kind === 'option') {
    const options = question.answer.kind === 'options' ? question.answer.options : []
    return options.find(one => one.id === answer.option)?.label ?? answer.option
  }
  const unit = question.answer.kind === 'reading' ? question.answer.unit : ''
  return say('answer.reading', { value: roundFor(answer.value), unit })
}

/** What was asked and answered, and by whom if a moderator did it in the holder's place. */
export function sayAnswered(say: Say, check: Check, id: string, question: string, answer: string): string {
  const said = say('answer.said', { question, answer })
  return check.saidBy?.[id] === undefined ? said : say('answer.by-moderator', { said })
}

/** Three significant digits are all a person needs of a measured value. */
const roundFor = (value: number): number => Number(value.toPrecision(4))

/** A finding's sentence with where it comes from: the source its rule lists first, which is the one its figure rests on. */
export function sayFinding(say: Say, program: Program, finding: Finding): string {
  const { says, source } = finding.rule
  if (finding.outOfDate) return say('finding.out-of-date', { says: withoutStop(says) })
  const [first] = source.flatMap(id => program.sources[finding.rule.pack]?.[id] ?? [])
  return say(`finding.${first?.kind ?? 'memory'}`, { says: withoutStop(says), source: nameOf(first) })
}
/** Who published it and when: what a source found stands in the pack, and in `--json`. */
const nameOf = (source: Source | undefined): string => withoutStop(source?.text.split(/[:;] /)[0] ?? '')
const withoutStop = (sentence: string): string => sentence.replace(/\.$/, '')

/** What one changed answer, or a range of a measured value, would make of the verdict. */
export function sayChange(say: Say, program: Program, change: Change): string {
  const asked = program.questions.get(change.question)
  const question = asked?.ask ?? change.question
  if (change.is === 'undecided') return say('change.undecided', { question, range: sayRange(say, asked, change.range) })
  const answer =
    change.is === 'range' ? sayRange(say, asked, change.range) : asked ? sayAnswer(say, asked, change.answer) : ''
  const values = { question, answer, verdict: say(`verdict.${change.verdict}`) }
  return say(change.correction ? 'change.correction' : 'change.more', values)
}

/** A range of values in words, such as "between 2.41 and 2.59 V". */
function sayRange(say: Say, question: Question | undefined, { from, to }: Range): string {
  const unit = question?.answer.kind === 'reading' ? question.answer.unit : ''
  if (from === undefined) return say('answer.range.under', { to: roundFor(to ?? 0), unit })
  if (to === undefined) return say('answer.range.over', { from: roundFor(from), unit })
  return say('answer.range.between', { from: roundFor(from), to: roundFor(to), unit })
}

/** The day until which a check is kept, as Discord shows it in the reader's own calendar. */
export const sayExpiry = (check: Check): string => sayDate(check.expiresAt)
/** A day, from ms since 1970, as Discord shows it in the reader's own calendar. */
export const sayDate = (at: number): string => `<t:${Math.floor(at / 1000)}:D>`
