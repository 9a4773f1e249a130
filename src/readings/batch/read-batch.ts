// Reads the values of a batch as people type them in one field: "43.1, 44.9, 46.8 g", "43,1 44,9 46,8".
import { type MeasuredUnit, measuredUnit } from '../../ground/quantities.ts'
import { readTyped, type TypedRefusal } from '../read-typed.ts'
import { type BatchQuantity, fewestInBatch, longestBatch, mostInBatch } from './lot-spread.ts'

export type BatchRefusal =
  | { readonly code: 'too-few-values'; readonly count: number; readonly fewest: number }
  | { readonly code: 'too-many-values'; readonly count: number; readonly most: number }
  /** "45,46,47.5": a comma between figures, or in them. */
  | { readonly code: 'commas'; readonly typed: string }
  /** About ten times as much, or as little, as the others: a digit too many, or a mark in the wrong place. */
  | {
      readonly code: 'ten-times'
      readonly place: number
      readonly value: number
      readonly other: number
      readonly unit: MeasuredUnit
    }
  | { readonly code: 'value'; readonly place: number; readonly typed: string; readonly refusal: TypedRefusal }

export type ReadBatch =
  | {
      readonly ok: true
      /** In g or mAh, in the order they were typed. */
      readonly values: readonly number[]
      /** The step of the last digit typed, same unit: what the display showed. */
      readonly resolution: number
    }
  | { readonly ok: false; readonly refusal: BatchRefusal }

// A number with at most one mark inside, as displays show them; then its unit, where one stands behind it.
const value = /(?<![\d.,])([+-]?\d+(?:[.,]\d+)?)(?![\d]|[.,]\d) ?(\p{L}{1,20})?/gu

/**
 * Reads up to a hundred values. A unit behind the last one holds for all that have none, g or mAh where there is no unit at all; what cannot be read is refused
 * with its place, and nothing of the rest is guessed.
 */
export function readBatch(text: string, quantity: BatchQuantity, locale: string): ReadBatch {
  const separated = separate(text.slice(0, longestBatch))
  if (!separated.ok) return { ok: false, refusal: { code: 'commas', typed: separated.chain } }
  const typed = [...separated.text.matchAll(value)].map(match => ({ number: match[1]!, unit: match[2] ?? '' }))
  const count = typed.length
  if (count < fewestInBatch) return { ok: false, refusal: { code: 'too-few-values', count, fewest: fewestInBatch } }
  if (count > mostInBatch) return { ok: false, refusal: { code: 'too-many-values', count, most: mostInBatch } }
  const last = typed.findLast(({ unit }) => unit !== '')?.unit ?? measuredUnit[quantity]
  const values: number[] = []
  let resolution = Number.POSITIVE_INFINITY
  for (const [at, { number, unit }] of typed.entries()) {
    const written = `${number} ${unit || last}`.trim()
    const read = readTyped(written, quantity, locale)
    if (!read.ok) return { ok: false, refusal: { code: 'value', place: at + 1, typed: written, refusal: read.refusal } }
    values.push(read.value)
    const decimals = /[.,](\d+)$/.exec(number)?.[1]?.length ?? 0
    const scale = read.value / Number(number.replace(',', '.'))
    resolution = Math.min(resolution, 10 ** -decimals * (Number.isFinite(scale) ? scale : 1))
  }
  const slip = tenTimesOff(values)
  if (slip) return { ok: false, refusal: { code: 'ten-times', ...slip, unit: measuredUnit[quantity] } }
  return { ok: true, values, resolution }
}

type Separated = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly chain: string }

/**
 * The text with blanks for the commas that part figures: those before a blank, all of them where points are the decimals, and those in a
 * chain of whole numbers of one length ("45,46,47"). Another chain can be read in two ways.
 */
function separate(text: string): Separated {
  const plain = text.normalize('NFKC').replace(/\u2212/g, '-')
  if (/\d\.\d/.test(plain)) return { ok: true, text: plain.replaceAll(',', ' ') }
  const chains = plain.match(/(?<![\d,])\d+(?:,\d+){2,}/g) ?? []
  const odd = chains.find(chain => new Set(chain.split(',').map(({ length }) => length)).size > 1 || chain.length < 8)
  if (odd !== undefined) return { ok: false, chain: odd.slice(0, 40) }
  return {
    ok: true,
    text: plain.replace(/(?<![\d,])\d+(?:,\d+){2,}/g, chain => chain.replaceAll(',', ' ')).replace(/,(?=\s|$)/g, ' '),
  }
}

/** The first value that lies about ten times off the middle one, and what it would be with its mark one place on. */
function tenTimesOff(values: readonly number[]): { place: number; value: number; other: number } | null {
  const middle = values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)]!
  for (const [at, value] of values.entries())
    for (const other of [value / 10, value * 10])
      if (Math.abs(other / middle - 1) <= 0.15 && Math.abs(value / middle - 1) > 0.15)
        return { place: at + 1, value, other: Number(other.toPrecision(12)) }
  return null
}
