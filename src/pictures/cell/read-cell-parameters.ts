// Reads picture parameters that came from a rule pack, and names the key and the allowed values when one is wrong.
import { type CellParameters, choices, counts, parts, switches, usualCell, views } from './parameters.ts'

type Value = string | number | boolean

export type CellRefusal = {
  code: 'unknown-parameter' | 'value-not-allowed' | 'part-not-in-view'
  key: string
  value: Value
  /** what may stand there instead */
  allowed: readonly string[]
}

export type ReadCell = { ok: true; params: CellParameters } | { ok: false; refusal: CellRefusal }

const parameterNames = [...Object.keys(choices), ...Object.keys(counts), ...switches, 'pointAt']

const has = <T extends object>(table: T, key: string): key is Extract<keyof T, string> => Object.hasOwn(table, key)

/** Every value a key may take, as text for people who write packs; undefined for a key that does not exist. */
export function allowedValues(key: string): readonly string[] | undefined {
  if (has(choices, key)) return choices[key]
  if (has(counts, key)) {
    const { least, most } = counts[key]
    return Array.from({ length: most - least + 1 }, (_, i) => String(least + i))
  }
  if ((switches as readonly string[]).includes(key)) return ['true', 'false']
  if (key === 'pointAt') return ['none', ...new Set(views.flatMap(view => parts[view] as readonly string[]))]
  return undefined
}

/**
 * Validates one flat record. Formats may be written as numbers (18650), everything else in its own type. Left out
 * means the default. The first key that is wrong is refused, in the order written; a part that the chosen view cannot
 * show is refused with the parts it can.
 */
export function readCellParameters(raw: Readonly<Record<string, Value>>): ReadCell {
  const params: Record<string, Value> = { ...usualCell }
  for (const [key, value] of Object.entries(raw)) {
    const allowed = allowedValues(key)
    if (allowed === undefined)
      return { ok: false, refusal: { code: 'unknown-parameter', key, value, allowed: parameterNames } }
    const read = key === 'format' && typeof value === 'number' ? String(value) : value
    const kind = has(counts, key) ? 'number' : (switches as readonly string[]).includes(key) ? 'boolean' : 'string'
    if (typeof read !== kind || !allowed.includes(String(read))) {
      return { ok: false, refusal: { code: 'value-not-allowed', key, value, allowed } }
    }
    params[key] = read
  }
  const complete = params as CellParameters
  const visible: readonly string[] = ['none', ...parts[complete.view]]
  if (!visible.includes(complete.pointAt)) {
    const refusal = { code: 'part-not-in-view', key: 'pointAt', value: complete.pointAt, allowed: visible } as const
    return { ok: false, refusal }
  }
  return { ok: true, params: complete }
}
