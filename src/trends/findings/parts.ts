// What the parts of a finding name: failed checks, and the week of the first.
import type { RuleId } from '../../engine/answers.ts'
import { isRuleItem } from '../outcome.ts'
import type { Week } from '../week.ts'
import type { Found } from './finding.ts'

/** Later weeks put a newer rise in the place of an earlier one, so when the first was is kept from the beginning. */
export const firstWeek = (parts: readonly Found[], week: Week): Week =>
  parts.reduce((first, part) => (part.is === 'rise' && part.rise.week < first ? part.rise.week : first), week)

/** The failed checks that a part names. */
export function rulesOf(part: Found): RuleId[] {
  if (part.is === 'rise') return part.rise.rule === null ? [] : [part.rise.rule]
  return part.pattern.items.filter(isRuleItem).map(item => item.slice('rule:'.length))
}
