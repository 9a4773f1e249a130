// Reads a language tag a person typed.

/** The tag in its canonical form; nothing for one that is none, or whose numbers and words this Node does not know. */
export function localesOf(tag: string): string[] {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag)
  } catch {
    return []
  }
}
