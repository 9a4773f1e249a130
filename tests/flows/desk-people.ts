// Who presses what in the walks at the desk: a cast with every mix of rights, the places they press from, and the steps a walk is made of.
import fc from 'fast-check'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Scenario } from '../../src/practice/scenario.ts'
import { attic, castOf, elsewhereWith } from './attic.ts'
import { englishServer } from './open-room.ts'

export const server = demoServer.server.id
export const everybody = '900000000000000301'
export const roles = {
  /** May manage the server, and so decide. */
  manages: { id: '900000000000000211', bits: 1n << 5n },
  /** Named as moderators, and as helpers, in the settings. */
  moderates: { id: '900000000000000213', bits: 0n },
  helps: { id: '900000000000000215', bits: 0n },
  /** Much, but nothing that was named. */
  posts: { id: '900000000000000214', bits: (1n << 13n) | (1n << 17n) | (1n << 40n) },
} as const
type RoleName = keyof typeof roles
export const cast: readonly (readonly RoleName[])[] = [
  ['manages'],
  ['moderates'],
  ['moderates', 'helps'],
  ['helps'],
  ['posts'],
  [],
]
export const people = castOf(cast.map(has => has.map(one => roles[one].id)))
export const scenario: Scenario = {
  ...englishServer,
  roles: Object.entries(roles).map(([name, { id, bits }]) => ({ id, name, permissions: String(bits) })),
  channels: englishServer.channels.map(one =>
    one.id === demoReportsChannel
      ? {
          ...one,
          permit: ['bot', ...['manages', 'moderates'].map(name => roles[name as RoleName].id)].map(who => ({
            who,
            what: ['view' as const],
          })),
        }
      : one,
  ),
  people,
  elsewhere: elsewhereWith(people, () => true),
}

const deeds = [
  ...(['see', 'dismiss', 'watch', 'fake', 'draft', 'put-off'] as const),
  ...(['warn', 'warn', 'warn', 'edit', 'edit', 'undo', 'undo', 'undo', 'undo', 'undo'] as const),
] as const
export const steps = fc.record({
  who: fc.oneof({ weight: 2, arbitrary: fc.nat(2) }, { weight: 1, arbitrary: fc.nat(cast.length - 1) }),
  where: fc.constantFrom('server', 'server', 'server', 'server', 'server', 'server', 'direct', 'elsewhere'),
  does: fc.oneof(
    {
      weight: 10,
      arbitrary: fc.record({ is: fc.constant('deed' as const), deed: fc.constantFrom(...deeds), old: fc.nat(4) }),
    },
    {
      weight: 2,
      arbitrary: fc.record({ is: fc.constant('several' as const), next: fc.constantFrom('Watch', 'Dismiss') }),
    },
    { weight: 2, arbitrary: fc.record({ is: fc.constant('submit' as const) }) },
    { weight: 1, arbitrary: fc.record({ is: fc.constant('list' as const) }) },
    { weight: 1, arbitrary: fc.record({ is: fc.constant('week' as const), weeks: fc.constantFrom(1, 2, 5) }) },
    {
      weight: 1,
      arbitrary: fc.record({
        is: fc.constantFrom('post-deleted' as const, 'warnings-deleted' as const, 'rights' as const),
      }),
    },
  ),
  /** Which of the two findings; whether a form that opens is sent in at once. */
  which: fc.nat(1),
  sends: fc.constantFrom(true, true, false),
})
export type Step = typeof steps extends fc.Arbitrary<infer One> ? One : never

export const places = { server: everybody, direct: 'direct', elsewhere: attic.channel } as const
/** One walk that comes to every deed and takes each back; chance may not. */
export const everyDeed: Step[] = (
  ['warn', 'edit', 'undo', 'undo', 'dismiss', 'undo', 'watch', 'undo', 'fake', 'undo'] as const
).map(deed => ({ who: 0, where: 'server', does: { is: 'deed', deed, old: 0 }, which: 0, sends: true }))
