// Messages that everybody in a channel sees: mentions off but for one person or role on purpose, and each posted once for its nonce.
import { DiscordAPIError, MessageFlags, type REST, RESTJSONErrorCodes, Routes } from 'discord.js'
import type { ShownMessage } from '../message/parts.ts'

/** Where a message of ours stands. */
export type Place = { readonly channel: string; readonly message: string }

/**
 * `forbidden`: the bot may not do that there; `gone`: there is no such channel or message any more; `blocked`: a filter of the server
 * (AutoMod) or of Discord took offence at the words.
 */
export type Posting =
  | { readonly is: 'posted'; readonly place: Place }
  | { readonly is: 'forbidden' | 'gone' | 'blocked' }
/** `no-message`: what it would answer is gone; `archived`: the thread is archived or locked. */
export type Replying = Posting | { readonly is: 'no-message' | 'archived' }
export type Changing = 'done' | 'forbidden' | 'gone' | 'blocked'

/** Whether somebody waits for a message, sees one of theirs change, or nobody has asked for it. */
export type Urgency = 'waited' | 'panel' | 'quiet'

/** Who is told of a message: a person by their id, or a role. */
export type Ping = string | { readonly role: string }

/** Each rejects when Discord cannot be reached, or would take it only much later. */
export type Posts = {
  /**
   * `nonce`: at most 25 characters; trying again with the same one within minutes posts nothing twice. `ping`: the only person
   * or role that is told of it. `urgency`: what goes first where several messages wait, `waited` unless it is said.
   */
  post(channel: string, shown: ShownMessage, nonce: string, ping?: Ping, urgency?: Urgency): Promise<Posting>
  /** The same as a reply to a message in the channel, or to none; nobody is told of it. */
  reply(channel: string, to: string | null, shown: ShownMessage, nonce: string): Promise<Replying>
  /** Puts `shown` in the place of what a message of ours said before, its pictures included; nobody is told. */
  redraw(place: Place, shown: ShownMessage): Promise<Changing>
  remove(place: Place): Promise<Changing>
  /** Whether everybody on its server can read a channel, as far as is known: what is for moderators only is not posted there. */
  isOpenToAll(channel: string): Promise<boolean>
  /** Whether a server has this role, as far as is known. */
  hasRole(server: string, role: string): boolean
}

const forbidden: readonly (string | number)[] = [
  RESTJSONErrorCodes.MissingAccess,
  RESTJSONErrorCodes.MissingPermissions,
  RESTJSONErrorCodes.CannotSendMessagesInNonTextChannel,
  RESTJSONErrorCodes.CannotReplyWithoutPermissionToReadMessageHistory,
]
const archived: readonly (string | number)[] = [
  RESTJSONErrorCodes.InvalidActionOnArchivedThread,
  RESTJSONErrorCodes.ThreadLocked,
]
const blocked: readonly (string | number)[] = [
  RESTJSONErrorCodes.MessageWasBlockedByAutomaticModeration,
  RESTJSONErrorCodes.MessageBlockedByHarmfulLinksFilter,
]

export const postsOver = (
  rest: REST,
  isOpenToAll: Posts['isOpenToAll'] = async () => false,
  hasRole: Posts['hasRole'] = () => true,
): Posts => ({
  isOpenToAll,
  hasRole,

  async post(channel, shown, nonce, ping) {
    const body = {
      flags: shown.flags | (ping === undefined ? MessageFlags.SuppressNotifications : 0),
      allowed_mentions: { parse: [], ...pinged(ping) },
    }
    const sent = await send(rest, channel, shown, nonce, body)
    return sent.is === 'posted' ? sent : { is: broadly(sent.is) }
  },

  async reply(channel, to, shown, nonce) {
    const body = {
      flags: shown.flags | MessageFlags.SuppressNotifications,
      allowed_mentions: { parse: [], replied_user: false },
      ...(to !== null && { message_reference: { message_id: to } }),
    }
    return send(rest, channel, shown, nonce, body)
  },

  async redraw({ channel, message }, shown) {
    const body = { components: shown.components, flags: shown.flags, allowed_mentions: { parse: [] } }
    const sent = await answered(
      rest.patch(Routes.channelMessage(channel, message), { body: described(body, shown), files: filesOf(shown) }),
    )
    return broadly(sent.is)
  },

  remove: async ({ channel, message }) =>
    broadly((await answered(rest.delete(Routes.channelMessage(channel, message)))).is),
})

const pinged = (ping: Ping | undefined) =>
  typeof ping === 'object' ? { roles: [ping.role] } : { users: ping === undefined ? [] : [ping] }

async function send(rest: REST, channel: string, shown: ShownMessage, nonce: string, more: object) {
  const body = { ...more, components: shown.components, nonce, enforce_nonce: true }
  const sent = await answered(
    rest.post(Routes.channelMessages(channel), { body: described(body, shown), files: filesOf(shown) }),
  )
  return sent.is === 'done'
    ? { is: 'posted' as const, place: { channel, message: (sent.value as { id: string }).id } }
    : sent
}

type Broad<Is> = Exclude<Is, 'archived' | 'no-message'>

/** An archived thread forbids, and a message that is gone is gone, for whoever answers nobody. */
function broadly<Is extends Answered['is']>(is: Is): Broad<Is> | 'forbidden' | 'gone' {
  if (is === 'archived') return 'forbidden'
  return is === 'no-message' ? 'gone' : (is as Broad<Is>)
}

const filesOf = ({ pictures }: ShownMessage) => pictures.map(({ name, bytes }) => ({ name, data: Buffer.from(bytes) }))

/** Files of a message that is sent again take the place of the earlier ones. */
const described = (body: object, { pictures }: ShownMessage): object => ({
  ...body,
  attachments: pictures.map(({ name, alt }, i) => ({ id: String(i), filename: name, description: alt.slice(0, 1024) })),
})

type Answered = { readonly is: 'done'; readonly value: unknown } | { readonly is: Refused }
type Refused = 'forbidden' | 'archived' | 'gone' | 'no-message' | 'blocked'

async function answered(sending: Promise<unknown>): Promise<Answered> {
  try {
    return { is: 'done', value: await sending }
  } catch (error) {
    if (!(error instanceof DiscordAPIError)) throw error
    if (forbidden.includes(error.code)) return { is: 'forbidden' }
    if (archived.includes(error.code)) return { is: 'archived' }
    if (blocked.includes(error.code)) return { is: 'blocked' }
    if (error.code === RESTJSONErrorCodes.UnknownChannel) return { is: 'gone' }
    if (error.code === RESTJSONErrorCodes.UnknownMessage || refusesReference(error)) return { is: 'no-message' }
    throw error
  }
}

/** Discord says that a message to reply to is gone as a fault of the body's `message_reference`. */
const refusesReference = ({ code, rawError }: DiscordAPIError): boolean =>
  code === RESTJSONErrorCodes.InvalidFormBodyOrContentType &&
  'errors' in rawError &&
  'message_reference' in (rawError.errors as object)
