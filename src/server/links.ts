// Which addresses a moderator may put among the server's links, and under which titles: what is read is where it leads.
//
// An address has to be one by RFC 3986, and Node's URL (the WHATWG standard, as browsers read it) has to find the very host in
// it that a person reads. Whatever reads one way and leads another is refused, never mended; only what says who sent somebody is left out.
import { isInvitation, isShortener, mentionIn, withoutTrackers } from './link-habits.ts'

export const longestAddress = 200
export const longestTitle = 60

export type LinkRefusal =
  | { readonly code: 'link-empty' | 'link-no-scheme' | 'link-unreadable' | 'link-credentials' | 'link-leads-on' }
  | { readonly code: 'link-too-long' | 'title-too-long'; readonly length: number; readonly most: number }
  | { readonly code: 'link-not-https'; readonly scheme: string }
  | { readonly code: 'link-characters'; readonly character: string }
  | { readonly code: 'link-port'; readonly port: string }
  | { readonly code: 'link-bare-ip' | 'link-look-alike' | 'link-internal' | 'link-host'; readonly host: string }
  | { readonly code: 'link-short' | 'link-invite'; readonly host: string }
  | { readonly code: 'title-empty' }
  | { readonly code: 'title-mentions'; readonly named: string }
  | { readonly code: 'title-names-host'; readonly named: string; readonly host: string }

export type ReadAddress =
  | {
      readonly ok: true
      readonly url: string
      readonly host: string
      /** What was left out of it, since it leads nowhere else. */
      readonly cleaned?: readonly string[]
    }
  | { readonly ok: false; readonly refusal: LinkRefusal }

export type ReadTitle =
  | { readonly ok: true; readonly title: string }
  | { readonly ok: false; readonly refusal: LinkRefusal }

/** Every character an address may hold (RFC 3986, appendix A: unreserved, reserved, percent-encoded). */
const allowed = /^[A-Za-z0-9\-._~:/?#[\]@!$&'()*+,;=%]$/

/**
 * Names that lead nowhere outside one's own network, or nowhere at all: RFC 6761 (localhost, test, invalid), RFC 6762 (local),
 * RFC 8375 (home.arpa), RFC 7686 (onion), RFC 9476 (alt), ICANN's reservation of internal; the rest is common practice.
 * `example` is reserved as well (RFC 2606), and stays: the practice room's shops have it.
 */
const internal = 'localhost test invalid local arpa onion alt internal intranet private corp home lan'.split(' ')

/** A name of at least two labels of letters, digits and hyphens, the last one beginning with a letter (RFC 1123, 2.1). */
const hostName = /^(?=.{4,253}$)(?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z](?:[a-z0-9-]{0,61}[a-z0-9])$/

/** The address as it is stored, and the host it leads to; or why it may not be added. */
export function readAddress(typed: string): ReadAddress {
  const text = typed.trim()
  if (text === '') return refuse({ code: 'link-empty' })
  if (text.length > longestAddress) return refuse({ code: 'link-too-long', length: text.length, most: longestAddress })
  const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(text)?.[1]?.toLowerCase()
  if (scheme === undefined) return refuse({ code: 'link-no-scheme' })
  if (scheme !== 'https') return refuse({ code: 'link-not-https', scheme })
  const [, authority] = /^https:\/\/([^/?#]+)/i.exec(text) ?? []
  if (authority === undefined) return refuse({ code: 'link-unreadable' })
  if (authority.includes('@')) return refuse({ code: 'link-credentials' })
  const written = authority.replace(/:\d*$/, '').toLowerCase()
  if (/[^\0-\x7f]/.test(written) || /(^|\.)xn--/.test(written))
    return refuse({ code: 'link-look-alike', host: written })
  const character = strayIn(text, authority)
  if (character !== undefined) return refuse({ code: 'link-characters', character })
  const url = parse(text)
  if (!url) return refuse({ code: 'link-unreadable' })
  const { hostname: host } = url
  if (host.startsWith('[') || /^\d+(\.\d+){3}$/.test(host)) return refuse({ code: 'link-bare-ip', host })
  // A host that is not read as it is written: percent-encoded letters, or whatever else a browser mends.
  if (/(^|\.)xn--/.test(host) || host !== written) return refuse({ code: 'link-look-alike', host })
  const labels = host.replace(/\.$/, '').split('.')
  if (labels.length === 1 || internal.includes(labels.at(-1) ?? '')) return refuse({ code: 'link-internal', host })
  if (!hostName.test(host)) return refuse({ code: 'link-host', host })
  if (url.port !== '') return refuse({ code: 'link-port', port: url.port })
  if (isShortener(host)) return refuse({ code: 'link-short', host })
  if (isInvitation(url)) return refuse({ code: 'link-invite', host })
  const { url: clean, cleaned } = withoutTrackers(url)
  if (leadsOn(new URL(clean))) return refuse({ code: 'link-leads-on' })
  return { ok: true, url: clean, host, ...(cleaned.length > 0 && { cleaned }) }
}

/** The title as it is stored; one that names another host than the address leads to is refused. */
export function readTitle(typed: string, host: string): ReadTitle {
  const title = typed
    .normalize('NFKC')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ')
    .replace(/\p{Cf}/gu, '')
    // No letter under a heap of marks that reach into other lines.
    .replace(/(\p{M}{2})\p{M}+/gu, '$1')
    .trim()
  if (title === '') return refuse({ code: 'title-empty' })
  const { length } = [...title]
  if (length > longestTitle) return refuse({ code: 'title-too-long', length, most: longestTitle })
  const mention = mentionIn(title)
  if (mention !== undefined) return refuse({ code: 'title-mentions', named: mention })
  const bare = (name: string) => name.toLowerCase().replace(/^www\./, '')
  const named = title.match(/[\p{L}\p{N}-]+(?:[.。][\p{L}\p{N}-]+)*[.。]\p{L}[\p{L}\p{N}-]+/gu) ?? []
  const other = named.find(name => bare(name) !== bare(host))
  return other === undefined ? { ok: true, title } : refuse({ code: 'title-names-host', named: other, host })
}

/** The first thing in the text that RFC 3986 leaves no place for; brackets have one around an IP address only. */
function strayIn(text: string, authority: string): string | undefined {
  const stray = [...text].find(one => !allowed.test(one))
  if (stray !== undefined) return /[\p{Z}\p{C}]/u.test(stray) ? `U+${hex(stray)}` : stray
  const rest = text.slice('https://'.length + authority.length)
  return /[[\]]/.exec(rest)?.[0] ?? /%(?![0-9a-f]{2})/i.exec(text)?.[0]
}

const hex = (one: string): string => (one.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')

function parse(text: string): URL | undefined {
  return URL.canParse(text) ? new URL(text) : undefined
}

/** Whether the address carries another one that it may send people on to, however often that was percent-encoded. */
function leadsOn({ pathname, search, hash }: URL): boolean {
  let rest = pathname + search + hash
  for (let i = 0; i < 4; i++) {
    if (/\/\/|\\|\b(?:https?|ftp|javascript|data):|\bwww\./i.test(rest)) return true
    rest = rest.replace(/%([2-7][0-9a-f])/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
  }
  return false
}

const refuse = (refusal: LinkRefusal): { readonly ok: false; readonly refusal: LinkRefusal } => ({ ok: false, refusal })
