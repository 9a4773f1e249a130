// What becomes of a model that somebody asked for: their own message and the moderators' say so, as soon as it is decided.
//
// Kept in memory, as long as Discord lets the asker's message be changed; lost with the process, the message only says what was so.
import { LRUCache } from 'lru-cache'
import { publicLanguage } from '../../server/settings.ts'
import { plain } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { type Clicked, editReply } from '../interaction/reply.ts'
import { message, rows, type ShownMessage, small, text } from '../message/parts.ts'
import type { Place } from '../posts/post.ts'
import type { Services } from '../services.ts'
import type { FamilyTurn } from './family-turn.ts'
import { checkButton } from './show/family-buttons.ts'
import type { WorkingOn } from './working-on.ts'

type Asked = { readonly by: Clicked; readonly place: Place | undefined }

/** Discord lets an answer be changed for fifteen minutes. */
const changeable = 14 * 60_000
const asked = new WeakMap<Services, LRUCache<string, Asked>>()

function askedIn(services: Services): LRUCache<string, Asked> {
  const known = asked.get(services) ?? new LRUCache<string, Asked>({ max: 500, ttl: changeable })
  asked.set(services, known)
  return known
}
const keyOf = ({ settings, work }: FamilyTurn): string => `${settings.server} ${work.family.id}`

export const rememberAsked = (turn: FamilyTurn, place: Place | undefined): void => {
  askedIn(turn.services).set(keyOf(turn), { by: turn.interaction, place })
}

/** `now`: the model as it is once it was decided. Nothing waits for this, and nothing fails by it. */
export async function tellAsker(turn: FamilyTurn, now: WorkingOn, agreed: boolean): Promise<void> {
  const { services, interaction, settings } = turn
  const { by, place } = askedIn(services).get(keyOf(turn)) ?? {}
  askedIn(services).delete(keyOf(turn))
  const told = (say: Say): ShownMessage => {
    const name = plain(now.facts.identity.name)
    const who = `<@${interaction.user.id}>`
    const when = `<t:${Math.floor(services.now() / 1000)}:f>`
    const note = agreed
      ? say('families.now-in-force', { name, number: now.family.head, when, who })
      : say('families.now-sent-back', { name, who })
    return message([text(note), ...rows(agreed ? [checkButton(say, now.family)] : []), small(say('caution.line'))])
  }
  const here = interaction.message?.id
  await Promise.all([
    by && by.message?.id !== here ? editReply(by, told(sayIn(by.locale))) : undefined,
    place && place.message !== here ? services.posts.redraw(place, told(sayIn(publicLanguage(settings)))) : undefined,
  ]).catch(error => services.log.warn({ err: error, server: settings.server }, 'an asker could not be told'))
}
