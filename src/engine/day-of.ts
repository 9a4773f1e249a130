// The day of a moment, as packs write until when a figure holds.

/** YYYY-MM-DD in UTC; `now` in ms since 1970. */
export const dayOf = (now: number): string => new Date(now).toISOString().slice(0, 10)
