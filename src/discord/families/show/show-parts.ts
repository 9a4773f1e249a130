// The further pages of a family: its reference cells, its known fakes, its history.

import { ButtonStyle } from 'discord.js'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Version } from '../../../families/family.ts'
import { nobody } from '../../../server/traces.ts'
import { sayDay, sayWeek } from '../../../words/dates.ts'
import { sayFeature, sayOptions } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { WorkingOn } from '../working-on.ts'
import { idFor } from './menus.ts'
import { cutLines, noted, type PageExtras } from './show-page.ts'

const sayLooks = (say: Say, base: Pack, looks: Readonly<Record<string, string | readonly string[]>>): string =>
  Object.entries(looks)
    .map(([one, options]) => `${sayFeature(say, base, one)}: ${sayOptions(say, base, one, [options].flat())}`)
    .join(' · ')

/** Reference cells without who brought them and from which order. */
export function showReferences(
  say: Say,
  base: Pack,
  { family, facts, references }: WorkingOn,
  { note }: PageExtras = {},
): ShownMessage {
  const id = idFor(family.id, family.revision)
  const shown = references.filter(one => one.state !== 'withdrawn').slice(0, 20)
  const lines = shown.map((one, i) =>
    say('families.reference.line', {
      number: i + 1,
      how: say(`families.how.${one.how}`),
      state: say(one.state === 'offered' ? 'families.reference.offered' : 'families.reference.accepted'),
      looks: sayLooks(say, base, one.looks),
    }),
  )
  return message([
    ...noted(note),
    text(say('families.references.title', { name: plain(facts.identity.name) })),
    ...(lines.length > 0 ? [text(cutLines(lines))] : []),
    ...rows([
      pressButton(id({ is: 'new-reference' }), say('families.button.add-reference'), ButtonStyle.Primary),
      ...shown
        .slice(0, 13)
        .map((one, i) =>
          one.state === 'offered'
            ? pressButton(id({ is: 'accept', reference: one.id }), say('families.button.accept', { number: i + 1 }))
            : pressButton(id({ is: 'withdraw', reference: one.id }), say('families.button.drop', { number: i + 1 })),
        ),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}

export function showFakes(say: Say, base: Pack, { family, facts }: WorkingOn, { note }: PageExtras = {}): ShownMessage {
  const id = idFor(family.id, family.revision)
  const shown = facts.fakes.filter(one => one.state === 'seen')
  const lines = shown.map((one, i) =>
    say('families.fake.line', {
      number: i + 1,
      title: plain(one.title),
      since: sayWeek(say, one.since),
      look: sayLooks(say, base, one.look),
    }),
  )
  return message([
    ...noted(note),
    text(say('families.fakes.title', { name: plain(facts.identity.name) })),
    ...(lines.length > 0 ? [text(cutLines(lines))] : []),
    ...rows([
      pressButton(id({ is: 'new-fake' }), say('families.button.add-fake'), ButtonStyle.Primary),
      ...shown
        .slice(0, 13)
        .map((one, i) =>
          pressButton(id({ is: 'drop-fake', fake: one.id }), say('families.button.drop', { number: i + 1 })),
        ),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}

/** Every version with who, when and why; never how many checks there were. */
export function showHistory(
  say: Say,
  { family, facts }: WorkingOn,
  versions: readonly Version[],
  { note }: PageExtras = {},
): ShownMessage {
  const id = idFor(family.id, family.revision)
  const who = (person: string) => (person === nobody ? say('families.somebody') : `<@${person}>`)
  const shown = versions.slice(0, 12)
  const lines = shown.map(one =>
    say('families.history.line', {
      number: one.number,
      when: sayDay(say, one.at),
      by: who(one.by),
      agreed: one.agreedBy === null ? 'alone' : who(one.agreedBy),
      // The first version may be its own reason.
      why: one.why === '' && one.number === 1 ? say('families.why.first') : plain(one.why),
      undoes: one.undoes ?? 0,
    }),
  )
  const back = shown.filter(one => one.number !== family.head).slice(0, 8)
  return message([
    ...noted(note),
    text(say('families.history.title', { name: plain(facts.identity.name) })),
    text(cutLines(lines)),
    ...rows([
      ...(family.state === 'retired'
        ? []
        : back.map(({ number }) =>
            pressButton(id({ is: 'back-ask', number }), say('families.button.back-to', { number })),
          )),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}
