// CELLWARY_SHARDS: which connections a process makes, as a range of all, or as the part of one of several processes.
import type { ShardRange } from '../discord/gateway/sharding.ts'

const form = 'Write 0-3/16 (connections 0 to 3 of 16), 5/16 (one of them), or 1of4/16 (the second of four processes).'
/** Discord has no more for anybody. */
const most = 10_000

export type ReadShards =
  | { readonly ok: true; readonly range: ShardRange }
  | { readonly ok: false; readonly why: string }

const wrong = (why: string): ReadShards => ({ ok: false, why })

export function readShards(text: string): ReadShards {
  const read = /^(?:(\d{1,5})(?:-(\d{1,5}))?|(\d{1,5})of(\d{1,5}))\/(\d{1,5})$/.exec(text.replaceAll(' ', ''))
  if (!read) return wrong(`“${text}” is no range of connections. ${form}`)
  const [first, last, part, parts, count] = read.slice(1).map(one => (one === undefined ? undefined : Number(one)))
  if (count === undefined || count < 1 || count > most)
    return wrong(`There are between 1 and ${most} connections. ${form}`)
  if (part !== undefined && parts !== undefined) {
    if (part >= parts)
      return wrong(`The ${parts} processes are numbered from 0 to ${parts - 1}; there is no ${part}. ${form}`)
    if (parts > count) return wrong(`${parts} processes cannot share ${count} connections. ${form}`)
    const from = Math.floor((part * count) / parts)
    return { ok: true, range: rangeOf(from, Math.floor(((part + 1) * count) / parts) - 1, count) }
  }
  const [from, to] = [first ?? 0, last ?? first ?? 0]
  if (from > to) return wrong(`The range ${from}-${to} is the wrong way round. ${form}`)
  if (to >= count)
    return wrong(`The ${count} connections are numbered from 0 to ${count - 1}; there is no ${to}. ${form}`)
  return { ok: true, range: rangeOf(from, to, count) }
}

const rangeOf = (from: number, to: number, count: number): ShardRange => ({
  ids: Array.from({ length: to - from + 1 }, (_, i) => from + i),
  count,
})
