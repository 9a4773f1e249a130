// Shows a rise or a pattern to moderators: what it is, what was decided about it, and what they can do.
import { type APIModalInteractionResponseCallbackData, ButtonStyle, ChannelType } from 'discord.js'
import { nobody } from '../../../server/traces.ts'
import type { Decision, Finding } from '../../../trends/finding.ts'
import { plain, plainLines } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { sayPattern, sayRise } from '../../../words/trend-words.ts'
import { isServerFamily } from '../../families/family-desk.ts'
import { channelField, form, textField } from '../../message/form.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { familyOfFinding } from '../fake-from-finding.ts'
import { encodeTrends } from '../trends-id.ts'

export const sayFound = (say: Say, names: TrendNames, { found }: Finding): string =>
  found.is === 'rise' ? sayRise(say, names, found.rise) : sayPattern(say, names, found.pattern)

export function showFinding(say: Say, names: TrendNames, finding: Finding, note?: string): ShownMessage {
  const open = finding.state !== 'settled'
  const act = (does: 'warn' | 'dismiss' | 'draft' | 'put-off') => encodeTrends({ is: 'finding', id: finding.id, does })
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say(`finding.title.${finding.found.is}`)}\n${cut(sayFound(say, names, finding), 1800)}`),
    ...(finding.decisions.length > 0
      ? [
          text(
            finding.decisions
              .slice(-4)
              .map(one => sayDecision(say, one))
              .join('\n'),
          ),
        ]
      : []),
    ...rows([
      ...(open
        ? [
            pressButton(act('warn'), say('finding.warn'), ButtonStyle.Primary),
            pressButton(act('dismiss'), say('finding.dismiss')),
            pressButton(act('put-off'), say('finding.put-off')),
          ]
        : []),
      pressButton(act('draft'), say(isServerFamily(familyOfFinding(finding)) ? 'finding.fake' : 'finding.draft')),
    ]),
    small(`${say('finding.care')}\n${say('trends.fives')}`),
  ])
}

/** Who decided what, when and why; nobody is pinged by it. */
function sayDecision(say: Say, { by, at, did, why }: Decision): string {
  const values = {
    who: by === nobody ? say('finding.somebody') : `<@${by}>`,
    when: `<t:${Math.floor(at / 1000)}:d>`,
    why: plain(cut(why, 300)),
  }
  return say(`finding.did.${did}`, values)
}

/** What a warning may be long, so that the caution always fits below it. */
export const longestWarning = 1500
export const warningField = 'warning'
export const warningChannel = 'channel'
export const reasonField = 'reason'

export function warningForm(
  say: Say,
  finding: Finding,
  draft: string,
  opening: string,
): APIModalInteractionResponseCallbackData {
  return form(encodeTrends({ is: 'finding', id: finding.id, does: 'warned', opening }), say('finding.warn'), [
    textField(
      warningField,
      { label: say('finding.form.warning'), hint: say('finding.form.warning.hint') },
      { most: longestWarning, required: true, value: draft },
    ),
    channelField(
      warningChannel,
      { label: say('finding.form.channel') },
      { required: true, channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement] },
    ),
  ])
}

export function dismissalForm(say: Say, finding: Finding, opening: string): APIModalInteractionResponseCallbackData {
  return form(encodeTrends({ is: 'finding', id: finding.id, does: 'dismissed', opening }), say('finding.dismiss'), [
    textField(reasonField, { label: say('finding.form.reason') }, { most: 300, required: true }),
  ])
}

/** A warning as everybody sees it: the moderator's text as text, and the whole caution below it, never cut off. */
export const showWarning = (say: Say, warning: string): ShownMessage =>
  message([text(`### ${say('warning.title')}\n${plainLines(warning)}`), text(`> ${say('caution.full')}`)])
