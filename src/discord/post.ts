// Messages that everybody in a channel sees: mentions off but for one person on purpose, and each posted once for its nonce.
import { DiscordAPIError, MessageFlags, type REST, RESTJSONErrorCodes, Routes } from 'discord.js'
import type { ShownMessage } from './show/parts.ts'

/** Where a message of ours stands. */
export type Place = { readonly channel: string; readonly message: string }

/** `forbidden`: the bot may not do that there; `gone`: there is no such channel or message any more. */
export type Posting = { readonly is: 'posted'; readonly place: Place } | { readonly is: 'forbidden' | 'gone' }
export type Changing = 'done' | 'forbidden' | 'gone'

/** Each rejects when Discord cannot be reached. */
export type Posts = {
  /** `nonce`: at most 25 characters; trying again with the same one within minutes posts nothing twice. `ping`: the only person who is told of it. */
  post(channel: string, shown: ShownMessage, nonce: string, ping?: string): Promise<Posting>
  /** Puts `shown` in the place of what a message of ours said before, its pictures included; nobody is told. */
  redraw(place: Place, shown: ShownMessage): Promise<Changing>
  remove(place: Place): Promise<Changing>
}

const forbidden: readonly (string | number)[] = [
  RESTJSONErrorCodes.MissingAccess,
  RESTJSONErrorCodes.MissingPermissions,
  RESTJSONErrorCodes.CannotSendMessagesInNonTextChannel,
  RESTJSONErrorCodes.InvalidActionOnArchivedThread,
  RESTJSONErrorCodes.ThreadLocked,
]
const gone: readonly (string | number)[] = [RESTJSONErrorCodes.UnknownChannel, RESTJSONErrorCodes.UnknownMessage]

export const postsOver = (rest: REST): Posts => ({
  async post(channel, shown, nonce, ping) {
    const body = {
      components: shown.components,
      flags: shown.flags | (ping === undefined ? MessageFlags.SuppressNotifications : 0),
      allowed_mentions: { parse: [], users: ping === undefined ? [] : [ping] },
      nonce,
      enforce_nonce: true,
    }
    const sent = await answered(
      rest.post(Routes.channelMessages(channel), { body: described(body, shown), files: filesOf(shown) }),
    )
    return sent.is === 'done'
      ? { is: 'posted', place: { channel, message: (sent.value as { id: string }).id } }
      : { is: sent.is }
  },

  async redraw({ channel, message }, shown) {
    const body = { components: shown.components, flags: shown.flags, allowed_mentions: { parse: [] } }
    const sent = await answered(
      rest.patch(Routes.channelMessage(channel, message), { body: described(body, shown), files: filesOf(shown) }),
    )
    return sent.is
  },

  remove: async ({ channel, message }) => (await answered(rest.delete(Routes.channelMessage(channel, message)))).is,
})

const filesOf = ({ pictures }: ShownMessage) => pictures.map(({ name, bytes }) => ({ name, data: Buffer.from(bytes) }))

/** Files of a message that is sent again take the place of the earlier ones. */
const described = (body: object, { pictures }: ShownMessage): object => ({
  ...body,
  attachments: pictures.map(({ name, alt }, id) => ({ id, filename: name, description: alt.slice(0, 1024) })),
})

type Answered = { readonly is: 'done'; readonly value: unknown } | { readonly is: 'forbidden' | 'gone' }

async function answered(sending: Promise<unknown>): Promise<Answered> {
  try {
    return { is: 'done', value: await sending }
  } catch (error) {
    if (!(error instanceof DiscordAPIError)) throw error
    if (forbidden.includes(error.code)) return { is: 'forbidden' }
    if (gone.includes(error.code)) return { is: 'gone' }
    throw error
  }
}
