// What moderators do to the server's links: add, edit, look at again, remove. New settings, one revision on, or a refusal.
import { pageOf } from './link-habits.ts'
import { type LinkRefusal, readAddress, readTitle } from './links.ts'
import { type BuyingLink, mostLinks, type ServerSettings } from './settings.ts'

export type LinkChange =
  | { readonly is: 'add' | 'edit'; readonly id: string; readonly url: string; readonly title: string }
  /** Somebody has looked at the page behind it and found it as good as before. */
  | { readonly is: 'still-good'; readonly id: string }
  | { readonly is: 'remove'; readonly id: string }

export type ChangeRefusal =
  | LinkRefusal
  | { readonly code: 'no-link' }
  | { readonly code: 'too-many-links'; readonly most: number }
  | { readonly code: 'link-there'; readonly title: string }

export type ChangingLinks =
  | {
      readonly ok: true
      readonly settings: ServerSettings
      readonly link: BuyingLink
      /** What was left out of the address. */
      readonly cleaned: readonly string[]
    }
  | { readonly ok: false; readonly refusal: ChangeRefusal }

/** A link nobody has looked at for longer, in ms, is shown as such. */
export const reviewEvery = 365 * 24 * 3600_000

/** Moderators are told of it in the weekly note sooner, in ms. */
const toldAfter = 182 * 24 * 3600_000

export const isOlderThanHalfAYear = (link: BuyingLink, now: number): boolean => now - link.reviewedAt > toldAfter

export const isUnreviewed = (link: BuyingLink, now: number): boolean => now - link.reviewedAt > reviewEvery

/** `now` in ms since 1970. The revision grows by one; the store's comparison of it decides whether the change came too late. */
export function changeLinks(settings: ServerSettings, change: LinkChange, now: number): ChangingLinks {
  const { links } = settings
  const known = links.find(link => link.id === change.id)
  if (change.is === 'edit' && !known) return refuse({ code: 'no-link' })
  if (change.is === 'add' && links.length >= mostLinks) return refuse({ code: 'too-many-links', most: mostLinks })
  const changed = linkAfter(settings, change, known, now)
  if ('code' in changed) return refuse(changed)
  const others = links.filter(link => link.id !== change.id)
  const next =
    change.is === 'remove'
      ? others
      : known
        ? links.map(link => (link.id === change.id ? changed : link))
        : [...others, changed]
  const address = 'url' in change ? readAddress(change.url) : undefined
  const cleaned = (address?.ok && address.cleaned) || []
  return { ok: true, settings: { ...settings, revision: settings.revision + 1, links: next }, link: changed, cleaned }
}

function linkAfter(
  { links }: ServerSettings,
  change: LinkChange,
  known: BuyingLink | undefined,
  now: number,
): BuyingLink | ChangeRefusal {
  if (change.is === 'remove' || change.is === 'still-good') {
    if (!known) return { code: 'no-link' }
    return change.is === 'remove' ? known : { ...known, reviewedAt: now }
  }
  const address = readAddress(change.url)
  if (!address.ok) return address.refusal
  const title = readTitle(change.title, address.host)
  if (!title.ok) return title.refusal
  const twin = links.find(link => link.id !== change.id && pageOf(link.url) === pageOf(address.url))
  if (twin) return { code: 'link-there', title: twin.title }
  const written = { id: change.id, url: address.url, title: title.title }
  // Another address is another link: it was added now. A better title says nothing about when the page was looked at.
  if (known && known.url === address.url) return { ...known, ...written }
  return { ...written, addedAt: now, reviewedAt: now }
}

const refuse = (refusal: ChangeRefusal): ChangingLinks => ({ ok: false, refusal })
