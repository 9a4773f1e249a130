// What a route of the REST side is, and what its handler is given.
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
  readonly path: string
  /** The secret is in the path, so no bot token is asked for. */
  readonly open: boolean
  readonly handle: (asked: Asked) => Answer
}

/** A route such as `POST /channels/:channel/messages`; `:name` takes one step of the path. */
export function route(pattern: string, handle: Route['handle'], open = false): Route {
  const [method = '', path = ''] = pattern.split(' ')
  return { method, path, open, handle }
}
