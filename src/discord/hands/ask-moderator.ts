// Asks a moderator about the question a check is at: cleans the photographs, stores that it is asked, shows it to moderators.
import { act } from '../../check/act.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { fill, takeTime, tellLater } from '../answer.ts'
import type { ShownPicture } from '../desk.ts'
import { sayRefusal } from '../refusal.ts'
import { saveStep } from '../save-step.ts'
import { photosField, whyField } from '../show/hand-forms.ts'
import { message, small, text } from '../show/parts.ts'
import { showPlea } from '../show/plea.ts'
import { showScreen } from '../show/screen.ts'
import { sayWhat } from '../words/describe.ts'
import { sayPhotoRefusal } from '../words/photo-words.ts'
import { put, sayInPublic } from './tell-others.ts'
import type { Turn } from './turn.ts'

export async function askModerator(turn: Turn): Promise<void> {
  const { desk, interaction, say, program, check, actor } = turn
  if (!interaction.isModalSubmit()) return
  await takeTime(interaction)
  const tell = (sentence: string) => tellLater(interaction, message([text(sentence), small(say('caution.line'))]))
  const words = interaction.fields.getTextInputValue(whyField)
  const event = { is: 'ask', words, where: interaction.channelId } as const
  const stepped = act(program, check, actor, event, desk.now())
  if (!stepped.ok) return tell(sayRefusal(say, stepped.refusal))
  const tooMuch = desk.fairUse.admitPost(actor.person, null, desk.now())
  if (tooMuch) return tell(sayRefusal(say, tooMuch))
  const sent = interaction.fields.fields.has(photosField) ? interaction.fields.getUploadedFiles(photosField) : null
  const cleaned = await desk.photos.clean(
    [...(sent?.values() ?? [])].map(({ name, url, size }) => ({ name, url, bytes: size })),
  )
  if (cleaned.is === 'refused') return tell(sayPhotoRefusal(say, cleaned.refusal))
  const saved = await saveStep(desk, interaction, program, check, stepped)
  if (saved.saving === 'seen') return
  if (saved.saving === 'stale') return tell(sayRefusal(say, { code: 'changed-meanwhile' }))
  const shown = await showToModerators({ ...turn, check: saved.check }, cleaned.photos)
  const note = shown || cleaned.photos.length === 0 ? undefined : say('hands.asked.no-photos')
  await fill(interaction, await showScreen(say, program, saved.screen, desk.pictures, note))
}

/** Posts the plea in the channel of moderators; false if there is none, or the bot may not post there. */
async function showToModerators(
  { desk, interaction, program, check }: Turn,
  photos: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): Promise<boolean> {
  const settings = check.server === null ? undefined : await desk.servers.load(check.server)
  const channel = settings?.reviewChannel
  const asked = check.custody?.plea?.question
  if (!channel || asked === undefined) return false
  const say = await sayInPublic(desk, check, interaction.guildLocale)
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
