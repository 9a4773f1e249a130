// Does at once what is otherwise done in slices.

/** What the slices come to. */
export function atOnce<Result>(slices: Generator<void, Result>): Result {
  for (;;) {
    const slice = slices.next()
    if (slice.done) return slice.value
  }
}
