// The error of a start that cannot use its rule packs; in a file of its own so that it can be known before they are loaded.

/** Packs that cannot be used: each sentence says what to change. */
export class UnusablePacks extends Error {
  readonly sentences: readonly string[]
  constructor(sentences: readonly string[]) {
    super(sentences.join('\n'))
    this.sentences = sentences
  }
}
