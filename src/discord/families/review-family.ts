// Clicks and forms by which a version comes into force, goes back or is retired; moderators are told where they read reports.

import type { BaseInteraction } from 'discord.js'
import type { ActOf } from '../../custom-ids/family-id.ts'
import { diffFacts } from '../../families/diff.ts'
import type { Version } from '../../families/family.ts'
import {
  agree,
  askForReview,
  type Doing,
  goBack,
  mayAgree,
  type Reviewing,
  retire,
  sendBack,
} from '../../families/review.ts'
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { plain } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Place } from '../posts/post.ts'
import type { Services } from '../services.ts'
import { picturesBeside } from './family-pictures.ts'
import { type FamilyTurn, saveFamily } from './family-turn.ts'
import type { Standing } from './show/family-buttons.ts'
import { fields } from './show/menus.ts'
import { sayOrigin } from './show/say-origin.ts'
import { sayReviewRefusal, showAsked } from './show/show-review.ts'
import { rememberAsked } from './tell-asker.ts'
import { typedIn } from './typed-fields.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

export type Reviewed =
  | { readonly done: true; readonly note: string; readonly version?: Version }
  | { readonly done: false; readonly note: string }

export type ReviewAct = ActOf<'asked' | 'agreed' | 'send-back' | 'back-sent' | 'retired'>

export async function reviewFamily(turn: FamilyTurn, act: ReviewAct): Promise<Reviewed> {
  const { services, say, settings, work } = turn
  const reviewing = await understand(turn, act)
  if (!reviewing.ok) return { done: false, note: sayReviewRefusal(say, services.families.base, reviewing.refusal) }
  const saving = await saveFamily(turn, reviewing.family, reviewing.version)
  if (saving !== 'saved') return { done: false, note: sayRefusal(say, { code: 'changed-meanwhile' }) }
  const posted = act.is === 'asked' ? await tellModerators(turn) : undefined
  if (act.is === 'asked') rememberAsked(turn, posted)
  const alone = isAlone(settings) ? 'yes' : 'no'
  const place =
    posted === undefined ? { place: 'none', channel: '' } : { place: 'here', channel: `<#${posted.channel}>` }
  const { name } = work.facts.identity
  const notes = {
    asked: () => say('families.asked', { alone, ...place }),
    agreed: () => say('families.put-in-force', { name: plain(name), number: work.family.head + 1 }),
    'send-back': () => say('families.sent-back'),
    'back-sent': () => say('families.put-in-force', { name: plain(name), number: work.family.head + 1 }),
    retired: () => say('families.retired'),
  }
  return { done: true, note: notes[act.is](), ...(reviewing.version && { version: reviewing.version }) }
}

/** Where moderators read no reports, nobody else can be asked. */
export const isAlone = ({ reportsChannel }: ServerSettings): boolean => reportsChannel === null

/** Whether whoever pressed may agree to what waits now. */
type Looking = Pick<FamilyTurn, 'services' | 'settings'> & { readonly interaction: Pick<BaseInteraction, 'user'> }
export const mayAgreeNow = ({ services, interaction, settings }: Looking, { family }: WorkingOn): boolean =>
  mayAgree(family, { person: interaction.user.id, now: services.now() }, isAlone(settings))

/** How whoever pressed stands to what waits: whether they may agree to it, and whether they have asked for it themselves. */
export const standingNow = (looking: Looking, work: WorkingOn): Standing => ({
  agree: mayAgreeNow(looking, work),
  own: work.family.review?.by === looking.interaction.user.id,
})

async function understand(turn: FamilyTurn, act: ReviewAct): Promise<Reviewing> {
  const { services, interaction, settings, work } = turn
  const { family, proposed, inForce } = work
  const why = interaction.isModalSubmit() ? typedIn(interaction, fields.why).slice(0, 300) : ''
  const doing: Doing = { person: interaction.user.id, interaction: interaction.id, now: services.now(), why }
  switch (act.is) {
    case 'asked':
      return askForReview(family, proposed, inForce, doing)
    case 'agreed':
      return agree(family, proposed, inForce, doing, { alone: isAlone(settings), seen: `sha256:${act.digest}` })
    case 'send-back':
      return sendBack(family, doing)
    case 'back-sent': {
      const to = await services.families.store.version(settings.server, family.id, act.number)
      return goBack(family, to, act.number, doing)
    }
    case 'retired': {
      const chosen = interaction.isModalSubmit() ? interaction.fields.getStringSelectValues(fields.successor)[0] : '-'
      const heads = await services.families.store.heads(settings.server)
      const successor = heads.find(one => one.id === chosen && one.id !== family.id)?.id ?? null
      return retire(family, successor, doing)
    }
  }
}

/** The message that asks, where moderators read reports; in the server's language, and pinging nobody. Where it stands, if anywhere. */
async function tellModerators(turn: FamilyTurn): Promise<Place | undefined> {
  const { services, settings, work } = turn
  const { reportsChannel, server } = settings
  if (reportsChannel === null || (await services.posts.isOpenToAll(reportsChannel))) return undefined
  const now = await workingOn(services, server, work.family.id)
  if (!now) return undefined
  const home = sayIn(publicLanguage(settings))
  const nonce = `fa${now.family.id.slice(2)}${now.family.revision.toString(36)}`.slice(0, 25)
  const posted = await viewWaiting(services, home, now)
    .then(shown => services.posts.post(reportsChannel, shown, nonce, undefined, 'quiet'))
    .catch(error => services.log.warn({ err: error, server }, 'moderators could not be asked about a family'))
  return posted?.is === 'posted' ? posted.place : undefined
}

/** What waits, with its drawing. */
export async function viewWaiting(
  services: Services,
  say: Say,
  work: WorkingOn,
  { note, agree, own }: Standing & { readonly note?: string } = { agree: true, own: false },
): Promise<ShownMessage> {
  const { base, constructions } = services.families
  const changes = diffFacts(work.inForce?.facts, work.proposed.facts)
  const pictures = await picturesBeside(services, say, work.facts)
  const marked = sayOrigin(say, base, constructions, work)
  return showAsked(say, base, work, changes, { note, agree, own, marked, pictures })
}
