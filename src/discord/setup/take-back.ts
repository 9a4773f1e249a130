// Takes one change of a server's settings or links back for somebody who may, over what they have seen; or says why that cannot be.
import type { Guild } from 'discord.js'
import type { SettingsChange } from '../../server/history.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { undo } from '../../server/undo.ts'
import { sayNoUndo } from '../../words/history-words.ts'
import type { Say } from '../../words/say.ts'
import { sayProblem } from '../../words/setup-words.ts'
import { changedMeanwhile, sayRefusal } from '../interaction/refusal.ts'
import type { Clicked } from '../interaction/reply.ts'
import type { Services } from '../services.ts'
import { problemsWith } from './fits-here.ts'

export type TakenBack = { readonly now: ServerSettings; readonly note: string }

export async function takeBack(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  of: number,
): Promise<TakenBack> {
  const { servers } = services
  const history = await servers.history(settings.server)
  const undoing = undo(settings, history, of, interaction.id)
  if (!undoing.ok) return { now: settings, note: sayNoUndo(say, undoing.refusal) }
  const guild = interaction.guild ?? (await interaction.client.guilds.fetch(settings.server))
  const change = history.find(one => one.revision === of) as SettingsChange
  const [problem] = await problemsWith(guild as Guild, change.was)
  if (problem) return { now: settings, note: sayProblem(say, problem) }
  const made = { by: interaction.user.id, at: services.now(), undoes: of }
  const done = say(losesForGood(change) ? 'history.done-gone' : 'history.done')
  if ((await servers.save(undoing.settings, made)) === 'saved') return { now: undoing.settings, note: done }
  const now = await servers.load(settings.server)
  // Another process was given the same click and was faster: it is done.
  return { now, note: now.changedBy === interaction.id ? done : sayRefusal(say, changedMeanwhile) }
}

/** Whether something is gone that putting the setting back does not bring back. */
const losesForGood = ({ was, is }: SettingsChange): boolean =>
  (was.keepWeeks ?? 0) > (is.keepWeeks ?? Number.POSITIVE_INFINITY) || (was.outcomes === true && is.outcomes === false)
