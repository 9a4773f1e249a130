// Drafts a letter to the seller out of what a check found: only what was seen or measured, and what is asked for.
//
// It says of a finding what the person saw, never what the rule makes of it: the letter is theirs, and a rule's words are for
// whoever holds the cell. A pack's wording that accuses somebody is left out. What only the person knows stands in brackets and is kept nowhere.

import type { VerdictScreen } from '../../../check/screen.ts'
import { type Answers, cantTell } from '../../../engine/answers.ts'
import type { Program } from '../../../engine/compile.ts'
import { weigh } from '../../../engine/conditions.ts'
import { answersRead, type Finding } from '../../../engine/judge.ts'
import type { Rule } from '../../../engine/pack/pack.ts'
import { accusationIn } from '../../../words/accusing.ts'
import type { Key } from '../../../words/catalogue.ts'
import { nameWhat, sayAnswer } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { cut } from '../../message/parts.ts'

/** So long may a letter be: it has to stand in one message, below the steps that come first. */
export const longestLetter = 2600
/** More questions that were left open than this help no seller. */
const mostOpen = 4

/** What is found of these kinds is sure: the rule fired on answers that were given. */
const groups: readonly { readonly kind: Rule['kind']; readonly says: Key }[] = [
  { kind: 'hazard', says: 'letter.unsafe' },
  { kind: 'must', says: 'letter.mismatch' },
  { kind: 'sign', says: 'letter.unverified' },
]

/** Findings a letter may name: not those that tell nothing, nor those whose figure is out of date. */
export const sureFindings = ({ judgement }: VerdictScreen): Finding[] =>
  judgement.findings.filter(({ rule, outOfDate }) => rule.kind !== 'no-bearing' && !outOfDate)

/** Whether there is anything to write about: not before anything was looked at, nor where every check was met. */
export const hasLetter = ({ judgement, check }: VerdictScreen): boolean =>
  judgement.verdict !== 'nothing-found' && check.trail.length > 0

/** The draft in the language of `say`; `program` in that language, too. At most `longestLetter` characters. */
export function writeLetter(say: Say, program: Program, screen: VerdictScreen): string {
  const named = new Set<string>()
  const lists = groups.map(({ kind, says }) => ({
    title: say(says),
    items: sureFindings(screen)
      .filter(({ rule }) => rule.kind === kind)
      .map(finding => sayFacts(say, program, screen.check.answers, finding))
      .filter(fact => !named.has(fact) && named.add(fact) && accusationIn(fact) === undefined),
  }))
  const open = leftOpen(say, program, screen)
  const kept = lists.map(list => list.items.length)
  const draft = () => compose(say, program, screen, [...lists.map((list, i) => block(say, list, kept[i])), open])
  for (let i = kept.length - 1; i >= 0; i--)
    while ((kept[i] ?? 0) > 0 && draft().length > longestLetter) kept[i] = (kept[i] ?? 0) - 1
  return draft()
}

function compose(say: Say, program: Program, screen: VerdictScreen, found: readonly string[]): string {
  const { check, judgement } = screen
  const what = program.family ? oneLine(nameWhat(say, program.family), 120) : ''
  return [
    say('letter.subject'),
    say('letter.greeting'),
    [
      say('letter.order', { cells: check.cells, sold: what === '' ? 'unknown' : 'known', what }),
      ...(check.cells > 1 ? [say('letter.worst')] : []),
    ].join(' '),
    ...(found.slice(0, -1).join('') === '' ? [say('letter.unverified.bare')] : []),
    ...found,
    say(judgement.verdict === 'open' ? 'letter.papers-first' : 'letter.refund'),
    say('letter.no-return'),
    ...(judgement.verdict === 'open' ? [] : [say('letter.papers')]),
    say('letter.proof'),
    say('letter.close'),
  ]
    .filter(part => part !== '')
    .join('\n\n')
}

function block(say: Say, list: { readonly title: string; readonly items: readonly string[] }, kept = 0): string {
  if (list.items.length === 0) return ''
  const left = list.items.length - kept
  const lines = [list.title, ...list.items.slice(0, kept).map(item => `- ${item}`)]
  return [...lines, ...(left > 0 ? [say('list.rest', { count: left })] : [])].join('\n')
}

/** What was answered and makes the rule fire: as little of it as is enough, question by question. */
function sayFacts(say: Say, program: Program, answers: Answers, finding: Finding): string {
  let enough: Answers = answersRead(program, { ...program.given, ...answers }, finding)
  for (const id of Object.keys(enough)) {
    const without = { ...enough, [id]: cantTell }
    if (weigh(finding.rule.when, without, cantTell) === 'true') enough = without
  }
  const said = Object.entries(enough).flatMap(([id, answer]) => {
    const question = program.questions.get(id)
    if (!question || answer.kind === 'cant-tell') return []
    return [
      say('answer.said', {
        question: oneLine(question.ask, 300),
        answer: oneLine(sayAnswer(say, question, answer), 100),
      }),
    ]
  })
  return said.join(' · ')
}

function leftOpen(say: Say, program: Program, { judgement, explanation }: VerdictScreen): string {
  if (judgement.verdict === 'danger') return say('letter.open.danger')
  const asks = explanation.unchecked
    .map(({ question }) => oneLine(program.questions.get(question)?.ask ?? question, 160))
    .filter(ask => accusationIn(ask) === undefined)
  return block(say, { title: say('letter.open'), items: asks }, Math.min(asks.length, mostOpen))
}

/** Text of a pack as one line of a letter: no line of its own making, nothing unseen in it. */
const oneLine = (text: string, most: number): string =>
  cut(
    text
      .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
      .replace(/\p{Cf}/gu, '')
      .trim(),
    most,
  )
