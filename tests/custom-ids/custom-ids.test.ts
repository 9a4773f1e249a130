// What holds for custom ids of every kind: old ones are read as before, what is read writes itself again, no id is read as two kinds.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { askIds } from '../../src/custom-ids/ask-id.ts'
import { buyingIds, buyingParts, regions } from '../../src/custom-ids/buying-id.ts'
import { checkIds } from '../../src/custom-ids/check-id.ts'
import { anewIds, factsIds } from '../../src/custom-ids/facts-codec.ts'
import { familyIds, familyStartIds } from '../../src/custom-ids/family-id.ts'
import { handOverIds } from '../../src/custom-ids/hand-over-id.ts'
import { type IdKind, idKind, oneOf, silent } from '../../src/custom-ids/id-kind.ts'
import { flag, revision } from '../../src/custom-ids/id-parts.ts'
import { letterIds } from '../../src/custom-ids/letter-id.ts'
import { linksIds } from '../../src/custom-ids/links-id.ts'
import { logLabelIds } from '../../src/custom-ids/log-label-id.ts'
import { logQuestionIds } from '../../src/custom-ids/log-question-id.ts'
import { privacyIds } from '../../src/custom-ids/privacy-id.ts'
import { setupIds } from '../../src/custom-ids/setup-id.ts'
import { shareIds } from '../../src/custom-ids/share-id.ts'
import { releaseExports, releaseViews, trendsIds } from '../../src/custom-ids/trends-id.ts'
import { waitingIds } from '../../src/custom-ids/waiting-id.ts'
import { offerIds, walkIds } from '../../src/custom-ids/walk-id.ts'
import { clickHandlers } from '../../src/discord/click-handlers.ts'
import written from './ids-of-0.1.0.json' with { type: 'json' }

/** A kind of id, and its own words for making ids near to it. */
type Kind = { readonly mark: string; readonly words: readonly string[]; readonly ids: IdKind<unknown> }
const kind = <T>(ids: IdKind<T>, words: readonly string[]): Kind => ({
  mark: ids.mark,
  words,
  ids: ids as IdKind<unknown>,
})

const kinds: readonly Kind[] = [
  kind(checkIds, ['pick', 'show', 'measured', 'consent', 'unwrap', 'bench', 'yes', 'no', 'know']),
  kind(handOverIds, ['hands', 'take', 'asked', 'sent-back', 'go-on', 'redirect', 'redirected', 'close-it', 'reopen']),
  kind(waitingIds, ['all', 'help', 'free', 'mine', 'chosen', 'still', 'handled']),
  kind(askIds, ['show', 'post', 'choose', '-']),
  kind(buyingIds, ['open', 'view', 'turn', 'post', 'region', 'later', ...buyingParts, ...regions]),
  kind(letterIds, ['write', 'language', 'change', 'changed', 'en', 'de']),
  kind(linksIds, ['manage', 'choose', 'add', 'added', 'edit', 'edited', 'link', 'removed', 'again', 'history', 'undo']),
  kind(shareIds, ['see', 'post', 'remove', 'abcdefgh']),
  kind(privacyIds, ['see', 'show', 'delete', 'deleted', 'helping', 'help-in', 'help-out']),
  kind(setupIds, [
    'see',
    'overview',
    'begin',
    'reports',
    'chosen',
    'weeks',
    'fewer',
    'tag',
    'history',
    'undo',
    'undone',
  ]),
  kind(trendsIds, [
    'counting',
    'out',
    'finding',
    'warn',
    'warned',
    'release',
    'pool',
    ...releaseViews,
    ...releaseExports,
  ]),
  kind(anewIds, ['2', 'harrow-30', '-', 'c3500', 'f18650_c1']),
  kind(factsIds, ['c3500', 'i9,8', 'f18650', 'c3500,00', 'f18650_c1']),
  kind(familyIds, [
    'f-abcdefgh',
    'f-a1b2c3d4',
    'see',
    'page',
    'try',
    'made',
    'made-as',
    'feature',
    'legs',
    'rewrap',
    'on',
    'agreed',
    'back',
    'k1',
    'fake-of',
    'photos',
    'drop-photo',
    'new-photo-of',
  ]),
  kind(familyStartIds, ['new', 'look']),
  kind(walkIds, ['9f86d081884c7d659a2f', 'say', 'three', 'choose', 'unsure', 'back', 'send']),
  kind(offerIds, ['ask', 'sent']),
  kind(logQuestionIds, ['9f86d081884c7d659a2f']),
  kind(logLabelIds, ['label', 'labelled', '9f86d081884c7d659a2f']),
]

/** What other parts are like: revisions as they are written and as they are not, ids of ours and of Discord's, a week, nothing. */
const parts = ['0', '1', '01', '00', 'zz', '0a', 'abc123', 'a1b2c3d4', '123456789012345678', '2026-W07', '2026-W60', '']
/** So long are the longest ids, without their mark. */
const most = 5

const idOf = ({ mark, words }: Kind): fc.Arbitrary<string> =>
  fc
    .array(fc.oneof(fc.constantFrom(...words), fc.constantFrom(...parts)), { minLength: 1, maxLength: most })
    .map(rest => [mark, ...rest].join('.'))

describe.each(kinds)('ids that begin with $mark', one => {
  test('whatever is read writes itself again, and is read as nothing else', () => {
    let read = 0
    fc.assert(
      fc.property(idOf(one), id => {
        const value = one.ids.read(id)
        if (value === undefined) return
        read++
        expect(one.ids.write(value)).toBe(id)
        expect(kinds.filter(other => other.ids.read(id) !== undefined)).toEqual([one])
      }),
      { numRuns: 20_000 },
    )
    expect(read).toBeGreaterThan(0)
  })

  test('somebody handles them', async () => {
    expect((await clickHandlers.get(one.mark)?.load())?.mark).toBe(one.mark)
  })
})

test('every kind that is handled is held here', () => {
  expect([...clickHandlers.keys()].sort()).toEqual(kinds.map(one => one.mark).sort())
})

test.each(Object.entries(written))('%s, as version 0.1.0 wrote it, says what it said', (id, said) => {
  const [mark] = id.split('.')
  const { ids } = kinds.find(one => one.mark === mark) as Kind
  expect(ids.read(id)).toEqual(said)
  expect(ids.write(said)).toBe(id)
})

test('a value that no form of a kind says is a fault, and no id', () => {
  expect(() => trendsIds.write({ is: 'finding', id: 'NOT-OURS', does: 'warn' })).toThrow(RangeError)
  expect(() => setupIds.write({ revision: -1, act: { is: 'begin' } })).toThrow(RangeError)
})

describe('a description', () => {
  const ids = idKind(
    'x1',
    { is: revision, on: flag('on', 'off') },
    { is: revision, on: silent(null), more: oneOf({ at: revision }, { at: revision, by: revision }) },
  )

  test.each([
    ['x1.a.on', { is: 10, on: true }],
    ['x1.0.2', { is: 0, on: null, more: { at: 2 } }],
    ['x1.0.2.z', { is: 0, on: null, more: { at: 2, by: 35 } }],
  ])('%s', (id, value) => {
    expect(ids.read(id)).toEqual(value)
    expect(ids.write(value as never)).toBe(id)
  })

  test.each(['x1', 'x1.', 'x1.a', 'x1.a.', 'x1.a.on.', 'x1.0.2.z.1', 'x10.a.on', '.a.on'])(
    '%j is none of its ids',
    id => expect(ids.read(id)).toBeUndefined(),
  )
})
