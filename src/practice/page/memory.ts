// What the page remembers across a reload: who you are, where each person was, drafts, and what was seen.

type Kept = {
  you: string | null
  phone: boolean
  /** Place by person. */
  places: Record<string, string>
  /** Unsent text by person. */
  drafts: Record<string, string>
  /** The newest message looked at, by person and place. */
  looked: Record<string, string>
}

const storageKey = 'practice-room'

const nothingKept: Kept = { you: null, phone: false, places: {}, drafts: {}, looked: {} }

/** Reads what was kept; anything unreadable counts as nothing. */
function read(): Kept {
  try {
    return { ...nothingKept, ...(JSON.parse(localStorage.getItem(storageKey) ?? '{}') as Partial<Kept>) }
  } catch {
    return { ...nothingKept }
  }
}

export const memory: Kept = read()

/** Writes everything down. */
export function remember(): void {
  try {
    localStorage.setItem(storageKey, JSON.stringify(memory))
  } catch {
    // A browser without storage forgets at a reload; nothing else is lost.
  }
}
