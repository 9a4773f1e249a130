// The page of one feature: what a good one shows, how strongly anything else tells, and which feature comes next.

import { ButtonStyle } from 'discord.js'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Construction, TellingStrength, Trait } from '../../../families/facts/facts-schema.ts'
import { featuresOf, ofMetal } from '../../../families/features.ts'
import { mayTell, standingOf } from '../../../families/strength/earned.ts'
import { sayStrengths } from '../../../words/family-facts-words.ts'
import { sayFeature, sayOption } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { cut, gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { WorkingOn } from '../working-on.ts'
import { tryButton } from './family-buttons.ts'
import { featureMenu, idFor, letterOf, menu, openButtons, sayableIn } from './menus.ts'
import { begunOf } from './say-origin.ts'
import { noted, type PageExtras } from './show-page.ts'

/** Up to this many options are buttons, a row each, as in a check; more become a menu. */
const mostButtons = 6

type Lettered = { readonly value: string; readonly label: string }

/** Where nothing is said yet, one press says it; afterwards several can be ticked, and the next feature is chosen below. */
export function showFeature(
  say: Say,
  base: Pack,
  constructions: readonly Construction[],
  work: WorkingOn,
  featureId: string,
  { note, pictures = [] }: PageExtras = {},
): ShownMessage {
  const { family, facts } = work
  const id = idFor(family.id, family.revision)
  const trait = facts.traits[featureId] ?? { made: [], against: [], remarks: [] }
  const [entry] = trait.against.filter(one => !one.together)
  const options = (featuresOf(base).get(featureId)?.answer.options ?? []).map((one, i) => ({
    value: one.id,
    label: say('check.letter', { letter: letterOf(i), label: sayOption(say, base, featureId, one.id) }),
  }))
  const known = trait.made.length > 0
  const rewrapped = trait.against.some(one => one.unless === 'open-rewrap')
  const draft = family.draft !== null || family.head === 0
  return message(
    [
      ...noted(note),
      text(
        say('families.feature.title', {
          name: plain(facts.identity.name),
          feature: sayFeature(say, base, featureId),
          ask: askOf(say, base, featureId),
        }),
      ),
      ...gallery(pictures),
      ...whatIsRight(say, id, featureId, trait.made, options),
      ...(known ? whatElse(say, constructions, work, featureId, trait, options) : []),
      ...(known ? further(say, base, constructions, work, featureId) : []),
      ...rows([
        ...(known && draft ? [tryButton(say, family)] : []),
        pressButton(
          id({ is: 'page' }),
          say('families.button.page'),
          !known || (draft && !family.review) ? undefined : ButtonStyle.Primary,
        ),
        ...(entry && (rewrapped || !ofMetal(featureId))
          ? [
              pressButton(
                id({ is: 'rewrap', feature: featureId, on: !rewrapped }),
                say(`families.button.rewrap-${rewrapped ? 'off' : 'on'}`),
              ),
            ]
          : []),
        ...(facts.traits[featureId]
          ? [pressButton(id({ is: 'not-known', feature: featureId }), say('families.button.not-known'))]
          : []),
        pressButton(id({ is: 'new-photo-of', feature: featureId }), say('families.button.add-photo')),
      ]),
      small(say('caution.line')),
    ],
    pictures,
  )
}

/** The next feature, without a way back. */
function further(say: Say, base: Pack, constructions: readonly Construction[], work: WorkingOn, page: string) {
  const { family, facts } = work
  const id = idFor(family.id, family.revision)
  const all = sayableIn(base, facts, begunOf(constructions, work))
  const besides = { unknown: all.filter(one => one.notKnown).map(one => one.feature), page }
  return [
    ...rows(openButtons(say, base, id, facts, besides)),
    featureMenu(say, base, id({ is: 'choose-feature' }), facts, besides),
  ]
}

/** A press where nothing is said and there are few looks; a menu to tick in otherwise. */
function whatIsRight(
  say: Say,
  id: ReturnType<typeof idFor>,
  feature: string,
  made: readonly string[],
  options: readonly Lettered[],
) {
  if (made.length === 0 && options.length <= mostButtons)
    return [
      text(say('families.feature.press')),
      ...rows(
        options.map(({ value, label }) =>
          pressButton(id({ is: 'made-as', feature, option: value }), label, ButtonStyle.Primary),
        ),
        1,
      ),
    ]
  const ticking = menu(
    id({ is: 'made', feature }),
    say(made.length > 0 ? 'families.feature.made' : 'families.feature.tick'),
    options.map(one => ({ value: one.value, label: cut(one.label, 100), default: made.includes(one.value) })),
    Math.min(5, options.length - 1),
  )
  if (made.length === 0) return [ticking]
  return [text(`**${say('families.feature.made')}**\n-# ${say('families.feature.made.all')}`), ticking]
}

const steps = ['must', 'strong', 'moderate', 'weak'] as const

/** How strongly anything else counts, as far as it may, and what it takes for more. */
function whatElse(
  say: Say,
  constructions: readonly Construction[],
  { family, facts, references }: WorkingOn,
  feature: string,
  trait: Trait,
  options: readonly Lettered[],
) {
  const [entry] = trait.against.filter(one => !one.together)
  const construction = constructions.find(one => one.construction === facts.from?.construction)
  const probe = entry ?? {
    options: options.map(one => one.value).filter(one => !trait.made.includes(one) && one !== 'other'),
    tells: 'must' as const,
    from: 'moderator' as const,
  }
  const most = mayTell(feature, trait, probe, construction, references)
  const allowed = [...steps.slice(most === 'none' ? 4 : steps.indexOf(most)), 'no-bearing' as const]
  // What is wished for counts as much as it may.
  const now = entry ? (allowed.includes(entry.tells) ? entry.tells : allowed[0]) : 'no-bearing'
  const agree = standingOf(feature, trait.made, references).agree
  return [
    text(`**${say('families.feature.tells')}**`),
    menu(
      idFor(family.id, family.revision)({ is: 'tells', feature }),
      say('families.feature.tells'),
      allowed.map(one => ({ value: one, label: say(`families.strength.${one}`), default: one === now })),
    ),
    small([sayStrengths(say), ...forMore(say, most, agree)].join('\n')),
  ]
}

/** Nothing where nothing counts more. */
function forMore(say: Say, most: TellingStrength | 'none', have: number): string[] {
  switch (most) {
    case 'must':
      return []
    case 'strong':
    case 'moderate':
      return [say('families.feature.earned', { most: say(`families.strength.${most}`), have })]
    case 'weak':
    case 'none':
      return [say('families.feature.more')]
  }
}

const askOf = (say: Say, base: Pack, feature: string): string =>
  base.words[say.locale.slice(0, 2)]?.questions[feature]?.ask ??
  base.questions.find(one => one.id === feature)?.ask ??
  ''
