// The attacks of `npm run attacks`, each in its short form.
import { expect, test } from 'vitest'
import { hostileInteractions } from './long-form/interactions.ts'
import { kills } from './long-form/kills.ts'
import { raid } from './long-form/raid.ts'
import { databaseRestarts, postgresMissing } from './long-form/restarts.ts'

test('hostile interactions are answered in words and in time, ping nobody, and leave the owner’s check alone', async () => {
  expect((await hostileInteractions(300)).wrong).toEqual([])
}, 300_000)

test('killed in the middle of clicks, what was acknowledged is stored, once', async () => {
  expect((await kills(2)).wrong).toEqual([])
}, 300_000)

test.skipIf(postgresMissing)('through restarts of the database, what was acknowledged is stored', async () => {
  expect((await databaseRestarts(4)).wrong).toEqual([])
})

test('a raid holds up nobody who was there before', async () => {
  expect((await raid(60)).wrong).toEqual([])
}, 300_000)
