// A claimed current as it was typed: in amperes, or as a multiple of the capacity per hour ("45C").
import { readTyped, type TypedReading } from '../read-typed.ts'
import { plainText, readNumber } from './read-number.ts'

/** `rate`: the multiple it was typed as. */
export type ClaimedCurrentReading = TypedReading & { readonly rate?: number }

const multiple = /^([\d.,]{1,12}) ?c$/i

/** In amperes; a multiple says something only where the claimed capacity is known. */
export function readClaimedCurrent(
  text: string,
  locale: string,
  capacity_mAh: number | undefined,
): ClaimedCurrentReading {
  const digits = multiple.exec(plainText(text))?.[1]
  const number = digits === undefined ? undefined : readNumber(digits, locale)
  if (!number?.ok || number.values.length > 1) return readTyped(text, 'current', locale)
  const [rate] = number.values
  const typed = text.trim()
  if (capacity_mAh === undefined)
    return { ok: false, refusal: { code: 'rate-without-capacity', quantity: 'current', typed } }
  const read = readTyped(`${Number(((rate * capacity_mAh) / 1000).toPrecision(12))} A`, 'current', 'en')
  return read.ok ? { ...read, typed, rate } : read
}
