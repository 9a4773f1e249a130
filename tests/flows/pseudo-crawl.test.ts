// The bot in a made-up language, every button pressed and every form sent: no word is plain English but names, units and citations.
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import type { SeenMessage } from '../../src/practice/seen.ts'
import type { ServerSettings } from '../../src/server/settings.ts'
import { crawl, typed } from './crawl.ts'
import { finalOf, messageOf, press, pressed } from './hands.ts'
import { useRoom } from './in-room.ts'
import { openPseudoRoom } from './pseudo-room.ts'

const everybody = '900000000000000301'
const { room } = useRoom(openPseudoRoom)
let settings: ServerSettings
beforeAll(async () => {
  await seedPractice(room.services)
  settings = await room.services.servers.load(demoServer.server.id)
  await lookForWork({ ...room.job, services: room.services })
}, 60_000)
beforeEach(() => room.forgetSent())
const as = (name: string) => room.standIn.as(name)

/** Before each way that is gone nobody has a check, or what is left of one, and the server is set up as it was. */
async function afresh(): Promise<void> {
  const { revision } = await room.services.servers.load(demoServer.server.id)
  await room.services.servers.save({ ...settings, revision: revision + 1 })
  for (const name of ['Wren', 'Tomas']) await room.services.traces.forgetPerson(as(name).id)
}
const newest = (channel: string): SeenMessage => room.standIn.messages(channel).at(-1) as SeenMessage

describe.each(['Wren', 'Tomas'])('%s', name => {
  test.each([
    ['check start', {}, 3],
    ['check list', {}, 2],
    ['check counting', {}, 2],
    ['check waiting', {}, 2],
    ['ask', { question: 'is it fine to leave them charging while i sleep' }, 2],
    ['ask', { question: 'which headlamp throws furthest at night' }, 2],
    ['claim', { text: '18650 9900mAh 30A 38g' }, 2],
    ['buying', {}, 3],
    ['privacy', {}, 2],
    ['trends', {}, 2],
    ['setup', {}, 3],
  ])(
    '/%s',
    async (command, options, deep) => {
      await crawl(
        as(name),
        async () => {
          await afresh()
          return finalOf(await as(name).run(command, options, { channel: everybody, anyway: true }))
        },
        deep,
      )
      expect(room.slips(typed, ...Object.values(options as Record<string, string>))).toEqual([])
    },
    120_000,
  )
})

test('a verdict, and the letter drafted from it, which is in the seller’s language', async () => {
  const finished = async (): Promise<SeenMessage> => {
    await afresh()
    const asked = messageOf(
      await as('Wren').run('check start', { depth: 'full', family: 'brindlewick-rook', cells: 2 }),
    )
    return pressed(as('Wren'), await pressed(as('Wren'), asked, '.unsure'), '.finish')
  }
  expect(await crawl(as('Wren'), finished, 3)).toBeGreaterThan(10)
  expect(room.slips(typed)).toEqual([])
}, 120_000)

describe('a check that is handed over', () => {
  const offered = async (): Promise<SeenMessage> => {
    await afresh()
    await as('Tomas').run(
      'check start',
      { depth: 'full', anyone: true, family: 'brindlewick-rook' },
      { channel: everybody },
    )
    await room.services.queue.idle()
    return newest(everybody)
  }

  test.each(['Wren', 'Tomas'])(
    'by the panel in a channel, as %s presses it',
    async name => {
      expect(await crawl(as(name), offered, 3)).toBeGreaterThan(1)
      expect(room.slips(typed)).toEqual([])
    },
    120_000,
  )

  test('when a moderator is asked, sends it back, helps or takes it over', async () => {
    const asked = async (): Promise<SeenMessage> => {
      await afresh()
      const question = messageOf(await as('Wren').run('check start', { depth: 'full' }, { channel: everybody }))
      const hands = await pressed(as('Wren'), question, '.hands')
      const form = await press(as('Wren'), hands, '.ask')
      if (form.kind !== 'modal') throw new Error('no form')
      await finalOf(await as('Wren').submit(form.modal, { why: typed }))
      await room.services.queue.idle()
      return newest(demoReportsChannel)
    }
    expect(await crawl(as('Tomas'), asked, 2)).toBeGreaterThan(3)
    expect(room.slips(typed)).toEqual([])
  }, 120_000)
})
