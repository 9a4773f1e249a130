// Reads typed figures of a data sheet: capacity in mAh or Ah, currents in A with their temperature, mass in g.
import type { Figures } from './facts/facts-schema.ts'

export type ReadFigures =
  | { readonly ok: true; readonly figures: Figures }
  | { readonly ok: false; readonly what: string }

export type TypedFigures = {
  readonly typical: string
  readonly least: string
  readonly current: string
  readonly mass: string
}

const number = String.raw`(\d{1,6}(?:[.,]\d{1,3})?)`
/** A comma or point before three digits after at most two is one of thousands, as in 2,500 mAh. */
const milliampHours = (typed: string): number =>
  /^\d{1,2}[.,]\d{3}$/.test(typed) ? Number(typed.replace(/[.,]/, '')) : Number(typed.replace(',', '.'))

function capacityOf(typed: string): number | undefined {
  const read = new RegExp(`^${number}\\s*(mAh|Ah)?$`, 'i').exec(typed)
  if (!read) return undefined
  const unit = (read[2] ?? 'mAh').toLowerCase()
  const value = unit === 'ah' ? Number((read[1] ?? '').replace(',', '.')) * 1000 : milliampHours(read[1] ?? '')
  return value >= 50 && value <= 50_000 ? Math.round(value) : undefined
}

function currentOf(typed: string): NonNullable<Figures['currents']>[number] | undefined {
  const read = new RegExp(`^${number}\\s*A?(?:\\D*?(\\d{2,3})\\s*°?\\s*C?\\D*)?$`, 'i').exec(typed)
  if (!read || /mA\b/i.test(typed)) return undefined
  const amps = Number((read[1] ?? '').replace(',', '.'))
  const cutOff = read[2] === undefined ? ('not-said' as const) : Number(read[2])
  if (amps < 0.1 || amps > 500 || (typeof cutOff === 'number' && (cutOff < 40 || cutOff > 120))) return undefined
  return { amps, cutOff }
}

function massOf(typed: string): number | undefined {
  const read = new RegExp(`^${number}\\s*g?$`, 'i').exec(typed)
  const value = read ? Number((read[1] ?? '').replace(',', '.')) : Number.NaN
  return value >= 5 && value <= 200 ? value : undefined
}

/** What was left empty is no figure; the first that cannot be read is named. `before`: figures the form does not ask for. */
export function readFigures(typed: TypedFigures, before: Figures): ReadFigures {
  const unreadable = (what: string): ReadFigures => ({ ok: false, what })
  const { size, resistance, mass: old } = before
  const figures: Figures = { ...(size && { size }), ...(resistance && { resistance }) }
  const [typical, least, current, mass] = [typed.typical, typed.least, typed.current, typed.mass].map(one => one.trim())
  if (typical) {
    const value = capacityOf(typical)
    if (value === undefined) return unreadable(typical)
    const low = least ? capacityOf(least) : undefined
    if (least && low === undefined) return unreadable(least)
    figures.capacity = { typical: value, ...(low !== undefined && { least: low }) }
  } else if (least) return unreadable(least)
  if (current) {
    const currents = current.split(/[;,]\s+|;/).map(one => one.trim())
    const read = currents.map(currentOf)
    const wrong = read.indexOf(undefined)
    if (wrong >= 0 || read.length > 3) return unreadable(currents[Math.max(0, wrong)] ?? current)
    figures.currents = read.filter(one => one !== undefined)
  }
  if (mass) {
    const middle = massOf(mass)
    if (middle === undefined) return unreadable(mass)
    figures.mass = { middle, cells: 1, from: 'sheet' }
  } else if (old?.from === 'references') figures.mass = old
  return { ok: true, figures }
}

/** What stands on a cell, such as "2500 mAh 20 A": its capacity and current, as far as they can be read. */
export function readPrinted(printed: string): ReadFigures {
  const capacity = new RegExp(`${number}\\s*(mAh|Ah)`, 'i').exec(printed)
  const rest = capacity ? printed.replace(capacity[0], ' ') : printed
  const current = new RegExp(`${number}\\s*A\\b`).exec(rest)
  if (printed.trim() !== '' && !capacity && !current) return { ok: false, what: printed.trim() }
  return readFigures({ typical: capacity?.[0] ?? '', least: '', current: current?.[0] ?? '', mass: '' }, {})
}
