// Finds figures with a unit in a claim: capacities, currents, masses, energies, voltages, resistances.
import { readNumber } from '../typed/read-number.ts'
import { type Dimension, type Unit, unitKey, unitsWritten } from '../typed/units.ts'
import { capacityGrade, currentSort } from './claim-words.ts'
import type { CurrentSort, Fact, Span } from './facts.ts'

interface Figure extends Span {
  readonly kind: ClaimedKind
  readonly values: readonly [number, ...number[]]
  /** Seconds named right behind a current: "45A (10 s)". */
  readonly seconds: number | null
}

type ClaimedKind = 'capacity' | 'current' | 'mass' | 'energy' | 'voltage' | 'resistance' | 'rate'

const kinds: Partial<Record<Dimension, ClaimedKind>> = {
  capacity: 'capacity',
  current: 'current',
  mass: 'mass',
  energy: 'energy',
  voltage: 'voltage',
  resistance: 'resistance',
}

// What a claim can be at all, however untrue: decides between two readings of a comma, refuses nothing.
const sane: Record<ClaimedKind, readonly [number, number]> = {
  capacity: [10, 1e6],
  current: [0.05, 1000],
  mass: [2, 5000],
  energy: [0.05, 5000],
  voltage: [0.5, 100],
  resistance: [0.5, 5000],
  rate: [0.1, 200],
}

