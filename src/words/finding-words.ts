// Says a finding so that it is understood within a minute: what is new, how sure and since when, how many, what noise it could be, what to do.

import type { Finding, Found } from '../trends/findings/finding.ts'
import { rulesOf } from '../trends/findings/stories.ts'
import { minimumReporters } from '../trends/fives.ts'
import { isRuleItem } from '../trends/outcome.ts'
import { recentWeeks, type ShownPattern } from '../trends/patterns/show-patterns.ts'
import { type Week, weeksFrom } from '../trends/week.ts'
import { sayWeek } from './dates.ts'
import type { Say } from './say.ts'
import type { TrendNames } from './trend-names.ts'

/** `week`: the one that runs. What has not come again for long is nothing new any more. */
export const sayFindingTitle = (say: Say, names: TrendNames, finding: Finding, week: Week): string =>
  say('finding.title', { quiet: isQuiet(finding, week) ? 'yes' : 'no', family: names.family(finding.family) })

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

/** What is new, in sentences: the family as a whole, the faults by name, and what comes together. */
export function sayNews(say: Say, names: TrendNames, finding: Finding): string[] {
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' })
  const { family } = finding
  const faults = [...new Set(finding.parts.flatMap(rulesOf))]
  const together = patternsOf(finding).filter(isTogether)
  const meeting = new Set(
    together
      .filter(({ items }) => items.filter(isRuleItem).length > 1)
      .flatMap(pattern => rulesOf({ is: 'pattern', pattern })),
  )
  const beside = [...new Set(together.flatMap(({ items }) => items.filter(item => !isRuleItem(item))))]
  const whole = risesOf(finding).some(rise => rise.rule === null) || faults.length === 0
  return [
    ...(whole ? [say('finding.new.whole')] : []),
    ...(faults.length > 0
      ? [
          say('finding.new.faults', {
            count: faults.length,
            faults: list.format(faults.map(rule => withoutStop(names.rule(family, rule)))),
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

/** A quoted sentence in the middle of ours. */
const withoutStop = (quoted: string): string => quoted.replace(/\.(?=[^\p{L}\p{N}]?$)/u, '')

/** The five things a moderator needs, in their order, each with what it answers. `week`: the one that runs. */
export function sayFinding(
  say: Say,
  names: TrendNames,
  finding: Finding,
  week: Week,
): { label: string; text: string }[] {
  const quiet = isQuiet(finding, week)
  const next = quiet && finding.state === 'open' ? 'finding.next.quiet' : (`finding.next.${finding.state}` as const)
  return [
    { label: say('finding.new.label', { quiet: quiet ? 'yes' : 'no' }), text: sayNews(say, names, finding).join(' ') },
    {
      label: say('finding.sure.label', { quiet: quiet ? 'yes' : 'no' }),
      text: `${saySure(say, finding)} ${saySince(say, finding)}`,
    },
    { label: say('finding.many.label'), text: sayMany(say, finding) },
    { label: say('finding.noise.label'), text: sayNoise(say, finding) },
    { label: say('finding.next.label'), text: say(next) },
  ]
}

function saySure(say: Say, finding: Finding): string {
  const outstanding = risesOf(finding).some(rise => rise.standsOut)
  const pattern = patternsOf(finding).some(isTogether)
  if (outstanding && pattern) return say('finding.sure.both')
  if (outstanding) return say('finding.sure.rise')
  return say(pattern ? 'finding.sure.pattern' : 'finding.sure.little')
}

/** When it was first and last found: one sentence. */
export function saySince(say: Say, finding: Finding): string {
  const from = [finding.week, ...risesOf(finding).map(rise => rise.week)].sort()[0] ?? finding.week
  return finding.seen > from
    ? say('finding.since.again', { from: sayWeek(say, from), last: sayWeek(say, finding.seen) })
    : say('finding.since', { from: sayWeek(say, from) })
}

/**
 * The numbers of the pattern with most checks, each with the next multiple of five above it: that is what a number rounded down to
 * fives says, and nothing more. Where fewer than five people are sure, nothing above is known.
 */
function sayMany(say: Say, finding: Finding): string {
  const [most] = patternsOf(finding).sort((a, b) => b.recent - a.recent)
  if (!most) return say('finding.many.people')
  const { recent, recentOf, earlier } = most
  return say('finding.many.of', {
    last: sayWeek(say, finding.seen),
    recent,
    below: recent + minimumReporters,
    of: recentOf,
    ofBelow: recentOf + minimumReporters,
    earlier,
    earlierBelow: earlier + minimumReporters,
  })
}

function sayNoise(say: Say, finding: Finding): string {
  return [
    say(patternsOf(finding).some(isTogether) ? 'finding.noise.pattern' : 'finding.noise.rise'),
    say('finding.noise.else'),
  ].join(' ')
}
