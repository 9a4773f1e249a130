// Custom ids of a moderator's buttons, menus and forms for the server's links; nothing when the id is not one of ours.
//
// An id carries no authority: who moderates, and on which revision the settings stand, is looked up on every click.
import { readRevision, writeRevision } from '../interaction/id-parts.ts'

/** What is done to one link as it was seen on a revision of the settings; `removed` is the second press of `remove`. */
const deeds = ['still-good', 'edit', 'remove', 'removed'] as const

export type LinksAct =
  | { readonly is: 'manage' | 'choose' }
  | { readonly is: 'add' }
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  | { readonly is: 'added'; readonly opening: string }
  | { readonly is: 'edited'; readonly id: string; readonly revision: number; readonly opening: string }
  | { readonly is: 'link'; readonly id: string }
  | { readonly is: 'edit'; readonly id: string; readonly revision: number }
  | { readonly is: 'still-good' | 'remove' | 'removed'; readonly id: string; readonly revision: number }
  /** Opens the form once more with what was typed before. */
  | { readonly is: 'again'; readonly draft: string }

const mark = 'clk1'

export function encodeLinks(act: LinksAct): string {
  return [mark, act.is, ...argumentsOf(act)].join('.')
}

function argumentsOf(act: LinksAct): string[] {
  if (act.is === 'added') return [act.opening]
  if (act.is === 'again') return [act.draft]
  if (act.is === 'link') return [act.id]
  if (!('id' in act)) return []
  const at = [act.id, writeRevision(act.revision)]
  return act.is === 'edited' ? [...at, act.opening] : at
}

/** Decodes a custom id; undefined for anything that `encodeLinks` cannot have written. */
export function decodeLinks(id: string): LinksAct | undefined {
  const [version, is, ...rest] = id.split('.')
  if (version !== mark || rest.some(one => !/^[a-z0-9-]{1,32}$/.test(one))) return undefined
  const [first = '', second = '', third = ''] = rest
  const count = rest.length
  if ((is === 'manage' || is === 'add' || is === 'choose') && count === 0) return { is }
  if (is === 'added' && count === 1) return { is, opening: first }
  if (is === 'again' && count === 1) return { is, draft: first }
  if (is === 'link' && count === 1) return { is, id: first }
  const revision = readRevision(second)
  if (revision === undefined) return undefined
  if (is === 'edited' && count === 3) return { is, id: first, revision, opening: third }
  const deed = deeds.find(one => one === is)
  return deed && count === 2 ? { is: deed, id: first, revision } : undefined
}
