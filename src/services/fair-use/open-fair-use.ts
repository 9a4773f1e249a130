// Fair use: how much one person, one server and one channel may ask of this process before they are asked to wait.
//
// Each process counts for itself; `share-fair-use.ts` has what can come to several of them hold across all. What must hold exactly
// (open checks, one answer per click) is kept by the database.
import { type Buckets, openBuckets, type Rate } from './buckets.ts'

/** What is asked for: a click or command; the same with a file, which is fetched and read; suggestions while somebody types. */
export type Asked = 'act' | 'file' | 'suggestions'

export type TooMuch = {
  readonly code: 'too-fast' | 'too-many-files' | 'too-many-posts' | 'server-too-fast' | 'channel-too-fast'
  /** When it can go on, in seconds since 1970, as Discord's timestamps count. */
  readonly at: number
}

/** `Said`: at once in one process, later where it has to be asked for. */
export type FairUse<Said = TooMuch | undefined | Promise<TooMuch | undefined>> = {
  /** Takes what it costs from the person's bucket and the server's, or says from when on it can be had, and takes nothing. */
  admit(asked: Asked, person: string, server: string | null, now: number, tokens?: number): Said
  /** The same in two steps: what this process refuses by itself is known at once, and what has to be asked for is asked when it is called. */
  admitInTurn(asked: Asked, person: string, server: string | null, now: number, tokens?: number): TooMuch | (() => Said)
  /** The same for a message that others see because this person asked for it; `channel`: null where only the person is counted. */
  admitPost(person: string, channel: string | null, now: number): Said
}

export type Rates = {
  readonly person: Readonly<Record<Asked, Rate>>
  readonly server: Readonly<Record<Asked, Rate>>
  /** What is kept back on a server for those of its people who have asked for little: each one's part, and all of it. */
  readonly quiet?: { readonly person: Rate; readonly server: Rate }
  readonly posts: { readonly person: Rate; readonly channel: Rate }
}

/**
 * A whole check is about 60 clicks, and nobody reads four questions a second for long. A server's share is that of eight people
 * who press as fast as they may without ever pausing, or of a hundred who read what they are asked. Beside it so much is kept back
 * that forty people who read go on while a crowd has used the rest up: whoever presses faster than one reads has none of it.
 */
export const usual: Rates = {
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
  quiet: { person: { burst: 12, every_ms: 2_000 }, server: { burst: 200, every_ms: 50 } },
  posts: { person: { burst: 5, every_ms: 30_000 }, channel: { burst: 5, every_ms: 15_000 } },
}

/** What a person is told who has asked for too much of it. */
export const codes = { act: 'too-fast', file: 'too-many-files', suggestions: 'too-fast' } as const

export function openFairUse(rates: Rates = usual): FairUse<TooMuch | undefined> {
  const { person, server } = rates
  const open = ({ act, file, suggestions }: Rates['person']) => ({
    act: openBuckets(act),
    file: openBuckets(file),
    suggestions: openBuckets(suggestions),
  })
  const [people, servers] = [open(person), open(server)]
  const quiet = rates.quiet && { person: openBuckets(rates.quiet.person), server: openBuckets(rates.quiet.server) }
  const posts = { person: openBuckets(rates.posts.person), channel: openBuckets(rates.posts.channel) }
  const fairUse: FairUse<TooMuch | undefined> = {
    admit(asked, who, where, now, tokens = 1) {
      const own = { own: people[asked], who, is: codes[asked] }
      const shared = { shared: servers[asked], where, is: 'server-too-fast' as const }
      const tooMuch = admitTo(own, shared, now, tokens)
      if (asked !== 'act' || !quiet) return tooMuch
      const mine = `${where} ${who}`
      const isQuiet = quiet.person.wait(mine, now, tokens) === 0
      quiet.person.take(mine, now, tokens)
      if (tooMuch?.code !== 'server-too-fast' || where === null || !isQuiet) return tooMuch
      // A crowd locks out none of those who have asked for little.
      if (quiet.server.wait(where, now, tokens) > 0) return tooMuch
      quiet.server.take(where, now, tokens)
      own.own.take(who, now, tokens)
      return undefined
    },
    admitInTurn: (...asked) => fairUse.admit(...asked) ?? (() => undefined),
    admitPost: (who, where, now) =>
      admitTo(
        { own: posts.person, who, is: 'too-many-posts' },
        { shared: posts.channel, where, is: 'channel-too-fast' },
        now,
      ),
  }
  return fairUse
}

type Own = { readonly own: Buckets; readonly who: string; readonly is: TooMuch['code'] }
type Shared = { readonly shared: Buckets; readonly where: string | null; readonly is: TooMuch['code'] }

/** A token out of both, or out of neither. */
function admitTo(
  { own, who, ...mine }: Own,
  { shared, where, ...ours }: Shared,
  now: number,
  tokens = 1,
): TooMuch | undefined {
  const wait = own.wait(who, now, tokens)
  if (wait > 0) return { code: mine.is, at: inSeconds(now + wait) }
  const sharedWait = where === null ? 0 : shared.wait(where, now, tokens)
  if (sharedWait > 0) return { code: ours.is, at: inSeconds(now + sharedWait) }
  own.take(who, now, tokens)
  if (where !== null) shared.take(where, now, tokens)
  return undefined
}

/** Whoever comes back at that second finds a token. */
export const inSeconds = (ms: number): number => Math.ceil(ms / 1000)

/** Nobody is asked to wait: for measuring how much the bot can take. */
export const noLimits: FairUse<undefined> = {
  admit: () => undefined,
  admitInTurn: () => () => undefined,
  admitPost: () => undefined,
}
