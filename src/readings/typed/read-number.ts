// A number as people write it: either comma, grouped or not, and all its readings when more than one is possible.

export type NumberReadings =
  /** One reading, or two when the only separator may be a decimal mark or a thousands mark (own locale's first). */
  { readonly ok: true; readonly values: readonly [number, ...number[]] } | { readonly ok: false }

/** Minus signs and digits of other scripts brought to ASCII, odd spaces to one kind, degree look-alikes to "°". */
export function plainText(text: string): string {
  return text
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(/[\u2212\u2010-\u2013]/g, '-')
    .replace(/[٠-٩]/g, digit => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u2018\u2019\u02bc\u00b4`]/g, "'")
    .replace(/[\p{Cc}\p{Cf}]/gu, ' ')
    .trim()
}

/** Marks of the locales seen so far: a formatter costs more than everything else about a number. Discord knows some 30 locales. */
const marks = new Map<string, '.' | ','>()
const mostMarks = 100

/** The decimal mark of a locale; an unknown locale counts as one with a point. */
export function decimalMark(locale: string): '.' | ',' {
  const known = marks.get(locale)
  if (known) return known
  const mark = markOf(locale)
  if (marks.size >= mostMarks) marks.clear()
  marks.set(locale, mark)
  return mark
}

function markOf(locale: string): '.' | ',' {
  try {
    const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(1.5)
    return parts.some(part => part.type === 'decimal' && part.value === ',') ? ',' : '.'
  } catch {
    return '.'
  }
}

const shape = /^([+-]?)([0-9.,' ]*[0-9])(?:e([+-]?\d{1,3}))?$/i

/** A number without its unit, in any of the ways people group digits. Never guesses between two readings. */
export function readNumber(text: string, locale: string): NumberReadings {
  const match = shape.exec(plainText(text))
  if (!match) return { ok: false }
  const sign = match[1] === '-' ? -1 : 1
  const power = match[3] === undefined ? '' : `e${match[3]}`
  const bodies = readings(match[2]!, decimalMark(locale))
  const [first, second] = bodies.map(body => sign * Number(body + power)).filter(Number.isFinite)
  if (first === undefined) return { ok: false }
  return { ok: true, values: second === undefined || second === first ? [first] : [first, second] }
}

/** The plain decimal texts a run of digits and separators can stand for; none if the grouping is broken. */
function readings(body: string, mark: '.' | ','): string[] {
  const marks = body.match(/[.,]/g) ?? []
  const last = marks.at(-1)
  if (last === undefined) return grouped(body, "' ")
  if (marks.length === 1) {
    const decimal = decimalAt(body, last)
    const thousands = grouped(body, last)
    // A group of three after "0" or after a space group is no thousands mark.
    if (thousands.length === 0) return decimal
    if (decimal.length === 0) return thousands
    return mark === last ? [...decimal, ...thousands] : [...thousands, ...decimal]
  }
  if (marks.every(each => each === last)) return grouped(body, last)
  const before = marks.slice(0, -1)
  return before.every(each => each !== last) ? decimalAt(body, last) : []
}

function decimalAt(body: string, mark: string): string[] {
  const [whole = '', fraction = ''] = body.split(mark)
  if (!/^\d*$/.test(fraction)) return []
  if (whole === '') return [`0.${fraction}`]
  return grouped(whole, "' .,".replace(mark, '')).map(digits => `${digits}.${fraction}`)
}

/** Digits with thousands marks taken out: groups of three (or the Indian two-two-three), one kind of mark only. */
function grouped(body: string, marks: string): string[] {
  if (/^\d+$/.test(body)) return [body]
  const used = [...new Set(body.replace(/\d/g, ''))]
  if (used.length !== 1 || !marks.includes(used[0]!)) return []
  const groups = body.split(used[0]!)
  const [head = '', ...tail] = groups
  if (!/^[1-9]\d{0,2}$/.test(head)) return []
  const threes = tail.every(group => /^\d{3}$/.test(group))
  const indian = head.length <= 2 && tail.slice(0, -1).every(g => /^\d\d$/.test(g)) && /^\d{3}$/.test(tail.at(-1) ?? '')
  return threes || indian ? [groups.join('')] : []
}
