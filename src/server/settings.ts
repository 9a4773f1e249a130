// What a server's moderators decide about the bot, and what holds before they have decided anything.

export type ServerId = string

/** A shop or page that moderators vouch for; times in ms since 1970, UTC. */
export type BuyingLink = {
  readonly id: string
  readonly url: string
  readonly title: string
  readonly addedAt: number
  readonly reviewedAt: number
}

/** Where a new forum post gets one quiet offer: in this forum, under any of these tags. */
export type ForumOffers = { readonly forum: string; readonly tags: readonly string[] }

/** After how many hours it is said once, in the review channel, that somebody waits; and which role is pinged then, if any. */
export type Reminders = { readonly hours: number; readonly role: string | null }

export type ServerSettings = {
  readonly server: ServerId
  /** Grows by one with every change; 0 until the first. */
  readonly revision: number
  /** The interaction that changed them last: delivered again, it meets its own change and nobody else's. */
  readonly changedBy: string | null
  /** Language of public posts; null: the one the server tells Discord. */
  readonly language: string | null
  /** The language the server told Discord when it was last set up. */
  readonly discordLanguage: string | null
  /** Roles whose members are moderators here, beside those who may manage the server. */
  readonly moderatorRoles: readonly string[]
  /** Roles whose members may answer for people who are stuck, and see nothing else of moderators. */
  readonly helperRoles: readonly string[]
  /** Where rises and patterns are told; null: nowhere. */
  readonly reportsChannel: string | null
  /** Where moderators see checks that are stuck, and photographs; null: nowhere. */
  readonly reviewChannel: string | null
  readonly reminders: Reminders | null
  /** Whether anonymised outcomes are recorded at all, and whether they are pooled with other servers'. */
  readonly outcomes: boolean
  readonly pooling: boolean
  /** No forum twice, none without a tag. */
  readonly forumOffers: readonly ForumOffers[]
  /** Whether moderators get one note a week in the reports channel. */
  readonly weeklyNote: boolean
  /** How long outcomes are kept, in weeks. */
  readonly keepWeeks: number
  readonly links: readonly BuyingLink[]
}

/** Two years: long enough for last year's season to be compared with this one's. */
const usualKeepWeeks = 104
export const leastKeepWeeks = 26
export const mostKeepWeeks = 260
export const reminderHours = [1, 3, 6, 12, 24, 48] as const
export const mostLinks = 25
export const mostModeratorRoles = 10
export const mostForums = 5
/** More than Discord allows a forum. */
export const mostTags = 25

/** Nothing is recorded, posted or offered on a server that has not asked for it. */
export const unsettled = (server: ServerId): ServerSettings => ({
  server,
  revision: 0,
  changedBy: null,
  language: null,
  discordLanguage: null,
  moderatorRoles: [],
  helperRoles: [],
  reportsChannel: null,
  reviewChannel: null,
  reminders: null,
  outcomes: false,
  pooling: false,
  forumOffers: [],
  weeklyNote: false,
  keepWeeks: usualKeepWeeks,
  links: [],
})

/** What earlier versions wrote: one forum with one tag, or null for none. */
export function offersOfEarlier(written: unknown): unknown {
  if (written === null) return []
  if (typeof written !== 'object' || !('forum' in written) || !('tag' in written)) return written
  return [{ forum: written.forum, tags: [written.tag] }]
}

/** The language of what everybody on the server sees; `told`: what the server tells Discord just now. Undefined where nothing is known of it. */
export const publicLanguage = (
  { language, discordLanguage }: Pick<ServerSettings, 'language' | 'discordLanguage'>,
  told?: string | null,
): string | undefined => language ?? told ?? discordLanguage ?? undefined
