// The places a server chooses for the bot's posts, what the bot needs there, and how a chosen one is now.

/** What a channel is for. */
export type Use = 'reports' | 'review' | 'offers'

/** What the bot needs there, as Discord names permissions; each with the key of its words. */
export const needed = {
  reports: ['ViewChannel', 'SendMessages'],
  review: ['ViewChannel', 'SendMessages', 'AttachFiles'],
  offers: ['ViewChannel', 'SendMessagesInThreads'],
} as const satisfies Record<Use, readonly string[]>
export type Needed = (typeof needed)[Use][number]

export type Tag = { readonly id: string; readonly name: string }

export type PlaceState =
  | { readonly is: 'fine'; readonly tags: readonly Tag[] }
  | { readonly is: 'gone' | 'not-text' | 'not-forum' | 'everyone-reads' | 'refused' }
  | { readonly is: 'missing'; readonly permissions: readonly Needed[] }

/** A role named as moderators or helpers, or to be pinged, and what of the bot it does not see. */
export type Blind = {
  readonly role: string
  readonly of: 'moderators' | 'helpers' | 'reminders'
} & (
  | { readonly is: 'channel'; readonly channel: string }
  | { readonly is: 'command'; readonly command: 'trends' | 'check' }
)

/** How the chosen places and roles are now; undefined where nothing is chosen, or nothing is known of the server. */
export type Surroundings = {
  readonly places: Readonly<Record<Exclude<Use, 'offers'>, PlaceState | undefined>>
  /** The forums with offers, in their order. */
  readonly forums: readonly { readonly forum: string; readonly state: PlaceState }[]
  /** The names of the tags that the server's forums have, by their ids. */
  readonly tags: Readonly<Record<string, string>>
  readonly goneRoles: readonly string[]
  /** The role that is to be pinged would not be: not everybody may mention it, and the bot may not either. */
  readonly unheard?: boolean
  /** Named roles that cannot see a channel that is for them, or are not offered a command that is. */
  readonly blind?: readonly Blind[]
}
