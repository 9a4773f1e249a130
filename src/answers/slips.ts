// Whether a typed word is another with a slip of the hand.
import { distance } from 'fastest-levenshtein'

/** From this length on a word may have one slip, from the other on two. */
const oneSlip = 5
const twoSlips = 8

/** Whether somebody who was to write `word` may have written `typed`. */
export function isSlipOf(typed: string, word: string): boolean {
  if (typed === word) return true
  const short = Math.min(typed.length, word.length)
  // The first letter is seldom wrong, and two that changed places are one slip.
  if (short >= 4 && isSwapped(typed, word)) return true
  if (short < oneSlip || (typed[0] !== word[0] && short < twoSlips)) return false
  return distance(typed, word) <= (short >= twoSlips ? 2 : 1)
}

function isSwapped(typed: string, word: string): boolean {
  if (typed.length !== word.length) return false
  const off = [...word].flatMap((letter, i) => (typed[i] === letter ? [] : [i]))
  const [first = 0, second = 0] = off
  return off.length === 2 && second === first + 1 && typed[first] === word[second] && typed[second] === word[first]
}
