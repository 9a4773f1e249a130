// Posting where everybody in a channel sees it: mentions off, and once for a nonce, however often it is tried within minutes.
import { DiscordAPIError, MessageFlags, type REST, RESTJSONErrorCodes, Routes } from 'discord.js'
import type { ShownMessage } from './show/parts.ts'

/** `forbidden`: the bot may not post there; `gone`: there is no such channel any more. */
export type Posting = 'posted' | 'forbidden' | 'gone'
export type Post = (channel: string, shown: ShownMessage, nonce: string) => Promise<Posting>

const forbidden: readonly (string | number)[] = [
  RESTJSONErrorCodes.MissingAccess,
  RESTJSONErrorCodes.MissingPermissions,
  RESTJSONErrorCodes.CannotSendMessagesInNonTextChannel,
]

/** `nonce`: at most 25 characters. Rejects when Discord cannot be reached; trying again with the same nonce posts nothing twice. */
export const postOver =
  (rest: REST): Post =>
  async (channel, shown, nonce) => {
    try {
      await rest.post(Routes.channelMessages(channel), {
        body: {
          components: shown.components,
          flags: shown.flags | MessageFlags.SuppressNotifications,
          allowed_mentions: { parse: [] },
          nonce,
          enforce_nonce: true,
        },
      })
      return 'posted'
    } catch (error) {
      if (!(error instanceof DiscordAPIError)) throw error
      if (forbidden.includes(error.code)) return 'forbidden'
      if (error.code === RESTJSONErrorCodes.UnknownChannel) return 'gone'
      throw error
    }
  }
