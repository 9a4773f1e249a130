// Custom ids of what a person does about what is kept of them: a tagged union out, or nothing when the id is not one of ours.

/** `delete` asks once more; `deleted` does it. Whose data it is about is the person who presses, whatever the id says. */
const privacyActs = ['see', 'show', 'delete', 'deleted'] as const
export type PrivacyAct = (typeof privacyActs)[number]

const mark = 'cp1.'

export const encodePrivacy = (act: PrivacyAct): string => mark + act

/** Decodes a custom id; undefined for anything that `encodePrivacy` cannot have written. */
export const decodePrivacy = (id: string): PrivacyAct | undefined =>
  id.startsWith(mark) ? privacyActs.find(act => act === id.slice(mark.length)) : undefined
