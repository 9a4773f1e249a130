// A counterfeit wave is one finding: told once, decided from its post or from the list, taken back, and changed in place next week.
import { beforeAll, expect, test } from 'vitest'
import { parse } from 'yaml'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { WireForm } from '../../src/practice/wire.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { caution, messageOf, postButton, press, pressed } from './hands.ts'
import { useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const everybody = '900000000000000301'
const server = demoServer.server.id
const { room, wren, tomas } = useRoom(() =>
  openRoom(services => ({ ...services, now: () => services.now() + later }), englishServer),
)
/** How much later than now the room is, in ms. */
let later = 0
const look = (services = room.services) => lookForWork({ ...room.job, services })
const reports = (): SeenMessage[] => tomas().sees(demoReportsChannel)
const post = (): SeenMessage => reports().find(one => /Something new/.test(text(one))) as SeenMessage
const labels = (message: SeenMessage) => buttons(message).map(one => one.label)
const warnings = () =>
  wren()
    .sees(everybody)
    .filter(one => /warning about cells/i.test(text(one)))

beforeAll(async () => {
  await seedPractice(room.services)
  await look()
}, 60_000)

async function formOf(message: SeenMessage, label: string): Promise<WireForm> {
  const form = await press(tomas(), message, label)
  if (form.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(form)}`)
  return form.modal
}
const openList = async () => pressed(tomas(), messageOf(await tomas().run('trends')), '.findings')

test('the planted wave is one finding, told once and silently, however often and by however many processes it is looked', async () => {
  expect(reports()).toHaveLength(1)
  await Promise.all([look(), look(), look()])
  for (let i = 0; i < 3; i++) await look()
  expect(reports()).toHaveLength(1)
  expect(text(post())).toMatch(/Brindlewick Rook/)
  expect(text(post())).not.toMatch(/Heron/)
  expect(wren().sees(demoReportsChannel)).toEqual([])
})

test('it says what is new, how sure and since when, how many, what noise it could be, what to do; beside a chart with its own key, marked where the text says', async () => {
  const said = text(post())
  const order = ['What is new:', 'How sure:', 'How many:', 'What it would take to be mere chance:', 'What to do:']
  const places = order.map(label => said.indexOf(label))
  expect(places.every(at => at >= 0)).toBe(true)
  expect([...places].sort((a, b) => a - b)).toEqual(places)
  expect(said).toMatch(/code.*legs|legs.*code/s)
  expect(said).toMatch(/First found in the week of/)
  expect(said).toMatch(/at least \d+ and fewer than \d+ checks/)
  for (const [, least, below] of said.matchAll(/at least (\d+) and fewer than (\d+)/g)) {
    expect(Number(least) % 5).toBe(0)
    expect(Number(below)).toBe(Number(least) + 5)
  }
  const [chart] = post().attachments
  expect(chart?.name).toBe('finding.png')
  expect(chart?.description).toMatch(/Brindlewick Rook.*beyond chance/s)
  const [finding] = await room.services.trends.findings.of(server)
  // What is marked is what the text says: the weeks in which it was found first and last, by their names.
  for (const week of [finding?.week, finding?.seen]) expect(chart?.description).toContain(`${week?.slice(5)},`)
})

test('the list says the same of when as the post does, each as its reader writes days', async () => {
  const since = (said: string): string[] =>
    (
      /First found in the week of [^()]*\d{4} \((W\d\d)\)(?:, last in the week of [^()]*\d{4} \((W\d\d)\))?\./.exec(
        said,
      ) ?? []
    ).slice(1)
  const posted = since(text(post()))
  expect(posted).toEqual([expect.any(String), expect.any(String)])
  expect(since(text(await openList()))).toEqual(posted)
})

test('a warning is drafted, edited in a form, posted where the moderator says, with the caution and without pinging anybody', async () => {
  const form = await formOf(post(), 'Post a warning')
  expect(JSON.stringify(form)).toMatch(
    /Members’ checks have shown something new. Brindlewick Rook by Brindlewick: lately more cells did not match this\. “/,
  )
  const warning = 'Rooks from market stalls: look at the code. @everyone **now**'
  const after = messageOf(await tomas().submit(form, { warning, channel: [everybody] }))
  expect(text(after)).toMatch(/posted a warning on/)
  expect(labels(after)).toEqual([
    'Make it a known fake',
    'Edit the warning',
    'Withdraw the warning',
    'Draft a rule',
    'To the warning',
    'All findings',
  ])
  expect(warnings()).toHaveLength(1)
  expect(text(warnings()[0] as SeenMessage)).toContain('\\@everyone \\*\\*now\\*\\*')
  expect(text(warnings()[0] as SeenMessage)).toMatch(caution)
})

test('the warning is edited where it stands, and the edit is taken back there, too', async () => {
  const form = await formOf(post(), 'Edit the warning')
  expect(JSON.stringify(form)).toContain('market stalls')
  await tomas().submit(form, { warning: 'Rooks of one lot: look at the legs.' })
  expect(warnings()).toHaveLength(1)
  expect(text(warnings()[0] as SeenMessage)).toMatch(/one lot[\s\S]*Edited by the moderators/)
  const back = await pressed(tomas(), post(), 'Undo the edit')
  expect(text(back)).toMatch(/changed the warning on .* \(taken back by/)
  expect(text(warnings()[0] as SeenMessage)).toMatch(/market stalls/)
  expect(text(warnings()[0] as SeenMessage)).not.toMatch(/Edited/)
})

test('it is withdrawn with a word that stands in its place, and the finding waits for a decision as before', async () => {
  const form = await formOf(post(), 'Withdraw the warning')
  const after = messageOf(await tomas().submit(form, { reason: 'It was one seller’s old lot.' }))
  expect(text(after)).toMatch(/It is waiting for a decision/)
  expect(text(after)).toMatch(/taken back by .*: It was one seller’s old lot\./)
  expect(labels(after)).toContain('Post a warning')
  expect(warnings()).toHaveLength(1)
  expect(text(warnings()[0] as SeenMessage)).toMatch(/Withdrawn[\s\S]*one seller’s old lot[\s\S]*market stalls/)
  expect(text(warnings()[0] as SeenMessage)).toMatch(caution)
})

test('it is made a known fake from the list in a few presses, the post in the channel says so, and it is taken back from there', async () => {
  const list = await openList()
  expect(text(list)).toMatch(/Findings of this server/)
  const seen = await pressed(tomas(), list, '.see')
  expect(labels(seen)).toContain('To the report')
  const after = await pressed(tomas(), seen, 'Make it a known fake')
  expect(text(after)).toMatch(/Kept as a known fake/)
  await room.services.queue.idle()
  expect(text(post())).toMatch(/made it a known fake/)
  const [finding] = await room.services.trends.findings.of(server)
  expect(finding?.knownFake).toMatchObject({ family: 'brindlewick-rook' })
  const back = await pressed(tomas(), post(), 'Not a known fake after all')
  expect(text(back)).toMatch(/It is waiting for a decision/)
  expect((await room.services.trends.findings.of(server))[0]?.knownFake).toBeNull()
})

test('an undo that somebody was faster with changes nothing and says so', async () => {
  const dismissal = await formOf(post(), 'Dismiss')
  await tomas().submit(dismissal, { reason: 'one lot of one stall' })
  const old = post()
  await pressed(tomas(), old, 'Undo the dismissal')
  const id = encodeTrends({
    is: 'finding',
    id: (await room.services.trends.findings.of(server))[0]?.id ?? '',
    does: 'undo',
    of: 1,
  })
  const late = messageOf(await tomas().click(await postButton(room.standIn, id), id))
  expect(text(late)).toMatch(/Nothing was taken back: somebody has decided on this after you looked/)
})

test('the next week changes the same post, and a decision stays a decision', async () => {
  const watched = await formOf(post(), 'Watch it')
  const shown = messageOf(await tomas().submit(watched, { weeks: ['4'] }))
  expect(text(shown)).toMatch(/Watched until the week of/)
  const { id } = post()
  const [before] = await room.services.trends.findings.of(server)
  const { releases } = room.services.trends
  const last = (await releases.weeks({ kind: 'server', server })).at(-1) ?? ''
  const bytes = await releases.bytes({ kind: 'server', server }, last)
  // The same wave goes on for a week.
  const { state } = (await releases.latest({ kind: 'server', server })) ?? {}
  const next = weekPlus(last, 1)
  const again = JSON.parse(bytes ?? '')
  const more = { ...again, week: next, rises: [{ ...again.rises[0], week: next }] }
  const { default: canonicalize } = await import('canonicalize')
  await releases.freeze({ kind: 'server', server }, next, canonicalize(more) ?? '', state as never)
  later = 7 * 24 * 3600_000
  await look()
  expect(reports().filter(one => /Something new/.test(text(one)))).toHaveLength(1)
  expect(post().id).toBe(id)
  expect(text(post())).toMatch(/last in the week of/)
  const [after] = await room.services.trends.findings.of(server)
  expect(after).toMatchObject({ id: before?.id, seen: next, state: 'watching' })
})

test('when the watch is over it is told again, and the earlier post goes', async () => {
  const { id } = post()
  later = 5 * 7 * 24 * 3600_000
  await look()
  const all = reports().filter(one => /Something new/.test(text(one)))
  expect(all).toHaveLength(1)
  expect(all[0]?.id).not.toBe(id)
  expect(text(post())).toMatch(/It is waiting for a decision/)
  expect(labels(post())).not.toContain('Stop watching')
})

test('the post was deleted: it is decided from the list, and nothing is posted again by itself', async () => {
  const { post: place, id } = (await room.services.trends.findings.of(server))[0] ?? {}
  await room.services.posts.remove(place as never)
  const seen = await pressed(tomas(), await openList(), '.see')
  const form = await formOf(seen, 'Dismiss')
  const after = messageOf(await tomas().submit(form, { reason: 'seen before' }))
  expect(text(after)).toMatch(/dismissed it on \d+ \w+ \d{4}: seen before/)
  await look()
  expect(reports().filter(one => /Something new/.test(text(one)))).toHaveLength(0)
  expect((await room.services.trends.findings.load(id ?? ''))?.post).toBeNull()
  await pressed(tomas(), after, 'Undo the dismissal')
})

test('several at once: chosen in a menu, watched together; what somebody else decided meanwhile is left alone', async () => {
  const week = weekOf(room.services.now())
  for (const rule of ['weld-marks', 'second-wrap'])
    await room.services.trends.findings.add(
      server,
      [
        {
          key: `k ${rule}`,
          family: 'brindlewick-heron',
          week,
          parts: [{ is: 'rise', rise: { family: 'brindlewick-heron', rule, week, standsOut: false } }],
        },
      ],
      room.services.newId,
    )
  const list = await openList()
  const menu = menus(list).find(one => one.customId.includes('several'))
  const values = menu?.options.map(one => one.value) ?? []
  expect(values).toHaveLength(3)
  const chosen = messageOf(await tomas().choose(list, menu?.customId ?? '', values))
  expect(text(chosen)).toMatch(/3 findings chosen/)
  const { findings } = room.services.trends
  const other = await findings.load(values[0] ?? '')
  if (!other) throw new Error('gone')
  await findings.save({ ...other, state: 'dismissed', revision: other.revision + 1 })
  const done = await pressed(tomas(), chosen, 'Watch all for 4 weeks')
  expect(text(done)).toMatch(/2 findings were changed\. 1 stands as it was/)
  const open = menus(done)[0]
  const watched = messageOf(await tomas().choose(done, open?.customId ?? '', ['watching']))
  expect(text(watched).match(/Watched until/g)).toHaveLength(2)
})

test('a rule is drafted from a pattern: valid YAML with its condition and cases to fill in', async () => {
  const seen = await pressed(
    tomas(),
    messageOf(
      await tomas().click(
        await postButton(room.standIn, encodeTrends({ is: 'findings', filter: 'all', page: 0 })),
        encodeTrends({ is: 'findings', filter: 'all', page: 0 }),
      ),
    ),
    '.see',
  )
  const all = await room.services.trends.findings.of(server)
  const rook = all.find(one => one.family === 'brindlewick-rook')
  const id = encodeTrends({ is: 'finding', id: rook?.id ?? '', does: 'draft' })
  expect(seen).toBeTruthy()
  const reply = messageOf(await tomas().click(await postButton(room.standIn, id), id))
  const draft = await (await fetch(reply.attachments[0]?.url ?? '')).text()
  const { rules } = parse(draft)
  expect(JSON.stringify(rules[0].when)).toMatch(/code-place.*legs/)
  expect(draft).toMatch(/# {3}- name: seen-in-.* stays quiet/)
})

test('nobody else sees the list or acts on a finding, whatever buttons they come by', async () => {
  const [finding] = await room.services.trends.findings.of(server)
  const id = finding?.id ?? ''
  for (const act of [
    { is: 'findings', filter: 'all', page: 0 },
    { is: 'several', does: 'pick' },
    ...(['see', 'warn', 'dismiss', 'watch', 'fake', 'edit', 'draft', 'put-off'] as const).map(does => ({
      is: 'finding' as const,
      id,
      does,
    })),
    { is: 'finding', id, does: 'undo', of: 1 },
  ] as const) {
    const custom = encodeTrends(act as never)
    const reply = messageOf(await wren().click(await postButton(room.standIn, custom), custom))
    expect(text(reply), custom).toMatch(/Only moderators/)
  }
})
