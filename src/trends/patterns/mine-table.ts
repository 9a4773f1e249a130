// Patterns in a table someone brings: the room's own mining, open to be held against other libraries.
import { type Mined, type MiningOptions, minePatterns, type Row } from './rising-patterns.ts'

export type TableRefusal =
  | { readonly code: 'too-many'; readonly what: 'rows' | 'items'; readonly count: number; readonly most: number }
  | { readonly code: 'not-an-item'; readonly row: number }
  | { readonly code: 'one-sided'; readonly recent: number; readonly earlier: number }
  | {
      readonly code: 'out-of-range'
      readonly field: keyof MiningOptions
      readonly least: number
      readonly most: number
    }

export type TableResult =
  | { readonly ok: true; readonly mined: Mined }
  | { readonly ok: false; readonly refusal: TableRefusal }

const mostRows = 200_000
/** Sets of three out of more would be millions. */
const mostItems = 150

/** Mines a table, after checking that it is one: items that are text, some rows recent and some not, and not too many of either. */
export function mineTable(rows: readonly Row[], options: MiningOptions = {}): TableResult {
  const refusal = refuse(rows, options)
  return refusal === undefined ? { ok: true, mined: minePatterns(rows, options) } : { ok: false, refusal }
}

function refuse(rows: readonly Row[], options: MiningOptions): TableRefusal | undefined {
  if (rows.length > mostRows) return { code: 'too-many', what: 'rows', count: rows.length, most: mostRows }
  const items = new Set<string>()
  for (const [i, row] of rows.entries()) {
    const bad = row.items.some(item => typeof item !== 'string' || item === '' || item.length > 200)
    if (bad) return { code: 'not-an-item', row: i + 1 }
    for (const item of row.items) items.add(item)
  }
  if (items.size > mostItems) return { code: 'too-many', what: 'items', count: items.size, most: mostItems }
  const recent = rows.filter(row => row.recent).length
  if (recent === 0 || recent === rows.length) return { code: 'one-sided', recent, earlier: rows.length - recent }
  const ranges = { largest: [1, 3], leastSupport: [1, mostRows], level: [1e-12, 0.5] } as const
  for (const [field, [least, most]] of Object.entries(ranges) as [keyof MiningOptions, readonly [number, number]][]) {
    const value = options[field]
    const whole = field === 'level' || Number.isInteger(value)
    if (value !== undefined && !(value >= least && value <= most && whole))
      return { code: 'out-of-range', field, least, most }
  }
  return undefined
}
