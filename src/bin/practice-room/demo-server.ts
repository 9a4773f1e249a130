// The invented hobby server of the practice room: nobody and nothing in it is real.
import type { Scenario } from '../../practice/scenario.ts'

const server = '900000000000000100'
/** The role of those who moderate, and the channel only they see. */
export const demoWardens = '900000000000000201'
export const demoReportsChannel = '900000000000000303'
const helpers = '900000000000000202'
export const demoForum = '900000000000000304'
/** Only wardens see it, not even the bot: something to try the set-up on. */
export const demoClosedChannel = '900000000000000305'
/** The role that Discord makes for the bot itself. */
export const demoBotRole = '900000000000000203'

/** MANAGE_MESSAGES, MODERATE_MEMBERS and MANAGE_GUILD, as Discord numbers permissions. */
const moderatorRights = String((1n << 13n) | (1n << 40n) | (1n << 5n))

export const demoServer: Scenario = {
  application: { id: '900000000000000001', name: 'Cellwary' },
  server: { id: server, name: 'The Lantern Shed', locale: 'en-US' },
  roles: [
    { id: demoWardens, name: 'Wardens', permissions: moderatorRights },
    { id: helpers, name: 'Lamp-keepers' },
    { id: demoBotRole, name: 'Cellwary', ofBot: true },
  ],
  channels: [
    { id: '900000000000000301', name: 'cell-questions', kind: 'text', topic: 'Is this cell what it claims to be?' },
    { id: '900000000000000302', name: 'workbench', kind: 'text', topic: 'What are you building?' },
    {
      id: demoReportsChannel,
      name: 'warden-reports',
      kind: 'text',
      topic: 'For wardens',
      forbid: [{ who: server, what: ['view'] }],
      permit: [
        { who: demoWardens, what: ['view'] },
        { who: 'bot', what: ['view'] },
      ],
    },
    { id: demoForum, name: 'help-services', kind: 'forum', tags: ['is this real?', 'solved'] },
    {
      id: demoClosedChannel,
      name: 'warden-notes',
      kind: 'text',
      topic: 'For wardens, without bots',
      forbid: [{ who: server, what: ['view'] }],
      permit: [{ who: demoWardens, what: ['view'] }],
    },
  ],
  people: [
    { id: '900000000000000401', name: 'Wren', locale: 'en-GB', roles: [], about: 'newcomer' },
    { id: '900000000000000402', name: 'Ilse', locale: 'de', roles: [helpers], about: 'helper' },
    { id: '900000000000000403', name: 'Tomas', locale: 'es-ES', roles: [demoWardens], about: 'moderator' },
    { id: '900000000000000405', name: 'Maret', locale: 'de', roles: [demoWardens], about: 'moderator' },
    {
      id: '900000000000000404',
      name: 'Odalys',
      locale: 'en-US',
      roles: [],
      about: 'newcomer, direct messages closed',
      dmClosed: true,
    },
  ],
}
