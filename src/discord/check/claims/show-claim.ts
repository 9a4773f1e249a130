// Shows what a text claims and what weighs how much in it, the impossible first, with a way to check the cell.

import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { factsOfClaim } from '../../../check/known/facts-of-claim.ts'
import { startWithFacts } from '../../../custom-ids/facts-codec.ts'
import type { Program } from '../../../engine/compile.ts'
import { type Fact, longestClaim, mostFacts } from '../../../readings/claims/facts.ts'
import { type ClaimFinding, claimWeights } from '../../../readings/claims/finding.ts'
import type { WeighedClaims } from '../../../readings/weigh-claims.ts'
import { sayClaimFinding, sayFact, sayNothingFound } from '../../../words/claim-words.ts'
import { sayDay } from '../../../words/dates.ts'
import { nameWhat } from '../../../words/describe.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { fitLists } from '../../message/fit-text.ts'
import { message, pressButton, rows, type ShownMessage, small, text, textBudget } from '../../message/parts.ts'
import { button } from '../show/check-buttons.ts'

export type WeighedClaim = WeighedClaims & {
  readonly text: string
  readonly facts: readonly Fact[]
}

/** The person's open check that the facts can be added to. */
export type OpenCheck = { readonly check: Check; readonly program: Program }

const quoted = 300
/** How much of what was read is shown; the rest is counted. */
const mostShown = 12

export function showClaim(say: Say, claim: WeighedClaim, open: OpenCheck | undefined): ShownMessage {
  const { facts, findings } = claim
  const head = [`### ${say('claim.title')}`, `> ${plain(cutLine(claim.text))}`]
  if (claim.text.length > longestClaim) head.push(`-# ${say('claim.cut', { most: longestClaim })}`)
  if (facts.length >= mostFacts) head.push(`-# ${say('claim.many', { most: mostFacts })}`)
  const caution = small(say('caution.line'))
  if (facts.length === 0) return message([text([...head, say('claim.none')].join('\n')), caution])
  const rest = (count: number) => say('list.rest', { count })
  const weighed = claimWeights.map(weight => ({
    title: say(`claim.${weight}`),
    items: findings.filter(finding => finding.weight === weight).map(finding => sayClaimFinding(say, finding)),
    rest,
  }))
  const read = facts.slice(0, mostShown).map(fact => sayFact(say, fact, claim.text))
  const wasRead = { title: say('claim.read'), items: read, rest, unsaid: facts.length - read.length }
  const foot = sourcesOf(say, findings)
  const nothing = sayNothingFound(say, claim)
  const fixed = [...head, ...nothing, ...foot].join('\n').length + say('caution.line').length + 40
  const lists = fitLists([...weighed, wasRead], fixed, textBudget)
  return message([
    text(head.join('\n')),
    ...[...lists, ...nothing].map(one => text(one)),
    ...rows(buttonsOf(say, facts, open), 1),
    ...(foot.length > 0 ? [small(foot.join('\n'))] : []),
    caution,
  ])
}

const cutLine = (typed: string): string => {
  const line = typed.replace(/\s+/g, ' ').trim()
  return line.length > quoted ? `${line.slice(0, quoted - 1)}…` : line
}

function sourcesOf(say: Say, findings: readonly ClaimFinding[]): string[] {
  const dates = findings.flatMap(finding => ('validUntil' in finding ? [finding.validUntil] : []))
  if (dates.length === 0) return []
  const date = dates
    .filter(one => one !== null)
    .toSorted()
    .at(0)
  if (date === undefined) return [say('weighed.sources', { date: 'none' })]
  return [say('weighed.sources', { date: sayDay(say, Date.parse(date)) })]
}

function buttonsOf(say: Say, facts: readonly Fact[], open: OpenCheck | undefined): APIButtonComponent[] {
  const known = factsOfClaim(facts)
  if (Object.keys(known).length === 0) return []
  const begin = pressButton(startWithFacts(known), say('claim.start'), ButtonStyle.Primary)
  if (!open) return [begin]
  const what = nameWhat(say, open.program.family)
  return [begin, button(open.check, { is: 'know', facts: known }, say('claim.add', { what }))]
}
