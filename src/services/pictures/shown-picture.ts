// A picture as a message carries it.

/** A picture for a message, with the words for those who cannot see it. */
export type ShownPicture = { readonly name: string; readonly bytes: Uint8Array; readonly alt: string }
