// A made-up cast with roles, and a second server that the same people are on, for walks in which somebody presses from elsewhere.
import type { Scenario } from '../../src/practice/scenario.ts'

export const attic = { id: '900000000000000800', channel: '900000000000000801' }

/** P0, P1 and so on, each with these roles. */
export const castOf = (roles: readonly (readonly string[])[]): Scenario['people'] =>
  roles.map((has, i) => ({
    id: String(900000000000000500n + BigInt(i)),
    name: `P${i}`,
    locale: 'en-GB',
    roles: has,
  }))

/** `managers`: who of them may manage the second server. */
export const elsewhereWith = (
  people: Scenario['people'],
  managers: (at: number) => boolean,
): NonNullable<Scenario['elsewhere']> => ({
  id: attic.id,
  name: 'Attic Radio',
  locale: 'en-GB',
  channel: { id: attic.channel, name: 'chatter' },
  people: people.map(({ id }) => id),
  managers: people.filter((_, at) => managers(at)).map(({ id }) => id),
})
