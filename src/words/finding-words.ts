// Says a finding so that it is understood within a minute: what is new, how sure and since when, how many, what noise it could be, what to do.

import type { RuleId } from '../engine/answers.ts'
import type { Finding, Found } from '../trends/findings/finding.ts'
import { rulesOf } from '../trends/findings/parts.ts'
import { foundFirst, thingOf } from '../trends/findings/past.ts'
import { minimumReporters } from '../trends/fives.ts'
import { type Item, isRuleItem } from '../trends/outcome.ts'
import { recentWeeks, type ShownPattern } from '../trends/patterns/show-patterns.ts'
import { type Week, weeksFrom } from '../trends/week.ts'
import { sayWeek } from './dates.ts'
import { listIn } from './formatters.ts'
import type { Say } from './say.ts'
import { shorten } from './shorten.ts'
import type { TrendNames } from './trend-names.ts'

/** `week`: the one that runs. What has not come again for long is nothing new any more. */
export const sayFindingTitle = (say: Say, names: TrendNames, finding: Finding, week: Week): string =>
  say('finding.title', { quiet: isQuiet(finding, week) ? 'yes' : 'no', family: nameThing(say, names, finding) })

/** Two lines of a title say which reason it is. */
const longestReason = 52

/** The family, and the reason that most of it names: two findings of one family are told apart by it. */
export function nameThing(say: Say, names: TrendNames, finding: Finding): string {
  const { rule } = thingOf(finding)
  const family = names.family(finding.family)
  return rule === null ? family : say('week.thing.rule', { family, rule: shortReason(names, finding, rule) })
}

const shortReason = (names: TrendNames, { family }: Finding, rule: RuleId): string =>
  shorten(names.rule(family, rule), longestReason)

/** The week that runs has no release yet. */
const isQuiet = ({ seen }: Finding, week: Week): boolean => weeksFrom(seen, week) > recentWeeks + 1

/** Where it stands, and that nothing came after it for a while where that is so. `week`: the one that runs. */
export function sayStanding(say: Say, finding: Finding, week: Week): string {
  const { state, until, seen } = finding
  const stands = state === 'watching' ? { until: until === null ? '' : sayWeek(say, until) } : undefined
  return [
    say(`finding.state.${state}`, stands),
    ...(isQuiet(finding, week) ? [say('finding.quiet', { seen: sayWeek(say, seen) })] : []),
  ].join(' ')
}

type Of<Is extends Found['is']> = Extract<Found, { is: Is }>
const risesOf = ({ parts }: Finding) => parts.filter((one): one is Of<'rise'> => one.is === 'rise').map(one => one.rise)
/** What comes together with something else, which one item alone does not. */
const isTogether = ({ items }: ShownPattern): boolean => items.length > 1
const patternsOf = ({ parts }: Finding): ShownPattern[] =>
  parts.filter((one): one is Of<'pattern'> => one.is === 'pattern').map(one => one.pattern)

/** What members are told to hold their cells against: the reasons that are given more often, which say how a real one is made. */
export function sayCompare(say: Say, names: TrendNames, finding: Finding): string {
  const faults = [...new Set(finding.parts.flatMap(rulesOf))].map(rule => names.rule(finding.family, rule))
  const family = names.family(finding.family)
  if (faults.length === 0) return say('warning.draft.whole', { family })
  return say('warning.draft.compare', { family, reasons: faults.join(' ') })
}

export const sayNewsLabel = (say: Say, finding: Finding, week: Week): string =>
  say('finding.new.label', { quiet: isQuiet(finding, week) ? 'yes' : 'no' })

/** What is new within `most` characters: whole reasons give way, and then their ends; where such cells were bought stays. */
export function sayNews(say: Say, names: TrendNames, finding: Finding, most = Number.POSITIVE_INFINITY): string {
  const count = new Set(finding.parts.flatMap(rulesOf)).size
  const fewer = Array.from({ length: count }, (_, i) => count - i)
  const ways: Fitting[] = [
    {},
    ...fewer.map(reasons => ({ reasons, placeAlone: true })),
    ...fewer.map(reasons => ({ reasons, placeAlone: true, short: true })),
  ]
  const said = ways.values().map(way => newsOf(say, names, finding, way).join(' '))
  let last = ''
  for (const news of said) {
    if (news.length <= most) return news
    last = news
  }
  return shorten(last, most)
}

type Fitting = { readonly reasons?: number; readonly placeAlone?: boolean; readonly short?: boolean }

