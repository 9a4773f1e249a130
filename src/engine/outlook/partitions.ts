// How states of one question fall into classes that lead to the same: each way of falling kept once, and refined by look-up.
import { mostStates } from './states.ts'

export type Partition = {
  readonly id: number
  /** The class of each state; classes are numbered as they first occur. */
  readonly classOf: Uint16Array
  /** The first state of each class. */
  readonly firstOf: readonly number[]
}

export type Partitions = {
  /** All states in one class. */
  whole(size: number): Partition
  /** States with equal numbers are in one class. */
  of(numbers: ArrayLike<number>): Partition
  /** Two states share a class only if both partitions say so. */
  refine(a: Partition, b: Partition): Partition
  /** Classes with equal numbers become one. */
  coarsen(partition: Partition, numbers: readonly number[]): Partition
  /** The chance of each class, from that of each state. */
  weigh(partition: Partition, chances: readonly number[]): readonly number[]
  readonly size: number
}

export function openPartitions(): Partitions {
  /** By a hash of their classes. */
  const known = new Map<number, readonly Partition[]>()
  const refined = new Map<number, Partition>()
  const wholes = new Map<number, Partition>()
  const weights = new WeakMap<readonly number[], Map<number, readonly number[]>>()
  let made = 0
  /** Where the next partition is worked out. */
  const numbers = new Uint32Array(mostStates)
  let indexes = new Int32Array(mostStates)

  /** The first `size` of `numbers`, each less than `below`, stand for classes; they are counted anew as they first occur. */
  function numbered(size: number, below: number): Partition {
    if (indexes.length < below) indexes = new Int32Array(below)
    indexes.fill(-1, 0, below)
    const firstOf: number[] = []
    let hash = size
    for (let state = 0; state < size; state++) {
      const number = numbers[state] as number
      let index = indexes[number] as number
      if (index < 0) {
        index = firstOf.length
        indexes[number] = index
        firstOf.push(state)
      }
      numbers[state] = index
      hash = (Math.imul(hash, 31) + index) | 0
    }
    const alike = known.get(hash) ?? []
    const before = alike.find(({ classOf }) => holds(classOf, size))
    if (before) return before
    const partition: Partition = { id: made++, classOf: Uint16Array.from(numbers.subarray(0, size)), firstOf }
    known.set(hash, [...alike, partition])
    return partition
  }

  /** Whether `numbers` says the same. */
  function holds(classOf: Uint16Array, size: number): boolean {
    if (classOf.length !== size) return false
    for (let state = 0; state < size; state++) if (classOf[state] !== numbers[state]) return false
    return true
  }

  return {
    of(given) {
      let below = 1
      for (let state = 0; state < given.length; state++) {
        const number = given[state] as number
        numbers[state] = number
        below = Math.max(below, number + 1)
      }
      return numbered(given.length, below)
    },
    whole(size) {
      const before = wholes.get(size)
      if (before) return before
      numbers.fill(0, 0, size)
      const made = numbered(size, 1)
      wholes.set(size, made)
      return made
    },
    refine(a, b) {
      if (a === b || b.firstOf.length === 1) return a
      if (a.firstOf.length === 1) return b
      const key = a.id * 1_048_576 + b.id
      const before = refined.get(key)
      if (before) return before
      const across = b.firstOf.length
      const size = a.classOf.length
      for (let state = 0; state < size; state++)
        numbers[state] = (a.classOf[state] as number) * across + (b.classOf[state] as number)
      const result = numbered(size, a.firstOf.length * across)
      refined.set(key, result)
      return result
    },
    coarsen(partition, given) {
      const below = Math.max(...given) + 1
      if (below === given.length) return partition
      const { classOf } = partition
      for (let state = 0; state < classOf.length; state++) numbers[state] = given[classOf[state] as number] as number
      return numbered(classOf.length, below)
    },
    weigh(partition, chances) {
      const mine = weights.get(chances) ?? new Map<number, readonly number[]>()
      weights.set(chances, mine)
      const before = mine.get(partition.id)
      if (before) return before
      const sums: number[] = partition.firstOf.map(() => 0)
      for (let state = 0; state < chances.length; state++) {
        const index = partition.classOf[state] as number
        sums[index] = (sums[index] as number) + (chances[state] as number)
      }
      mine.set(partition.id, sums)
      return sums
    },
    get size() {
      return made
    },
  }
}
