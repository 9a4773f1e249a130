// Drafts a letter to the seller out of what a check found: what was claimed, what is so, why that cannot be, and what is asked for.
//
// It says what was seen or measured, never what the rule makes of it: the letter is the person's, and a rule's words are for whoever
// holds the cell. A pack's wording that accuses somebody is left out. What only the person knows stands in brackets and is kept nowhere.

import type { VerdictScreen } from '../../check/screen.ts'
import type { Program } from '../../engine/compile.ts'
import type { Rule } from '../../engine/pack/pack.ts'
import type { Key } from '../catalogue.ts'
import { nameWhat } from '../describe.ts'
import type { Say } from '../say.ts'
import { letterFacts, notToTell } from './letter-facts.ts'
import { oneLine } from './letter-words.ts'

/** So long may a letter be: it has to stand in one message, below the steps that come first. */
export const longestLetter = 2400
/** More things that could not be told than this help no seller. */
const mostNamed = 6

/** What is found of these kinds is sure: the rule fired on answers that were given. */
const groups: readonly { readonly kind: Rule['kind']; readonly says: Key }[] = [
  { kind: 'hazard', says: 'letter.unsafe' },
  { kind: 'must', says: 'letter.mismatch' },
  { kind: 'sign', says: 'letter.unverified' },
]

/** Whether there is anything to write about: not before anything was looked at, nor where every check was met. */
export const hasLetter = ({ judgement, check }: VerdictScreen): boolean =>
  judgement.verdict !== 'nothing-found' && check.trail.length > 0

/** The draft in the language of `say`; `program` in that language, too. At most `longestLetter` characters. */
export function writeLetter(say: Say, program: Program, screen: VerdictScreen): string {
  const facts = letterFacts(say, program, screen)
  const lists = groups.map(({ kind, says }) => ({
    title: say(says),
    items: facts.filter(fact => fact.kind === kind).map(fact => fact.line),
  }))
  const kept = lists.map(list => list.items.length)
  const blocks = () => lists.map((list, i) => block(say, list, kept[i]))
  const draft = () => compose(say, program, screen, blocks())
  for (let i = kept.length - 1; i >= 0; i--)
    while ((kept[i] ?? 0) > 0 && draft().length > longestLetter) kept[i] = (kept[i] ?? 0) - 1
  return draft()
}

function compose(say: Say, program: Program, screen: VerdictScreen, found: readonly string[]): string {
  const { check, judgement } = screen
  const what = program.family ? oneLine(nameWhat(say, program.family), 120) : ''
  const nothing = found.join('') === ''
  // Nothing that could be told to a seller, or nothing that decides: papers are asked for before money.
  const papersFirst = nothing || judgement.verdict === 'open'
  return [
    say('letter.subject'),
    say('letter.greeting'),
    [
      say('letter.order', { cells: check.cells, sold: what === '' ? 'unknown' : 'known', what }),
      ...(check.cells > 1 ? [say('letter.worst')] : []),
    ].join(' '),
    ...(nothing ? [say('letter.unverified.bare')] : []),
    ...found,
    judgement.verdict === 'open' ? sayNotToTell(say, program, screen) : '',
    say(papersFirst ? 'letter.papers-first' : 'letter.refund'),
    say('letter.no-return'),
    ...(papersFirst ? [] : [say('letter.papers')]),
    say('letter.proof'),
    say('letter.close'),
  ]
    .filter(part => part !== '')
    .join('\n\n')
}

function sayNotToTell(say: Say, program: Program, screen: VerdictScreen): string {
  const names = notToTell(say, program, screen).slice(0, mostNamed)
  return names.length === 0 ? '' : say('letter.open', { list: names.join('; ') })
}

function block(say: Say, list: { readonly title: string; readonly items: readonly string[] }, kept = 0): string {
  if (list.items.length === 0) return ''
  const left = list.items.length - kept
  const lines = [list.title, ...list.items.slice(0, kept).map(item => `- ${item}`)]
  return [...lines, ...(left > 0 ? [say('list.rest', { count: left })] : [])].join('\n')
}
