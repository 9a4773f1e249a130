// Outcomes hold what they may and nothing else, whatever a check brings with it.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { mayContribute } from '../../src/trends/contribute.ts'
import { type FinishedCheck, makeOutcome } from '../../src/trends/make-outcome.ts'
import { itemsOf, readOutcome } from '../../src/trends/outcome.ts'
import { rejudged } from '../../src/trends/rejudge.ts'
import { weekOf } from '../../src/trends/week.ts'

const reporter = 'ab'.repeat(32)
const by = { server: '120000000000000001', reporter, pooled: null }
const check: FinishedCheck = {
  finishedAt: Date.UTC(2026, 2, 4, 13, 37, 12, 345),
  family: 'harrow-30',
  verdict: 'ruled-out',
  fired: ['too-light', 'four-legs'],
  looks: [
    { question: 'legs', option: 'four' },
    { question: 'dimples', option: 'none' },
  ],
  bought: 'market',
  packs: [{ id: 'any-cell', version: '1.2.0', digest: 'sha256-Zm9yIHRlc3RzIG9ubHksIG5vIHJlYWwgcGFjaw==' }],
}

test('the week and not the day, its looks and what failed, and no figure', () => {
  expect(makeOutcome(check, by)).toEqual({
    ok: true,
    outcome: {
      ...by,
      week: '2026-W10',
      family: 'harrow-30',
      verdict: 'ruled-out',
      fired: ['four-legs', 'too-light'],
      options: { dimples: 'none', legs: 'four' },
      bought: 'market',
      packs: check.packs,
    },
  })
})

test('what else a check knows stays behind', () => {
  const more = { ...check, id: 'check-77', asker: '998877665544332211', notes: 'call me', pictures: ['cell.png'] }
  expect(makeOutcome(more, by)).toEqual(makeOutcome(check, by))
})

test.each([
  ['family', { family: 'bought from Kim' }],
  ['family', { family: '998877665544332211' }],
  ['family', { family: 'unknown' }],
  ['bought', { bought: 'https://market.example' }],
  ['fired', { fired: ['four-legs', 'Four legs!'] }],
  ['options', { looks: [{ question: 'legs', option: 'x'.repeat(49) }] }],
  ['options', { looks: [{ question: 'a b', option: 'four' }] }],
  ['week', { finishedAt: Number.POSITIVE_INFINITY }],
  ['packs', { packs: [] }],
  ['packs', { packs: [{ id: 'any-cell', version: 'latest, I think', digest: 'a'.repeat(64) }] }],
] as const)('text or an id as %s is refused and not repeated', (field, odd) => {
  const made = makeOutcome({ ...check, ...(odd as Partial<FinishedCheck>) }, by)
  expect(made).toMatchObject({ ok: false, refusal: { field } })
})

test('a reporter that is no pseudonym is refused', () => {
  expect(makeOutcome(check, { ...by, reporter: '998877665544332211' })).toMatchObject({ ok: false })
  expect(makeOutcome(check, { ...by, pooled: 'me' })).toMatchObject({ ok: false, refusal: { field: 'pooled' } })
})

test('the order of answers and rules changes nothing', () => {
  const turned = { ...check, looks: [...check.looks].reverse(), fired: [...check.fired].reverse() }
  expect(JSON.stringify(makeOutcome(turned, by))).toBe(JSON.stringify(makeOutcome(check, by)))
})

test('a stored outcome reads back as it was; a damaged row says where', () => {
  const made = makeOutcome(check, by)
  if (!made.ok) throw new Error(made.refusal.code)
  const stored = JSON.parse(JSON.stringify(made.outcome)) as Record<string, unknown>
  expect(readOutcome(stored)).toEqual(made)
  for (const field of Object.keys(stored)) {
    const { [field]: _, ...without } = stored
    expect(readOutcome(without)).toEqual({ ok: false, refusal: { code: 'not-an-outcome', field } })
  }
  expect(readOutcome({ ...stored, week: '2026-W54' })).toMatchObject({ ok: false, refusal: { field: 'week' } })
  expect(readOutcome({ ...stored, note: 'x' })).toMatchObject({ ok: false, refusal: { field: 'note' } })
  expect(readOutcome('{')).toMatchObject({ ok: false })
})

test('judged again, the rest untouched', () => {
  const made = makeOutcome(check, by)
  if (!made.ok) throw new Error(made.refusal.code)
  const packs = [{ id: 'any-cell', version: '1.3.0', digest: 'c'.repeat(64) }]
  const again = rejudged(made.outcome, { verdict: 'doubtful', fired: ['b', 'a', 'b'], packs })
  expect(again).toEqual({ ...made.outcome, verdict: 'doubtful', fired: ['a', 'b'], packs })
})

test('items of a pattern are the failed checks, the answers and where it was bought', () => {
  const made = makeOutcome(check, by)
  expect(made.ok && itemsOf(made.outcome)).toEqual([
    'rule:four-legs',
    'rule:too-light',
    'answer:dimples=none',
    'answer:legs=four',
    'bought:market',
  ])
})

test('no finer than a week: two checks of one week leave the same', () => {
  fc.assert(
    fc.property(fc.nat(7 * 86_400_000 - 1), offset => {
      const monday = Date.UTC(2026, 2, 2)
      const made = makeOutcome({ ...check, finishedAt: monday + offset }, by)
      expect(made).toEqual(makeOutcome({ ...check, finishedAt: monday }, by))
      expect(weekOf(monday + offset)).toBe('2026-W10')
    }),
  )
})

test('who leaves an outcome', () => {
  const member = { accountDays: 400, moderator: false, saidNo: false, serverSaidNo: false }
  expect(mayContribute(member)).toEqual({ ok: true })
  expect(mayContribute({ ...member, saidNo: true })).toMatchObject({ refusal: { code: 'said-no' } })
  expect(mayContribute({ ...member, serverSaidNo: true })).toMatchObject({ refusal: { code: 'server-said-no' } })
  expect(mayContribute({ ...member, moderator: true })).toMatchObject({ refusal: { code: 'moderator' } })
  expect(mayContribute({ ...member, accountDays: 27 })).toMatchObject({ refusal: { code: 'account-too-new' } })
  expect(mayContribute({ ...member, accountDays: Number.NaN })).toMatchObject({ ok: false })
})
