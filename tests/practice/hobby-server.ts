// The invented hobby server these tests are played on.
import type { Scenario } from '../../src/practice/scenario.ts'

export const ID = {
  application: '900000000000000001',
  server: '900000000000000010',
  helper: '900000000000000021',
  moderator: '900000000000000022',
  bench: '900000000000000031',
  closed: '900000000000000032',
  posts: '900000000000000033',
  quiet: '900000000000000034',
  wren: '900000000000000041',
  ilse: '900000000000000042',
  tomas: '900000000000000043',
} as const

const MANAGE_SERVER = (1n << 5n).toString()

export const HOBBY_SERVER: Scenario = {
  application: { id: ID.application, name: 'Tiny Bot' },
  server: { id: ID.server, name: 'Torch Makers', locale: 'en-GB' },
  roles: [
    { id: ID.helper, name: 'helper' },
    { id: ID.moderator, name: 'moderator', permissions: MANAGE_SERVER },
  ],
  channels: [
    { id: ID.bench, name: 'bench', kind: 'text', topic: 'Cells and what to make of them' },
    {
      id: ID.closed,
      name: 'moderators',
      kind: 'text',
      forbid: [
        { who: ID.wren, what: ['view'] },
        { who: 'bot', what: ['view'] },
      ],
    },
    { id: ID.posts, name: 'questions', kind: 'forum', tags: ['open', 'answered'] },
    { id: ID.quiet, name: 'notices', kind: 'text', forbid: [{ who: 'bot', what: ['send', 'threads'] }] },
  ],
  people: [
    { id: ID.wren, name: 'Wren', locale: 'en-US', roles: [], about: 'newcomer' },
    { id: ID.ilse, name: 'Ilse', locale: 'de', roles: [ID.helper], about: 'helper' },
    { id: ID.tomas, name: 'Tomas', locale: 'en-US', roles: [ID.moderator], about: 'moderator', dmClosed: true },
  ],
}
