// What moderators do about the server's links; each click asks whether they may, each change whether it comes too late.
import type { ModalSubmitInteraction } from 'discord.js'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { type LinksAct, linksIds } from '../../custom-ids/links-id.ts'
import { changeLinks, type LinkChange } from '../../server/change-links.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { decideInOrder, type Later, saidInTurn } from '../../services/keyed-queue.ts'
import { plain } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { changedMeanwhile, type Refusal, sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, refuse, updateOrReply } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import type { Services } from '../services.ts'
import { undoLinks, viewLinkHistory } from './links-history.ts'
import {
  linkForm,
  showLinksToKeep,
  showLinkToKeep,
  showTyped,
  type TypedLink,
  titleField,
  urlField,
} from './show-links.ts'

/** How long what was typed is kept, in ms, so that it need not be typed twice. */
const typedFor = 15 * 60_000
/** What is kept meanwhile; `link` is the one to be edited, or null for a new one. */
type Typed = TypedLink & { readonly is: 'link'; readonly person: string; readonly link: string | null }

export const linksClick = onClick(linksIds, async (services, interaction, act) => {
  // Whoever may not is told at once, and holds up nobody who may.
  if (!(await moderating(services, interaction)))
    return refuse(interaction, sayIn(interaction.locale), { code: 'not-moderator' })
  return decideInOrder(services.queue, `links ${interaction.guildId}`, () => click(services, interaction, act))
})

async function click(services: Services, interaction: Clicked, act: LinksAct): Promise<Later> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return () => refuse(interaction, say, { code: 'not-moderator' })
  const all = (now = settings, note?: string) =>
    updateOrReply(interaction, showLinksToKeep(say, now, services.now(), note))
  if (act.is === 'manage') return () => all()
  if (act.is === 'history')
    return async () => updateOrReply(interaction, await viewLinkHistory(services, say, settings, act.page))
  if (act.is === 'undo') return saidInTurn(undoLinks(services, interaction, say, settings, act))
  if (act.is === 'add' || act.is === 'edit' || act.is === 'again')
    return () => openForm(services, interaction, say, settings, act)
  if (interaction.isModalSubmit() && (act.is === 'added' || act.is === 'edited'))
    return saidInTurn(take(services, interaction, say, settings, act))
  const chosen = act.is === 'choose' && interaction.isStringSelectMenu() ? interaction.values[0] : undefined
  const id = 'id' in act ? act.id : chosen
  const link = settings.links.find(one => one.id === id)
  if (!link) return () => all(settings, sayRefusal(say, { code: 'no-link' }))
  const one = (now: ServerSettings, extras?: Parameters<typeof showLinkToKeep>[4], shown = link) =>
    updateOrReply(interaction, showLinkToKeep(say, now, shown, services.now(), extras))
  if (act.is === 'remove') return () => one(settings, { sure: true })
  if (act.is !== 'still-good' && act.is !== 'removed') return () => one(settings)
  if (act.revision !== settings.revision) return () => all(settings, sayRefusal(say, changedMeanwhile))
  const change: LinkChange = { is: act.is === 'removed' ? 'remove' : act.is, id: link.id }
  const changed = await save(services, settings, change, interaction)
  if (!changed.ok) return () => all(changed.settings, sayRefusal(say, changed.refusal))
  const note = say(`links.done.${change.is}`)
  return saidInTurn(
    change.is === 'remove' ? all(changed.settings, note) : one(changed.settings, { note }, changed.link),
  )
}

type Saved =
  | Extract<ReturnType<typeof changeLinks>, { ok: true }>
  | { readonly ok: false; readonly refusal: Refusal; readonly settings: ServerSettings }

/** Changes the settings as they were read. */
async function save(
  services: Services,
  settings: ServerSettings,
  change: LinkChange,
  { user }: Clicked,
): Promise<Saved> {
  const changing = changeLinks(settings, change, services.now())
  if (!changing.ok) return { ...changing, settings }
  const made = { by: user.id, at: services.now() }
  if ((await services.servers.save(changing.settings, made)) === 'saved') return changing
  return { ok: false as const, refusal: changedMeanwhile, settings: await services.servers.load(settings.server) }
}

async function openForm(
  services: Services,
  interaction: Clicked,
  say: Say,
  settings: ServerSettings,
  act: Extract<LinksAct, { is: 'add' | 'edit' | 'again' }>,
): Promise<void> {
  if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const typed = act.is === 'again' ? ((await services.drafts.find(act.draft)) as Typed | undefined) : undefined
  if (act.is === 'again' && (typed?.is !== 'link' || typed.person !== interaction.user.id))
    return refuse(interaction, say, { code: 'form-forgotten' })
  const id = act.is === 'edit' ? act.id : (typed?.link ?? null)
  const link = settings.links.find(one => one.id === id)
  const opening = newOpening(services.newId)
  if (id === null)
    return interaction.showModal(linkForm(say, { is: 'added', opening }, typed ?? { url: '', title: '' }))
  if (!link) return refuse(interaction, say, { code: 'no-link' })
  // Whoever opened the form from an older screen sees in it what the link is now.
  const { revision } = settings
  await interaction.showModal(linkForm(say, { is: 'edited', id, revision, opening }, typed ?? link))
}

/** A form sent in: stored, or answered with what to change and what was typed. */
async function take(
  services: Services,
  interaction: ModalSubmitInteraction,
  say: Say,
  settings: ServerSettings,
  act: Extract<LinksAct, { is: 'added' | 'edited' }>,
): Promise<void> {
  const typed = {
    url: interaction.fields.getTextInputValue(urlField),
    title: interaction.fields.getTextInputValue(titleField),
  }
  // A form delivered twice adds the same link twice, under the same id: whoever counted it answers it.
  const id = act.is === 'edited' ? act.id : BigInt(interaction.id).toString(36)
  if (act.is === 'added' && settings.links.some(link => link.id === id)) return
  const change: LinkChange = { is: act.is === 'added' ? 'add' : 'edit', id, ...typed }
  const late = act.is === 'edited' && act.revision !== settings.revision
  let done = late
    ? { ok: false as const, refusal: changedMeanwhile, settings }
    : await save(services, settings, change, interaction)
  // A new link stands in nobody's way: it is added to whatever the links are by now.
  for (let i = 0; i < 3 && act.is === 'added' && !done.ok && done.refusal === changedMeanwhile; i++)
    done = await save(services, done.settings, change, interaction)
  if (done.ok) {
    const { cleaned } = done
    const left = cleaned.length > 0 ? ` ${say('links.cleaned', { what: plain(cleaned.join(', ')) })}` : ''
    const note = say(`links.done.${change.is}`) + left
    return updateOrReply(interaction, showLinkToKeep(say, done.settings, done.link, services.now(), { note }))
  }
  const why = sayRefusal(say, done.refusal)
  const kept: Typed = { is: 'link', person: interaction.user.id, link: act.is === 'edited' ? id : null, ...typed }
  await updateOrReply(interaction, showTyped(say, why, typed, await services.drafts.keep(kept, typedFor)))
}
