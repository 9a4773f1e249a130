// The moderators' desk through the real client: an offer goes to somebody else, a check that stands still is closed or kept, an answer is looked at again.
import { beforeAll, beforeEach, expect, test } from 'vitest'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { stillAfter } from '../../src/check/custody.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { weekOf } from '../../src/trends/week.ts'
import { closeAll, finalOf, messageOf, press, pressed, settled, startCheck, unsureUntil } from './hands.ts'
import { useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const helpers = '900000000000000202'
const server = '900000000000000100'
const everybody = '900000000000000301'
const { room, wren, ilse, odalys, tomas } = useRoom(() =>
  openRoom(services => ({ ...services, now: () => Date.now() + ahead }), englishServer),
)
/** How far the bot's clock is ahead, in ms. */
let ahead = 0
beforeAll(async () => {
  await seedPractice(room.services)
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, helperRoles: [helpers], revision: settings.revision + 1 })
}, 60_000)
beforeEach(async () => {
  for (const person of [wren(), odalys(), ilse()]) await closeAll(person)
})

type Anybody = ReturnType<typeof tomas>
async function listed(person: Anybody, what: string): Promise<SeenMessage> {
  const list = messageOf(await person.run('check waiting', {}, { anyway: true }))
  return messageOf(await person.choose(list, menus(list)[0]?.customId ?? '', [what]))
}
/** The latest message that everybody reads and in which this stands. */
async function said(what: RegExp): Promise<SeenMessage> {
  await room.services.queue.idle()
  const found = odalys()
    .sees(everybody)
    .findLast(one => !one.private && what.test(text(one)))
  if (!found) throw new Error(`nobody says ${what}`)
  return found
}

test('a moderator offers a check out of the queue to somebody else: they are told, its holder is told, nobody else may take it', async () => {
  await wren().run('check start', { depth: 'full', for: ilse().id }, { channel: everybody })
  const list = await listed(tomas(), 'taker')
  const form = await press(tomas(), await pressed(tomas(), list, 'See it'), 'Offer it to')
  if (form.kind !== 'modal') throw new Error('no form')
  const done = await finalOf(await tomas().submit(form.modal, { taker: [odalys().id], why: 'Ilse is away' }))
  expect(text(await settled(room, done))).toMatch(
    /offered to <@900000000000000404>[\s\S]*<@900000000000000401> was told/,
  )
  expect(text(await said(/is offered to .* now/))).toMatch(/<@900000000000000401>.*<@900000000000000403> has changed/)
  const panel = await said(/offers the check/)
  expect(text(panel)).toMatch(/to <@900000000000000404>[\s\S]*Ilse is away/)
  expect(text(await pressed(ilse(), panel, 'Take it'))).toMatch(/meant for somebody else/)
  await press(odalys(), panel, 'Take it')
  expect(await room.services.checks.heldBy(odalys().id, room.services.now())).toHaveLength(1)
})

