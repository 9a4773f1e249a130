// The pages of a family: what everybody sees, what moderators work on, and what else they can do with it.

import { ButtonStyle } from 'discord.js'
import type { FamilyAct } from '../../../custom-ids/family-id.ts'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Construction } from '../../../families/facts/facts-schema.ts'
import type { ServerFamily, Version } from '../../../families/family.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { sayDay } from '../../../words/dates.ts'
import { sayFacts, sayWays, unmarked } from '../../../words/family-facts-words.ts'
import { sayTitle } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { cut, gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { nothingPictured, type Pictured } from '../family-photos.ts'
import type { WorkingOn } from '../working-on.ts'
import { agreeButton, checkButton, type Standing, sendBackButton, tryButton } from './family-buttons.ts'
import { featureMenu, fitting, idFor, letterOf, notKnownMenu, openButtons, sayableIn } from './menus.ts'
import { begunOf, sayOrigin } from './say-origin.ts'

export type PageExtras = {
  readonly note?: string | undefined
  readonly pictures?: readonly ShownPicture[]
  readonly photos?: Pictured
}

export const noted = (note: string | undefined) => (note ? [text(note)] : [])

export const sayState = (say: Say, { state, head, draft }: Pick<ServerFamily, 'state' | 'head' | 'draft'>): string =>
  say(state === 'in-force' && draft ? 'families.state.changed' : `families.state.${state}`, { number: head })

/** What everybody may see of a version; `change`: for moderators, the way to its page. */
export function showPublicly(
  say: Say,
  base: Pack,
  family: ServerFamily,
  version: Version,
  references: number,
  moderator: boolean,
  { note, pictures = [], photos = nothingPictured }: PageExtras = {},
): ShownMessage {
  const id = idFor(family.id, family.revision)
  const state = family.state === 'retired' ? `\n${say('families.state.retired')}` : ''
  const change = moderator ? [pressButton(id({ is: 'page' }), say('families.button.change'))] : []
  return message(
    [
      ...noted(note),
      text(`### ${sayTitle(say, version.facts.identity)}${state}`),
      ...gallery(pictures),
      text(
        cutLines(
          sayFacts(say, base, version.facts, unmarked, [say('families.references.count', { count: references })]),
        ),
      ),
      small(say('families.since', { since: sayDay(say, version.at) })),
      ...photos.parts,
      ...rows([
        ...(family.state === 'in-force' ? [checkButton(say, family)] : []),
        ...change,
        pressButton(id({ is: 'sheet' }), say('families.button.sheet')),
      ]),
      small(say('caution.line')),
    ],
    [...pictures, ...photos.pictures],
  )
}

export const cutLines = (lines: readonly string[]): string => cut(lines.join('\n'), 3000)

/** The page its moderators work on: what would come into force, at the strengths it has earned. Until something is known, the ways of building are offered. */
export function showWork(
  say: Say,
  base: Pack,
  constructions: readonly Construction[],
  work: WorkingOn,
  { note, pictures = [], agree = false, own = false }: PageExtras & Partial<Standing> = {},
): ShownMessage {
  const { family, facts, proposed, references } = work
  if (Object.keys(facts.traits).length === 0) return showBuilding(say, base, constructions, work, { note, pictures })
  const id = idFor(family.id, family.revision)
  const button = (act: FamilyAct, label: string, style?: ButtonStyle.Primary) => pressButton(id(act), label, style)
  const all = sayableIn(base, facts, begunOf(constructions, work))
  const unknown = all.filter(one => one.notKnown).map(one => one.feature)
  const notKnown = notKnownMenu(say, base, id({ is: 'all-not-known' }), all)
  return message(
    [
      ...noted(note),
      text(`### ${sayTitle(say, facts.identity)}`),
      ...gallery(pictures),
      text(cutLines(sayFacts(say, base, proposed.facts, sayOrigin(say, base, constructions, work)))),
      small(sayState(say, family)),
      ...rows([
        ...(agree ? [agreeButton(say, work), sendBackButton(say, work, own)] : []),
        ...(family.review && !agree
          ? [button({ is: 'waiting' }, say('families.button.waiting'), ButtonStyle.Primary)]
          : []),
        ...(family.draft || family.head === 0 ? [tryButton(say, family)] : [checkButton(say, family)]),
        button({ is: 'figures' }, say('families.button.figures')),
        button({ is: 'references' }, `${say('families.button.references')} ${references.length || ''}`.trim()),
        button({ is: 'fakes' }, `${say('families.button.fakes')} ${facts.fakes.length || ''}`.trim()),
        button({ is: 'photos', page: 1 }, say('families.button.photos')),
        button({ is: 'more' }, say('families.button.more')),
      ]),
      ...rows(openButtons(say, base, id, facts, { unknown })),
      featureMenu(say, base, id({ is: 'choose-feature' }), facts, { unknown }),
      ...notKnown,
      small(`${say('families.page.unsaid')}\n${say('caution.line')}`),
    ],
    pictures,
  )
}

/** A letter for each way of building, and below the drawing of all a line for each feature that tells them apart; or from a good cell, or feature by feature. */
function showBuilding(
  say: Say,
  base: Pack,
  constructions: readonly Construction[],
  { family, facts }: WorkingOn,
  { note, pictures = [] }: PageExtras,
): ShownMessage {
  const id = idFor(family.id, family.revision)
  const built = fitting(constructions, facts)
  const ways = built.map(({ traits }, i) => ({ letter: letterOf(i), traits }))
  const lines = sayWays(say, base, ways)
  return message(
    [
      ...noted(note),
      text(say('families.built.title', { name: plain(facts.identity.name) })),
      ...gallery(pictures),
      ...(lines.length > 0
        ? [text(cutLines(lines)), small(say('families.built.means')), text(say('families.built.none-fits'))]
        : []),
      ...rows(
        built.map((one, i) =>
          pressButton(id({ is: 'build', built: one.construction }), letterOf(i), ButtonStyle.Primary),
        ),
      ),
      ...rows([
        pressButton(id({ is: 'new-reference' }), say('families.from-cell')),
        pressButton(id({ is: 'figures' }), say('families.button.figures')),
        ...(family.draft ? [pressButton(id({ is: 'discard' }), say('families.button.discard'))] : []),
      ]),
      featureMenu(say, base, id({ is: 'choose-feature' }), facts),
      small(say('caution.line')),
    ],
    pictures,
  )
}

export function showMore(say: Say, { family, facts }: WorkingOn): ShownMessage {
  const id = idFor(family.id, family.revision)
  const inForce = family.head > 0
  return message([
    text(`### ${sayTitle(say, facts.identity)}`),
    ...rows([
      ...(inForce ? [pressButton(id({ is: 'history' }), say('families.button.history'))] : []),
      pressButton(id({ is: 'export' }), say('families.button.export')),
      pressButton(id({ is: 'export-photos' }), say('families.button.export-photos')),
      ...(inForce && family.state !== 'retired'
        ? [pressButton(id({ is: 'retire' }), say('families.button.retire'))]
        : []),
      ...(family.draft ? [pressButton(id({ is: 'discard' }), say('families.button.discard'), ButtonStyle.Danger)] : []),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}
