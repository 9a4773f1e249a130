// Where models are compiled: what they share is made once and kept for the next, as every family's program holds most of the same rules.
import type { Answer } from '../answers.ts'
import { type Atom, type Condition, weighAtom } from '../conditions.ts'
import { type Formula, type Formulas, openFormulas } from './formulas.ts'
import { openPartitions, type Partitions } from './partitions.ts'
import { finderOf } from './place-of.ts'
import type { Weigher } from './places.ts'
import type { State } from './states.ts'
import { openViews, type Views } from './views.ts'

/** A question as the rules tell its answers apart. */
export type Variable = {
  readonly number: number
  readonly states: readonly State[]
  /** The chance of each state. */
  readonly chances: readonly number[]
  /** The state of an answer; throws `RangeError` for one that no state holds. */
  readonly stateOf: (answer: Answer) => number
  /** The state that holds "can't tell". */
  readonly unsure: number
  /** How an atom weighs each state: 0 false, 1 unknown, 2 true. Asked for once per written atom. */
  readonly truthsOf: (atom: Atom) => Uint8Array
  /** The formula under which an atom is true, and the one under which it is false. */
  readonly formulaOf: (atom: Atom, wanted: 'true' | 'false') => Formula
}

export type Bench = {
  readonly formulas: Formulas
  readonly partitions: Partitions
  readonly views: Views
  /**
   * The variable of a question under `atoms`, the same one for the same `owner` and atoms; `states` is asked for where it is new.
   * `owner` is the question itself: two packs may give one name to different things.
   */
  variable(owner: object, id: string, atoms: readonly Atom[], states: () => readonly State[]): Variable
  variableAt(number: number): Variable
  /** Weighers that the spaces of its programs share. */
  readonly weighers: WeakMap<Condition, Map<string, Weigher>>
  /** Whether so much is kept that the next program is better begun on a new bench. */
  readonly full: boolean
}

/** How many views are kept at a time; each takes a few kilobytes. */
const mostViews = 12_000
const mostVariables = 3_000
const mostFormulas = 400_000

export function openBench(): Bench {
  const formulas = openFormulas()
  const partitions = openPartitions()
  const variables: Variable[] = []
  const known = new WeakMap<object, Map<string, Variable>>()
  const at = (number: number): Variable => variables[number] as Variable

  return {
    formulas,
    partitions,
    views: openViews(formulas, partitions, number => at(number).chances, mostViews),
    variable(owner, id, atoms, states) {
      const mine = known.get(owner) ?? new Map<string, Variable>()
      known.set(owner, mine)
      const key = atoms.map(keyOf).sort().join('\n')
      const before = mine.get(key)
      if (before) return before
      const made = makeVariable(formulas, variables.length, id, atoms, states())
      variables.push(made)
      mine.set(key, made)
      return made
    },
    variableAt: at,
    weighers: new WeakMap(),
    get full() {
      return variables.length > mostVariables || formulas.size > mostFormulas
    },
  }
}

/** A written atom, without its question. */
const keyOf = (atom: Atom): string => `${atom.op} ${'limit' in atom ? atom.limit : atom.options.join()}`

const rank = { false: 0, unknown: 1, true: 2 } as const

function makeVariable(
  formulas: Formulas,
  number: number,
  id: string,
  atoms: readonly Atom[],
  states: readonly State[],
): Variable {
  const total = states.reduce((sum, state) => sum + state.odds, 0)
  const read = new Map<string, { truths: Uint8Array; true: Formula; false: Formula }>()
  function readingOf(atom: Atom) {
    const key = keyOf(atom)
    const before = read.get(key)
    if (before) return before
    // Plain loops: a measured value has a thousand states and more.
    const truths = new Uint8Array(states.length)
    for (let i = 0; i < states.length; i++) truths[i] = rank[weighAtom(atom, (states[i] as State).answers[0])]
    const where = (sought: number) =>
      formulas.literal(
        number,
        truths.map(truth => (truth === sought ? 1 : 0)),
      )
    const made = { truths, true: where(rank.true), false: where(rank.false) }
    read.set(key, made)
    return made
  }
  return {
    number,
    states,
    chances: states.map(state => state.odds / total),
    stateOf: finderOf({ id, states }, atoms),
    unsure: states.findIndex(state => state.answers.some(one => one.kind === 'cant-tell')),
    truthsOf: atom => readingOf(atom).truths,
    formulaOf: (atom, wanted) => readingOf(atom)[wanted],
  }
}
