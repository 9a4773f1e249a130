// Adds a photograph to a family, takes one out again, and gives them all away as files.
import type { ModalSubmitInteraction } from 'discord.js'
import { limits } from '../../families/family.ts'
import type { FamilyPhoto } from '../../families/family-store.ts'
import { featuresOf } from '../../families/features.ts'
import { readsLikeLink, tidyName } from '../../families/names.ts'
import { mostAlt, photoSize } from '../../families/photos.ts'
import { sayPhotoRefusal } from '../../words/photo-words.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { type Clicked, defer, editReply, followUpPrivately, refuse, replyWithFiles } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import { typedBack } from '../interaction/typed-back.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { picturesOfPhotos } from './family-photos.ts'
import type { FamilyTurn } from './family-turn.ts'
import { photoFields } from './show/photo-form.ts'
import { photoPage, showPhotos } from './show/show-photos.ts'
import { chosenIn, typedIn } from './typed-fields.ts'
import { workingOn } from './working-on.ts'

/** The file is cleaned before the family's turn comes: nobody waits for it but whoever sent it. */
export async function addPhoto(services: Services, interaction: Clicked, family: string): Promise<void> {
  const say = sayIn(interaction.locale)
  if (!(await moderating(services, interaction))) return refuse(interaction, say, { code: 'not-moderator' })
  if (!interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  await defer(interaction)
  const read = photoIn(services, say, interaction)
  if ('note' in read) return tell(interaction, say, read.note)
  const cleaned = await services.photos.clean([read.file], photoSize)
  if (cleaned.is === 'refused') return tell(interaction, say, sayPhotoRefusal(say, cleaned.refusal))
  const [photo] = cleaned.photos
  if (!photo) return tell(interaction, say, say('families.refused.photo-missing'))
  await services.queue.inOrder(`family ${interaction.guildId} ${family}`, () =>
    keep(services, interaction, family, { ...read.says, bytes: photo.bytes }),
  )
}

type Says = Pick<FamilyPhoto, 'feature' | 'option' | 'genuine' | 'alt'>
type File = { readonly name: string; readonly url: string; readonly bytes: number }

/** What was sent, as far as it can be kept. */
function photoIn(
  services: Services,
  say: Say,
  interaction: ModalSubmitInteraction,
): { readonly says: Says; readonly file: File } | { readonly note: string } {
  const { file: field, shows, kind, words, took } = photoFields
  if (chosenIn(interaction, took)[0] !== 'yes') return { note: say('families.refused.photo-not-yours') }
  const sent = interaction.fields.fields.has(field) ? interaction.fields.getUploadedFiles(field)?.first() : undefined
  const alt = tidyName(typedIn(interaction, words)).slice(0, mostAlt)
  if (!sent || alt === '') return { note: say('families.refused.photo-missing') }
  if (readsLikeLink(alt)) return { note: say('families.problem.name-reads-like-link') }
  const [feature = '', option = ''] = (chosenIn(interaction, shows)[0] ?? '').split('=')
  const known = featuresOf(services.families.base)
    .get(feature)
    ?.answer.options.some(one => one.id === option)
  if (!known) return { note: say('families.refused.reference-empty') }
  const genuine = chosenIn(interaction, kind)[0] === 'good'
  return { says: { feature, option, genuine, alt }, file: { name: sent.name, url: sent.url, bytes: sent.size } }
}

/** Rights, and whether the family is still there, are looked at again: cleaning takes its time. */
async function keep(
  services: Services,
  interaction: ModalSubmitInteraction,
  family: string,
  photo: Says & Pick<FamilyPhoto, 'bytes'>,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return tell(interaction, say, say('families.refused.gone'))
  const { store } = services.families
  const made = { server: settings.server, family, by: interaction.user.id, at: services.now() }
  // Its interaction's own: delivered twice, it is one photograph.
  const id = `p${interaction.id}`.slice(0, 24)
  const kept = await store.keepPhoto({ id, ...made, ...photo }, limits.photos)
  if (kept === 'too-many')
    return tell(interaction, say, say('families.refused.too-many-photos', { most: limits.photos }))
  services.families.renew(settings.server)
  const work = kept === 'gone' ? undefined : await workingOn(services, settings.server, family)
  if (!work) return tell(interaction, say, say('families.refused.gone'))
  services.log.info({ server: settings.server, family, photo: id }, 'a photograph of a family was kept')
  const turn = { services, interaction, say, settings, work }
  await editReply(interaction, await photosPage(turn, Number.MAX_SAFE_INTEGER, say('families.photo.kept')))
}

/** Why it is not kept, with the words that were typed, so that they can be copied into the form again. */
function tell(interaction: ModalSubmitInteraction, say: Say, sentence: string): Promise<void> {
  const typed = typedBack(say, interaction)
  return followUpPrivately(interaction, message([text(sentence), ...typed, small(say('caution.line'))]))
}

/** The page of photographs as they are stored now; the last one where there are fewer. */
export async function photosPage(turn: FamilyTurn, page: number, note?: string): Promise<ShownMessage> {
  const { services, say, settings, work } = turn
  const { base, store } = services.families
  const shown = photoPage(await store.photos(settings.server, work.family.id), page)
  const pictures = await picturesOfPhotos(services.families, say, shown.on)
  return showPhotos(say, base, work, shown, { note, pictures })
}

export async function dropPhoto(turn: FamilyTurn, photo: string): Promise<ShownMessage> {
  const { services, say, settings, work } = turn
  const mine = (await services.families.store.photos(settings.server, work.family.id)).some(one => one.id === photo)
  if (!mine) return photosPage(turn, 1, say('families.refused.gone'))
  await services.families.store.removePhoto(settings.server, photo)
  services.families.renew(settings.server)
  return photosPage(turn, 1, say('families.photo.dropped'))
}

/** The facts with every photograph beside them; what it shows stands in its name and its words. */
export async function exportWithPhotos({ services, interaction, say, settings, work }: FamilyTurn): Promise<void> {
  const { store } = services.families
  const { id } = work.family
  const photos = await store.photos(settings.server, id)
  const pictures = await picturesOfPhotos(services.families, say, photos)
  const facts = { name: `${id}.yaml`, bytes: Buffer.from(await services.files.write(work.facts)), alt: '' }
  const files = pictures.map(one => ({ ...one, name: `${id}-${one.name}` }))
  await replyWithFiles(interaction, say('families.exported.photos', { count: pictures.length }), [facts, ...files])
}
