// Shows how a server is set up: every part with what holds now, what it does, and a button to change it.
import { ButtonStyle, ComponentType } from 'discord.js'
import { encodeSetup } from '../../../custom-ids/setup-id.ts'
import type { Surroundings } from '../../../server/places.ts'
import type { ServerSettings } from '../../../server/settings.ts'
import { parts } from '../../../server/setup-part.ts'
import type { Say } from '../../../words/say.ts'
import { sayNow, sayWarning } from '../../../words/setup-words.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

export function showOverview(say: Say, settings: ServerSettings, around: Surroundings, note?: string): ShownMessage {
  const { revision } = settings
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('setup.title')}\n${say('setup.intro')}`),
    ...parts.map(part => {
      const warning = sayWarning(say, settings, around, part)
      const lines = [
        `**${say(`setup.part.${part}`)}:** ${sayNow(say, settings, around, part)}`,
        ...(warning ? [`⚠ ${warning}`] : []),
        `-# ${say(`setup.short.${part}`)}`,
      ]
      return {
        type: ComponentType.Section as const,
        components: [text(lines.join('\n'))],
        accessory: pressButton(encodeSetup({ revision, act: { is: 'see', what: part } }), say(`setup.open.${part}`)),
      }
    }),
    text(say('setup.links', { count: settings.links.length })),
    ...rows([
      pressButton(encodeSetup({ revision, act: { is: 'begin' } }), say('setup.begin'), ButtonStyle.Primary),
      pressButton(encodeSetup({ revision, act: { is: 'history', page: 1 } }), say('history.open')),
      pressButton(encodeSetup({ revision, act: { is: 'export' } }), say('setup.file.export')),
      pressButton(encodeSetup({ revision, act: { is: 'ask-file' } }), say('setup.file.import')),
    ]),
    small(say('caution.line')),
  ])
}
