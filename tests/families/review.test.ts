// How a version comes into force: never by its author alone where somebody else can be asked, never other than what was shown.
import { expect, test } from 'vitest'
import { waitAlone } from '../../src/families/family.ts'
import {
  agree,
  askForReview,
  type Doing,
  goBack,
  hasNewMust,
  mayAgree,
  retire,
  sendBack,
} from '../../src/families/review.ts'
import { draftOf, named, someFacts, versionOf } from './made-families.ts'

const facts = named('f-aaaaaa', 'Tried', someFacts)
const draft = draftOf('s', facts)
const proposed = { facts, digest: 'sha256:abcdef', problems: [] }
const doing = (person: string, now = 1000): Doing => ({ person, interaction: `i${person}${now}`, now, why: 'counted' })
const asked = (() => {
  const done = askForReview(draft, proposed, undefined, doing('11'))
  if (!done.ok) throw new Error('it was not asked')
  return done.family
})()
const seen = { alone: false, seen: 'sha256:abc' }

test('a second moderator puts it in force, and both are named', () => {
  const done = agree(asked, proposed, undefined, doing('22', 2000), seen)
  expect(done).toMatchObject({
    ok: true,
    family: { state: 'in-force', head: 1, draft: null, review: null },
    version: { number: 1, by: '11', agreedBy: '22', why: 'counted', undoes: null },
  })
})

test('its author cannot agree, but where there is nobody else; then what rules out waits a day', () => {
  expect(agree(asked, proposed, undefined, doing('11'), seen)).toMatchObject({
    ok: false,
    refusal: { code: 'own-review' },
  })
  const alone = { ...seen, alone: true }
  expect(agree(asked, proposed, undefined, doing('11'), alone)).toMatchObject({
    ok: false,
    refusal: { code: 'must-waits' },
  })
  expect(agree(asked, proposed, undefined, doing('11', 1000 + waitAlone), alone)).toMatchObject({
    ok: true,
    version: { agreedBy: null },
  })
})

test('another draft, other strengths, or another digest than was shown comes into force by no press', () => {
  const other = { ...proposed, digest: 'sha256:ffffff' }
  expect(agree(asked, other, undefined, doing('22'), { alone: false, seen: 'sha256:fff' })).toMatchObject({
    refusal: { code: 'changed-meanwhile' },
  })
  expect(agree(asked, proposed, undefined, doing('22'), { alone: false, seen: 'sha256:fff' })).toMatchObject({
    refusal: { code: 'changed-meanwhile' },
  })
  const wrong = { ...proposed, problems: [{ code: 'nothing-to-hold-against' as const }] }
  expect(agree(asked, wrong, undefined, doing('22'), seen)).toMatchObject({ refusal: { code: 'cannot-be-used' } })
  expect(askForReview(draft, wrong, undefined, doing('11'))).toMatchObject({ refusal: { code: 'cannot-be-used' } })
})

test('sent back, taken back, retired: each leaves what it should, and a retired one takes nothing more', () => {
  expect(sendBack(asked, doing('22'))).toMatchObject({ ok: true, family: { state: 'draft', review: null } })
  const inForce = { ...asked, head: 2, state: 'in-force' as const, review: null }
  const first = versionOf(facts, 1)
  expect(goBack(inForce, first, 1, doing('22'))).toMatchObject({
    version: { number: 3, undoes: 1, digest: first.digest, agreedBy: null },
  })
  expect(goBack(inForce, undefined, 9, doing('22'))).toMatchObject({ refusal: { code: 'no-such-version' } })
  expect(retire({ ...draft }, null, doing('22'))).toMatchObject({ refusal: { code: 'not-in-force' } })
  const done = retire(inForce, 'f-bbbbbb', doing('22'))
  if (!done.ok) throw new Error('it was not retired')
  expect(done.family).toMatchObject({ state: 'retired', retired: { successor: 'f-bbbbbb' } })
  for (const late of [
    goBack(done.family, first, 1, doing('22')),
    askForReview(done.family, proposed, undefined, doing('11')),
  ])
    expect(late).toMatchObject({ ok: false, refusal: { code: 'retired' } })
})

const plain = { ...facts, traits: { legs: { made: ['three'], against: [], remarks: [] } } }
const inForce = versionOf(facts, 1, { digest: 'sha256:000000' })
const late = doing('22', 2000)
const one = { revision: draft.revision + 1, changedBy: late.interaction }

test('asked for, it is in review with who asked, when and why; a version that is in force stays so meanwhile', () => {
  const review = { by: '22', at: 2000, why: 'counted', digest: proposed.digest }
  expect(askForReview(draft, proposed, undefined, late)).toEqual({
    ok: true,
    family: { ...draft, ...one, state: 'in-review', review },
  })
  const headed = { ...draft, head: 1, state: 'in-force' as const }
  expect(askForReview(headed, proposed, inForce, late)).toEqual({ ok: true, family: { ...headed, ...one, review } })
})

test.each([
  ['what is retired', { ...draft, state: 'retired' as const }, proposed, undefined, { code: 'retired' }],
  ['no draft', { ...draft, draft: null }, proposed, undefined, { code: 'nothing-to-review' }],
  ['what is in force', draft, proposed, { ...inForce, digest: proposed.digest }, { code: 'nothing-changed' }],
  [
    'what cannot be used',
    draft,
    { ...proposed, problems: [{ code: 'too-tangled' as const }] },
    undefined,
    { code: 'cannot-be-used', problems: [{ code: 'too-tangled' }] },
  ],
])('%s is not asked for', (_, family, what, version, refusal) => {
  expect(askForReview(family, what, version, late)).toEqual({ ok: false, refusal })
})

