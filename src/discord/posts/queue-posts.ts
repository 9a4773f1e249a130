// Sends what channels see in order of urgency: one message at a time in each channel, so many channels at once, so many waiting.
import PQueue from 'p-queue'
import type { Posts, Urgency } from './post.ts'

const priorities: Readonly<Record<Urgency, number>> = { waited: 2, panel: 1, quiet: 0 }

/** More than these waiting for one channel means that Discord does not keep up, or that somebody overdoes it. */
const mostWaiting = 25
/** Discord takes 50 requests a second of a bot; channels that answer slowly must not hold up the others. */
const mostChannels = 16

/** The channel has more messages waiting than will be sent in time; trouble, as `errors.ts` reads it. */
class ChannelFull extends Error {
  readonly code = 'CHANNEL_FULL'
}

/** Rejects at once with `ChannelFull` where too many wait; whatever is sent keeps its nonce, so trying again is harmless. */
export function queuePosts(posts: Posts): Posts {
  const channels = new Map<string, PQueue>()
  const everywhere = new PQueue({ concurrency: mostChannels })

  /** A queue is kept as long as something is in it. */
  function letGoWhenIdle(channel: string, queue: PQueue): void {
    void queue.onIdle().then(() => {
      if (queue.size + queue.pending > 0) letGoWhenIdle(channel, queue)
      else channels.delete(channel)
    })
  }

  async function inTurn<T>(channel: string, urgency: Urgency, send: () => Promise<T>): Promise<T> {
    const known = channels.get(channel)
    const queue = known ?? new PQueue({ concurrency: 1 })
    if (queue.size >= mostWaiting) throw new ChannelFull(`${queue.size} messages are waiting for a channel`)
    const priority = priorities[urgency]
    const sent = queue.add(() => everywhere.add(send, { priority }), { priority })
    if (!known) {
      channels.set(channel, queue)
      letGoWhenIdle(channel, queue)
    }
    return sent
  }

  return {
    post: (channel, shown, nonce, ping, urgency = 'waited') =>
      inTurn(channel, urgency, () => posts.post(channel, shown, nonce, ping, urgency)),
    reply: (channel, to, shown, nonce) => inTurn(channel, 'waited', () => posts.reply(channel, to, shown, nonce)),
    redraw: (place, shown) => inTurn(place.channel, 'panel', () => posts.redraw(place, shown)),
    hasRole: (server, role) => posts.hasRole(server, role),
    isOpenToAll: channel => posts.isOpenToAll(channel),
    remove: place => inTurn(place.channel, 'panel', () => posts.remove(place)),
  }
}
