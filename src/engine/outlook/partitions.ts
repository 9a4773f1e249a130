// How states of one question fall into classes that lead to the same: each way of falling kept once, and refined by look-up.

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
  readonly size: number
}

export function openPartitions(): Partitions {
  const known = new Map<string, Partition>()
  const refined = new Map<number, Partition>()
  const wholes = new Map<number, Partition>()
  const all: Partition[] = []

  function of(numbers: ArrayLike<number>): Partition {
    const classOf = new Uint16Array(numbers.length)
    const found = new Map<number, number>()
    const firstOf: number[] = []
    for (let state = 0; state < numbers.length; state++) {
      const number = numbers[state] as number
      let index = found.get(number)
      if (index === undefined) {
        index = found.size
        found.set(number, index)
        firstOf.push(state)
      }
      classOf[state] = index
    }
    const key = String.fromCharCode(...classOf)
    const before = known.get(key)
    if (before) return before
    const partition: Partition = { id: all.length, classOf, firstOf }
    all.push(partition)
    known.set(key, partition)
    return partition
  }

  return {
    of,
    whole(size) {
      const before = wholes.get(size) ?? of(new Uint16Array(size))
      wholes.set(size, before)
      return before
    },
    refine(a, b) {
      if (a === b || b.firstOf.length === 1) return a
      if (a.firstOf.length === 1) return b
      const key = a.id * 1_048_576 + b.id
      const before = refined.get(key)
      if (before) return before
      const numbers: number[] = []
      for (let state = 0; state < a.classOf.length; state++)
        numbers.push((a.classOf[state] as number) * 65_536 + (b.classOf[state] as number))
      const result = of(numbers)
      refined.set(key, result)
      return result
    },
    get size() {
      return all.length
    },
  }
}
