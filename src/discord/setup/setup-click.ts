// The buttons, menus and the form of the set-up: one change at a time, by those who may manage the server, over what they have seen.

import { newOpening } from '../../custom-ids/id-parts.ts'
import { type SetupId, setupIds } from '../../custom-ids/setup-id.ts'
import { changeSettings } from '../../server/change.ts'
import type { PlaceState } from '../../server/places.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { type Part, parts } from '../../server/setup-part.ts'
import type { Problem } from '../../server/setup-problem.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { sayProblem } from '../../words/setup-words.ts'
import { onClick } from '../interaction/click-handler.ts'
import { changedMeanwhile, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, defer, editReply, redraw, refuse } from '../interaction/reply.ts'
import { managing, refusalOf } from '../interaction/rights.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { isFile, pressFile } from './file-click.ts'
import { isHistory, pressHistory } from './history-click.ts'
import { lookRound } from './places.ts'
import { weeksForm } from './show/menus.ts'
import { showOverview } from './show/show-overview.ts'
import { type PartExtras, showFewerWeeks, showPart, showStopRecording } from './show/show-part.ts'
import { asksDiscord, type ChangingAct, understand } from './understand.ts'

export const setupClick = onClick(setupIds, async (services, interaction, id) => {
  // Whoever may not is told at once, and holds up nobody who may.
  if (!(await managing(services, interaction)))
    return refuse(interaction, sayIn(interaction.locale), refusalOf(interaction, 'not-manager'))
  return services.queue.inOrder(`setup ${interaction.guildId}`, () => press(services, interaction, id))
})

async function press(services: Services, interaction: Clicked, { revision, act }: SetupId): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await managing(services, interaction)
  if (!settings) return refuse(interaction, say, refusalOf(interaction, 'not-manager'))
  const show = (now: ServerSettings, what: Part | 'overview', extras: PartExtras = {}): ShownMessage => {
    const around = lookRound(interaction.guild, now)
    return what === 'overview' ? showOverview(say, now, around) : showPart(say, now, around, what, extras)
  }
  if (act.is === 'begin') return redraw(interaction, show(settings, parts[0]))
  if (act.is === 'see') {
    const stopping = act.what === 'stop-recording'
    return redraw(interaction, stopping ? showStopRecording(say, settings) : show(settings, act.what))
  }
  if (act.is === 'ask-weeks') {
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    return interaction.showModal(weeksForm(say, settings, newOpening(services.newId)))
  }
  if (isHistory(act)) return pressHistory(services, interaction, say, settings, { revision, act })
  if (isFile(act)) return pressFile(services, interaction, say, settings, { revision, act })
  const part = partOf(act)
  // Delivered again, a click meets its own change.
  if (settings.changedBy === interaction.id) return redraw(interaction, show(settings, part))
  if (settings.revision !== revision)
    return redraw(interaction, show(settings, part, { note: sayRefusal(say, changedMeanwhile) }))
  const slow = asksDiscord(act)
  if (slow) await defer(interaction)
  const done = await carryOut(services, interaction, say, settings, act)
  const shown = 'fewer' in done ? showFewerWeeks(say, settings, done.fewer) : show(done.now, part, done.extras)
  await (slow ? editReply : redraw)(interaction, shown)
}

type Done =
  | { readonly now: ServerSettings; readonly extras: PartExtras }
  /** So many weeks, which delete something: to be asked first. */
  | { readonly fewer: number }

async function carryOut(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  act: ChangingAct,
): Promise<Done> {
  const guild = interaction.guild ?? (await interaction.client.guilds.fetch(settings.server))
  const meant = await understand(guild, interaction, settings, act)
  if (meant.is === 'choose-tag')
    return {
      now: settings,
      extras: { choosing: meant, note: say('setup.choose.tag-of', { forum: `<#${meant.forum}>` }) },
    }
  const asked = { by: interaction.id, discordLanguage: guild.preferredLocale }
  const changing =
    meant.is === 'change'
      ? changeSettings(settings, meant.change, asked)
      : { ok: false as const, refusal: meant.problem }
  if (!changing.ok) return { now: settings, extras: extrasOf(say, changing.refusal) }
  const { keepWeeks } = changing.settings
  if (act.is === 'weeks' && keepWeeks < settings.keepWeeks) return { fewer: keepWeeks }
  const tried = triedOf(say, act, changing.settings)
  if (isSame(settings, changing.settings)) return { now: settings, extras: { note: tried ?? say('setup.saved') } }
  const made = { by: interaction.user.id, at: services.now() }
  if ((await services.servers.save(changing.settings, made)) === 'saved') {
    services.log.info({ server: settings.server, part: partOf(act) }, 'the set-up was changed')
    return { now: changing.settings, extras: { note: [say('setup.saved'), ...(tried ? [tried] : [])].join('\n') } }
  }
  const now = await services.servers.load(settings.server)
  // Another process was given the same interaction and was faster: it is done.
  const own = now.changedBy === interaction.id
  return { now, extras: { note: own ? say('setup.saved') : sayRefusal(say, changedMeanwhile) } }
}

/** Whether a change leaves everything as it was. */
const isSame = (before: ServerSettings, after: ServerSettings): boolean =>
  JSON.stringify({ ...after, revision: 0, changedBy: null }) ===
  JSON.stringify({ ...before, revision: 0, changedBy: null })

/** What the trial in a channel that was chosen has shown. */
function triedOf(say: Say, act: ChangingAct, after: ServerSettings): string | undefined {
  if (act.is !== 'reports' && act.is !== 'review') return undefined
  const channel = act.is === 'reports' ? after.reportsChannel : after.reviewChannel
  return channel === null ? undefined : say('setup.tried', { channel: `<#${channel}>` })
}

/** What can be mended where it was chosen is tried again by the same button. */
function extrasOf(say: Say, problem: Problem): PartExtras {
  const note = sayProblem(say, problem)
  if (problem.code === 'no-tags') return { note, again: { is: 'forum', forum: problem.channel } }
  if (problem.code !== 'place' || !mendable.includes(problem.state.is)) return { note }
  const { channel, use } = problem
  return { note, again: use === 'offers' ? { is: 'forum', forum: channel } : { is: use, channel } }
}

const mendable: readonly PlaceState['is'][] = ['missing', 'everyone-reads', 'refused']

function partOf(act: ChangingAct): Part {
  if (act.is === 'outcomes' || act.is === 'pooling') return 'recording'
  if (act.is === 'remind' || act.is === 'ping') return 'reminders'
  if (act.is === 'weeks' || act.is === 'fewer') return 'keeping'
  return act.is === 'forum' || act.is === 'tag' || act.is === 'untag' ? 'offers' : act.is
}
