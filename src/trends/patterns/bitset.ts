// Sets of rows as bits, 32 to a word.

export type Bits = Uint32Array<ArrayBuffer>

export const emptyBits = (size: number): Bits => new Uint32Array((size + 31) >>> 5)

export function setBit(bits: Bits, index: number): void {
  const word = index >>> 5
  bits[word] = bits[word]! | (1 << (index & 31))
}

export const hasBit = (bits: Bits, index: number): boolean => ((bits[index >>> 5]! >>> (index & 31)) & 1) === 1

/** The place of the lowest one of a word that is not zero. */
export const lowestBit = (word: number): number => 31 - Math.clz32(word & -word)

/** The rows of a set, rising; `count` is how many they are. */
export function listOf(bits: Bits, count: number): Uint32Array {
  const list = new Uint32Array(count)
  let next = 0
  for (let i = 0; i < bits.length; i++)
    for (let word = bits[i]!; word !== 0; word &= word - 1) list[next++] = (i << 5) + lowestBit(word)
  return list
}

/** Writes the rows in both `a` and `b` into `into`, and says how many they are. */
export function intersect(a: Bits, b: Bits, into: Bits): number {
  let count = 0
  for (let i = 0; i < into.length; i++) {
    const word = a[i]! & b[i]!
    into[i] = word
    count += onesIn(word)
  }
  return count
}

export function countBits(bits: Bits): number {
  let count = 0
  for (let i = 0; i < bits.length; i++) count += onesIn(bits[i]!)
  return count
}

/** Whether all of `inner` is in `outer`. */
export function within(inner: Bits, outer: Bits): boolean {
  for (let i = 0; i < inner.length; i++) if ((inner[i]! & ~outer[i]!) !== 0) return false
  return true
}

/** Ones of a 32-bit word (the usual shift-and-add count). */
function onesIn(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555)
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333)
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24
}