test('agreed to, it is the next version, word for word what was asked for, and the draft is gone', () => {
  expect(agree({ ...asked, head: 3 }, proposed, inForce, late, seen)).toEqual({
    ok: true,
    family: {
      ...asked,
      ...{
        revision: asked.revision + 1,
        changedBy: late.interaction,
        state: 'in-force',
        head: 4,
        draft: null,
        review: null,
      },
    },
    version: {
      ...{ family: facts.identity.id, number: 4, facts, digest: proposed.digest, by: '11', agreedBy: '22' },
      ...{ at: 2000, why: 'counted', undoes: null },
    },
  })
})

test.each([
  ['of what is retired', { ...asked, state: 'retired' as const }, proposed, { code: 'retired' }],
  ['of what nobody asked for', { ...asked, review: null }, proposed, { code: 'nothing-to-review' }],
  ['of what has no draft', { ...asked, draft: null }, proposed, { code: 'nothing-to-review' }],
  [
    'of what cannot be used',
    asked,
    { ...proposed, problems: [{ code: 'too-tangled' as const }] },
    { code: 'cannot-be-used', problems: [{ code: 'too-tangled' }] },
  ],
])('there is no agreeing %s', (_, family, what, refusal) => {
  expect(agree(family, what, undefined, late, seen)).toEqual({ ok: false, refusal })
})

test('whoever asked may agree alone at once where nothing new rules out, and after a day where nobody has answered', () => {
  const alone = { ...seen, alone: true }
  const milder = { ...proposed, facts: plain }
  expect(agree(asked, milder, undefined, doing('11'), alone)).toMatchObject({ ok: true, version: { agreedBy: null } })
  expect(agree(asked, proposed, versionOf(facts, 1), doing('11'), alone).ok).toBe(true)
  expect(agree(asked, proposed, undefined, doing('11', 999 + waitAlone), alone)).toEqual({
    ok: false,
    refusal: { code: 'must-waits', until: 1000 + waitAlone },
  })
  expect(agree(asked, proposed, undefined, doing('11', 1000 + waitAlone), seen).ok).toBe(true)
  expect(agree(asked, proposed, undefined, doing('22', 1001), seen).ok).toBe(true)
  const may = (person: string, now: number, isAlone = false) => mayAgree(asked, { person, now }, isAlone)
  expect([may('11', 999 + waitAlone), may('11', 1000 + waitAlone), may('11', 1000, true), may('22', 1000)]).toEqual([
    ...[false, true, true, true],
  ])
  expect(mayAgree(draft, { person: '22', now: 5000 + waitAlone }, true)).toBe(false)
})

test('sent back, it is a draft again, or what it was with the version in force', () => {
  expect(sendBack(asked, late)).toEqual({
    ok: true,
    family: { ...asked, revision: asked.revision + 1, changedBy: late.interaction, state: 'draft', review: null },
  })
  const headed = { ...asked, head: 2, state: 'in-force' as const }
  expect(sendBack(headed, late)).toMatchObject({ family: { state: 'in-force', head: 2, review: null } })
  expect(sendBack(draft, late)).toEqual({ ok: false, refusal: { code: 'nothing-to-review' } })
})

test('gone back to, an earlier version is the next one, and says which it was', () => {
  const headed = { ...asked, head: 2, state: 'in-force' as const }
  const first = versionOf(facts, 1)
  expect(goBack(headed, first, 1, late)).toEqual({
    ok: true,
    family: {
      ...headed,
      ...{ revision: headed.revision + 1, changedBy: late.interaction, head: 3, draft: null, review: null },
    },
    version: {
      ...{ family: facts.identity.id, number: 3, facts, digest: first.digest, by: '22', agreedBy: null },
      ...{ at: 2000, why: 'counted', undoes: 1 },
    },
  })
  expect(goBack(headed, versionOf(facts, 2), 2, late)).toEqual({ ok: false, refusal: { code: 'nothing-changed' } })
  expect(goBack(headed, undefined, 9, late)).toEqual({ ok: false, refusal: { code: 'no-such-version', number: 9 } })
})

test('retired, it says who, when, why and what follows it; once', () => {
  const headed = { ...asked, head: 2, state: 'in-force' as const }
  const done = retire(headed, null, late)
  expect(done).toEqual({
    ok: true,
    family: {
      ...headed,
      ...{ revision: headed.revision + 1, changedBy: late.interaction, state: 'retired', review: null },
      retired: { by: '22', at: 2000, why: 'counted', successor: null },
    },
  })
  expect(done.ok && retire(done.family, null, late)).toEqual({ ok: false, refusal: { code: 'retired' } })
})

test('new is a must about an answer that did not rule out before, by whatever entry', () => {
  const of = (...entries: [string[], 'must' | 'strong'][]) => ({
    ...facts,
    traits: {
      legs: {
        ...{ made: [], remarks: [] },
        against: entries.map(([options, tells]) => ({ options, tells, from: 'moderator' as const })),
      },
    },
  })
  expect(hasNewMust(of([['four'], 'must']), undefined)).toBe(true)
  expect(hasNewMust(of([['four'], 'strong']), undefined)).toBe(false)
  expect(hasNewMust(of([['four'], 'must']), of([['four'], 'strong']))).toBe(true)
  expect(hasNewMust(of([['four'], 'must'], [['five'], 'must']), of([['five', 'four'], 'must']))).toBe(false)
  expect(hasNewMust(of([['four', 'five'], 'must']), of([['four'], 'must']))).toBe(true)
  expect(hasNewMust(plain, of([['four'], 'must']))).toBe(false)
})
