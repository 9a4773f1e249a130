// Reads a language tag a person typed.

/** The tag in its canonical form; nothing for one that is none. */
export function localesOf(tag: string): string[] {
  try {
    return Intl.getCanonicalLocales(tag)
  } catch {
    return []
  }
}
