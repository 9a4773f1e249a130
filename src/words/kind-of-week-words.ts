// Says what kind of week a release tells of, as findings are said: what is new, in numbers, how sure, what to do.
import type { FoundBefore, KindOfWeek } from '../trends/kind-of-week.ts'
import type { Rise } from '../trends/rises/judge-week.ts'
import { sayWeek } from './dates.ts'
import { listIn } from './formatters.ts'
import type { Say } from './say.ts'
import type { TrendNames } from './trend-names.ts'

type Labelled = { readonly label: string; readonly text: string }

/** Undefined: it is too early to judge anything. */
export function sayKindOfWeek(say: Say, names: TrendNames, week: KindOfWeek | undefined): Labelled[] {
  const label = say('week.label')
  if (!week) return [{ label, text: say('week.too-early') }]
  const { usual } = week
  const next = { label: say('finding.next.label'), text: say(`week.next.${week.kind}`) }
  return [
    { label, text: [sayWhat(say, names, week), ...sayBeside(say, names, week)].join(' ') },
    ...(usual
      ? [
          {
            label: say('week.numbers.label'),
            text: `${say('week.numbers', {
              checks: usual.checks,
              failed: usual.failed,
              share: usual.share / 100,
              low: usual.usualChecks.low,
              high: usual.usualChecks.high,
              failedLow: usual.usualFailed.low,
              failedHigh: usual.usualFailed.high,
              usualShare: usual.usualShare / 100,
              beside: usual.besideFailed,
            })} ${say('week.numbers.usual')}`,
          },
        ]
      : []),
    { label: say('finding.sure.label', { quiet: 'no' }), text: saySure(say, week) },
    next,
  ]
}

function sayWhat(say: Say, names: TrendNames, { kind, fresh, again, recent, over, alone, usual }: KindOfWeek): string {
  const list = listIn(say.locale, 'conjunction')
  const all = (families: readonly string[]) => list.format(families.map(names.family))
  switch (kind) {
    case 'new':
      return say('week.is.new', { families: all(fresh) })
    case 'again':
      return say('week.is.again', { families: all(again) })
    case 'recent':
      return say('week.is.recent', { families: sayBefore(say, names, recent) })
    case 'alone':
      return say('week.is.alone', { things: list.format(alone.map(one => sayThing(say, names, one))) })
    case 'over':
      return say('week.is.over', { families: sayBefore(say, names, over) })
    case 'ordinary':
      return usual
        ? say('week.is.ordinary', { checks: usual.besideChecks, failed: usual.besideFailed })
        : say('week.is.ordinary.young')
    default:
      return say(`week.is.${kind}`)
  }
}

/** What else there is to say of earlier findings, where something else comes first. */
function sayBeside(say: Say, names: TrendNames, { kind, again, recent, over, usual }: KindOfWeek): string[] {
  const list = listIn(say.locale, 'conjunction')
  return [
    ...(again.length > 0 && kind !== 'again'
      ? [say('week.also.again', { families: list.format(again.map(names.family)) })]
      : []),
    ...(recent.length > 0 && kind !== 'recent'
      ? [say('week.also.recent', { families: sayBefore(say, names, recent) })]
      : []),
    ...(usual?.grown && kind !== 'growth' ? [say('week.also.growth')] : []),
    ...(over.length > 0 && kind !== 'over' ? [say('week.also.over', { families: sayBefore(say, names, over) })] : []),
  ]
}

/** So few stretches that their number would speak for more than chance. */
const few = 3

function saySure(say: Say, { kind, usual, things, weeksWithAlone, weeksBefore }: KindOfWeek): string {
  if (kind === 'new' || kind === 'again') return say('week.sure.finding')
  if (kind === 'alone') return say('week.sure.alone', { weeks: weeksWithAlone, of: weeksBefore })
  if (kind === 'chance') {
    const { asMany: times = 0, stretches: of = 0 } = usual ?? {}
    return say('week.sure.chance', { things, few: times < few ? 'yes' : 'no', times, of })
  }
  return say(kind === 'growth' ? 'week.sure.growth' : 'week.sure.watched')
}

const sayBefore = (say: Say, names: TrendNames, families: readonly FoundBefore[]): string =>
  listIn(say.locale, 'conjunction').format(
    families.map(({ family, last }) =>
      say('week.family.last', { family: names.family(family), week: sayWeek(say, last) }),
    ),
  )

const sayThing = (say: Say, names: TrendNames, { family, rule }: Rise): string =>
  rule === null
    ? names.family(family)
    : say('week.thing.rule', { family: names.family(family), rule: names.rule(family, rule) })
