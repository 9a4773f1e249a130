// Finds size codes and designations in a claim: "18650", "INR18650", "INR19/66", "4INR19/66-2".

import { formatNames } from '../../ground/formats.ts'
import { formatOf } from './designated-format.ts'
import type { Chemistry, Designation, Fact } from './facts.ts'

// A1 A2 A3 N2/N4 with N1 before and -N5 behind (IEC 61960-3, 5.1); a hyphen is often typed for the slash.
const designation = /(?<![\p{L}\d])(\d{1,2})?([IL][CNMVTF]R) ?(\d{2})\/(\d{2,3})(?:-(\d{1,2}))?(?!\d)/giu
const code = new RegExp(
  `(?<![\\p{L}\\d.,])(?:(ICR|INR|IMR|IFR|NCR)[- ]?)?(${formatNames.join('|')})(?!\\d)(?! ?(?:m ?ah|mwh|wh|ma|mv)\\b)`,
  'giu',
)
const shortCode = /(?<![\p{L}\d.,])4680(?![\d.,]|\s?m?[aw]h)/giu
const letters = /(?<![\p{L}\d])(ICR|INR|IMR|IFR|NCR)(?![\p{L}])/giu

/** Codes in the order of the text. What is found is to be left out of the search for figures. */
export function findCodes(text: string): Fact[] {
  const facts: Fact[] = []
  const taken: { from: number; to: number }[] = []
  const spanOf = (match: RegExpMatchArray) => ({ from: match.index!, to: match.index! + match[0].length })
  const free = (span: { from: number; to: number }) => taken.every(each => span.to <= each.from || span.from >= each.to)
  for (const match of text.matchAll(designation)) {
    const span = spanOf(match)
    taken.push(span)
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
    if (isChemistry(read.chemistry)) facts.push({ kind: 'chemistry', chemistry: read.chemistry, span })
    if (read.inSeries * read.inParallel > 1) facts.push({ kind: 'count', cells: read.inSeries * read.inParallel, span })
  }
  for (const match of text.matchAll(code)) {
    const span = spanOf(match)
    if (!free(span)) continue
    taken.push(span)
    facts.push({ kind: 'format', format: match[2] as (typeof formatNames)[number], from: 'trade-code', span })
    if (match[1]) facts.push({ kind: 'chemistry', chemistry: match[1].toUpperCase() as Chemistry, span })
  }
  for (const match of text.matchAll(shortCode)) {
    const span = spanOf(match)
    if (free(span)) facts.push({ kind: 'format', format: '46800', from: 'trade-code', span })
  }
  for (const match of text.matchAll(letters)) {
    const span = spanOf(match)
    if (free(span)) facts.push({ kind: 'chemistry', chemistry: match[1]!.toUpperCase() as Chemistry, span })
  }
  return facts
}

function isChemistry(letters: string): letters is Chemistry {
  return ['ICR', 'INR', 'IMR', 'IFR'].includes(letters)
}
