// The invented hobby server these tests are played on.
import type { Scenario } from '../../src/practice/scenario.ts'

export const ids = {
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

const manageServer = (1n << 5n).toString()

export const hobbyServer: Scenario = {
  application: { id: ids.application, name: 'Tiny Bot' },
  server: { id: ids.server, name: 'Torch Makers', locale: 'en-GB' },
  roles: [
    { id: ids.helper, name: 'helper' },
    { id: ids.moderator, name: 'moderator', permissions: manageServer },
  ],
  channels: [
    { id: ids.bench, name: 'bench', kind: 'text', topic: 'Cells and what to make of them' },
    {
      id: ids.closed,
      name: 'moderators',
      kind: 'text',
      forbid: [
        { who: ids.wren, what: ['view'] },
        { who: 'bot', what: ['view'] },
      ],
    },
    { id: ids.posts, name: 'questions', kind: 'forum', tags: ['open', 'answered'] },
    { id: ids.quiet, name: 'notices', kind: 'text', forbid: [{ who: 'bot', what: ['send', 'threads'] }] },
  ],
  people: [
    { id: ids.wren, name: 'Wren', locale: 'en-US', roles: [], about: 'newcomer' },
    { id: ids.ilse, name: 'Ilse', locale: 'de', roles: [ids.helper], about: 'helper' },
    { id: ids.tomas, name: 'Tomas', locale: 'en-US', roles: [ids.moderator], about: 'moderator', dmClosed: true },
  ],
}