/** The family as a whole, the reasons by name, and what comes together. */
function newsOf(say: Say, names: TrendNames, finding: Finding, { reasons, placeAlone, short }: Fitting): string[] {
  const list = listIn(say.locale, 'conjunction')
  const { family } = finding
  const faults = [...new Set(finding.parts.flatMap(rulesOf))]
  const together = patternsOf(finding).filter(isTogether)
  const meeting = new Set(
    together
      .filter(({ items }) => items.filter(isRuleItem).length > 1)
      .flatMap(pattern => rulesOf({ is: 'pattern', pattern })),
  )
  const others = [...new Set(together.flatMap(({ items }) => items.filter(item => !isRuleItem(item))))]
  const beside = [...others.filter(isPlace), ...(placeAlone ? [] : others.filter(item => !isPlace(item)))]
  const named = faults
    .slice(0, reasons)
    .map(rule => (short ? shortReason(names, finding, rule) : withoutStop(names.rule(family, rule))))
  const left = faults.length - named.length
  const whole = risesOf(finding).some(rise => rise.rule === null) || faults.length === 0
  return [
    ...(whole ? [say('finding.new.whole')] : []),
    ...(faults.length > 0
      ? [
          say('finding.new.faults', {
            count: faults.length,
            faults: left > 0 ? `${named.join(', ')} ${say('list.rest', { count: left })}` : list.format(named),
          }),
        ]
      : []),
    ...(meeting.size > 0
      ? [say('finding.new.together', { all: faults.every(rule => meeting.has(rule)) ? 'yes' : 'no' })]
      : []),
    ...(beside.length > 0
      ? [say('finding.new.with', { items: list.format(beside.map(item => names.item(family, item))) })]
      : []),
  ]
}

const isPlace = (item: Item): boolean => item.startsWith('bought:')

/** A quoted sentence in the middle of ours. */
const withoutStop = (quoted: string): string => quoted.replace(/\.(?=[^\p{L}\p{N}]?$)/u, '')

/** The five things a moderator needs, in their order, each with what it answers, within `most` characters. `week`: the one that runs. */
export function sayFinding(
  say: Say,
  names: TrendNames,
  finding: Finding,
  week: Week,
  most = Number.POSITIVE_INFINITY,
): { label: string; text: string }[] {
  const quiet = isQuiet(finding, week)
  const next = quiet && finding.state === 'open' ? 'finding.next.quiet' : (`finding.next.${finding.state}` as const)
  const grade = gradeOf(finding)
  const others = [
    {
      label: say('finding.sure.label', { quiet: quiet ? 'yes' : 'no' }),
      text: `${say(`finding.sure.${grade}`)} ${saySince(say, finding)}`,
    },
    { label: say('finding.many.label'), text: sayMany(say, names, finding) },
    {
      label: say('finding.noise.label'),
      text: `${say(`finding.noise.${grade}`)} ${say('finding.noise.else')}`,
    },
    { label: say('finding.next.label'), text: say(next) },
  ]
  const label = sayNewsLabel(say, finding, week)
  const room = others.reduce((left, one) => left - one.label.length - one.text.length - 6, most - label.length - 6)
  return [{ label, text: sayNews(say, names, finding, room) }, ...others]
}

/** How sure it is: what it would take to be chance is said by the same grade. */
function gradeOf(finding: Finding): 'both' | 'rise' | 'pattern' | 'little' {
  const outstanding = risesOf(finding).some(rise => rise.standsOut)
  const pattern = patternsOf(finding).some(isTogether)
  if (outstanding) return pattern ? 'both' : 'rise'
  return pattern ? 'pattern' : 'little'
}

/** When it was first and last found: one sentence. */
export function saySince(say: Say, finding: Finding): string {
  const from = foundFirst(finding)
  return finding.seen > from
    ? say('finding.since.again', { from: sayWeek(say, from), last: sayWeek(say, finding.seen) })
    : say('finding.since', { from: sayWeek(say, from) })
}

/**
 * The numbers of the pattern with most checks, each with the next multiple of five above it: that is what a number rounded down to
 * fives says, and nothing more. Where fewer than five people are sure, nothing above is known.
 */
function sayMany(say: Say, names: TrendNames, finding: Finding): string {
  const [most] = patternsOf(finding).sort((a, b) => b.recent - a.recent)
  if (!most) return say('finding.many.people')
  const { items, recent, recentOf, earlier, earlierOf } = most
  const named = items.map(item => shorten(names.item(finding.family, item), longestReason))
  return say('finding.many.of', {
    last: sayWeek(say, finding.seen),
    items: listIn(say.locale, 'conjunction').format(named),
    recent,
    below: recent + minimumReporters,
    of: recentOf,
    ofBelow: recentOf + minimumReporters,
    earlier,
    earlierBelow: earlier + minimumReporters,
    earlierOf,
    earlierOfBelow: earlierOf + minimumReporters,
  })
}
