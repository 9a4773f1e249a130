// Matches a method and a path to a handler.
import type { Room } from '../room.ts'
import type { Json } from '../world/raw.ts'
import type { SentFile } from '../world/write-message.ts'
import type { Answer } from './answer.ts'

export type Asked = {
  readonly room: Room
  readonly params: Readonly<Record<string, string>>
  readonly query: URLSearchParams
  readonly json: Json
  readonly list: readonly unknown[] | null
  readonly files: readonly SentFile[]
}

export type Route = {
  readonly method: string
  readonly steps: readonly string[]
  /** The secret is in the path, so no bot token is asked for. */
  readonly open: boolean
  readonly handle: (asked: Asked) => Answer
}

/** A route such as `POST /channels/:channel/messages`; `:name` takes one step of the path. */
export function route(pattern: string, handle: Route['handle'], open = false): Route {
  const [method = '', path = ''] = pattern.split(' ')
  return { method, steps: path.split('/').slice(1), open, handle }
}

/** The first route that fits, with its parameters decoded; null when none does. */
export function findRoute(
  routes: readonly Route[],
  method: string,
  path: string,
): { route: Route; params: Record<string, string> } | null {
  const steps = path.split('/').slice(1)
  for (const one of routes) {
    if (one.method !== method || one.steps.length !== steps.length) continue
    const params: Record<string, string> = {}
    const fits = one.steps.every((step, at) => {
      const given = decode(steps[at] ?? '')
      if (!step.startsWith(':')) return step === given
      params[step.slice(1)] = given
      return given !== ''
    })
    if (fits) return { route: one, params }
  }
  return null
}

function decode(step: string): string {
  try {
    return step.includes('%') ? decodeURIComponent(step) : step
  } catch {
    return ''
  }
}