// Groups of three after a space count as one number; "18650 3000" does not, for want of a free start.
const number = /(?<![\p{L}\d.,/])(\d{1,3}(?:[ \u00a0\u202f'’]\d{3})+(?!\d)(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+)/gu
const unitText = /^[ \u00a0\u202f-]?((?:[\p{L}Ωµμ°"″]+)(?:[ .·*-]?\p{L}+){0,2})/u

/** Figures in the order of the text, with what the words beside them say. `taken` are stretches that are no figures. */
export function findFigures(text: string, locale: string, taken: readonly Span[]): Fact[] {
  const figures: Figure[] = []
  // What is taken is blotted out, so that the 2 of "19/66-2 680 mAh" is no part of a number.
  const free = taken.reduce((rest, { from, to }) => rest.slice(0, from) + '|'.repeat(to - from) + rest.slice(to), text)
  for (const match of free.matchAll(number)) {
    const from = match.index
    if (figures.some(figure => from < figure.to)) continue
    const found = figureAt(text, from, match[0], locale)
    if (found) figures.push(found)
  }
  return withWords(text, figures, taken)
}

function figureAt(text: string, from: number, digits: string, locale: string): Figure | null {
  const read = readNumber(digits.replace(/\u00a0|\u202f/g, ' '), locale)
  if (!read.ok) return null
  const behind = unitBehind(text.slice(from + digits.length))
  if (!behind) return null
  const { kind, factor, length } = behind
  const [least, most] = sane[kind]
  const all = read.values.map(value => Number((value * factor).toPrecision(12)))
  const [first, ...others] = all.filter(value => value >= least && value <= most)
  if (first === undefined) return null
  const to = from + digits.length + length
  const seconds =
    /^[ ,/(@]*(?:for |f[uü]r |durante |pendant )?(\d{1,3}(?:[.,]\d)?) ?(?:s|sec|secs|seconds?|sek\.?|sekunden|seg|segundos|secondes)\b\)?/iu.exec(
      text.slice(to),
    )
  if (kind !== 'current' || !seconds) return { kind, from, to, values: [first, ...others], seconds: null }
  return {
    kind,
    from,
    to: to + seconds[0].length,
    values: [first, ...others],
    seconds: Number(seconds[1]!.replace(',', '.')),
  }
}

/** The unit that begins the text, in as many words as make one: "milliamp hours" before "milliamp". */
function unitBehind(text: string): { kind: ClaimedKind; factor: number; length: number } | null {
  const match = unitText.exec(text)
  if (!match) return null
  const gap = match[0].length - match[1]!.length
  const ends = [...match[1]!.matchAll(/[\p{L}Ωµμ°"″]+/gu)].map(word => word.index + word[0].length).reverse()
  for (const end of ends) {
    const written = match[1]!.slice(0, end)
    // "from 30 a 40 g", "de 30 à 40": a lower-case a apart from its number is a word. 10C is a rate, 20 °C is not.
    if (/^[aà]$/u.test(written) && gap > 0) continue
    if (/^c$/i.test(written)) return gap === 0 ? { kind: 'rate', factor: 1, length: end } : null
    const unit = unitsWritten(written).find(each => each.measures in kinds)
    if (unit) return { kind: kinds[unit.measures]!, factor: factorOf(unit, written), length: gap + end }
  }
  return null
}

function factorOf(unit: Unit, written: string): number {
  // No cell has a resistance of megohms; in a claim "MΩ" can only be a slip for mΩ.
  return unit.measures === 'resistance' && unitKey(written).startsWith('m') ? 1 : unit.factor
}

/** Gives each figure the words next to it: those behind it, unless those before it are still nobody's. */
function withWords(text: string, figures: readonly Figure[], taken: readonly Span[]): Fact[] {
  const edges = [...figures, ...taken]
  const facts: Fact[] = []
  let used = 0
  for (const figure of figures) {
    const start = Math.max(used, ...edges.filter(edge => edge.to <= figure.from).map(edge => edge.to))
    const end = Math.min(text.length, ...edges.filter(edge => edge.from >= figure.to).map(edge => edge.from))
    const before = text
      .slice(Math.max(start, figure.from - 24), figure.from)
      .split(/[,;|\n]/)
      .at(-1)!
    const behind = text.slice(figure.to, Math.min(end, figure.to + 24)).split(/[,;|\n]/)[0]!
    const read = factOf(figure, before, behind)
    if (read.fromBehind) used = figure.to + behind.length
    facts.push(read.fact)
  }
  return facts
}

type ReadFigure = {
  readonly fact: Fact
  /** The words behind the figure told its sort, so they are not the next one's. */
  readonly fromBehind: boolean
}

function factOf(figure: Figure, before: string, behind: string): ReadFigure {
  const { kind, values, seconds } = figure
  const [value] = values
  const span = { from: figure.from, to: figure.to }
  if (values.length > 1 && kind !== 'rate') {
    return { fact: { kind: 'unclear', of: kind, readings: values, span }, fromBehind: false }
  }
  const { sort, fromBehind } = sortOf(before, behind)
  switch (kind) {
    case 'rate':
      return { fact: { kind, C: value, sort, span }, fromBehind }
    case 'current':
      return {
        fact: { kind, A: value, sort: sort === 'unsaid' && seconds !== null ? 'pulse' : sort, seconds, span },
        fromBehind,
      }
    case 'capacity': {
      const [first, second] = [capacityGrade(before), capacityGrade(behind)]
      return {
        fact: { kind, mAh: value, grade: first ?? second ?? 'unsaid', span },
        fromBehind: !first && second !== null,
      }
    }
    case 'mass':
      return { fact: { kind, g: value, span }, fromBehind: false }
    case 'energy':
      return { fact: { kind, Wh: value, span }, fromBehind: false }
    case 'voltage':
      return { fact: { kind, V: value, span }, fromBehind: false }
    case 'resistance':
      return { fact: { kind, mΩ: value, span }, fromBehind: false }
  }
}

function sortOf(before: string, behind: string): { sort: CurrentSort; fromBehind: boolean } {
  const [first, second] = [currentSort(before), currentSort(behind)]
  // "max 30 A continuous": the more telling word wins, wherever it stands.
  if (first && first !== 'max') return { sort: first, fromBehind: false }
  if (second) return { sort: second, fromBehind: true }
  return { sort: first ?? 'unsaid', fromBehind: false }
}
