// Work in slices: whoever has it done decides what happens between two of them, so that a long release holds up nobody.

/** Says at each pause about how much was done since the last one: words of bits, rows, cells. */
export type Slices<T> = Generator<number, T, void>

/** About so much at a time; some ten milliseconds. */
export const mostAtATime = 1_000_000

/** Does all of it at once. */
export function atOnce<T>(slices: Slices<T>): T {
  for (;;) {
    const next = slices.next()
    if (next.done) return next.value
  }
}

/** The same as a list's `map`; each is `work` of work. */
export function* mapInSlices<A, B>(list: readonly A[], work: number, make: (one: A) => B): Slices<B[]> {
  const made: B[] = []
  const most = Math.max(1, Math.floor(mostAtATime / work))
  for (let from = 0; from < list.length; from += most) {
    for (const one of list.slice(from, from + most)) made.push(make(one))
    yield Math.min(most, list.length - from) * work
  }
  return made
}
