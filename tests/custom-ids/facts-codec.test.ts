// Facts in custom ids: what goes in comes out, what did not come from us is refused, and Discord's limit holds.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { factsOfClaim } from '../../src/check/known/facts-of-claim.ts'
import { factsOfLog } from '../../src/check/known/facts-of-log.ts'
import { decodeClick, encodeClick } from '../../src/custom-ids/check-id.ts'
import { decodeFacts, encodeFacts } from '../../src/custom-ids/facts-codec.ts'
import { type Answer, option, reading } from '../../src/engine/answers.ts'
import { compile } from '../../src/engine/compile.ts'
import { formatNames } from '../../src/ground/formats.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { readClaims } from '../../src/readings/read-claims.ts'

const compiled = compile(
  (await loadPacks(shippedRules)).packs.map(loaded => loaded.pack),
  '2026-11-25',
)
if (!compiled.ok) throw new Error('the shipped packs do not compile')
const { questions } = compiled.program
const asked = (id: string): fc.Arbitrary<Answer> => {
  const answer = questions.get(id)?.answer
  if (!answer) throw new Error(`the shipped packs have no question ${id}`)
  return answer.kind === 'options'
    ? fc.constantFrom(...answer.options.map(one => option(one.id)))
    : fc.integer({ min: 1, max: 5_000_000 }).map(hundredths => reading(hundredths / 100))
}
const ids = [
  'format',
  'other-format',
  'claimed-capacity',
  'claimed-current',
  'current-word',
  'chemistry',
  'measured-capacity',
  'test-current',
  'load-test',
  'how-many',
  'batch-masses',
]
const facts = fc.record(Object.fromEntries(ids.map(id => [id, asked(id)])), { requiredKeys: [] })

test('every set of facts the shipped packs ask for survives, within a hundred characters', () => {
  fc.assert(
    fc.property(facts, given => {
      expect(decodeFacts(encodeFacts(given))).toEqual(given)
      const { 'measured-capacity': _m, 'test-current': _t, 'load-test': _l, ...rest } = given
      const { 'how-many': _h, 'batch-masses': _b, ...claimed } = rest
      const id = encodeClick({ check: 'x'.repeat(20), revision: 46_655, act: { is: 'know', facts: claimed } })
      expect(id.length).toBeLessThanOrEqual(100)
      expect(decodeClick(id)).toMatchObject({ act: { is: 'know', facts: claimed } })
    }),
  )
})

test('what nobody here wrote is refused', () => {
  fc.assert(
    fc.property(fc.string(), written => {
      const read = decodeFacts(written)
      if (read) expect(encodeFacts(read)).not.toContain('undefined')
    }),
  )
  for (const id of ['x18650', 'f', 'fUPPER', 'f18650_f21700', 'c-5', 'c1e9', 'c99999999', 'f18650_', 'i3,141'])
    expect(decodeFacts(id)).toBeUndefined()
})

describe('what a claim answers', () => {
  test.each([
    [
      '18650 9900mAh 30A',
      {
        format: option('18650'),
        'claimed-capacity': reading(9900),
        'claimed-current': reading(30),
        'current-word': option('bare'),
      },
    ],
    [
      'INR19/66 20A continuous',
      {
        format: option('18650'),
        'claimed-current': reading(20),
        'current-word': option('continuous'),
        chemistry: option('nickel-or-cobalt'),
      },
    ],
    ['30A continuous, 45A pulse', { 'claimed-current': reading(30), 'current-word': option('continuous') }],
    ['100A pulse', { 'current-word': option('pulse') }],
    [
      '32700 LiFePO4',
      { format: option('other'), 'other-format': option('32700'), chemistry: option('iron-phosphate') },
    ],
    ['17500', { format: option('other'), 'other-format': option('none') }],
    ['30A (80 °C)', { 'claimed-current': reading(30), 'current-word': option('to-temperature') }],
    ['20A continuous, 30A (80 °C)', { 'claimed-current': reading(20), 'current-word': option('continuous') }],
    ['14500 1.5V 2800mAh', { format: option('14500'), chemistry: option('fixed-voltage') }],
    ['14500 3400mWh', { format: option('14500') }],
    // A multiple of the capacity is a current.
    [
      '21700 5.0Ah 45C',
      {
        format: option('21700'),
        'claimed-capacity': reading(5000),
        'claimed-current': reading(225),
        'current-word': option('bare'),
      },
    ],
    ['21700 45C', { format: option('21700') }],
    ['sodium-ion', { chemistry: option('sodium-ion') }],
    ['IFR INR', {}],
    // A battery's figures are shared out among its cells, where it says how; else they are none of a cell's.
    [
      '13S4P 18650 12Ah 40A continuous',
      {
        format: option('18650'),
        'claimed-capacity': reading(3000),
        'claimed-current': reading(10),
        'current-word': option('continuous'),
      },
    ],
    ['power bank 18650 20000mAh 3A continuous', { format: option('18650') }],
    ['18650 or 21700', {}],
    ['charging current 2A', {}],
  ])('%s', (text, expected) => {
    expect(factsOfClaim(readClaims(text, 'en-US'))).toEqual(expected)
  })

  test('every size, chemistry and limit of a current is an option that is asked for', () => {
    const texts = [...formatNames, 'INR', 'IFR', 'LiFePO4', 'sodium-ion', 'LTO', '1.5V', '9A', '9A pulse', '9A (80 °C)']
    for (const text of texts)
      for (const [id, answer] of Object.entries(factsOfClaim(readClaims(text, 'en-US')))) {
        const { answer: wanted } = questions.get(id)!
        if (wanted.kind === 'options' && answer.kind === 'option')
          expect(wanted.options.map(one => one.id)).toContain(answer.option)
      }
    const asked = questions.get('other-format')?.answer
    if (asked?.kind !== 'options') throw new Error('no other sizes')
    for (const { id } of asked.options.filter(one => one.id !== 'none'))
      expect(factsOfClaim(readClaims(id, 'en-US'))).toMatchObject({ 'other-format': option(id) })
  })
})

describe('what a discharge answers', () => {
  const run = (current_A: number) =>
    ({ room_C: 21, figures: { meanCurrent: { value: current_A } } }) as unknown as Parameters<typeof factsOfLog>[0]
  const found = (...codes: string[]) => codes.map(code => ({ code })) as unknown as Parameters<typeof factsOfLog>[1]

  test.each([
    ['too-hot-at-claimed-current', 'too-hot'],
    ['gives-out-at-claimed-current', 'gave-out'],
    ['holds-claimed-current', 'held'],
  ])('a test at the claimed current, %s, with and without a label', (code, load) => {
    expect(factsOfLog(run(20), found(code), undefined)).toEqual({ 'load-test': option(load) })
    expect(factsOfLog(run(20), found('far-below-label', code), 3000)).toEqual({
      'claimed-capacity': reading(3000),
      'measured-capacity': option('under-half'),
      'test-current': option('high'),
      'load-test': option(load),
    })
    const asked = questions.get('load-test')?.answer
    expect(asked?.kind === 'options' && asked.options.map(one => one.id)).toContain(load)
  })

  test('nothing is said of a current that was not claimed, nor of a capacity without a label', () => {
    expect(factsOfLog(run(1), found('label-reached'), 3000)).not.toHaveProperty('load-test')
    expect(factsOfLog(run(1), found(), undefined)).toEqual({})
  })
})
