// Kleene's strong three-valued logic: false < unknown < true (Kleene 1952, from memory; tables held in tests/engine).

export type Truth = 'false' | 'unknown' | 'true'

const rank = { false: 0, unknown: 1, true: 2 } as const

/** The least of the values; true for none. */
export function and(values: Iterable<Truth>): Truth {
  let least: Truth = 'true'
  for (const value of values) if (rank[value] < rank[least]) least = value
  return least
}

/** The greatest of the values; false for none. */
export function or(values: Iterable<Truth>): Truth {
  let greatest: Truth = 'false'
  for (const value of values) if (rank[value] > rank[greatest]) greatest = value
  return greatest
}

export function not(value: Truth): Truth {
  return value === 'true' ? 'false' : value === 'false' ? 'true' : 'unknown'
}
