// From groups of like outcomes to the counts a release is made of.

import { isName } from '../trends/names.ts'
import type { Facet, WeekCount } from '../trends/outcome-log.ts'
import { verdictsWorstFirst } from '../trends/read-outcome.ts'
import { isWeek } from '../trends/week.ts'
import { firedIn } from './outcome-row.ts'
import type { OutcomeRow } from './tables.ts'

/** So many outcomes of a week and family that agree in verdict, place and fired rules. */
export type Alike = Pick<OutcomeRow, 'week' | 'family' | 'verdict' | 'bought' | 'fired'> & {
  readonly reporters: number
}

/** Adds the groups up by cell. Rows that are damaged count nowhere; `damaged` says how many they are. */
export function tally(groups: readonly Alike[]): { counts: WeekCount[]; damaged: number } {
  const byKey = new Map<string, { -readonly [key in keyof WeekCount]: WeekCount[key] }>()
  const rulesIn = new Map<string, readonly string[] | undefined>()
  let damaged = 0
  const add = ({ week, family, reporters }: Alike, facet: Facet, value: string) => {
    const key = `${week} ${family} ${facet} ${value}`
    const count = byKey.get(key)
    if (count === undefined) byKey.set(key, { week, family, facet, value, reporters })
    else count.reporters += reporters
  }
  for (const group of groups) {
    if (!rulesIn.has(group.fired)) rulesIn.set(group.fired, firedIn(group.fired))
    const rules = rulesIn.get(group.fired)
    if (rules === undefined || !isSound(group)) {
      damaged += group.reporters
      continue
    }
    add(group, 'all', '')
    add(group, 'verdict', group.verdict)
    add(group, 'bought', group.bought)
    for (const rule of rules) add(group, 'rule', rule)
  }
  return { counts: [...byKey.values()], damaged }
}

const isSound = ({ week, family, verdict, bought }: Alike): boolean =>
  isWeek(week) && isName(family) && isName(bought) && (verdictsWorstFirst as readonly string[]).includes(verdict)
