// What is said of a batch, in every language: the same figures, and "not one lot" never without "not counterfeit".
import { describe, expect, test } from 'vitest'
import { readBatch } from '../../src/readings/batch/read-batch.ts'
import { weighBatch } from '../../src/readings/batch/weigh-batch.ts'
import { sayBatch, sayBatchRefusal } from '../../src/words/batch-words.ts'
import { sayIn } from '../../src/words/say.ts'

const said = (locale: string, values: readonly number[], resolution = 0.1, quantity: 'mass' | 'capacity' = 'mass') =>
  sayBatch(sayIn(locale), weighBatch({ quantity, values, resolution })!, values).join('\n')

const counterfeit = {
  en: /does not mean “counterfeit”/,
  de: /heißt nicht „gefälscht“/,
  es: /no quiere decir «falsificadas»/,
}

describe.each(Object.entries(counterfeit))('%s', (locale, notCounterfeit) => {
  test.each([
    ['two runs', [45, 46.3, 45.6]],
    ['two kinds', [45, 46.7, 45.8]],
    ['not one lot', [43.1, 44.9, 46.8]],
  ])('%s is said not to be counterfeit', (_name, values) => {
    expect(said(locale, values)).toMatch(notCounterfeit)
  })

  test('one lot, or a display too coarse to tell, says nothing against a cell', () => {
    for (const text of [said(locale, [45.1, 45.3, 45.2]), said(locale, [45, 46, 47], 1)]) {
      expect(text).not.toMatch(notCounterfeit)
      expect(text).not.toMatch(/[{}]/)
    }
  })

  test('two groups are named by their ends', () => {
    expect(said(locale, [44, 44.1, 44.2, 46.1, 46.2, 46.3])).toMatch(/44–44[.,]2.*46[.,]1–46[.,]3 g/)
  })

  test('capacities are said to hold for new cells alone', () => {
    const [worn, fresh] = [
      [2500, 2510, 1900],
      [2500, 2510, 2505],
    ]
    const used = sayIn(locale)('batch.used')
    expect(said(locale, worn, 1, 'capacity')).toContain(used)
    expect(said(locale, fresh, 1, 'capacity')).not.toContain(used)
  })

  test.each(['45', '45 '.repeat(101), '43,1,44,9,46,8', '45 V 46 V', '45.1 460 45.2'])(
    'what is wrong with "%s" is one line',
    text => {
      const read = readBatch(text, 'mass', 'en')
      if (read.ok) throw new Error('it was read')
      const sentence = sayBatchRefusal(sayIn(locale), read.refusal)
      expect(sentence).toMatch(/^[^\n{}]{20,}$/)
    },
  )
})
