// Finds what a bot that speaks the pseudo-language says in plain English: letters without accents, or letters outside of its brackets.

/** Where people read something in the bodies Discord is sent; `name` and `value` only where they are read. */
const read = new Set(['content', 'label', 'description', 'placeholder', 'title'])
const textInput = 4

/** Every text in a body that somebody reads: labels, hints, alt texts, choices, what a form is filled with. */
export function textsIn(body: unknown): string[] {
  if (Array.isArray(body)) return body.flatMap(textsIn)
  if (typeof body !== 'object' || body === null) return []
  const node = body as Record<string, unknown>
  return Object.entries(node).flatMap(([key, value]) => {
    if (typeof value !== 'string') return textsIn(value)
    const choice = key === 'name' && 'value' in node
    const filled = key === 'value' && node['type'] === textInput
    return read.has(key) || choice || filled ? [value] : []
  })
}

const months = (['long', 'short'] as const).flatMap(month =>
  Array.from({ length: 12 }, (_, i) => new Intl.DateTimeFormat('en', { month }).format(new Date(2026, i, 15))),
)

/**
 * Not ours to say: units as they are written everywhere, what Discord itself turns into words, and what Intl writes, which has no
 * pseudo-language of its own: months, hours, and the last joint of a list of disguised things.
 */
const international = [
  new RegExp(`(?<!\\p{L})(${months.join('|')}) (?=\\d)`, 'gu'),
  /(?<=⟧),? (and|or) (?=⟦)/g,
  /\(sha256:[0-9a-f]+\)/g,
  /<t:\d+(:[a-zA-Z])?>|<[@#][&!]?\d+>|<\/[^>]+>/g,
  /(?<![\p{L}])(?:mAh|Ah|mA|mV|Wh|mm|kg|mΩ|ms|min|ml|hr)(?![\p{L}])/gu,
]

/** What is left of a text that is neither disguised nor `known`: names, citations, and what the person has typed. */
export function plainEnglishIn(text: string, known: readonly (string | RegExp)[]): string[] {
  let rest = text
  for (const one of [...known, ...international]) rest = rest.replaceAll(one, ' ')
  const plain = rest.match(/[A-Za-z]{2,}/g) ?? []
  const outside = withoutBrackets(rest).match(/\p{L}{2,}/gu) ?? []
  return [...plain, ...outside]
}

/** A label that was cut has lost its closing bracket: the rest of it counts as inside. */
function withoutBrackets(text: string): string {
  let depth = 0
  let outside = ''
  for (const letter of text) {
    if (letter === '⟦') depth++
    else if (letter === '⟧') depth--
    else if (depth <= 0) outside += letter
  }
  return outside
}
