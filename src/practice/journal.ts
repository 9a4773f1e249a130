// Keeps what the bot asked for and how it was answered, without its secrets, up to a bound.
import type { Issue } from './rules/issue.ts'

export type Exchange = {
  readonly at: number
  readonly method: string
  /** The path without `/api/v10`; tokens are replaced by `[token]`. */
  readonly path: string
  readonly body: unknown
  readonly files: readonly { readonly name: string; readonly size: number }[]
  readonly status: number
  /** Discord's error code when the answer was a refusal. */
  readonly code: number | null
  readonly message: string | null
  readonly issues: readonly Issue[]
  /** The answer was ordered by a fault, not by the rules. */
  readonly byFault: boolean
}

export type Journal = {
  /** Every request, oldest first; the oldest fall off past the bound. */
  readonly exchanges: Exchange[]
  /** Those the rules refused, and those that a deferred check found wrong. */
  readonly complaints: Exchange[]
  add(exchange: Exchange): void
  complain(exchange: Exchange): void
  readonly listeners: Set<(complaint: Exchange) => void>
}

const mostKept = 2000

/** An empty journal that keeps the last 2000 requests. */
export function openJournal(): Journal {
  const exchanges: Exchange[] = []
  const complaints: Exchange[] = []
  const listeners = new Set<(complaint: Exchange) => void>()
  const keep = (list: Exchange[], one: Exchange) => {
    list.push(one)
    if (list.length > mostKept) list.splice(0, list.length - mostKept)
  }
  const complain = (exchange: Exchange) => {
    keep(complaints, exchange)
    for (const listener of listeners) listener(exchange)
  }
  return {
    exchanges,
    complaints,
    listeners,
    complain,
    add(exchange) {
      keep(exchanges, exchange)
      if (exchange.status >= 400 && !exchange.byFault) complain(exchange)
    },
  }
}

/** A path with interaction and webhook tokens taken out. */
export function withoutTokens(path: string): string {
  return path.replace(/^(\/(?:interactions|webhooks)\/[^/]+\/)[^/?]+/, '$1[token]')
}
