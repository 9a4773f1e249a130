// Custom ids: what is written is read back, Discord's limit holds, and nothing else is taken for ours.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type CheckAction, type ClickId, decodeClick, encodeClick } from '../../src/custom-ids/check-id.ts'

const slug = fc.stringMatching(/^[a-z0-9]{1,12}(-[a-z0-9]{1,10}){0,3}$/).filter(text => text.length <= 48)
const act: fc.Arbitrary<CheckAction> = fc.oneof(
  slug.map(option => ({ is: 'pick' as const, option })),
  fc.constantFrom<CheckAction[]>(
    ...(['choose', 'unsure', 'measure', 'back', 'pause', 'resume', 'finish', 'go-on', 'close', 'show'] as const).map(
      is => ({ is }),
    ),
  ),
  fc.stringMatching(/^[a-z0-9]{1,16}$/).map(opening => ({ is: 'measured' as const, opening })),
  fc.record({
    is: fc.constant('consent' as const),
    to: fc.constantFrom('unwrap' as const, 'bench' as const),
    given: fc.boolean(),
  }),
)
const click: fc.Arbitrary<ClickId> = fc.record({
  check: fc.stringMatching(/^[a-z0-9]{6,32}$/),
  revision: fc.integer({ min: 0, max: 36 ** 6 - 1 }),
  act,
})

test('what is written is read back, within 100 characters', () => {
  fc.assert(
    fc.property(click, one => {
      const id = encodeClick(one)
      expect(id.length).toBeLessThanOrEqual(100)
      expect(decodeClick(id)).toEqual(one)
    }),
    { numRuns: 2000 },
  )
})

test('whatever is read would be written the same: no second spelling of an id', () => {
  const near = fc.tuple(click, fc.nat(), fc.string({ maxLength: 3 })).map(([one, at, noise]) => {
    const id = encodeClick(one)
    return id.slice(0, at % (id.length + 1)) + noise + id.slice((at % (id.length + 1)) + noise.length)
  })
  fc.assert(
    fc.property(fc.oneof(fc.string({ maxLength: 100 }), near), id => {
      const read = decodeClick(id)
      if (read) expect(encodeClick(read)).toBe(id)
    }),
    { numRuns: 5000 },
  )
})

test.each([
  '',
  'cw1',
  'cw1.abcdef',
  'cw1.abcdef.0',
  'cw1.abcdef.0.pick',
  'cw1.abcdef.0.pick.a.b',
  'cw1.ABCDEF.0.back',
  'cw1.abcdef.-1.back',
  'cw1.abcdef.0.consent.everything.yes',
  'cw2.abcdef.0.back',
  'cw1.abcdef.00.back',
])('%j is not ours', id => expect(decodeClick(id)).toBeUndefined())
