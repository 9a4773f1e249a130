// Shortens a text at the end of a word, and closes it as it was opened: “The positive contact stands…”.

/** At most `most` characters; a single word that is longer is cut itself. */
export function shorten(text: string, most: number): string {
  if (lengthOf(text) <= most) return text
  const [closing = ''] = /[^\p{L}\p{N}\s.!?…]$/u.exec(text) ?? []
  const room = most - 1 - closing.length
  const [first = '', ...others] = text.split(' ')
  let short = [...first].slice(0, room).join('')
  for (const word of others) {
    if (lengthOf(short) + 1 + lengthOf(word) > room) break
    short = `${short} ${word}`
  }
  return `${short.replace(/[\s.,;:–-]+$/u, '')}…${closing}`
}

const lengthOf = (text: string): number => [...text].length