test('a check that stands still is asked about once; its holder keeps it, or closes it, with one press', async () => {
  await wren().run('check start', { depth: 'full', anyone: true }, { channel: everybody })
  await press(ilse(), await said(/offers the check/), 'Take it')
  expect(text(await listed(tomas(), 'still'))).toMatch(/No check in other hands has stalled/)
  ahead += stillAfter + 3600_000
  const asked = await settled(room, await pressed(tomas(), await listed(tomas(), 'still'), 'Ask to close'))
  expect(text(asked)).toMatch(/<@900000000000000402> has been asked[\s\S]*was told in <#/)
  expect(text(await listed(tomas(), 'still'))).toMatch(/<@900000000000000403> has asked whether it can be closed/)
  const word = await said(/has stalled/)
  expect(text(await pressed(odalys(), word, 'Yes, close it'))).toMatch(/Only the person who has this check/)
  expect(text(await pressed(ilse(), word, 'keep it open'))).toMatch(/It stays open/)
  await room.services.queue.idle()
  expect(room.standIn.message(word.id)).toBeNull()
  ahead += stillAfter + 3600_000
  await pressed(tomas(), await listed(tomas(), 'still'), 'Ask to close')
  const closed = await pressed(ilse(), await said(/has stalled/), 'Yes, close it')
  expect(text(closed)).toMatch(/Closed\.[\s\S]*cannot be opened again/)
  expect(await room.services.checks.heldBy(ilse().id, room.services.now())).toEqual([])
})

test('who answered what and when is listed; the answer is looked at again while the result stands', async () => {
  const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  await finalOf(await wren().submit(form.modal, { why: 'hm' }))
  const first = await pressed(ilse(), await listed(ilse(), 'help'), 'See it')
  await pressed(ilse(), first, 'I can’t tell either')
  await pressed(wren(), messageOf(await wren().run('check resume')), '.finish')
  const handled = await listed(ilse(), 'handled')
  expect(text(handled)).toMatch(/1 question was dealt with[\s\S]*<@900000000000000402> answered a question/)
  expect(text(handled)).toMatch(/insulating ring.* Can’t tell/)
  expect(text(await listed(tomas(), 'handled'))).toMatch(/1 question was dealt with/)
  const again = await pressed(ilse(), handled, 'Look again')
  expect(text(again)).toMatch(/You are answering for <@900000000000000401>/)
  expect(text(await said(/is looking again at a question/))).toMatch(/do not use or charge the cell meanwhile/)
  const verdict = messageOf(await wren().run('check resume'))
  expect(text(verdict)).toMatch(/the result can still change/)
  await pressed(ilse(), again, 'I can’t tell either')
  expect(text(messageOf(await wren().run('check resume')))).not.toMatch(/the result can still change/)
})

test('a closed check is not opened again; another begins with what was known of the cell', async () => {
  const begun = await startCheck(wren(), { cells: 3 })
  await pressed(wren(), begun, 'Pause')
  const closed = messageOf(await wren().run('check close'))
  const [button] = buttons(closed)
  expect(button?.label).toBe('Start again')
  await pressed(wren(), closed, 'Start again')
  expect(await room.services.checks.heldBy(wren().id, room.services.now())).toMatchObject([{ cells: 3 }])
})

test('a second helper is wanted and not any more, in the menu of the holder alone', async () => {
  const menu = await pressed(wren(), await startCheck(wren()), 'Ask or hand over')
  const wanted = await pressed(wren(), menu, 'Ask for a second helper')
  expect(text(wanted)).toMatch(/another must say the same/)
  expect(text(await pressed(wren(), wanted, 'One helper is enough'))).not.toMatch(/another must say the same/)
})

test('who has helped is shown to moderators once the week is over, in fives; a helper sees none of it, and can say no', async () => {
  const week = weekOf(room.services.now())
  for (let i = 0; i < 7; i++) await room.services.helpers.count(server, ilse().id, week)
  for (let i = 0; i < 4; i++) await room.services.helpers.count(server, tomas().id, week)
  expect(text(await listed(tomas(), 'handled'))).toMatch(/nobody has dealt with 5 or more counted questions/)
  ahead += 7 * 24 * 3600_000
  const shown = text(await listed(tomas(), 'handled'))
  expect(shown).toMatch(/<@900000000000000402>: 5 or more/)
  expect(shown).not.toMatch(/<@900000000000000403>: /)
  expect(text(await listed(ilse(), 'handled'))).not.toMatch(/5 or more/)
  const privacy = await pressed(ilse(), messageOf(await ilse().run('privacy')), 'If you help or moderate')
  expect(text(privacy)).toMatch(/Your help:.* in steps of five/)
  expect(buttons(await pressed(ilse(), privacy, 'Do not count my help')).map(one => one.label)).toContain(
    'Count my help',
  )
  expect(text(await listed(tomas(), 'handled'))).not.toMatch(/<@900000000000000402>: /)
})

test('an answer for somebody and a question that is sent back are counted as help, once each', async () => {
  const privacy = await pressed(ilse(), messageOf(await ilse().run('privacy')), 'If you help or moderate')
  await pressed(ilse(), privacy, 'Count my help')
  const week = weekOf(room.services.now())
  const counted = async () =>
    (await room.services.helpers.sums(server, week, week)).find(one => one.person === ilse().id)?.count ?? 0
  const before = await counted()
  const question = await unsureUntil(wren(), await startCheck(wren()), /insulating ring around/)
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  await finalOf(await wren().submit(form.modal, { why: 'hm' }))
  const seen = await pressed(ilse(), await listed(ilse(), 'help'), 'See it')
  await pressed(ilse(), seen, 'I can’t tell either')
  await room.services.queue.idle()
  expect(await counted()).toBe(before + 1)
})
