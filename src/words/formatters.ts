// Formatters of numbers, lists and days, made once for each locale and way of writing: making one costs more than using it a hundred times.

const kept = new Map<string, unknown>()
/** Some 30 locales of Discord times a dozen ways of writing. */
const most = 500

function once<F>(key: string, make: () => F): F {
  const known = kept.get(key)
  if (known !== undefined) return known as F
  const made = make()
  if (kept.size >= most) kept.clear()
  kept.set(key, made)
  return made
}

export const numberIn = (locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat =>
  once(`n ${locale} ${JSON.stringify(options)}`, () => new Intl.NumberFormat(locale, options))

export const wholeIn = (locale: string): Intl.NumberFormat => numberIn(locale, { maximumFractionDigits: 0 })

export const listIn = (
  locale: string,
  type: Intl.ListFormatType,
  style: Intl.ListFormatStyle = 'long',
): Intl.ListFormat => once(`l ${locale} ${type} ${style}`, () => new Intl.ListFormat(locale, { type, style }))

/** Days of a calendar, in UTC. */
export const dayIn = (locale: string): Intl.DateTimeFormat =>
  once(`d ${locale}`, () => new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }))
