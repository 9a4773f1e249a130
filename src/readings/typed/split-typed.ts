// Splits what a person typed into the number and the unit, and reads lengths of time such as "1h30" or "1:30".
import { plainText } from './read-number.ts'

export type SplitTyped =
  | { readonly kind: 'number-and-unit'; readonly number: string; readonly unit: string }
  /** Time written in parts: hours, and a second reading in hours when "a:b" may be h:mm or m:ss. */
  | { readonly kind: 'time'; readonly hours: readonly [number, ...number[]] }
  | { readonly kind: 'several-numbers'; readonly numbers: readonly string[] }
  /** "44-45 g", "2500 to 3000 mAh". */
  | { readonly kind: 'range'; readonly numbers: readonly [string, string] }
  | { readonly kind: 'no-number' }

const lead =
  /^(?:[~≈=]|[øØ⌀]|ca\.?|approx\.?|about|around|circa|etwa|env\.?|environ|aprox\.?|unos|\p{L}{1,12} ?[:=]) */iu
const body = /^([+-]?(?:\d|[.,](?=\d))(?:[\d.,' ]*\d)?(?:e[+-]?\d+)?)(.*)$/iu
/** What stands between the two ends of a range, with the unit of the first. */
const between = /^\p{L}{0,5}Ω? ?(?:-|~|to|bis|a|al|hasta|à|until)(?: |(?=\d))\D*?\d/iu
const resistorCode = /^(\d*)r(\d+)$/i

/** Takes a typed answer apart; `asTime` allows hours and minutes written together. */
export function splitTyped(text: string, asTime: boolean): SplitTyped {
  // Dots between the ends of a range are no decimal mark.
  const plain = plainText(text)
    .replace(lead, '')
    .replace(/\.{2,3}/g, '-')
  if (asTime) {
    const hours = timeParts(plain)
    if (hours) return { kind: 'time', hours }
  }
  // "0R018" is how resistors are marked: R stands where the decimal mark would.
  const marked = resistorCode.exec(plain)
  if (marked) return { kind: 'number-and-unit', number: `${marked[1] || '0'}.${marked[2]}`, unit: 'ohm' }
  const match = body.exec(plain)
  if (!match) return { kind: 'no-number' }
  const [number, unit] = [match[1]!.trim(), match[2]!.trim()]
  // The 3 of dm³ and cm³ and m³ is part of the unit.
  const others = unit.replace(/(?<=[dc]?m\^?)3$/i, '').match(/\d[\d.,]*/g)
  if (others?.length === 1 && between.test(unit)) return { kind: 'range', numbers: [number, others[0]!] }
  if (others) return { kind: 'several-numbers', numbers: [number, ...others] }
  return { kind: 'number-and-unit', number, unit: unit.replace('^', '') }
}

function timeParts(plain: string): readonly [number, ...number[]] | undefined {
  const clock = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d))? ?(h|std|hrs?)?$/i.exec(plain)
  if (clock) {
    const [a, b] = [Number(clock[1]), Number(clock[2])]
    if (clock[3] !== undefined) return [a + b / 60 + Number(clock[3]) / 3600]
    return clock[4] === undefined ? [a + b / 60, a / 60 + b / 3600] : [a + b / 60]
  }
  const together =
    /^(\d{1,4}) ?(?:h|hrs?|hours?|std\.?|stunden?|horas?|heures?) ?([0-5]?\d) ?(?:m|min\.?|mins|minut\p{L}*)?$/iu.exec(
      plain,
    )
  return together ? [Number(together[1]) + Number(together[2]) / 60] : undefined
}
