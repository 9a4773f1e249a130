// Who a check can be offered to, as somebody chose them.
import type { Role, User } from 'discord.js'
import { expect, test } from 'vitest'
import { takerOf } from '../../src/discord/check/hand-over/taker-of.ts'

const person = { id: 'p', bot: false } as User
const role = (more: { readonly id?: string; readonly managed?: boolean } = {}) =>
  ({ id: 'r', managed: false, ...more }) as Role

test.each([
  ['nobody chosen: whoever takes it', { isHere: false }, { ok: true, taker: { to: 'anyone' } }],
  ['a person of the server', { user: person, isHere: true }, { ok: true, taker: { to: 'person', person: 'p' } }],
  ['a role', { role: role(), isHere: false }, { ok: true, taker: { to: 'role', role: 'r' } }],
  ['somebody who left', { user: person, isHere: false }, { ok: false, refusal: { code: 'not-here' } }],
  ['a program', { user: { ...person, bot: true } as User, isHere: true }, { ok: false, refusal: { code: 'to-a-bot' } }],
  [
    'the role of a program',
    { role: role({ managed: true }), isHere: false },
    { ok: false, refusal: { code: 'to-a-bot' } },
  ],
  [
    'the role of everybody',
    { role: role({ id: 's' }), isHere: false },
    { ok: false, refusal: { code: 'to-everyone' } },
  ],
])('%s', (_name, chosen, choosing) => {
  expect(takerOf(chosen, 's')).toEqual(choosing)
})
