// Custom ids of the set-up: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: who may do it is asked on every click, and on which server stands in the interaction.
import { type ChannelPart, type Part, parts } from '../../server/setup-part.ts'
import { isOpening, isSnowflake, readRevision, writeRevision } from '../interaction/id-parts.ts'

/** `chosen` stands for what was chosen in the menu, `none` for nothing any more, and anything else is a channel's id. */
type Choice = 'chosen' | 'none' | (string & {})

export type SetupAct =
  | { readonly is: 'see'; readonly what: Part | 'overview' | 'stop-recording' }
  /** Leads through every part, from the first on. */
  | { readonly is: 'begin' }
  | { readonly is: ChannelPart; readonly channel: Choice }
  | { readonly is: 'moderators'; readonly roles: 'chosen' | 'none' }
  | { readonly is: 'language' }
  | { readonly is: 'outcomes' | 'pooling'; readonly on: boolean }
  /** Opens the form for the weeks; `weeks` is the form sent in, with an id of its own, since phones keep forms by id. */
  | { readonly is: 'ask-weeks' }
  | { readonly is: 'weeks'; readonly opening: string }
  /** Fewer weeks, once it was said what that deletes. */
  | { readonly is: 'fewer'; readonly weeks: number }
  | { readonly is: 'forum'; readonly forum: Choice }
  | { readonly is: 'tag'; readonly forum: string }

/** `revision`: of the settings that the message shows. */
export type SetupId = { readonly revision: number; readonly act: SetupAct }

const mark = 'cs1'

export function encodeSetup({ revision, act }: SetupId): string {
  return [mark, writeRevision(revision), act.is, ...argumentsOf(act)].join('.')
}

function argumentsOf(act: SetupAct): string[] {
  switch (act.is) {
    case 'see':
      return [act.what]
    case 'reports':
    case 'review':
      return [act.channel]
    case 'moderators':
      return [act.roles]
    case 'outcomes':
    case 'pooling':
      return [act.on ? 'on' : 'off']
    case 'weeks':
      return [act.opening]
    case 'fewer':
      return [String(act.weeks)]
    case 'forum':
    case 'tag':
      return [act.forum]
    default:
      return []
  }
}

/** Decodes a custom id; undefined for anything that `encodeSetup` cannot have written. */
export function decodeSetup(id: string): SetupId | undefined {
  const [version, revision, is, first, ...rest] = id.split('.')
  const seenAt = readRevision(revision)
  if (version !== mark || seenAt === undefined || rest.length > 0) return undefined
  const act = decodeAct(is ?? '', first)
  return act && { revision: seenAt, act }
}

const isChoice = (text: string | undefined): text is string => text === 'chosen' || text === 'none' || isSnowflake(text)
const seen = [...parts, 'overview', 'stop-recording'] as const

function decodeAct(is: string, first: string | undefined): SetupAct | undefined {
  switch (is) {
    case 'see': {
      const what = seen.find(one => one === first)
      return what && { is, what }
    }
    case 'reports':
    case 'review':
      return isChoice(first) ? { is, channel: first } : undefined
    case 'moderators':
      return first === 'chosen' || first === 'none' ? { is, roles: first } : undefined
    case 'outcomes':
    case 'pooling':
      return first === 'on' || first === 'off' ? { is, on: first === 'on' } : undefined
    case 'begin':
    case 'language':
    case 'ask-weeks':
      return first === undefined ? { is } : undefined
    case 'weeks':
      return isOpening(first) ? { is, opening: first } : undefined
    case 'fewer':
      return /^[1-9]\d{0,4}$/.test(first ?? '') ? { is, weeks: Number(first) } : undefined
    case 'forum':
      return isChoice(first) ? { is, forum: first } : undefined
    case 'tag':
      return isSnowflake(first) ? { is, forum: first } : undefined
    default:
      return undefined
  }
}
