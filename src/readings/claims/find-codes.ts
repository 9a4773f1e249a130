// Finds size codes and designations in a claim: "18650", "INR18650", "2x21700", "188650", "INR19/66", "4INR19/66-2".

import { type FormatName, formatNames, isFormat } from '../../ground/formats.ts'
import { formatOf } from './designated-format.ts'
import type { Chemistry, Designation, Fact } from './facts.ts'
import { type Stretches, spanOf } from './stretches.ts'

// A1 A2 A3 N2/N4 with N1 before and -N5 behind (IEC 61960-3, 5.1); a hyphen is often typed for the slash.
const designation = /(?<![\p{L}\d])(\d{1,2})?([IL][CNMVTF]R) ?(\d{2})\/(\d{2,3})(?:-(\d{1,2}))?(?!\d)/giu
/** A figure in mAh glued on ("186503400mAh") does not hide the code; a unit right behind makes it a figure of its own. */
const code = new RegExp(
  `(?<!\\d|\\d[.,])(?:(?<!\\p{L})(ICR|INR|IMR|IFR|NCR|LFP|NFP|SIB|LTO)[- ]?)?(${formatNames.join('|')})(?:(?!\\d)|(?=\\d{3,5} ?m?ah))(?! ?(?:m ?ah|mwh|wh|ma|mv)\\b)`,
  'giu',
)
const shortCode = /(?<![\p{L}\d.,])4680(?![\d.,]|\s?m?[aw]h)/giu
/** Six digits of which two neighbours may be one digit typed twice: 188650, 217000. */
const sixDigits = /(?<!\d|\d[.,])\d{6}(?!\d|[.,]\d| ?\p{L}{1,3}\b)/giu
const letters = /(?<![\p{L}\d])(ICR|INR|IMR|IFR|NCR)(?![\p{L}])/giu

/** Codes, each taken out of what is left to be searched. */
export function findCodes(text: string, taken: Stretches): Fact[] {
  const facts: Fact[] = []
  for (const match of text.matchAll(designation)) {
    const span = spanOf(match)
    taken.take(span)
    const read: Designation = {
      inSeries: Number(match[1] ?? 1),
      chemistry: match[2]!.toUpperCase() as Designation['chemistry'],
      diameter_mm: Number(match[3]),
      height_mm: Number(match[4]),
      inParallel: Number(match[5] ?? 1),
    }
    const format = formatOf(read)
    facts.push({ kind: 'designation', designation: read, format, span })
    if (format) facts.push({ kind: 'format', format, from: 'designation', span })
    const chemistry = chemistryOf(read.chemistry)
    if (chemistry) facts.push({ kind: 'chemistry', chemistry, span })
    const { inSeries, inParallel } = read
    if (inSeries * inParallel > 1) facts.push({ kind: 'battery', inSeries, inParallel, from: 'notation', span })
  }
  for (const match of text.matchAll(code)) {
    const span = spanOf(match)
    if (!taken.isFree(span)) continue
    taken.take(span)
    facts.push({ kind: 'format', format: match[2] as FormatName, from: 'trade-code', span })
    const chemistry = chemistryOf(match[1] ?? '')
    if (chemistry) facts.push({ kind: 'chemistry', chemistry, span })
  }
  for (const match of text.matchAll(shortCode)) {
    const span = spanOf(match)
    if (!taken.isFree(span)) continue
    taken.take(span)
    facts.push({ kind: 'format', format: '46800', from: 'trade-code', span })
  }
  for (const match of text.matchAll(sixDigits)) {
    const span = spanOf(match)
    const format = withoutDoubledDigit(match[0])
    if (!format || !taken.isFree(span)) continue
    taken.take(span)
    facts.push({ kind: 'format', format, from: 'doubled-digit', span })
  }
  for (const match of text.matchAll(letters)) {
    const span = spanOf(match)
    const chemistry = chemistryOf(match[1]!)
    if (!chemistry || !taken.isFree(span)) continue
    taken.take(span)
    facts.push({ kind: 'chemistry', chemistry, span })
  }
  return facts
}

/** The one format that is left when a doubled digit is taken once: "188650" is an 18650. */
function withoutDoubledDigit(digits: string): FormatName | null {
  const left = new Set<FormatName>()
  for (let at = 1; at < digits.length; at++) {
    if (digits[at] !== digits[at - 1]) continue
    const once = digits.slice(0, at) + digits.slice(at + 1)
    if (isFormat(once)) left.add(once)
  }
  const [format, another] = left
  return format && !another ? format : null
}

const byLetters: Readonly<Record<string, Chemistry>> = {
  ICR: 'ICR',
  INR: 'INR',
  IMR: 'IMR',
  NCR: 'NCR',
  IFR: 'IFR',
  LFP: 'iron-phosphate',
  NFP: 'sodium-ion',
  SIB: 'sodium-ion',
  LTO: 'titanate',
}

const chemistryOf = (written: string): Chemistry | null => byLetters[written.toUpperCase()] ?? null
