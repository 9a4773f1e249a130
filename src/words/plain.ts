// Text from people and packs' names, shown as text: nothing in it becomes a mention, a link, a heading or bold, or reaches past its place.

/**
 * Characters that nobody sees or that turn what stands after them around (Unicode, Default_Ignorable_Code_Point, with the
 * controls of UAX #9), but for joiners and variation selectors, which scripts and emoji are made with.
 */
const unseen = /(?!\u200c|\u200d|[\ufe00-\ufe0f])\p{Default_Ignorable_Code_Point}/gu
/** Line ends of every kind, and other controls. */
const breaks = /[\p{Cc}\p{Zl}\p{Zp}\s]+/gu
/** Marks piled up so high that they cover the lines around. */
const piled = /(\p{M}{4})\p{M}+/gu
const rightToLeft = /[\p{scx=Arab}\p{scx=Hebr}\p{scx=Syrc}\p{scx=Thaa}\p{scx=Nkoo}\p{scx=Adlm}]/u

/** What every kind of markup, mention, timestamp and command link begins with. */
const marks = /[\\`*_~|<>[\]()#@:-]/g
/** A list's number or plus sign where a line may begin, and addresses that Discord finds without “https” (from memory). */
const beginnings = /^\d+(?=\.(?:\s|$))|^(?=\+)|discord(?:app)?(?=\.(?:gg|com)\b)/gi

/**
 * On one line and with nothing unseen in it, for labels and terminals, which read no markup. Text of a script that runs from right
 * to left is kept apart from what stands around it (UAX #9, 2.4).
 */
export function bare(text: string): string {
  const seen = text.toWellFormed().replace(unseen, '').replace(breaks, ' ').replace(piled, '$1').trim()
  return rightToLeft.test(seen) ? `\u2068${seen}\u2069` : seen
}

const escaped = (seen: string): string => seen.replace(marks, '\\$&').replace(beginnings, '$&\\')

/** On one line, as text in the middle of ours. */
export const plain = (text: string): string => escaped(bare(text))

/** The same with its line ends kept, for a text that stands alone; never more than one empty line in a row. */
export const plainLines = (text: string): string => linesOf(text).map(escaped).join('\n')

/** A person's own text, for themselves, in a block of code: as it stands, but that nothing in it ends the block. */
export const fenced = (text: string): string => `\`\`\`\n${text.replaceAll('`', "'")}\n\`\`\``

/** The text without those escapes, for a terminal, which has no markup. */
export const unmarked = (text: string): string => text.replace(/\\([^\sA-Za-z0-9])/g, '$1')

const linesOf = (text: string): string[] =>
  text
    .split(/\r\n|[\n\v\f\r\u0085\u2028\u2029]/)
    .map(bare)
    .filter((line, at, all) => line !== '' || all[at - 1] !== '')
