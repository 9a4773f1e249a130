// A good cell that is looked at: the question, whether a ring is lifted, and what was seen, to be read once more before it is sent.
import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import { encodeWalk, type WalkAct } from '../../../custom-ids/walk-id.ts'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Facts } from '../../../families/facts/facts-schema.ts'
import { fits, looksOf, type Walk, type WalkStep } from '../../../families/strength/walk.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { sayAsked, sayFeature, sayOption, sayOptions } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { letterOf, menu } from './menus.ts'

/** Up to this many options are buttons, a row each, as in a check; more become a menu. */
const mostButtons = 6

type Shows = {
  readonly draft: string
  readonly walk: Walk
  readonly step: WalkStep
  readonly facts: Facts
  readonly picture?: ShownPicture | undefined
}

export function showWalk(say: Say, base: Pack, { draft, walk, step, facts, picture }: Shows): ShownMessage {
  const button = (act: WalkAct, label: string, style?: ButtonStyle.Primary) =>
    pressButton(encodeWalk({ draft, act }), label, style)
  const back = walk.seen.length > 0 && !walk.checked ? [button({ is: 'back' }, say('check.back'))] : []
  const name = plain(facts.identity.name)
  const last = small(say('caution.line'))
  switch (step.is) {
    case 'look': {
      const { ask, look } = sayAsked(say, base, step.feature)
      const pictures = picture ? [picture] : []
      return message(
        [
          small(say('families.walk.where', { name, number: step.number, of: step.of })),
          text([`### ${ask}`, ...(look ? [look] : [])].join('\n')),
          ...gallery(pictures),
          ...answersTo(say, base, step, draft, button),
          ...rows([button({ is: 'unsure' }, say('check.unsure')), ...back]),
          last,
        ],
        pictures,
      )
    }
    case 'consent':
      return message([
        text(`### ${say('consent.unwrap.title')}\n${say('consent.unwrap.text')}`),
        ...rows([button({ is: 'leave' }, say('consent.unwrap.no'), ButtonStyle.Primary)], 1),
        ...rows([button({ is: 'lift' }, say('consent.unwrap.yes'))], 1),
        ...rows(back),
        last,
      ])
    case 'summary':
      return summary(say, base, walk, facts, button, back, last)
  }
}

type Button = (act: WalkAct, label: string, style?: ButtonStyle.Primary) => APIButtonComponent

function answersTo(
  say: Say,
  base: Pack,
  { feature }: Extract<WalkStep, { is: 'look' }>,
  draft: string,
  button: Button,
) {
  const options = feature.answer.options.map(({ id }, i) => ({
    value: id,
    label: say('check.letter', { letter: letterOf(i), label: sayOption(say, base, feature.id, id) }),
  }))
  if (options.length > mostButtons)
    return [menu(encodeWalk({ draft, act: { is: 'choose' } }), say('check.choose'), options)]
  return rows(
    options.map(({ value, label }) => button({ is: 'say', option: value }, label, ButtonStyle.Primary)),
    1,
  )
}

/** What differs from the description is asked about, never learnt silently. */
function summary(
  say: Say,
  base: Pack,
  walk: Walk,
  facts: Facts,
  button: Button,
  back: readonly APIButtonComponent[],
  last: ReturnType<typeof small>,
): ShownMessage {
  const looks = Object.entries(looksOf(walk))
  const differs = ([feature, option]: [string, string]) => fits(facts, feature, option) === false
  const lines = looks.map(([feature, option]) => {
    const said = { feature: sayFeature(say, base, feature), option: sayOption(say, base, feature, option) }
    if (!differs([feature, option])) return say('families.walk.line', said)
    const made = sayOptions(say, base, feature, facts.traits[feature]?.made ?? [])
    return say('families.walk.differs', { ...said, made })
  })
  const title = say('families.walk.summary', {
    name: plain(facts.identity.name),
    how: say(`families.how.${walk.how}`),
  })
  const send = say(walk.vouches ? 'families.walk.vouch' : 'families.walk.hand-in')
  return message([
    text([title, ...lines].join('\n')),
    ...(looks.some(differs) ? [text(say('families.walk.look-again'))] : []),
    ...(looks.length === 0 ? [text(say('families.walk.nothing'))] : []),
    ...rows([...(looks.length > 0 ? [button({ is: 'send' }, send, ButtonStyle.Primary)] : []), ...back]),
    last,
  ])
}
