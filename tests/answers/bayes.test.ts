// Which entry words are meant for: a small example worked out by hand, and what holds whatever the entries say.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { openBayes } from '../../src/answers/bayes.ts'

const split = (text: string) => text.split(' ')
const entry = (phrasings: readonly string[], body = '') => ({ phrasings: phrasings.map(split), body: split(body) })

test('an example by hand: the pair tells what the words alone leave open', () => {
  const fits = openBayes([entry(['where to buy', 'buy good cells']), entry(['how to buy', 'where are my cells'])])
  // “where to” is a pair of the first alone; of “where” and “to” both have as many.
  expect(fits(['where', 'to'])).toEqual([1, 0])
  // Of the second alone.
  expect(fits(['how'])).toEqual([0, 1])
  // Nobody knows it, or both know it alike: nothing is told.
  expect(fits(['giraffe'])).toEqual([0, 0])
  expect(fits(['buy', 'giraffe'])).toEqual([1, 0])
})

test('a word of the body counts, and less than one of a phrasing', () => {
  const fits = openBayes([entry(['one'], 'lamp'), entry(['two lamp'], ''), entry(['three'], '')])
  const [first = 0, second = 0, third = 0] = fits(['lamp'])
  expect(second).toBe(1)
  expect(third).toBe(0)
  expect(first > 0 && first < 1).toBe(true)
})

test('fits lie between 0 and 1, and turning the entries round turns them round', () => {
  const words = fc.array(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { minLength: 1, maxLength: 5 })
  const sayings = fc.record({ phrasings: fc.array(words, { minLength: 1, maxLength: 4 }), body: words })
  fc.assert(
    fc.property(fc.array(sayings, { minLength: 1, maxLength: 5 }), words, (entries, asked) => {
      const own = openBayes(entries)(asked)
      for (const one of own) expect(one >= 0 && one <= 1).toBe(true)
      expect(openBayes(entries.toReversed())(asked).toReversed()).toEqual(own)
    }),
  )
})
