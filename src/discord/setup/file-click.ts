// A server's settings given away as a file, and taken from one: what it would change is shown first, and a press does it.
import type { Guild } from 'discord.js'
import { newOpening } from '../../custom-ids/id-parts.ts'
import type { FileAct, SetupAct } from '../../custom-ids/setup-id.ts'
import { exported, readSettingsFile, type SettingsFile, settingsFileBytes } from '../../server/exchange.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { type TakenIn, takeIn } from '../../server/take-in.ts'
import type { Say } from '../../words/say.ts'
import { sayFileProblem } from '../../words/settings-file-words.ts'
import { changedMeanwhile, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, defer, editReply, redraw, refuse, replyWithFile } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type AwayFromHere, withoutForeign } from './fits-here.ts'
import { lookRound } from './places.ts'
import { fileField, fileForm, showTakingIn } from './show/show-file.ts'
import { showOverview } from './show/show-overview.ts'

/** How long a file that was read waits for the press, in ms. */
const readFor = 15 * 60_000
type Draft = { readonly is: 'settings'; readonly person: string; readonly server: string; readonly file: SettingsFile }

export const isFile = (act: SetupAct): act is FileAct =>
  act.is === 'export' || act.is === 'ask-file' || act.is === 'file' || act.is === 'take-in'

export async function pressFile(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  { revision, act }: { readonly revision: number; readonly act: FileAct },
): Promise<void> {
  if (act.is === 'export')
    return replyWithFile(interaction, say('setup.file.exported'), {
      name: 'cellwary-settings.json',
      content: exported(settings),
    })
  if (act.is === 'ask-file') {
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    return interaction.showModal(fileForm(say, settings, newOpening(services.newId)))
  }
  const overview = (now: ServerSettings, note: string) =>
    showOverview(say, now, lookRound(interaction.guild, now), note)
  if (settings.changedBy === interaction.id) return redraw(interaction, overview(settings, say('setup.saved')))
  await defer(interaction)
  const shown = await (act.is === 'file'
    ? readSentFile(services, interaction, say, settings)
    : takeDraft(services, interaction, say, settings, act.draft, revision))
  await editReply(interaction, typeof shown === 'object' && 'now' in shown ? overview(shown.now, shown.note) : shown)
}

type Noted = { readonly now: ServerSettings; readonly note: string }

/** What a file that was sent in would change, kept for the press. */
async function readSentFile(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
): Promise<ShownMessage | Noted> {
  const fields = interaction.isModalSubmit() ? interaction.fields : undefined
  const link = fields?.fields.has(fileField) ? fields.getUploadedFiles(fileField)?.first()?.url : undefined
  if (link === undefined) return { now: settings, note: say('setup.file.none') }
  const text = await services.texts.read(link, settingsFileBytes)
  if (!text.ok) return { now: settings, note: say(`setup.file.${text.why}`, { most: settingsFileBytes / 1024 }) }
  const read = readSettingsFile(text.text)
  if (!read.ok) return { now: settings, note: sayFileProblem(say, read.problem) }
  const { taken, away } = await tryFile(services, interaction, settings, read.file)
  const draft: Draft = { is: 'settings', person: interaction.user.id, server: settings.server, file: read.file }
  const key = await services.drafts.keep(draft, readFor)
  const around = lookRound(interaction.guild, settings)
  return showTakingIn(say, settings, around, { ...taken, away, foreign: read.file.server !== settings.server }, key)
}

/** What was seen is looked at again, and saved over the settings that were seen. */
async function takeDraft(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  key: string,
  revision: number,
): Promise<Noted> {
  const draft = (await services.drafts.find(key)) as Draft | undefined
  if (draft?.is !== 'settings' || draft.person !== interaction.user.id || draft.server !== settings.server)
    return { now: settings, note: sayRefusal(say, { code: 'form-forgotten' }) }
  if (settings.revision !== revision) return { now: settings, note: sayRefusal(say, changedMeanwhile) }
  const { taken } = await tryFile(services, interaction, settings, draft.file)
  const made = { by: interaction.user.id, at: services.now() }
  if ((await services.servers.save(taken.settings, made)) === 'saved')
    return { now: taken.settings, note: say('setup.saved') }
  const now = await services.servers.load(settings.server)
  const own = now.changedBy === interaction.id
  return { now, note: own ? say('setup.saved') : sayRefusal(say, changedMeanwhile) }
}

async function tryFile(
  services: Services,
  interaction: Clicked,
  settings: ServerSettings,
  file: SettingsFile,
): Promise<{ readonly taken: TakenIn; readonly away: readonly AwayFromHere[] }> {
  const guild = interaction.guild ?? (await interaction.client.guilds.fetch(settings.server))
  const { fields, away } = await withoutForeign(guild as Guild, file.fields)
  const asked = { by: interaction.id, discordLanguage: guild.preferredLocale }
  const linkId = (number: number) => `${BigInt(interaction.id).toString(36)}-${number}`
  const taken = takeIn(settings, { fields, links: file.links }, asked, services.now(), linkId)
  return { taken, away }
}
