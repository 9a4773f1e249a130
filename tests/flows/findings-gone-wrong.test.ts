// What goes wrong with findings: rights lost, texts too long, packs and channels gone, damaged rows. Each has its sentence.
import { afterEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import type { Services } from '../../src/discord/services.ts'
import { showWarning } from '../../src/discord/trends/show/finding.ts'
import { longestWarning } from '../../src/discord/trends/show/finding-forms.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { WireForm } from '../../src/practice/wire.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { messageOf, press, pressed } from './hands.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const server = demoServer.server.id
const everybody = '900000000000000301'
let room: TestRoom
afterEach(() => room.close())
const workbench = '900000000000000302'
const tomas = () => room.standIn.as('Tomas')
const reports = (): SeenMessage[] => tomas().sees(demoReportsChannel)

/** Two wardens, both reading English. */
const twoWardens = {
  ...englishServer,
  people: englishServer.people.map(one => (one.name === 'Ilse' ? { ...one, roles: [demoWardens] } : one)),
}

async function openSeeded(change?: (services: Services) => Services): Promise<void> {
  room = await openRoom(change, twoWardens)
  await seedPractice(room.services)
  await lookForWork({ ...room.job, services: room.services })
}

/** Has findings told in a channel that is closed to everybody but Tomas himself, warden or not. */
async function reportIn(channel: string): Promise<void> {
  const seen = [tomas().id, 'bot'].map(who => ({ who, what: ['view'] as const }))
  room.standIn.changeRights(channel, { forbid: [{ who: server, what: ['view'] }], permit: seen })
  // The bot hears of it over its connection.
  await expect.poll(() => room.services.posts.isOpenToAll(channel)).toBe(false)
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, reportsChannel: channel, revision: settings.revision + 1 })
}

async function formOf(message: SeenMessage, label: string, who = 'Tomas'): Promise<WireForm> {
  const form = await press(room.standIn.as(who), message, label)
  if (form.kind !== 'modal') throw new Error('no form')
  return form.modal
}
const contentOf = async (message: SeenMessage): Promise<string> =>
  (await fetch(message.attachments[0]?.url ?? '')).text()

test('a moderator who loses the role between report and click, or with a form open, decides nothing any more', async () => {
  room = await openRoom(undefined, twoWardens)
  await seedPractice(room.services)
  // Told where he still sees it once he is no warden any more.
  await reportIn(workbench)
  await lookForWork({ ...room.job, services: room.services })
  const [first] = tomas().sees(workbench) as [SeenMessage]
  const form = await formOf(first, 'Post a warning')
  room.standIn.removeRole(demoWardens)
  const before = room.standIn.as('Wren').sees(everybody).length
  for (const reply of [
    await tomas().submit(form, { warning: 'look', channel: [everybody] }),
    await press(tomas(), first, 'Make it a known fake'),
  ])
    expect(text(messageOf(reply))).toMatch(/Only moderators of this server/)
  expect(room.standIn.as('Wren').sees(everybody)).toHaveLength(before)
})

test('a warning over the length limit is not posted, not cut, and given back', async () => {
  await openSeeded()
  const [first] = reports() as [SeenMessage]
  const form = await formOf(first, 'Post a warning')
  // A form that an earlier version has opened may let more through.
  for (const field of form.fields) Object.assign(field, { max: 4000 })
  const warning = `Rooks. ${'x'.repeat(longestWarning)}`
  const before = room.standIn.as('Wren').sees(everybody).length
  const reply = messageOf(await tomas().submit(form, { warning, channel: [everybody] }))
  expect(text(reply)).toMatch(/has 1,507 characters, and at most 1,500 fit above the caution\. Nothing was posted/)
  expect(await contentOf(reply)).toBe(warning)
  expect(room.standIn.as('Wren').sees(everybody)).toHaveLength(before)
  expect(buttons(first).map(one => one.label)).toContain('Post a warning')
})

test('a warning as long as may be, of nothing but markup, fits with the whole caution in every language', () => {
  for (const language of languages) {
    const say = sayIn(language)
    const shown = JSON.stringify(showWarning(say, '*'.repeat(longestWarning)).components)
    expect(shown).toContain(JSON.stringify(say('caution.full')).slice(1, -1))
    const texts = showWarning(say, '*'.repeat(longestWarning)).components.map(one =>
      'content' in one ? one.content : '',
    )
    expect(texts.join('').length).toBeLessThanOrEqual(4000)
  }
})

