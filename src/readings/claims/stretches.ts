// Which stretches of a text are spoken for, so that no character is read twice and none is looked for in a list.
import type { Span } from './facts.ts'

export type Stretches = {
  take(span: Span): void
  /** Whether nothing of the stretch was taken before. */
  isFree(span: Span): boolean
  /** Whether the character at `index` belongs to something. */
  isTaken(index: number): boolean
}

/** For a text of `length` characters; taking and asking cost as much as the stretch is long. */
export function stretches(length: number): Stretches {
  const taken = new Uint8Array(length)
  return {
    take: ({ from, to }) => void taken.fill(1, from, to),
    isFree: ({ from, to }) => !taken.subarray(from, to).includes(1),
    isTaken: index => taken[index] === 1,
  }
}

export const spanOf = (match: RegExpExecArray): Span => ({ from: match.index, to: match.index + match[0].length })
