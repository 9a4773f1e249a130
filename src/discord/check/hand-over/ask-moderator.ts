// Asks a moderator about the question a check is at: cleans the photographs, stores that it is asked, shows it to moderators.
import type { ModalSubmitInteraction } from 'discord.js'
import { act } from '../../../check/act.ts'
import type { Stepping } from '../../../check/step.ts'
import type { HandId } from '../../../custom-ids/hand-over-id.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { sayWhat } from '../../../words/describe.ts'
import { sayPhotoRefusal } from '../../../words/photo-words.ts'
import { sayIn } from '../../../words/say.ts'
import { changedMeanwhile, type Refusal, sayRefusal } from '../../interaction/refusal.ts'
import { type Clicked, defer, editReply, followUpPrivately, refuse } from '../../interaction/reply.ts'
import { typedBack } from '../../interaction/typed-back.ts'
import { message, small, text } from '../../message/parts.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import type { Services } from '../../services.ts'
import { saveStep } from '../save-step.ts'
import { showScreen } from '../show/screen.ts'
import { photosField, whyField } from './show/forms.ts'
import { showHelpRequest } from './show/help-request.ts'
import { put } from './tell-others.ts'
import { type Turn, turnOf } from './turn.ts'

export async function askModerator(services: Services, interaction: Clicked, id: HandId): Promise<void> {
  if (!interaction.isModalSubmit()) return refuse(interaction, sayIn(interaction.locale), { code: 'unknown-click' })
  await defer(interaction)
  const before = await turnOf(services, interaction, id.check)
  if (before === 'seen') return
  const tried = asking(before, interaction, id)
  if (!tried.ok) return tell(interaction, sayRefusal(sayIn(interaction.locale), tried.refusal))
  const tooMuch = await services.fairUse.admitPost(interaction.user.id, null, services.now())
  if (tooMuch) return tell(interaction, sayRefusal(sayIn(interaction.locale), tooMuch))
  const sent = interaction.fields.fields.has(photosField) ? interaction.fields.getUploadedFiles(photosField) : null
  const cleaned = await services.photos.clean(
    [...(sent?.values() ?? [])].map(({ name, url, size }) => ({ name, url, bytes: size })),
  )
  if (cleaned.is === 'refused') return tell(interaction, sayPhotoRefusal(sayIn(interaction.locale), cleaned.refusal))
  await services.queue.inOrder(id.check, async () => {
    const turn = await turnOf(services, interaction, id.check)
    if (turn !== 'seen') await ask(turn, interaction, id, cleaned.photos)
  })
}

type Photos = readonly { readonly name: string; readonly bytes: Uint8Array }[]
type Asking =
  | { readonly ok: true; readonly turn: Turn; readonly stepped: Extract<Stepping, { ok: true }> }
  | { readonly ok: false; readonly refusal: Refusal }

/** What asking now would make of the check, if it still stands at the question the form was opened at. */
function asking(turn: Turn | 'gone', interaction: ModalSubmitInteraction, { form }: HandId): Asking {
  if (turn === 'gone') return { ok: false, refusal: { code: 'gone' } }
  const { services, program, check, actor } = turn
  if (form?.revision !== check.revision) return { ok: false, refusal: changedMeanwhile }
  const words = interaction.fields.getTextInputValue(whyField)
  const stepped = act(program, check, actor, { is: 'ask', words, where: interaction.channelId }, services.now())
  return stepped.ok ? { ok: true, turn, stepped } : stepped
}

async function ask(at: Turn | 'gone', interaction: ModalSubmitInteraction, id: HandId, photos: Photos): Promise<void> {
  const asked = asking(at, interaction, id)
  if (!asked.ok) return tell(interaction, sayRefusal(sayIn(interaction.locale), asked.refusal))
  const { turn, stepped } = asked
  const { services, say, program, check } = turn
  const saved = await saveStep(services, interaction, program, check, stepped)
  if (saved.saving === 'seen') return
  if (saved.saving === 'stale') return tell(interaction, sayRefusal(say, changedMeanwhile))
  const shown = await showToModerators({ ...turn, check: saved.check }, photos)
  const note = shown ? undefined : say('hands.asked.unseen')
  await editReply(interaction, await showScreen(say, program, saved.screen, services, note))
}

/** Why nobody was asked, with what was typed, so that it can be copied into the form again. */
function tell(interaction: ModalSubmitInteraction, sentence: string): Promise<void> {
  const say = sayIn(interaction.locale)
  const typed = typedBack(say, interaction)
  return followUpPrivately(interaction, message([text(sentence), ...typed, small(say('caution.line'))]))
}

/** Posts the help request in the channel of moderators; false if there is none, the bot may not post there, or everybody could read it. */
async function showToModerators({ services, interaction, program, check }: Turn, photos: Photos): Promise<boolean> {
  const settings = check.server === null ? undefined : await services.servers.load(check.server)
  const channel = settings?.reviewChannel
  const asked = check.custody?.helpRequest?.question
  if (!channel || asked === undefined || (await services.posts.isOpenToAll(channel))) return false
  const say = await sayInPublic(services, check.server, interaction.guildLocale)
  const theirs = inLanguage(program, say.locale)
  const question = theirs.questions.get(asked)
  if (!question) return false
  const pictures: ShownPicture[] = photos.map(({ name, bytes }, i) => ({
    name,
    bytes,
    alt: say('help-request.photo', { number: i + 1 }),
  }))
  const shown = showHelpRequest(say, sayWhat(say, theirs.family), check, question, pictures)
  return (await put(services, check, 'help-request', channel, shown)) !== undefined
}
