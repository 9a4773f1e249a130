// Who is a moderator, whatever Discord's overrides say.
import { expect, test } from 'vitest'
import { isHelper, isModerator } from '../../src/server/rights.ts'
import { unsettled } from '../../src/server/settings.ts'

const settings = { ...unsettled('s'), moderatorRoles: ['wardens'] }

test.each([
  ['nobody in particular', 0n, [], false],
  ['who may manage messages only', 1n << 13n, [], false],
  ['who may manage the server', 1n << 5n, [], true],
  ['an administrator', 1n << 3n, [], true],
  ['a member of a role named as moderators', 0n, ['friends', 'wardens'], true],
  ['a member of another role', 0n, ['friends'], false],
])('%s', (_who, permissions, roles, expected) => {
  expect(isModerator({ permissions, roles }, settings)).toBe(expected)
})

test('before any role is named, nobody is a moderator by role', () => {
  expect(isModerator({ permissions: 0n, roles: ['wardens'] }, unsettled('s'))).toBe(false)
})

test.each([
  ['nobody in particular', 0n, ['friends'], false],
  ['a member of a role named as helpers', 0n, ['friends', 'menders'], true],
  ['a moderator by role', 0n, ['wardens'], true],
  ['who may manage the server', 1n << 5n, [], true],
])('may answer for people who are stuck: %s', (_who, permissions, roles, expected) => {
  expect(isHelper({ permissions, roles }, { ...settings, helperRoles: ['menders'] })).toBe(expected)
})
