// Words that accuse somebody: a letter to a seller is drafted without them, and whoever types one is told what carries further.

/** One list for every language a letter can be written in, since a pack's text may be in another than the letter. */
const accusing = [
  // English
  'fake\\p{L}*',
  'counterfeit\\p{L}*',
  'fraud\\p{L}*',
  'scam\\p{L}*',
  'cheat\\p{L}*',
  'forged|forger\\p{L}*',
  'dece(?:iv|pt)\\p{L}*',
  'liars?|lied to',
  'criminal\\p{L}*',
  'stolen?|thief|thieves|theft',
  'swindl\\p{L}*|crooks?|rip-?offs?',
  // German
  '(?:ge)?fälsch\\p{L}*',
  'betr[uüo]g\\p{L}*',
  'schwind(?:el|ler)\\p{L}*',
  'lüg\\p{L}*|gelogen',
  'kriminell\\p{L}*',
  'gestohlen\\p{L}*|diebe?|diebstahl',
  'abzock\\p{L}*|plagiat\\p{L}*',
  // Spanish
  'falsific\\p{L}*|fals[oa]s?',
  'estaf\\p{L}*|timo|timador\\p{L}*',
  'engañ\\p{L}*',
  'mentir\\p{L}*',
  'delincuen\\p{L}*',
  'robad[oa]s?|ladr[oó]n\\p{L}*',
  // The same in several
  'ill?egal\\p{L}*',
  'pirat\\p{L}*',
].join('|')

const pattern = new RegExp(`(?<!\\p{L})(?:${accusing})(?!\\p{L})`, 'iu')

/** The first word in the text that accuses somebody; undefined where none does. */
export const accusationIn = (text: string): string | undefined => pattern.exec(text.normalize('NFKC'))?.[0]
