// Sets of rows as bits, 32 to a word.

export type Bits = Uint32Array<ArrayBuffer>

export const emptyBits = (size: number): Bits => new Uint32Array((size + 31) >>> 5)

export function setBit(bits: Bits, index: number): void {
  const word = index >>> 5
  bits[word] = bits[word]! | (1 << (index & 31))
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

/** How many rows are in both. */
export function countBoth(a: Bits, b: Bits): number {
  let count = 0
  for (let i = 0; i < a.length; i++) count += onesIn(a[i]! & b[i]!)
  return count
}

export function countBits(bits: Bits): number {
  let count = 0
  for (let i = 0; i < bits.length; i++) count += onesIn(bits[i]!)
  return count
}

export function sameBits(a: Bits, b: Bits): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false
  return true
}

/** Whether all of `inner` is in `outer`. */
export function within(inner: Bits, outer: Bits): boolean {
  for (let i = 0; i < inner.length; i++) if ((inner[i]! & ~outer[i]!) !== 0) return false
  return true
}

/** A number to find equal sets by (FNV-1a over the words). */
export function hashBits(bits: Bits): number {
  let hash = 0x811c9dc5
  for (let i = 0; i < bits.length; i++) hash = Math.imul(hash ^ bits[i]!, 0x01000193)
  return hash >>> 0
}

/** Ones of a 32-bit word (the usual shift-and-add count). */
function onesIn(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555)
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333)
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24
}
