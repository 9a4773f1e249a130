// Fair use: how much one person, one server and one channel may ask of this process before they are asked to wait.
//
// Each process counts for itself: a server is at home in one shard and so in one process, a person with servers in several gets
// their share in each. What must hold across processes (open checks, one answer per click) is kept by the database.
import { openBuckets, type Rate } from './buckets.ts'

/** What is asked for: a click or command; the same with a file, which is fetched and read; suggestions while somebody types. */
export type Asked = 'act' | 'file' | 'suggestions'

export type TooMuch = {
  readonly code: 'too-fast' | 'too-many-files' | 'server-too-fast' | 'channel-too-fast'
  /** When it can go on, in seconds since 1970, as Discord's timestamps count. */
  readonly at: number
}

export type FairUse = {
  /** Takes what it costs from the person's bucket and the server's, or says from when on it can be had, and takes nothing. */
  admit(asked: Asked, person: string, server: string | null, now: number): TooMuch | undefined
  /** The same for a post that everybody in a channel sees because somebody pressed a button for it. */
  admitPost(channel: string, now: number): TooMuch | undefined
}

export type Rates = {
  readonly person: Readonly<Record<Asked, Rate>>
  readonly server: Readonly<Record<Asked, Rate>>
  readonly posts: Rate
}

/**
 * A whole check is about 60 clicks, and nobody reads four questions a second for long. A server's share is that of eight people
 * who press as fast as they may without ever pausing, or of a hundred who read what they are asked.
 */
const usual: Rates = {
  person: {
    act: { burst: 100, every_ms: 250 },
    file: { burst: 6, every_ms: 30_000 },
    suggestions: { burst: 60, every_ms: 200 },
  },
  server: {
    act: { burst: 600, every_ms: 33 },
    file: { burst: 60, every_ms: 2_000 },
    suggestions: { burst: 600, every_ms: 20 },
  },
  posts: { burst: 3, every_ms: 20_000 },
}

export function openFairUse({ person, server, posts }: Rates = usual): FairUse {
  const open = (rates: Rates['person']) => ({
    act: openBuckets(rates.act),
    file: openBuckets(rates.file),
    suggestions: openBuckets(rates.suggestions),
  })
  const [people, servers, channels] = [open(person), open(server), openBuckets(posts)]
  return {
    admit(asked, who, where, now) {
      const [own, shared] = [people[asked], servers[asked]]
      const wait = own.wait(who, now)
      if (wait > 0) return { code: asked === 'file' ? 'too-many-files' : 'too-fast', at: inSeconds(now + wait) }
      const sharedWait = where === null ? 0 : shared.wait(where, now)
      if (sharedWait > 0) return { code: 'server-too-fast', at: inSeconds(now + sharedWait) }
      own.take(who, now)
      if (where !== null) shared.take(where, now)
      return undefined
    },
    admitPost(channel, now) {
      const wait = channels.wait(channel, now)
      if (wait > 0) return { code: 'channel-too-fast', at: inSeconds(now + wait) }
      channels.take(channel, now)
      return undefined
    },
  }
}

/** Whoever comes back at that second finds a token. */
const inSeconds = (ms: number): number => Math.ceil(ms / 1000)

/** Nobody is asked to wait: for measuring how much the bot can take. */
export const noLimits: FairUse = { admit: () => undefined, admitPost: () => undefined }
