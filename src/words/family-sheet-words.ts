// Says what stands on the printed page of a family: what is checked, what tells nothing, and the false ones that were seen.

import type { Pack } from '../engine/pack/pack.ts'
import type { Facts, Trait } from '../families/facts/facts-schema.ts'
import { inCheckOrder } from '../families/features.ts'
import { sayWeek } from './dates.ts'
import { sayFigures, sayGuard, sayRewrap, strongest } from './family-facts-words.ts'
import { sayFeature, sayOptions } from './family-words.ts'
import { bare } from './plain.ts'
import type { Say } from './say.ts'

type Lines = { readonly title: string; readonly lines: readonly string[] }

/** Parts that have nothing to say are left out. On paper there is no markup. */
export function saySheet(say: Say, base: Pack, facts: Facts): Lines[] {
  const order = inCheckOrder(base, Object.keys(facts.traits))
  const traits = order.map(feature => [feature, facts.traits[feature] as Trait] as const)
  const checked = traits
    .filter(([, trait]) => trait.against.some(one => !one.together))
    .map(([feature, trait]) =>
      say('families.sheet.line', {
        feature: sayFeature(say, base, feature),
        made: trait.made.length > 0 ? sayOptions(say, base, feature, trait.made) : say('families.made-open'),
        tells: say(`families.tells.${strongest(trait)}`),
      }),
    )
  const nothing = traits.flatMap(([feature, { remarks }]) => {
    const options = remarks.filter(one => !one.together).flatMap(one => one.options)
    if (options.length === 0) return []
    const said = { feature: sayFeature(say, base, feature), options: sayOptions(say, base, feature, options) }
    return [say('families.sheet.remark', said)]
  })
  const fakes = facts.fakes
    .filter(one => one.state === 'seen')
    .map(({ title, since, look }) => {
      const shown = Object.entries(look).map(
        ([feature, options]) => `${sayFeature(say, base, feature)}: ${sayOptions(say, base, feature, options)}`,
      )
      return say('families.sheet.fake', { title: bare(title), since: sayWeek(say, since), look: shown.join(' · ') })
    })
  const figures = [...sayFigures(say, facts), ...sayGuard(say, facts)].map(one => one.replaceAll('**', ''))
  return [
    { title: say('families.sheet.checked'), lines: [...checked, ...sayRewrap(say, base, facts), ...figures] },
    { title: say('families.sheet.nothing'), lines: nothing },
    { title: say('families.sheet.fakes'), lines: fakes },
  ].filter(one => one.lines.length > 0)
}
