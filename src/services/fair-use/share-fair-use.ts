// Fair use among several processes: what was let through here is taken from the buckets they share, too.
import { LRUCache } from 'lru-cache'
import { type Asked, codes, type FairUse, inSeconds, type Rates, type TooMuch, usual } from './open-fair-use.ts'
import type { SharedBuckets, Wanted } from './shared-buckets.ts'

/**
 * What may come to any of them. `people`: a server and its channels are at home in one process, and people are not. `all`: one request
 * goes here and the next there, as behind a load balancer. `posts`: what a person has posted for others, and nothing else.
 */
export type Shared = 'all' | 'people' | 'posts'

/** So many waits are remembered, so that whoever presses on meanwhile costs no statement. */
const mostWaits = 10_000

/** While the shared buckets cannot be reached each process counts for itself; `told` hears of it. */
export function shareFairUse(
  local: FairUse<TooMuch | undefined>,
  buckets: SharedBuckets,
  shared: Shared,
  told: (error: unknown) => void,
  rates: Rates = usual,
): FairUse {
  const until = new LRUCache<string, number>({ max: mostWaits })

  /** What is known of a wait. A clock that was set back does not prolong it: then it is asked for again. */
  function known({ of, rate }: Wanted, now: number): number {
    const wait = (until.get(of) ?? now) - now
    return wait > rate.burst * rate.every_ms ? 0 : Math.max(0, wait)
  }

  /** From all of them or from none, but for those that are taken always; what each waits for. */
  async function take(wanted: readonly Wanted[], now: number): Promise<readonly number[]> {
    const waits = await buckets.take(wanted)
    const refused = wanted.filter((one, i) => !one.always && waits[i])
    if (refused.length === 0) return waits
    for (const one of refused) until.set(one.of, now + (waits[wanted.indexOf(one)] ?? 0))
    const inVain = wanted.filter(one => !one.always && !refused.includes(one))
    if (inVain.length > 0) await buckets.giveBack(inVain)
    return waits
  }

  /** The person's own, and the server's where that is shared. */
  async function admitted(asked: Asked, who: string, where: string | null, now: number, tokens: number) {
    const mine: Wanted = { of: `${asked} person ${who}`, rate: rates.person[asked], tokens }
    const refuseMine = (wait: number) => tooMuch(codes[asked], wait, now)
    const wait = known(mine, now)
    if (wait > 0) return refuseMine(wait)
    if (shared !== 'all' || where === null) return refuseMine((await take([mine], now))[0] ?? 0)

    const ours: Wanted = { of: `${asked} server ${where}`, rate: rates.server[asked], tokens }
    const quiet: Wanted[] =
      asked === 'act' && rates.quiet
        ? [{ of: `quiet ${where} ${who}`, rate: rates.quiet.person, tokens, always: true }]
        : []
    const crowded = known(ours, now)
    const [own = 0, server = 0, loud] =
      crowded > 0
        ? [0, crowded, ...(quiet.length > 0 ? await buckets.take(quiet) : [])]
        : await take([mine, ours, ...quiet], now)
    if (own > 0) return refuseMine(own)
    if (server === 0) return undefined
    // A crowd locks out none of those who have asked for little.
    if (loud === 0 && rates.quiet) {
      const keptBack: Wanted = { of: `quiet server ${where}`, rate: rates.quiet.server, tokens }
      const [still = 0, left = 0] = known(keptBack, now) > 0 ? [0, 1] : await take([mine, keptBack], now)
      if (still === 0 && left === 0) return undefined
    }
    return tooMuch('server-too-fast', server, now)
  }

  async function posted(who: string, where: string | null, now: number): Promise<TooMuch | undefined> {
    const mine: Wanted = { of: `post person ${who}`, rate: rates.posts.person, tokens: 1 }
    const there: Wanted[] =
      shared === 'all' && where !== null ? [{ of: `post channel ${where}`, rate: rates.posts.channel, tokens: 1 }] : []
    const [own = 0, channel = 0] = await take([mine, ...there], now)
    return tooMuch('too-many-posts', own, now) ?? tooMuch('channel-too-fast', channel, now)
  }

  const orAlone = (asked: Promise<TooMuch | undefined>) =>
    asked.catch(error => {
      told(error)
      return undefined
    })

  const admitInTurn: FairUse['admitInTurn'] = (asked, who, where, now, tokens = 1) => {
    const here = local.admitInTurn(asked, who, where, now, tokens)
    if (typeof here !== 'function' || shared === 'posts') return here
    return () => orAlone(admitted(asked, who, where, now, tokens))
  }
  return {
    admitInTurn,
    async admit(...asked) {
      const here = admitInTurn(...asked)
      return typeof here === 'function' ? here() : here
    },
    admitPost: async (who, where, now) => (await local.admitPost(who, where, now)) ?? orAlone(posted(who, where, now)),
  }
}

const tooMuch = (code: TooMuch['code'], wait: number, now: number): TooMuch | undefined =>
  wait > 0 ? { code, at: inSeconds(now + wait) } : undefined
