// What custom ids of several kinds are made of: ids of checks and findings, revisions, openings of forms, ids of Discord's.

/** An id as `newId` makes it. */
export const isOwnId = (text: string | undefined): text is string => /^[a-z0-9]{6,32}$/.test(text ?? '')

/** What makes the id of each form new, since phones keep what was typed by id. */
export const newOpening = (newId: () => string): string => newId().slice(0, 8)
export const isOpening = (text: string | undefined): text is string => /^[a-z0-9]{1,16}$/.test(text ?? '')

export const writeRevision = (revision: number): string => revision.toString(36)
/** Undefined for anything that `writeRevision` cannot have written. */
export const readRevision = (text: string | undefined): number | undefined =>
  /^(0|[1-9a-z][0-9a-z]{0,5})$/.test(text ?? '') ? Number.parseInt(text ?? '', 36) : undefined

export const isSnowflake = (text: string | undefined): text is string => /^\d{15,20}$/.test(text ?? '')