test('a warning that a filter stops is given back with the reason; it is not posted once the filter lets it, and the rest is told', async () => {
  await openSeeded()
  const [first] = reports() as [SeenMessage]
  room.standIn.faults.block({ words: ['lampshade'] })
  const form = await formOf(first, 'Post a warning')
  const before = room.standIn.messages(everybody).length
  await tomas().submit(form, { warning: 'Rooks: no lampshade.', channel: [everybody] })
  expect(text(reports()[0] as SeenMessage)).toMatch(/The warning was not posted: a filter of this server/)
  room.standIn.faults.block({})
  await lookForWork({ ...room.job, services: room.services })
  expect(room.standIn.messages(everybody)).toHaveLength(before)
})

test('a finding that a filter stops is told once it lets it', async () => {
  room = await openRoom(undefined, twoWardens)
  await seedPractice(room.services)
  room.standIn.faults.block({ words: ['brindle'] })
  await lookForWork({ ...room.job, services: room.services })
  const told = () => reports().filter(one => /Something new/.test(text(one)))
  expect(told()).toEqual([])
  room.standIn.faults.block({})
  await lookForWork({ ...room.job, services: room.services })
  expect(told()).toHaveLength(1)
})

test('where a moderator may not write, the warning is refused and given back', async () => {
  const quiet = { ...twoWardens.channels[0]!, forbid: [{ who: demoWardens, what: ['send'] as const }] }
  room = await openRoom(undefined, { ...twoWardens, channels: [quiet, ...twoWardens.channels.slice(1)] })
  await seedPractice(room.services)
  await lookForWork({ ...room.job, services: room.services })
  const [first] = reports() as [SeenMessage]
  const form = await formOf(first, 'Post a warning')
  const reply = messageOf(await tomas().submit(form, { warning: 'Look at Rooks.', channel: [quiet.id] }))
  expect(text(reply)).toMatch(/You may not write in that channel yourself/)
  expect(await contentOf(reply)).toBe('Look at Rooks.')
})

test('two moderators at once: one decision counts, the other is told, and both can see whose it was', async () => {
  await openSeeded()
  const [first] = reports() as [SeenMessage]
  const [his, hers] = [await formOf(first, 'Dismiss'), await formOf(first, 'Dismiss', 'Ilse')]
  const replies = await Promise.all([
    tomas().submit(his, { reason: 'one lot' }),
    room.standIn.as('Ilse').submit(hers, { reason: 'one stall' }),
  ])
  const told = replies.map(reply => text(messageOf(reply)))
  expect(told.filter(one => /Somebody else got there first/.test(one))).toHaveLength(1)
  expect(told.filter(one => /dismissed it on/.test(one))).toHaveLength(2)
  expect(new Set(told.map(one => /one (lot|stall)/.exec(one)?.[0])).size).toBe(1)
})

test('a reports channel that is deleted: the log says so, nothing is lost, and the next one is told', async () => {
  room = await openRoom(undefined, twoWardens)
  await seedPractice(room.services)
  room.standIn.removeChannel(demoReportsChannel)
  await lookForWork({ ...room.job, services: room.services })
  expect(room.log.join()).toMatch(/reports channel cannot be posted to/)
  await reportIn(workbench)
  await lookForWork({ ...room.job, services: room.services })
  expect(text(tomas().sees(workbench).at(-1) as SeenMessage)).toMatch(/Brindlewick Rook/)
})

test('what was counted under a pack that is no longer installed is still shown, and says so', async () => {
  let programs: Services['programs'] | undefined
  await openSeeded(services => ({
    ...services,
    families: {
      ...services.families,
      programsFor: async of => programs ?? services.families.programsFor(of),
    },
  }))
  programs = openPrograms([])
  const families = text(await pressed(tomas(), messageOf(await tomas().run('trends')), '.families'))
  expect(families).toMatch(/brindlewick-rook \(its rule pack is no longer installed\)/)
  expect(families).toMatch(/a point of a rule pack that is no longer installed/)
  const [first] = reports() as [SeenMessage]
  const draft = await contentOf(messageOf(await press(tomas(), first, 'Draft a rule')))
  expect(draft).toMatch(/# Found among the checks of: brindlewick-rook/)
})

test('a damaged release is refused with what to do, whichever way it is asked for, and stops no one else', async () => {
  let damaged = false
  await openSeeded(services => ({
    ...services,
    trends: {
      ...services.trends,
      releases: {
        ...services.trends.releases,
        bytes: async (scope, week) => {
          const bytes = await services.trends.releases.bytes(scope, week)
          return damaged ? (bytes?.replace('"format":1', '"format":1,"x":"') ?? null) : bytes
        },
      },
    },
  }))
  const shown = messageOf(await tomas().run('trends'))
  damaged = true
  for (const reply of [
    await tomas().run('trends'),
    await press(tomas(), shown, '.csv'),
    await press(tomas(), shown, '.rises'),
  ])
    expect(text(messageOf(reply))).toMatch(/This release is damaged\. Tell the people who run the bot/)
  expect(await lookForWork({ ...room.job, services: room.services })).toMatchObject({ is: 'done' })
})
