// What addresses carry beside where they lead: who sent somebody, a shortener in between, an invitation; and when two are one page.

/**
 * Services that lead on to wherever whoever made the link wants, and may want something else tomorrow. From memory; one that is missing
 * is a link like any other.
 */
const shorteners = new Set(
  'bit.ly tinyurl.com t.co goo.gl is.gd v.gd ow.ly buff.ly cutt.ly rebrand.ly shorturl.at t.ly tiny.cc rb.gy bl.ink adf.ly s.id shorte.st lnkd.in soo.gd clck.ru qr.ae u.to x.gd da.gd dub.sh short.io linktr.ee'.split(
    ' ',
  ),
)

/** Invitations into chats and servers, by host and the beginning of the path. From memory. */
const invitations: readonly (readonly [RegExp, RegExp])[] = [
  [/(^|\.)(discord\.gg|dsc\.gg|discord\.me|invite\.gg|chat\.whatsapp\.com|t\.me|telegram\.me)$/, /^/],
  [/(^|\.)discord(app)?\.com$/, /^\/(invite|oauth2|api\/oauth2|servers|channels)(\/|$)/i],
]

/** Fields of an address that only say who sent somebody there, or who earns by it (from memory). */
const trackers =
  /^(utm_\w+|mtm_\w+|pk_\w+|hsa_\w+|[a-z]{1,4}clid|gbraid|wbraid|gad_source|mc_[ce]id|igshid|_hsenc|_hsmi|mkt_tok|aff|aff_?id|affiliate(_?id)?|aff_\w+|oly_\w+_id|vero_id|wickedid|yadclid|srsltid)$/i

export const isShortener = (host: string): boolean => shorteners.has(host.replace(/^www\./, ''))

export const isInvitation = ({ hostname, pathname }: URL): boolean =>
  invitations.some(([host, path]) => host.test(hostname) && path.test(pathname))

/** The address without such fields, and the names of those that were left out. */
export function withoutTrackers(url: URL): { readonly url: string; readonly cleaned: readonly string[] } {
  const kept: string[] = []
  const cleaned: string[] = []
  for (const part of url.search.slice(1).split('&')) {
    const [name = ''] = part.split('=')
    if (trackers.test(name)) cleaned.push(name)
    else kept.push(part)
  }
  if (cleaned.length === 0) return { url: url.href, cleaned }
  const clean = new URL(url)
  clean.search = kept.join('&')
  return { url: clean.href, cleaned: [...new Set(cleaned)] }
}

/** The same for two addresses that almost surely show one page: with or without www, a slash at the end, a mark on the page, another order. */
export function pageOf(address: string): string {
  if (!URL.canParse(address)) return address
  const { hostname, pathname, searchParams, hash } = new URL(address)
  const fields = [...searchParams].map(([name, value]) => `${name}=${value}`).sort()
  // What begins with a slash or an exclamation mark is a page of its own to many sites.
  const own = /^#[!/]/.test(hash) ? hash : ''
  return [hostname.replace(/^www\./, ''), pathname.replace(/\/+$/, ''), fields.join('&'), own].join(' ')
}

/** A mention, or what looks like one: of everybody, a person, a role, a channel, a command, a time, an emoji. */
export const mentionIn = (title: string): string | undefined =>
  /<(?:@[!&]?|#|\/|id:|t:|a?:\w+:)[^>\s]*>?|(?<![\p{L}\p{N}])@[\p{L}\p{N}_.]{2,}/u.exec(title)?.[0]
