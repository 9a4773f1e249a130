// Asks a moderator about the question a check is at: cleans the photographs, stores that it is asked, shows it to moderators.
import type { ModalSubmitInteraction } from 'discord.js'
import { act } from '../../check/act.ts'
import type { Stepping } from '../../check/step.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { type Clicked, fill, refuse, takeTime, tellLater } from '../answer.ts'
import type { Desk, ShownPicture } from '../desk.ts'
import type { HandId } from '../hand-id.ts'
import { type Refusal, sayRefusal } from '../refusal.ts'
import { saveStep } from '../save-step.ts'
import { sayInPublic } from '../say-in-public.ts'
import { photosField, whyField } from '../show/hand-forms.ts'
import { message, small, text } from '../show/parts.ts'
import { showPlea } from '../show/plea.ts'
import { showScreen } from '../show/screen.ts'
import { sayWhat } from '../words/describe.ts'
import { sayPhotoRefusal } from '../words/photo-words.ts'
import { fenced } from '../words/plain.ts'
import { sayIn } from '../words/say.ts'
import { put } from './tell-others.ts'
import { type Turn, turnOf } from './turn.ts'

export async function askModerator(desk: Desk, interaction: Clicked, id: HandId): Promise<void> {
  if (!interaction.isModalSubmit()) return refuse(interaction, sayIn(interaction.locale), { code: 'unknown-click' })
  await takeTime(interaction)
  const before = await turnOf(desk, interaction, id.check)
  if (before === 'seen') return
  const tried = asking(before, interaction, id)
  if (!tried.ok) return tell(interaction, sayRefusal(sayIn(interaction.locale), tried.refusal))
  const tooMuch = desk.fairUse.admitPost(interaction.user.id, null, desk.now())
  if (tooMuch) return tell(interaction, sayRefusal(sayIn(interaction.locale), tooMuch))
  const sent = interaction.fields.fields.has(photosField) ? interaction.fields.getUploadedFiles(photosField) : null
  const cleaned = await desk.photos.clean(
    [...(sent?.values() ?? [])].map(({ name, url, size }) => ({ name, url, bytes: size })),
  )
  if (cleaned.is === 'refused') return tell(interaction, sayPhotoRefusal(sayIn(interaction.locale), cleaned.refusal))
  await desk.lanes.inLane(id.check, async () => {
    const turn = await turnOf(desk, interaction, id.check)
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
  const { desk, program, check, actor } = turn
  if (form?.revision !== check.revision) return { ok: false, refusal: { code: 'changed-meanwhile' } }
  const words = interaction.fields.getTextInputValue(whyField)
  const stepped = act(program, check, actor, { is: 'ask', words, where: interaction.channelId }, desk.now())
  return stepped.ok ? { ok: true, turn, stepped } : stepped
}

async function ask(at: Turn | 'gone', interaction: ModalSubmitInteraction, id: HandId, photos: Photos): Promise<void> {
  const asked = asking(at, interaction, id)
  if (!asked.ok) return tell(interaction, sayRefusal(sayIn(interaction.locale), asked.refusal))
  const { turn, stepped } = asked
  const { desk, say, program, check } = turn
  const saved = await saveStep(desk, interaction, program, check, stepped)
  if (saved.saving === 'seen') return
  if (saved.saving === 'stale') return tell(interaction, sayRefusal(say, { code: 'changed-meanwhile' }))
  const shown = await showToModerators({ ...turn, check: saved.check }, photos)
  const note = shown ? undefined : say('hands.asked.unseen')
  await fill(interaction, await showScreen(say, program, saved.screen, desk.pictures, note))
}

/** Why nobody was asked, with what was typed, so that it can be copied into the form again. */
function tell(interaction: ModalSubmitInteraction, sentence: string): Promise<void> {
  const say = sayIn(interaction.locale)
  const words = interaction.fields.getTextInputValue(whyField)
  const typed = words === '' ? [] : [text(`${say('links.typed')}\n${fenced(words)}`)]
  return tellLater(interaction, message([text(sentence), ...typed, small(say('caution.line'))]))
}

/** Posts the plea in the channel of moderators; false if there is none, the bot may not post there, or everybody could read it. */
async function showToModerators({ desk, interaction, program, check }: Turn, photos: Photos): Promise<boolean> {
  const settings = check.server === null ? undefined : await desk.servers.load(check.server)
  const channel = settings?.reviewChannel
  const asked = check.custody?.plea?.question
  if (!channel || asked === undefined || desk.posts.isOpenToAll(channel)) return false
  const say = await sayInPublic(desk, check.server, interaction.guildLocale)
  const theirs = inLanguage(program, say.locale)
  const question = theirs.questions.get(asked)
  if (!question) return false
  const pictures: ShownPicture[] = photos.map(({ name, bytes }, i) => ({
    name,
    bytes,
    alt: say('plea.photo', { number: i + 1 }),
  }))
  const shown = showPlea(say, sayWhat(say, theirs.family), check, question, pictures)
  return (await put(desk, check, 'plea', channel, shown)) !== undefined
}
