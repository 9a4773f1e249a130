// Kleene's strong three-valued logic: false < unknown < true (Kleene 1952, from memory; tables held in tests/engine).

export type Truth = 'false' | 'unknown' | 'true'

/** The lesser of the two. */
export function and(a: Truth, b: Truth): Truth {
  if (a === 'false' || b === 'false') return 'false'
  return a === 'true' && b === 'true' ? 'true' : 'unknown'
}

/** The greater of the two. */
export function or(a: Truth, b: Truth): Truth {
  if (a === 'true' || b === 'true') return 'true'
  return a === 'false' && b === 'false' ? 'false' : 'unknown'
}

export function not(value: Truth): Truth {
  return value === 'true' ? 'false' : value === 'false' ? 'true' : 'unknown'
}
