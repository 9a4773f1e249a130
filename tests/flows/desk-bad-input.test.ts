// What moderators meet at the desk when something has gone meanwhile: a warning's message or channel, a family, the outcomes behind a finding; and a queue of 2,000.
import { beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { encodeWaiting } from '../../src/custom-ids/waiting-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { WireForm } from '../../src/practice/wire.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { finalOf, messageOf, postButton, press, pressed, unsureUntil } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'
import { beginWave } from './wave.ts'

const everybody = '900000000000000301'
const server = demoServer.server.id
const { room, wren, tomas } = useFreshRoom(inEnglish)
const look = () => lookForWork({ ...room.job, services: room.services })
const labels = (message: SeenMessage) => buttons(message).map(one => one.label)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: 1, reportsChannel: demoReportsChannel })
})

/** A finding about this family, told in the channel of reports. */
async function found(family: string, rule = 'weld-marks'): Promise<string> {
  const week = weekPlus(weekOf(room.services.now()), -1)
  const rise = { family, rule, week, standsOut: true }
  await room.services.trends.findings.add(
    server,
    [{ key: `k ${family}`, family, week, parts: [{ is: 'rise', rise }] }],
    room.services.newId,
  )
  await look()
  return (await room.services.trends.findings.of(server)).find(one => one.family === family)?.id ?? ''
}
const post = (): SeenMessage => {
  const told = tomas()
    .sees(demoReportsChannel)
    .filter(one => !one.private && /Something new/.test(text(one)))
  if (told.length !== 1) throw new Error(`${told.length} posts`)
  return told[0] as SeenMessage
}
const stored = (id: string) => room.services.trends.findings.load(id)
async function formOf(message: SeenMessage, label: string): Promise<WireForm> {
  const form = await press(tomas(), message, label)
  if (form.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(form)}`)
  return form.modal
}
const warned = async (warning = 'Look twice.'): Promise<SeenMessage> =>
  finalOf(await tomas().submit(await formOf(post(), 'Post a warning'), { warning, channel: [everybody] }))

test('a warning whose message was deleted is taken back with the word that it must be done by hand; what was decided is all there', async () => {
  const id = await found('brindlewick-heron')
  await warned()
  const { warning } = (await stored(id)) ?? {}
  await room.services.posts.remove({ channel: everybody, message: warning?.message ?? '' })
  const back = await finalOf(
    await tomas().submit(await formOf(post(), 'Withdraw the warning'), { reason: 'One old lot.' }),
  )
  expect(text(back)).toMatch(/cannot change the warning where it stands. Delete that message by hand/)
  expect(text(back)).toMatch(/waiting for a decision/)
  expect(await stored(id)).toMatchObject({
    state: 'open',
    warning: null,
    decisions: [{ undone: { why: 'One old lot.' } }],
  })
  expect(labels(back)).toContain('Post a warning')
})

test('a warning whose channel is gone is not changed; the text comes back as a file, and nothing was decided', async () => {
  const id = await found('brindlewick-heron')
  await warned()
  const before = await stored(id)
  const form = await formOf(post(), 'Edit the warning')
  room.standIn.removeChannel(everybody)
  const after = await finalOf(await tomas().submit(form, { warning: 'Words of many minutes.' }))
  expect(text(after)).toMatch(/could not be posted or changed: the channel or message is gone/)
  await room.services.queue.idle()
  const given = tomas()
    .sees(demoReportsChannel)
    .flatMap(one => one.attachments)
    .find(one => one.name === 'warning.txt')
  expect(await (await fetch(given?.url ?? '')).text()).toBe('Words of many minutes.')
  const now = await stored(id)
  expect(now?.decisions).toEqual(before?.decisions)
  expect(now?.warning?.text).toBe('Look twice.')
})

test('a family that is retired under a finding: it is still named, warned of and dismissed; a known fake of it is refused with why', async () => {
  await putInForce(room, server, builtFacts(room, 'f-harbour', 'Sandpiper 25'))
  const id = await found('f-harbour', 'f-harbour-legs-1')
  const { store } = room.services.families
  const family = await store.load(server, 'f-harbour')
  if (!family) throw new Error('it is gone')
  const open = await formOf(post(), 'Make it a known fake')
  const retired = { by: tomas().id, at: room.services.now(), why: 'Not made any more.', successor: null }
  await store.save(
    { ...family, state: 'retired', retired, revision: family.revision + 1, changedBy: 'retires' },
    'sandpiper25',
  )
  const late = await finalOf(
    await tomas().submit(open, { title: 'Four legs', says: 'Four legs.', looks: ['legs=four'] }),
  )
  expect(text(late)).toMatch(/Somebody else got there first/)
  expect(text(await pressed(tomas(), post(), 'Make it a known fake'))).toMatch(/this model is retired/)
  expect((await stored(id))?.state).toBe('open')
  expect((await store.load(server, 'f-harbour'))?.draft).toBeNull()
  const seen = await tomas().click(
    await postButton(room.standIn, encodeTrends({ is: 'finding', id, does: 'see' })),
    encodeTrends({ is: 'finding', id, does: 'see' }),
  )
  expect(text(messageOf(seen))).toMatch(/Something new: .*Sandpiper 25/)
  expect(text(await warned())).toMatch(/posted a warning on/)
  await finalOf(await tomas().submit(await formOf(post(), 'Withdraw the warning'), { reason: 'Over.' }))
  await finalOf(await tomas().submit(await formOf(post(), 'Dismiss'), { reason: 'Not made any more.' }))
  expect(await stored(id)).toMatchObject({ state: 'dismissed' })
})

test('a known fake among the families of the server is taken back there: the finding says so, and stands as it stood', async () => {
  await putInForce(room, server, builtFacts(room, 'f-harbour', 'Sandpiper 25'))
  const id = await found('f-harbour', 'f-harbour-legs-1')
  const form = await formOf(post(), 'Make it a known fake')
  await finalOf(await tomas().submit(form, { title: 'Four legs', says: 'Four legs.', looks: ['legs=four'] }))
  const before = await stored(id)
  expect(before?.state).toBe('known-fake')
  const said = await pressed(tomas(), post(), 'Not a known fake after all')
  expect(text(said)).toMatch(/stands among those of its model. Remove it there first/)
  expect(await stored(id)).toMatchObject({ state: 'known-fake', decisions: before?.decisions })
  // Removed there, it goes back here, too.
  const fakes = tomas()
    .sees(demoReportsChannel)
    .find(one => one.private && /known fakes/.test(text(one))) as SeenMessage
  await pressed(tomas(), fakes, 'Remove 1')
  await pressed(tomas(), post(), 'Not a known fake after all')
  expect(await stored(id)).toMatchObject({ state: 'open', knownFake: null })
})

test('a finding whose outcomes were all deleted says what it said, is decided and taken back, and the next week changes nothing of it', async () => {
  await room.services.servers.forget(server)
  await beginWave(room)
  await look()
  const [finding] = await room.services.trends.findings.of(server)
  const said = text(post())
  const { outcomes } = room.services.trends
  await outcomes.purgeBefore('2999-W01', server)
  expect(await outcomes.weekCounts({ kind: 'server', server }, '2020-W01', '2999-W01')).toEqual([])
  await look()
  expect(await room.services.trends.findings.of(server)).toEqual([finding])
  const seen = messageOf(
    await tomas().click(
      await postButton(room.standIn, encodeTrends({ is: 'finding', id: finding?.id ?? '', does: 'see' })),
      encodeTrends({ is: 'finding', id: finding?.id ?? '', does: 'see' }),
    ),
  )
  // The post writes days and lists as its server does, the answer as its reader does.
  const likeBoth = (words: string) => words.replaceAll(', and ', ' and ')
  const [many = ''] = /(?<=\*\*How many.*)at least.*/.exec(said) ?? []
  expect(likeBoth(text(seen))).toContain(likeBoth(many))
  await finalOf(await tomas().submit(await formOf(post(), 'Dismiss'), { reason: 'gone' }))
  expect((await stored(finding?.id ?? ''))?.state).toBe('dismissed')
  await pressed(tomas(), post(), 'Undo the dismissal')
  expect((await stored(finding?.id ?? ''))?.state).toBe('open')
})

test('2,000 who wait: the list says how many, shows the longest waiting first, and turns its pages to the last', async () => {
  const question = await unsureUntil(
    wren(),
    messageOf(await wren().run('check start', { depth: 'full' })),
    /insulating ring around/,
  )
  const form = await press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
  if (form.kind !== 'modal') throw new Error('no form')
  await finalOf(await wren().submit(form.modal, { why: 'hm' }))
  const [one] = await room.services.checks.heldBy(wren().id, room.services.now())
  if (!one?.custody) throw new Error('no check')
  const { custody } = one
  for (let i = 1; i < 2000; i++) {
    const earlier = one.custody.history.map(entry => ({ ...entry, at: entry.at - i * 1000 }))
    const copy = {
      ...one,
      id: `many${100_000 + i}`,
      holder: `9100000000000${10_000 + i}`,
      custody: { ...custody, history: earlier },
    }
    await room.services.checks.create(copy, `opens ${i}`)
  }
  const list = messageOf(await tomas().run('check waiting', {}, { anyway: true }))
  expect(text(list)).toMatch(/2,000 are waiting/)
  expect(text(list)).toContain('<@910000000000011999>')
  expect(text(list)).not.toContain(`<@${wren().id}>`)
  expect(buttons(list).map(button => button.label)).toContain('Next page')
  const last = encodeWaiting({ filter: 'all', page: 399 })
  const end = messageOf(await tomas().click(await postButton(room.standIn, last), last))
  expect(text(end)).toContain(`<@${wren().id}>`)
  expect(buttons(end).map(button => button.label)).not.toContain('Next page')
}, 120_000)
