// What holds for custom ids of every kind: what is read writes itself again, and no id is read as two kinds.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeAsk, encodeAsk } from '../../src/discord/answers/ask-id.ts'
import { buyingParts, decodeBuying, encodeBuying, regions } from '../../src/discord/buying/buying-id.ts'
import { decodeLinks, encodeLinks } from '../../src/discord/buying/links-id.ts'
import { decodeClick, encodeClick } from '../../src/discord/check/check-id.ts'
import { decodeStartWithFacts, startWithFacts } from '../../src/discord/check/facts/facts-codec.ts'
import { decodeHand, encodeHand } from '../../src/discord/check/hand-over/hand-over-id.ts'
import { decodeLetter, encodeLetter } from '../../src/discord/check/letter/letter-id.ts'
import { decodePrivacy, encodePrivacy } from '../../src/discord/privacy/privacy-id.ts'
import { decodeSetup, encodeSetup } from '../../src/discord/setup/setup-id.ts'
import { decodeTrends, encodeTrends, releaseExports, releaseViews } from '../../src/discord/trends/trends-id.ts'

/** A kind of id: its mark, its own words, and a reading that gives back the id as it would be written, or undefined. */
type Kind = { readonly mark: string; readonly words: readonly string[]; again(id: string): string | undefined }
const kind = <T>(
  mark: string,
  decode: (id: string) => T | undefined,
  encode: (act: T) => string,
  words: readonly string[],
): Kind => ({
  mark,
  words,
  again(id) {
    const act = decode(id)
    return act === undefined ? undefined : encode(act)
  },
})

const kinds: readonly Kind[] = [
  kind('cw1', decodeClick, encodeClick, [
    'pick',
    'show',
    'measured',
    'consent',
    'unwrap',
    'bench',
    'yes',
    'no',
    'know',
  ]),
  kind('ch1', decodeHand, encodeHand, ['hands', 'take', 'asked', 'sent-back', 'go-on']),
  kind('ca1', decodeAsk, encodeAsk, ['show', 'post', 'choose', '-']),
  kind('cb1', decodeBuying, encodeBuying, [
    'open',
    'view',
    'turn',
    'post',
    'region',
    'later',
    ...buyingParts,
    ...regions,
  ]),
  kind('clt1', decodeLetter, encodeLetter, ['write', 'language', 'change', 'changed', 'en', 'de']),
  kind('clk1', decodeLinks, encodeLinks, [
    'manage',
    'choose',
    'add',
    'added',
    'edit',
    'edited',
    'link',
    'removed',
    'again',
  ]),
  kind('cp1', decodePrivacy, encodePrivacy, ['see', 'show', 'delete', 'deleted']),
  kind('cs1', decodeSetup, encodeSetup, ['see', 'overview', 'begin', 'reports', 'chosen', 'weeks', 'fewer', 'tag']),
  kind('ct1', decodeTrends, encodeTrends, [
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
  kind('cf1', decodeStartWithFacts, startWithFacts, ['c3500', 'i9,8', 'f18650']),
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
        const again = one.again(id)
        if (again === undefined) return
        read++
        expect(again).toBe(id)
        expect(kinds.filter(other => other.again(id) !== undefined)).toEqual([one])
      }),
      { numRuns: 20_000 },
    )
    expect(read).toBeGreaterThan(0)
  })
})
