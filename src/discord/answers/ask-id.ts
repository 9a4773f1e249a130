// Custom ids of answers to common questions: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority: whether the person may write there is asked on every click.
import type { EntryId } from '../../answers/entry.ts'
import { isSnowflake } from '../interaction/id-parts.ts'

/** The message that an answer would be a reply to; null if it was asked for without one. */
export type ReplyTo = string | null

export type AskAct =
  /** Shows the answer to one question. */
  | { readonly is: 'show'; readonly entry: EntryId; readonly to: ReplyTo }
  /** A menu of questions. */
  | { readonly is: 'choose'; readonly to: ReplyTo }
  | { readonly is: 'post'; readonly entry: EntryId; readonly to: ReplyTo }

const mark = 'ca1'
const nowhere = '-'

export function encodeAsk(act: AskAct): string {
  return [mark, act.is, ...(act.is === 'choose' ? [] : [act.entry]), act.to ?? nowhere].join('.')
}

/** Decodes a custom id; undefined for anything that `encodeAsk` cannot have written. */
export function decodeAsk(id: string): AskAct | undefined {
  const [version, is, ...rest] = id.split('.')
  const target = rest.at(-1)
  if (version !== mark || target === undefined || !(target === nowhere || isSnowflake(target))) return undefined
  const to = target === nowhere ? null : target
  if (is === 'choose' && rest.length === 1) return { is, to }
  const [entry = ''] = rest
  return (is === 'post' || is === 'show') && rest.length === 2 && /^[a-z0-9-]{2,40}$/.test(entry)
    ? { is, entry, to }
    : undefined
}
