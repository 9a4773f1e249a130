// The attacks of `npm run attacks`, each in its short form.
import { expect, test } from 'vitest'
import { clocksBack } from './long-form/clock-back.ts'
import { fullDisks, readOnlyFile } from './long-form/disk.ts'
import { hostileInteractions } from './long-form/interactions.ts'
import { kills } from './long-form/kills.ts'
import { raid } from './long-form/raid.ts'
import { databaseRestarts, postgresMissing } from './long-form/restarts.ts'
import { ownPostgresMissing, serverRestarts } from './long-form/server-restarts.ts'

test('hostile interactions are answered in words and in time, ping nobody, and leave the owner’s check alone', async () => {
  expect((await hostileInteractions(300)).wrong).toEqual([])
}, 300_000)

test.each(['SQLite', 'PostgreSQL'] as const)(
  'killed while twenty people press, what was acknowledged is stored, once: %s',
  async on => {
    if (on === 'PostgreSQL' && postgresMissing) return
    expect((await kills(1, on)).wrong).toEqual([])
  },
  300_000,
)

test('a full disk is told, and what was acknowledged is stored; a file that may only be read is named', async () => {
  expect((await fullDisks(1)).wrong).toEqual([])
  expect((await readOnlyFile()).wrong).toEqual([])
}, 300_000)

test('a clock that goes back by an hour makes nobody wait and nothing count twice', async () => {
  expect((await clocksBack(1)).wrong).toEqual([])
}, 300_000)

test.skipIf(postgresMissing)('through restarts of the database, what was acknowledged is stored', async () => {
  expect((await databaseRestarts(4)).wrong).toEqual([])
})

test.skipIf(ownPostgresMissing)(
  'through crashes of the database under a running bot, too',
  async () => {
    expect((await serverRestarts(2)).wrong).toEqual([])
  },
  300_000,
)

test('a raid holds up nobody who was there before', async () => {
  expect((await raid(60)).wrong).toEqual([])
}, 300_000)
