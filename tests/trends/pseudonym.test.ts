// Pseudonyms against the test vectors of RFC 4231, and that nothing about them can be mistaken for another's.
import { createHmac } from 'node:crypto'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pseudonym } from '../../src/trends/names.ts'
import { codeInFamily, type Hmac, pseudonymOf } from '../../src/trends/pseudonym.ts'

const hmac: Hmac = (key, message) => createHmac('sha256', key).update(message).digest('hex')
const key = new Uint8Array(32).fill(7)

// RFC 4231, 4.2 to 4.4 (the third from memory).
test.each([
  ['0b'.repeat(20), '4869205468657265', 'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7'],
  [
    '4a656665',
    '7768617420646f2079612077616e7420666f72206e6f7468696e673f',
    '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
  ],
  ['aa'.repeat(20), 'dd'.repeat(50), '773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe'],
])('the function handed in is HMAC-SHA-256', (keyHex, dataHex, mac) => {
  expect(hmac(Buffer.from(keyHex, 'hex'), Buffer.from(dataHex, 'hex'))).toBe(mac)
})

test('a pseudonym is the keyed hash of purpose, server and user', () => {
  const made = pseudonymOf(hmac, key, { purpose: 'outcome', server: '17', user: '4' })
  const message = Buffer.concat([
    Buffer.from('outcome'),
    Buffer.of(0),
    Buffer.from('17'),
    Buffer.of(0),
    Buffer.from('4'),
  ])
  expect(made).toEqual({ ok: true, pseudonym: hmac(key, message) })
  expect(made.ok && pseudonym.safeParse(made.pseudonym).success).toBe(true)
})

test('two people, servers, purposes or keys never share one', () => {
  const who = fc.record({
    purpose: fc.constantFrom('outcome' as const, 'pool' as const),
    server: fc.stringMatching(/^[0-9]{0,3}$/),
    user: fc.stringMatching(/^[0-9]{1,3}$/),
  })
  const pseudonym = (k: Uint8Array, w: Parameters<typeof pseudonymOf>[2]) => {
    const made = pseudonymOf(hmac, k, w)
    return made.ok ? made.pseudonym : made.refusal.code
  }
  fc.assert(
    fc.property(who, who, (a, b) => {
      const same = a.purpose === b.purpose && a.server === b.server && a.user === b.user
      expect(pseudonym(key, a) === pseudonym(key, b)).toBe(same)
      expect(pseudonym(key, a)).not.toBe(pseudonym(new Uint8Array(32).fill(8), a))
    }),
  )
})

test('in each family a person has another code, that is no pseudonym and that nobody else has', () => {
  const name = fc.stringMatching(/^[0-9a-f]{1,4}$/)
  const family = fc.constantFrom('unknown', 'harrow-30', 'harrow-35')
  fc.assert(
    fc.property(name, name, family, family, (a, b, one, other) => {
      const code = codeInFamily(hmac, key, a, one)
      expect(code).toMatch(/^[0-9a-f]{64}$/)
      expect(code === codeInFamily(hmac, key, b, other)).toBe(a === b && one === other)
      expect(code).not.toBe(codeInFamily(hmac, new Uint8Array(32).fill(8), a, one))
      for (const purpose of ['outcome', 'pool'] as const)
        expect(pseudonymOf(hmac, key, { purpose, server: a, user: one })).not.toMatchObject({ pseudonym: code })
    }),
  )
})

test('a short key and a user that could be read two ways are refused', () => {
  const who = { purpose: 'outcome', server: '17', user: '4' } as const
  expect(pseudonymOf(hmac, new Uint8Array(16), who)).toEqual({
    ok: false,
    refusal: { code: 'key-too-short', bytes: 16, least: 32 },
  })
  for (const odd of [{ user: '' }, { user: '4\0' }, { server: '1\x007' }])
    expect(pseudonymOf(hmac, key, { ...who, ...odd })).toEqual({ ok: false, refusal: { code: 'not-a-user' } })
})
