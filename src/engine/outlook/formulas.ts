// Monotone Boolean formulas over "the answer to this question is in this state", each kept once (hash-consed).
//
// A three-valued condition becomes two of them: when it is true, and when it is false. Neither holds where it is unknown, so
// Kleene's logic turns into plain and/or over literals, and fixing one answer (`restrict`) is a look-up once seen.

export type Formula = number
export const never: Formula = 0
export const always: Formula = 1

const none: readonly Formula[] = []
/** How many restricted formulas are remembered. */
const mostRestricted = 100_000

type Node =
  | { readonly op: 'constant' }
  | { readonly op: 'literal'; readonly variable: number; readonly holds: Uint8Array }
  | { readonly op: 'and' | 'or'; readonly of: readonly Formula[] }

export type Formulas = {
  /** Holds in the states of `variable` whose flag is 1 (the others are 0). */
  literal(variable: number, holds: Uint8Array): Formula
  and(parts: readonly Formula[]): Formula
  or(parts: readonly Formula[]): Formula
  /** The formula once `variable` is known to be in `state`. */
  restrict(formula: Formula, variable: number, state: number): Formula
  /** The variables a formula depends on, ascending. */
  variables(formula: Formula): readonly number[]
  /** The literals over `variable` in a formula, by number: states that all of them hold alike in restrict it alike. */
  literalsOf(formula: Formula, variable: number): readonly Formula[]
  /** In which states a literal holds. */
  holdsOf(literal: Formula): Uint8Array
  /** How many formulas are kept. */
  readonly size: number
}

export function openFormulas(): Formulas {
  const nodes: Node[] = [{ op: 'constant' }, { op: 'constant' }]
  const variablesOf: (readonly number[])[] = [[], []]
  const known = new Map<string, Formula>()
  /** By formula, then by variable and state: small numbers, which a map finds quickest. */
  let restricted: (Map<number, Formula> | undefined)[] = []
  let remembered = 0

  function keep(key: string, node: Node, variables: readonly number[]): Formula {
    const found = known.get(key)
    if (found !== undefined) return found
    nodes.push(node)
    variablesOf.push(variables)
    known.set(key, nodes.length - 1)
    return nodes.length - 1
  }

  function literal(variable: number, holds: Uint8Array): Formula {
    if (!holds.includes(1)) return never
    if (!holds.includes(0)) return always
    // Fifteen flags a letter.
    let key = `${variable}:`
    for (let state = 0; state < holds.length; state += 15) {
      let flags = 1
      for (let i = state; i < state + 15; i++) flags = flags * 2 + (holds[i] ?? 0)
      key += String.fromCharCode(flags)
    }
    return keep(key, { op: 'literal', variable, holds }, [variable])
  }

  function join(op: 'and' | 'or', parts: readonly Formula[]): Formula {
    const absorbing = op === 'and' ? never : always
    const neutral = op === 'and' ? always : never
    const rest = new Set<Formula>()
    for (const part of parts) {
      if (part === absorbing) return absorbing
      if (part === neutral) continue
      const node = nodes[part] as Node
      for (const inner of node.op === op ? node.of : [part]) rest.add(inner)
    }
    const of = [...rest].sort((a, b) => a - b)
    if (of.length === 0) return neutral
    if (of.length === 1) return of[0] as Formula
    const variables = [...new Set(of.flatMap(part => variablesOf[part] as readonly number[]))].sort((a, b) => a - b)
    return keep(`${op}(${of.join()})`, { op, of }, variables)
  }

  function restrict(formula: Formula, variable: number, state: number): Formula {
    if (formula <= always || !(variablesOf[formula] as readonly number[]).includes(variable)) return formula
    const node = nodes[formula] as Exclude<Node, { op: 'constant' }>
    if (node.op === 'literal') return node.holds[state] ? always : never
    // Variables and states stay under 2^12 each (`compile` refuses more states, and 4,096 questions are more than any pack has).
    const key = variable * 4096 + state
    const found = restricted[formula]?.get(key)
    if (found !== undefined) return found
    const result = join(
      node.op,
      node.of.map(part => restrict(part, variable, state)),
    )
    // What is remembered can be worked out again.
    if (remembered++ >= mostRestricted) {
      restricted = []
      remembered = 0
    }
    const mine = restricted[formula] ?? new Map<number, Formula>()
    restricted[formula] = mine
    mine.set(key, result)
    return result
  }

  const literals = new Map<number, readonly Formula[]>()
  function literalsOf(formula: Formula, variable: number): readonly Formula[] {
    if (formula <= always || !(variablesOf[formula] as readonly number[]).includes(variable)) return none
    const node = nodes[formula] as Exclude<Node, { op: 'constant' }>
    if (node.op === 'literal') return [formula]
    const key = formula * 4096 + variable
    const found = literals.get(key)
    if (found) return found
    const mine = [...new Set(node.of.flatMap(part => literalsOf(part, variable)))]
    literals.set(key, mine)
    return mine
  }

  return {
    literal,
    literalsOf,
    holdsOf: formula => (nodes[formula] as Extract<Node, { op: 'literal' }>).holds,
    get size() {
      return nodes.length
    },
    and: parts => join('and', parts),
    or: parts => join('or', parts),
    restrict,
    variables: formula => variablesOf[formula] as readonly number[],
  }
}
