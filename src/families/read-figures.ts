// Reads typed figures of a label or data sheet out of one line, told apart by their units, and writes them so again.
import type { Figures } from './facts/facts-schema.ts'

export type ReadFigures =
  | { readonly ok: true; readonly figures: Figures }
  | { readonly ok: false; readonly what: string }

type Capacity = NonNullable<Figures['capacity']>
type Current = NonNullable<Figures['currents']>[number]

/** So much is typed at most; more is refused by the form already. */
const mostTyped = 120
const amount = String.raw`\d{1,6}(?:[.,]\d{1,3})?`
const quantity = new RegExp(String.raw`(${amount})\s{0,3}(mAh|Ah|Wh|A|V|°\s?C|C|g)(?![\p{L}\d])`, 'giu')
/** Says that a capacity is the least that is guaranteed: minimum, at least, mindestens, mínimo, al menos. */
const least = /\b(min|mín|at least|al menos)|≥/iu

/** A comma or point before three digits after at most two is one of thousands, as in 2,500 mAh. */
const milliampHours = (typed: string): number =>
  /^\d{1,2}[.,]\d{3}$/.test(typed) ? Number(typed.replace(/[.,]/, '')) : decimal(typed)
const decimal = (typed: string): number => Number(typed.replace(',', '.'))

type Found = { readonly value: string; readonly unit: string; readonly before: string; readonly typed: string }

/** Every figure with its unit, and the words in front of each; undefined where a number is left that has no unit of a figure. */
function figuresIn(line: string): Found[] | { readonly left: string } {
  const found: Found[] = []
  let end = 0
  const between: string[] = []
  for (const match of line.matchAll(quantity)) {
    const before = line.slice(end, match.index)
    between.push(before)
    const unit = (match[2] ?? '').replace(/\s/, '').toLowerCase()
    found.push({ value: match[1] ?? '', unit: unit === 'c' ? '°c' : unit, before, typed: match[0] })
    end = match.index + match[0].length
  }
  between.push(line.slice(end))
  const left = between.find(one => /\d/.test(one))
  if (left !== undefined) return { left: left.replace(/^[\s,;·]+|[\s,;·]+$/g, '') }
  return found
}

/** What was left empty is no figure; the first that cannot be read is named. `before`: figures the line does not hold stay. */
export function readFigures(typed: string, before: Figures = {}): ReadFigures {
  const line = typed.trim().slice(0, mostTyped)
  const found = figuresIn(line)
  if ('left' in found) return { ok: false, what: found.left }
  const of = (...units: string[]) => found.filter(one => units.includes(one.unit))
  // Voltage and energy stand on many labels; they tell families apart by nothing, so one is read over where it can be one.
  const beside = of('v', 'wh')
  const [strange] = beside.filter(({ unit, value }) => decimal(value) > (unit === 'v' ? 5 : 100))
  if (strange) return { ok: false, what: strange.typed }
  if (found.length === beside.length && line !== '') return { ok: false, what: line }
  const capacity = capacityOf(of('mah', 'ah'), before.capacity)
  if (capacity && 'what' in capacity) return { ok: false, what: capacity.what }
  const currents = currentsOf(of('a', '°c'), before.currents)
  if (currents && 'what' in currents) return { ok: false, what: currents.what }
  const mass = massOf(of('g'))
  if (mass && 'what' in mass) return { ok: false, what: mass.what }
  const { size, resistance, mass: weighed } = before
  const middle = mass ? { middle: mass.grams, cells: 1, from: 'sheet' as const } : undefined
  const heavy = middle ?? (weighed?.from === 'references' ? weighed : undefined)
  return {
    ok: true,
    figures: {
      ...(capacity && { capacity: capacity.figure }),
      ...(currents && { currents: currents.list }),
      ...(heavy && { mass: heavy }),
      ...(size && { size }),
      ...(resistance && { resistance }),
    },
  }
}

type Unreadable = { readonly what: string }

/** Of two capacities the smaller is the least; one that is said to be the least needs the typical one beside it. */
function capacityOf(
  found: readonly Found[],
  before: Capacity | undefined,
): { figure: Capacity } | Unreadable | undefined {
  const read = found.map(one => {
    const value = Math.round(one.unit === 'ah' ? decimal(one.value) * 1000 : milliampHours(one.value))
    return { ...one, value, isLeast: least.test(one.before) }
  })
  const [first, second] = read
  if (!first) return undefined
  const wrong = read.find(({ value }) => value < 50 || value > 50_000) ?? read[2]
  if (wrong) return { what: wrong.typed }
  if (!second) {
    if (first.isLeast) return { what: first.typed }
    const limit = before?.typical === first.value ? before.limit : undefined
    return { figure: { typical: first.value, ...(limit !== undefined && { limit }) } }
  }
  const low = read.find(one => one.isLeast) ?? (first.value <= second.value ? first : second)
  const typical = low === first ? second.value : first.value
  const limit = before?.typical === typical ? before.limit : undefined
  return { figure: { typical, least: low.value, ...(limit !== undefined && { limit }) } }
}

/** A temperature belongs to the current in front of it. */
function currentsOf(
  found: readonly Found[],
  before: Figures['currents'] = [],
): { list: Current[] } | Unreadable | undefined {
  const list: Current[] = []
  for (const one of found) {
    const value = decimal(one.value)
    const last = list.at(-1)
    if (one.unit === 'a') {
      if (value < 0.1 || value > 500 || list.length === 3) return { what: one.typed }
      list.push({ amps: value, cutOff: 'not-said' })
    } else if (last?.cutOff !== 'not-said' || value < 40 || value > 120) return { what: one.typed }
    else list[list.length - 1] = { amps: last.amps, cutOff: value }
  }
  // That a sheet names no limit of temperature is not typed, and stays known.
  const uncut = (amps: number) => before.some(one => one.amps === amps && one.cutOff === 'none')
  const settled = list.map(one =>
    one.cutOff === 'not-said' && uncut(one.amps) ? { ...one, cutOff: 'none' as const } : one,
  )
  return settled.length > 0 ? { list: settled } : undefined
}

function massOf(found: readonly Found[]): { grams: number } | Unreadable | undefined {
  const [first, second] = found
  if (second) return { what: second.typed }
  if (!first) return undefined
  const grams = decimal(first.value)
  return grams >= 5 && grams <= 200 ? { grams } : { what: first.typed }
}

/** One weight in g, its unit left out or not. */
export function readMass(typed: string): ReadFigures {
  const line = typed.trim()
  const read = readFigures(/\d$/.test(line) ? `${line} g` : line)
  const others = read.ok && (read.figures.capacity || read.figures.currents)
  return others ? { ok: false, what: line } : read
}

/** The figures that a line holds, as it would be typed; what references have weighed is none of them. */
export function writeFigures({ capacity, currents = [], mass }: Figures): string {
  return [
    ...(capacity ? [`${capacity.typical} mAh`] : []),
    ...(capacity?.least === undefined ? [] : [`min ${capacity.least} mAh`]),
    ...currents.map(({ amps, cutOff }) => (typeof cutOff === 'number' ? `${amps} A ${cutOff} °C` : `${amps} A`)),
    ...(mass?.from === 'sheet' ? [`${mass.middle} g`] : []),
  ].join(', ')
}
