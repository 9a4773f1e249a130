// A rise or pattern reaches the reports channel once; moderators warn, dismiss, put off and draft; nobody else can.
import { afterAll, beforeAll, expect, test } from 'vitest'
import { parse } from 'yaml'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { caution, messageOf, postButton, press } from './hands.ts'
import { noPosts } from './no-posts.ts'
import { englishServer, openRoom, type TestRoom } from './open-room.ts'

const everybody = '900000000000000301'
let room: TestRoom
const look = (services = room.services) => lookForWork({ ...room.job, services })
const tomas = () => room.standIn.as('Tomas')
const wren = () => room.standIn.as('Wren')
const reports = (): SeenMessage[] => tomas().sees(demoReportsChannel)
beforeAll(async () => {
  room = await openRoom(undefined, englishServer)
  await seedPractice(room.services)
  await look()
}, 60_000)
afterAll(() => room.close())
const pattern = () => reports().find(one => /goes together/.test(text(one)) && /Rook/.test(text(one))) as SeenMessage

test('each finding is posted once, silently, however often it is looked and however many processes look', async () => {
  const first = reports().length
  expect(first).toBeGreaterThan(0)
  await Promise.all([look(), look(), look()])
  // A channel is not flooded: what is left over comes with the next look.
  for (let i = 0; i < 3; i++) await look()
  const all = reports().map(text)
  expect(new Set(all).size).toBe(all.length)
  expect(all.join()).not.toMatch(/Heron/)
  expect(wren().sees(demoReportsChannel)).toEqual([])
})

test('a warning is drafted, edited in a form, posted where the moderator says, with the caution and without pinging anybody', async () => {
  const form = await press(tomas(), pattern(), 'Post a warning')
  if (form.kind !== 'modal') throw new Error('no form')
  expect(JSON.stringify(form.modal)).toMatch(/Members’ checks have shown something new/)
  const warning = 'Rooks from market stalls: look at the code. @everyone **now**'
  const after = messageOf(await tomas().submit(form.modal, { warning, channel: [everybody] }))
  expect(text(after)).toMatch(/posted a warning on/)
  expect(buttons(after).map(one => one.label)).toEqual(['Draft a rule'])
  const posted = wren().sees(everybody).at(-1) as SeenMessage
  expect(text(posted)).toContain('\\@everyone \\*\\*now\\*\\*')
  expect(text(posted)).toMatch(caution)
})

test('two moderators at once: the second is told, and nothing is posted twice', async () => {
  const before = wren().sees(everybody).length
  const [one] = reports().filter(seen => buttons(seen).length > 1)
  const [first, second] = await Promise.all([1, 2].map(() => press(tomas(), one as SeenMessage, 'Post a warning')))
  if (first?.kind !== 'modal' || second?.kind !== 'modal') throw new Error('no forms')
  // A phone that kept the text of one does not show it in the other.
  expect(first.modal.customId).not.toBe(second.modal.customId)
  const replies = await Promise.all(
    [first, second].map(form => tomas().submit(form.modal, { warning: 'look', channel: [everybody] })),
  )
  expect(replies.map(messageOf).filter(seen => /Somebody was faster/.test(text(seen)))).toHaveLength(1)
  expect(wren().sees(everybody).length).toBe(before + 1)
})

test('a finding is dismissed with a reason, which is kept', async () => {
  const [one] = reports().filter(seen => buttons(seen).length > 1)
  const form = await press(tomas(), one as SeenMessage, 'Dismiss')
  if (form.kind !== 'modal') throw new Error('no form')
  const after = messageOf(await tomas().submit(form.modal, { reason: 'one lot of one stall' }))
  expect(text(after)).toMatch(/dismissed it on <t:\d+:d>: one lot of one stall/)
})

test('a rule is drafted from a pattern: valid YAML with its condition and cases to fill in', async () => {
  const both = reports().find(one => /goes together[\s\S]*code on the wrap[\s\S]*three legs/.test(text(one)))
  const reply = messageOf(await press(tomas(), both as SeenMessage, 'Draft a rule'))
  const [file] = reply.attachments
  const draft = await (await fetch(file?.url ?? '')).text()
  const { rules } = parse(draft)
  expect(rules[0].when).toEqual({ all: [{ 'code-place': 'can' }, { legs: ['four', 'five', 'other'] }] })
  expect(draft).toMatch(/# {3}- name: seen-in-.* stays quiet/)
})

test('nobody else can act on a finding, whatever buttons they come by', async () => {
  const { customId } = buttons(pattern())[0] ?? {}
  const id = String(customId)
  expect(text(messageOf(await wren().click(await postButton(room.standIn, id), id)))).toMatch(/Only moderators/)
})

test('a warning that cannot be posted is told of, and the finding can be decided again', async () => {
  const fresh = await openRoom(
    services => ({
      ...services,
      posts: {
        ...services.posts,
        post: async (channel, ...rest) =>
          channel === everybody ? { is: 'gone' } : services.posts.post(channel, ...rest),
      },
    }),
    englishServer,
  )
  await seedPractice(fresh.services)
  await lookForWork({ ...fresh.job, services: fresh.services })
  const person = fresh.standIn.as('Tomas')
  const [one] = person.sees(demoReportsChannel)
  const form = await press(person, one as SeenMessage, 'Post a warning')
  if (form.kind !== 'modal') throw new Error('no form')
  const after = messageOf(await person.submit(form.modal, { warning: 'look', channel: [everybody] }))
  expect(text(after)).toMatch(/could not be posted/)
  expect(buttons(after).map(seen => seen.label)).toContain('Post a warning')
  await fresh.close()
})

test('in a reports channel that everybody has come to read nothing is told until it is closed again', async () => {
  const fresh = await openRoom(undefined, englishServer)
  await seedPractice(fresh.services)
  const { forbid = [], permit = [] } = demoServer.channels.find(one => one.id === demoReportsChannel) ?? {}
  fresh.standIn.changeRights(demoReportsChannel, {})
  // Once this is answered, the bot has heard of it.
  await fresh.standIn.as('Wren').run('check list')
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect(fresh.standIn.messages(demoReportsChannel)).toEqual([])
  expect(fresh.log.join()).toMatch(/everybody can read the reports channel/)
  fresh.standIn.changeRights(demoReportsChannel, { forbid, permit })
  await fresh.standIn.as('Wren').run('check list')
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect(fresh.standIn.messages(demoReportsChannel).length).toBeGreaterThan(0)
  await fresh.close()
})

test('a reports channel that is gone keeps what was found until there is another', async () => {
  const fresh = await openRoom(services => ({ ...services, posts: noPosts }), englishServer)
  await seedPractice(fresh.services)
  await lookForWork({ ...fresh.job, services: fresh.services })
  expect((await fresh.services.trends.findings.untold(demoServer.server.id, '2020-W01')).length).toBeGreaterThan(0)
  expect(fresh.log.join()).toMatch(/reports channel cannot be posted to/)
  await fresh.close()
})
