// Custom ids of the set-up: what is written is read back, fits Discord, and nothing else is read.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { decodeSetup, encodeSetup, type SetupAct } from '../../src/custom-ids/setup-id.ts'
import { parts } from '../../src/server/setup-part.ts'

const snowflake = fc.bigInt({ min: 10n ** 16n, max: 2n ** 64n - 1n }).map(String)
const choice = fc.oneof(fc.constantFrom('chosen', 'none'), snowflake)
const acts: fc.Arbitrary<SetupAct> = fc.oneof(
  fc.record({ is: fc.constant('see'), what: fc.constantFrom(...parts, 'overview', 'stop-recording') }),
  fc.record({ is: fc.constantFrom('begin', 'language', 'ask-weeks') }),
  fc.record({ is: fc.constantFrom('reports', 'review'), channel: choice }),
  fc.record({ is: fc.constantFrom('moderators', 'helpers'), roles: fc.constantFrom('chosen', 'none') }),
  fc.record({ is: fc.constantFrom('outcomes', 'pooling', 'note'), on: fc.boolean() }),
  fc.record({ is: fc.constant('weeks'), opening: fc.stringMatching(/^[a-z0-9]{1,16}$/) }),
  fc.record({ is: fc.constant('fewer'), weeks: fc.integer({ min: 1, max: 99_999 }) }),
  fc.record({ is: fc.constant('forum'), forum: fc.oneof(choice, fc.constant('gone')) }),
  fc.record({ is: fc.constantFrom('tag', 'untag'), forum: snowflake }),
  fc.record({ is: fc.constantFrom('export', 'ask-file') }),
  fc.record({ is: fc.constant('file'), opening: fc.stringMatching(/^[a-z0-9]{1,16}$/) }),
  fc.record({ is: fc.constant('take-in'), draft: fc.stringMatching(/^[a-z0-9]{6,32}$/) }),
  fc.record({ is: fc.constant('history'), page: fc.integer({ min: 1, max: 99 }) }),
  fc.record({ is: fc.constantFrom('undo', 'undone'), of: fc.nat(36 ** 6 - 1) }),
) as fc.Arbitrary<SetupAct>

test('every act comes back as it was, within a hundred characters', () => {
  fc.assert(
    fc.property(acts, fc.nat(36 ** 6 - 1), (act, revision) => {
      const id = encodeSetup({ revision, act })
      expect(id.length).toBeLessThanOrEqual(100)
      expect(decodeSetup(id)).toEqual({ revision, act })
    }),
  )
})

test.each([
  '',
  'cs1',
  'cs1.0',
  'cs2.0.begin',
  'cs1.00.begin',
  'cs1.0.begin.x',
  'cs1.0.see.everything',
  'cs1.0.outcomes.maybe',
  'cs1.0.reports.<@1>',
  'cs1.0.reports.chosen.x',
  'cs1.0.tag.chosen',
  'cs1.0.untag.gone',
  'cs1.0.reports.gone',
  'cs1.0.weeks.',
])('%j is none of them', id => {
  expect(decodeSetup(id)).toBeUndefined()
})

test('whatever else is decoded writes itself again', () => {
  fc.assert(
    fc.property(
      fc.string().map(text => `cs1.${text}`),
      id => {
        const decoded = decodeSetup(id)
        if (decoded) expect(encodeSetup(decoded)).toBe(id)
      },
    ),
  )
})
