// How a version comes into force: never by its author alone where somebody else can be asked, never other than what was shown.
import { expect, test } from 'vitest'
import { waitAlone } from '../../src/families/family.ts'
import { agree, askForReview, type Doing, goBack, retire, sendBack } from '../../src/families/review.ts'
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
