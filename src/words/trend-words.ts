// Says a release: its days, its numbers, what rises and what goes together in it. Lines without any markup.
import type { ShownPattern } from '../trends/patterns/show-patterns.ts'
import type { Release, Shown, ShownFamily } from '../trends/release/release.ts'
import type { Rise } from '../trends/rises/judge-week.ts'
import { sayWeek } from './dates.ts'
import type { Say } from './say.ts'
import type { TrendNames } from './trend-names.ts'

export const sayTitle = (say: Say, { scope, week }: Release): string =>
  say(scope === 'pool' ? 'trends.title.pool' : 'trends.title', { week: sayWeek(say, week) })

export const sayChecks = (say: Say, { checks, more }: Pick<Shown, 'checks' | 'more'>): string =>
  say('trends.checks', { checks, more })

/** A number with what is new in it, and its share where that means something. */
export function sayCount(say: Say, name: string, { checks, more, share }: Shown): string {
  if (share === undefined) return say('trends.count', { name, checks, more })
  return say('trends.count.share', { name, checks, more, share: share.share, low: share.low, high: share.high })
}

export const sayVerdicts = (say: Say, { verdicts }: Pick<ShownFamily, 'verdicts'>): string[] =>
  verdicts.map(one => sayCount(say, say(`trends.verdict.${one.verdict}`), one))

export const sayRules = (say: Say, names: TrendNames, { family, rules }: ShownFamily): string[] =>
  rules.map(one => sayCount(say, names.rule(family, one.rule), one))

export const sayPlaces = (say: Say, names: TrendNames, { bought }: Pick<ShownFamily, 'bought'>): string[] =>
  bought.map(one => sayCount(say, names.place(one.bought), one))

export function sayRise(say: Say, names: TrendNames, { family, rule, week, standsOut }: Rise): string {
  const of = { family: names.family(family), week: sayWeek(say, week), sure: standsOut ? 'yes' : 'no' }
  return rule === null ? say('trends.rise', of) : say('trends.rise.rule', { ...of, rule: names.rule(family, rule) })
}

/** What rises; a sentence where nothing does, or where it cannot be told yet. */
export function sayRises(say: Say, names: TrendNames, { judged, rises }: Release): string[] {
  if (!judged) return [say('trends.rises.too-early')]
  return rises.length === 0 ? [say('trends.rises.none')] : rises.map(one => sayRise(say, names, one))
}

export const saySpikes = (say: Say, names: TrendNames, { spikes }: Release): string[] =>
  spikes.map(({ family, rule }) =>
    rule === null
      ? say('trends.spike', { family: names.family(family) })
      : say('trends.spike.rule', { family: names.family(family), rule: names.rule(family, rule) }),
  )

export function sayPattern(say: Say, names: TrendNames, pattern: ShownPattern): string {
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' })
  const { family, items, recent, recentOf, earlier, earlierOf, growth } = pattern
  return say('trends.pattern', {
    family: names.family(family),
    items: list.format(items.map(item => names.item(family, item))),
    recent,
    recentOf,
    earlier,
    earlierOf,
    growth: growth ?? 0,
  })
}

/** What goes together; one thing alone is told of among what rises. */
export function sayPatterns(say: Say, names: TrendNames, { patterns }: Release): string[] {
  const together = patterns.filter(({ items }) => items.length > 1)
  return together.length === 0 ? [say('trends.patterns.none')] : together.map(one => sayPattern(say, names, one))
}
