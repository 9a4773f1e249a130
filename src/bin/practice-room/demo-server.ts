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
    { id: '900000000000000406', name: 'Hollis', locale: 'en-GB', roles: [demoWardens], about: 'moderator' },
    { id: '900000000000000407', name: 'Sorrel', locale: 'en-GB', roles: [demoWardens], about: 'moderator' },
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

/** What stands in the wardens' channel before anything else: who they are, so that whoever asks knows who can agree. */
export const demoFirstWords = {
  by: 'Hollis',
  channel: demoReportsChannel,
  words:
    'Wardens (moderators) here are Sorrel, who reads English like me, Tomas (Spanish), Maret (German) and I. What one of us asks for, another can agree to: here, or with /family list.',
}

const skippers = '900000000000000511'
/** A second server, where nothing is set up yet: something to walk into, and to set up. */
export const demoHarbour = '900000000000000500'

/** The practice room as it opens: the server with a past, and one without. */
export const demoScenario: Scenario = {
  ...demoServer,
  servers: [
    {
      id: demoHarbour,
      name: 'Harbour Models',
      locale: 'en-GB',
      roles: [
        { id: skippers, name: 'Skippers', permissions: moderatorRights },
        { id: '900000000000000512', name: 'Cellwary', ofBot: true },
      ],
      channels: [
        { id: '900000000000000521', name: 'slipway', kind: 'text', topic: 'Nothing is set up on this server yet.' },
        {
          id: '900000000000000522',
          name: 'skippers',
          kind: 'text',
          topic: 'For skippers',
          forbid: [{ who: demoHarbour, what: ['view'] }],
          permit: [{ who: skippers, what: ['view'] }],
        },
      ],
      members: {
        '900000000000000401': [],
        '900000000000000402': [],
        '900000000000000406': [skippers],
      },
      install: 'bot',
    },
  ],
}
