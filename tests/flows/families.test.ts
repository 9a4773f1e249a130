// Families from the first form to a newcomer's verdict: made by one moderator, put in force by another, used at once, taken back.
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeFamily } from '../../src/custom-ids/family-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { good, look, source, walked } from './good-cell.ts'
import { answer, caution, finalOf, idOf, messageOf, postPart, press, pressed, startCheck } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'

const server = demoServer.server.id
const { room, wren, tomas, maret } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: 1, reportsChannel: demoReportsChannel })
})

const larkmoor = { name: 'Sandpiper 25', maker: 'Larkmoor', size: '18650-bare', figures: '2500 mAh 20 A' }

async function filled(
  person: Person,
  reply: Awaited<ReturnType<Person['run']>>,
  fields: Record<string, string | string[]>,
) {
  if (reply.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(reply).slice(0, 300)}`)
  return finalOf(await person.submit(reply.modal, fields))
}
const begin = async (person: Person, fields: Record<string, string | string[]> = larkmoor) =>
  filled(person, await person.run('family new'), fields)
const choose = async (person: Person, message: SeenMessage, value: string, which = 0) =>
  finalOf(await person.choose(message, menus(message)[which]?.customId ?? '', [value]))
const tryIt = async (person: Person, message: SeenMessage) => finalOf(await press(person, message, 'Try it'))
const ask = async (person: Person, message: SeenMessage, why = 'counted on five cells') =>
  filled(person, await press(person, message, 'Ask a second moderator'), { why })

/** What stands in the moderators' channel with a button to agree. */
const waiting = (): SeenMessage => {
  const found = maret()
    .sees(demoReportsChannel)
    .filter(one => buttons(one).some(each => each.customId?.includes('.agreed.')))
  const last = found.at(-1)
  if (!last) throw new Error('nobody was asked')
  return last
}
const offered = (message: SeenMessage): string[] =>
  menus(message).flatMap(menu => menu.options.map(({ value }) => value))
const twoDimples = '.build.two-dimples-three-legs'
async function made(): Promise<string> {
  const page = await pressed(tomas(), await begin(tomas()), twoDimples)
  await ask(tomas(), await tryIt(tomas(), page))
  await pressed(maret(), waiting(), 'Agree')
  const [head] = await room.services.families.store.heads(server)
  if (head?.state !== 'in-force') throw new Error('it is not in force')
  return head.id
}

/** Answers a check by what its questions ask, and everything else with "can't tell"; says how many screens it took. */
async function walk(
  message: SeenMessage,
  said: readonly [RegExp, string][],
): Promise<{ last: SeenMessage; screens: number }> {
  let now = message
  let screens = 0
  for (; screens < 40 && buttons(now).some(one => one.customId?.includes('.unsure')); screens++) {
    const mine = said.find(([asked]) => asked.test(text(now)))
    now = mine ? await answer(wren(), now, mine[1]) : await pressed(wren(), now, '.unsure')
  }
  return { last: now, screens }
}
const fourLegs: readonly [RegExp, string][] = [
  [/burning, smoking/, 'None of these'],
  [/What was the cell sold as/, 'New, in its maker'],
  [/lettering/i, 'On the coloured wrap'],
  [/How many legs hold up/, 'Four'],
]

describe('a family', () => {
  test('is made from a way of building, put in force by a second moderator, and rules a false cell out within eight screens', async () => {
    const first = await begin(tomas())
    expect(text(first)).toMatch(/How is a good Sandpiper 25 made/)
    const page = await pressed(tomas(), first, twoDimples)
    expect(text(page)).toMatch(/Legs:\*\* three · four or five: ruled out/)
    expect(text(page)).toMatch(/2,500 mAh · above 2,600 mAh: ruled out/)
    const tried = await tryIt(tomas(), page)
    expect(text(tried)).toMatch(/Tried on \d+ made-up cells/)
    expect(text(tried)).toMatch(/No past checks of it yet/)
    const asked = await ask(tomas(), tried)
    expect(text(asked)).toMatch(/Another moderator has to agree/)
    // Who asked cannot agree: their own messages do not offer it, and the channel's refuses.
    expect(text(asked)).toMatch(/If nobody has within a day, you may/)
    expect(buttons(asked).map(one => one.label)).not.toContain('Agree: put it in force')
    const again = await tryIt(tomas(), await pressed(tomas(), asked, 'Look at it'))
    expect(buttons(again).map(one => one.label)).not.toContain('Agree: put it in force')
    expect(text(await pressed(tomas(), waiting(), 'Agree'))).toMatch(/somebody else has to agree/)
    expect(text(await pressed(maret(), waiting(), 'Agree'))).toMatch(/Sandpiper 25: version 1 is in force/)
    const [head] = await room.services.families.store.heads(server)
    const { last, screens } = await walk(await startCheck(wren(), { family: head?.id ?? '', depth: 'quick' }), fourLegs)
    expect(text(last)).toMatch(/^## Ruled out/m)
    expect(text(last)).toMatch(/Sandpiper 25/)
    expect(text(last)).toMatch(caution)
    expect(screens).toBeLessThanOrEqual(8)
  })

  test('is shown to everybody of its server once it is in force, and drafts to moderators alone', async () => {
    await begin(tomas())
    expect(text(messageOf(await wren().run('family list')))).toMatch(/Nobody here has described/)
    expect(text(messageOf(await tomas().run('family list')))).toMatch(/Sandpiper 25 · 18650 · Draft/)
    const refused = await wren().run('family new')
    expect(refused.kind === 'message' && text(refused.message)).toMatch(/moderat/i)
    await room.services.families.store.discard(
      server,
      (await room.services.families.store.heads(server))[0]?.id ?? '',
      0,
    )
    const id = await made()
    const seen = messageOf(await wren().run('family show', { family: id }))
    expect(text(seen)).toMatch(/Square code:\*\* /)
    expect(text(seen)).toMatch(/As moderators of this server describe it, since/)
    expect(buttons(seen).map(one => one.label)).not.toContain('Change it')
  })

  test('that two moderators change at once is changed by one, and the other is told', async () => {
    const page = await pressed(tomas(), await begin(tomas()), twoDimples)
    const [head] = await room.services.families.store.heads(server)
    const theirs = await choose(
      maret(),
      messageOf(await maret().run('family show', { family: head?.id ?? '' })),
      'legs',
    )
    await choose(tomas(), await choose(tomas(), page, 'legs'), 'four')
    const late = await choose(maret(), theirs, 'five')
    expect(text(late)).toMatch(/changed/i)
    const family = await room.services.families.store.load(server, head?.id ?? '')
    expect(family?.draft?.traits['legs']?.made).toEqual(['four'])
  })

  test('is taken back by one press with a reason; a check that is open keeps its version and says that there is a newer one', async () => {
    const id = await made()
    const open = await startCheck(wren(), { family: id, depth: 'quick' })
    // A second version that takes the legs out.
    let page = messageOf(await tomas().run('family show', { family: id }))
    page = await pressed(tomas(), page, 'Change it')
    page = await pressed(tomas(), await choose(tomas(), page, 'legs'), 'Not known')
    await ask(tomas(), await tryIt(tomas(), page), 'legs vary')
    await pressed(maret(), waiting(), 'Agree')
    const { last } = await walk(
      open,
      fourLegs.filter(([, said]) => said !== 'On the coloured wrap'),
    )
    expect(text(last)).toMatch(/^## Ruled out/m)
    expect(text(last)).toMatch(/newer version \(2\)/)
    const history = await pressed(
      tomas(),
      await pressed(
        tomas(),
        await pressed(tomas(), messageOf(await tomas().run('family show', { family: id })), 'Change it'),
        'More',
      ),
      'History',
    )
    expect(text(history)).toMatch(/legs vary/)
    const back = await pressed(tomas(), history, 'Back to 1')
    expect(text(back)).toMatch(/Legs/)
    const done = await filled(tomas(), await press(tomas(), back, 'Back to 1'), { why: 'they do not vary' })
    expect(text(done)).toMatch(/Sandpiper 25: version 3 is in force/)
    const versions = await room.services.families.store.versions(server, id)
    expect(versions[0]).toMatchObject({ number: 3, undoes: 1, digest: versions[2]?.digest })
  })

  test('tells of a cell that is not listed what it is unlike, and of a known fake since when it was seen', async () => {
    const id = await made()
    const none = await startCheck(wren(), { depth: 'quick' })
    const walked = await walk(none, [
      [/Which size/, '18650'],
      [/How many legs hold up/, 'Four'],
      [/small lettering/i, 'On the coloured wrap'],
    ])
    expect(text(walked.last)).toMatch(/fits none of the 1 models described here: Sandpiper 25/)
    expect(text(walked.last)).toMatch(/^## Undecided/m)
    // A false look, as a moderator adds it.
    let page = await pressed(tomas(), messageOf(await tomas().run('family show', { family: id })), 'Change it')
    page = await pressed(tomas(), page, 'Known fakes')
    const fakes = await filled(tomas(), await press(tomas(), page, 'Add a known fake'), {
      title: 'Four legs under a good wrap',
      says: 'The contact stands on four legs.',
      looks: ['legs=four'],
    })
    expect(text(fakes)).toMatch(/Four legs under a good wrap/)
    page = await pressed(tomas(), fakes, 'Back to the page')
    await ask(tomas(), await tryIt(tomas(), page), 'seen three times')
    await pressed(maret(), waiting(), 'Agree')
    const { last } = await walk(await startCheck(wren(), { family: id, depth: 'quick' }), fourLegs)
    expect(text(last)).toMatch(/a fake that has been seen here since [^:]*\d{4} \(W\d\d\): Four legs under a good wrap/)
    expect(text(last)).toMatch(/^## Ruled out/m)
  })

  test('is learnt from good cells in the hand, looked at question by question; those of one person or one order count as one', async () => {
    const first = await begin(tomas())
    const page = await walked(tomas(), await press(tomas(), first, 'Start from a good cell'), 'box one')
    expect(text(page)).toMatch(/3 features added. 2 more cells, from other people and other orders/)
    expect(text(page)).toMatch(/Legs:\*\* three/)
    const [head] = await room.services.families.store.heads(server)
    const show = async (who: Person) => messageOf(await who.run('family show', { family: head?.id ?? '' }))
    const more = async (who: Person, order: string) =>
      walked(who, await press(who, await pressed(who, await show(who), 'Reference cells'), 'Add a good cell'), order)
    // Another of his own, and another's of the same order, count as the one before.
    expect(text(await more(tomas(), 'box two'))).toMatch(/2 more cells/)
    expect(text(await more(maret(), 'Box one'))).toMatch(/One more cell/)
    const tried = await tryIt(tomas(), await show(tomas()))
    expect(text(tried)).toMatch(/Tried on \d+ made-up cells/)
    await ask(tomas(), tried)
    await pressed(maret(), waiting(), 'Agree')
    const [version] = await room.services.families.store.versions(server, head?.id ?? '')
    const tells = version?.facts.traits['legs']?.against.map(one => one.tells)
    expect(tells).toEqual(['moderate'])
    expect(version?.facts.figures.mass).toEqual({ middle: 44.6, cells: 2, from: 'references' })
  })

  test('is not learnt silently against what is described: what differs is marked, and can be looked at again', async () => {
    await pressed(tomas(), await begin(tomas()), twoDimples)
    const [head] = await room.services.families.store.heads(server)
    const page = messageOf(await tomas().run('family show', { family: head?.id ?? '' }))
    const form = await press(tomas(), await pressed(tomas(), page, 'Reference cells'), 'Add a good cell')
    let now = await filled(tomas(), form, { ...source, order: 'one', mass: '' })
    now = await look(tomas(), now, { ...good, 'How many legs hold up': 'Four' })
    expect(text(now)).toMatch(/Legs: Four, \*\*unlike what is described here\*\* \(Three\)/)
    expect(text(now)).toMatch(/Look again at what is marked/)
    const before = await pressed(tomas(), now, 'Back')
    expect(text(before)).toMatch(/what lies under the insulating ring/)
    const { store } = room.services.families
    expect(await store.references(server, head?.id ?? '')).toEqual([])
    const summary = await pressed(tomas(), before, '.leave')
    const send = idOf(summary, 'Accept it')
    await pressed(tomas(), summary, 'Accept it')
    // Sent a second time, it is one cell; and nobody else sends it.
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: send })
    await tomas().click(posted, send)
    expect(text(messageOf(await maret().click(posted, send)))).toMatch(/somebody else’s. Start again/)
    expect(await store.references(server, head?.id ?? '')).toMatchObject([
      { looks: { legs: 'four' }, state: 'accepted' },
    ])
    expect((await store.load(server, head?.id ?? ''))?.draft?.traits['legs']?.made).toEqual(['three'])
  })

  test('goes out as a file and comes in as a draft; a stranger’s file is refused with what is wrong', async () => {
    const id = await made()
    const page = await pressed(
      tomas(),
      await pressed(tomas(), messageOf(await tomas().run('family show', { family: id })), 'Change it'),
      'More',
    )
    const exported = await press(tomas(), page, 'Export')
    if (exported.kind !== 'message') throw new Error('no file')
    expect(JSON.stringify(exported.message)).toMatch(/f-[a-z0-9]+\.yaml/)
  })

  test('is made, changed and agreed to by nobody who does not moderate', async () => {
    const id = await made()
    const family = await room.services.families.store.load(server, id)
    const posted = await postPart(room.standIn, {
      type: 2,
      style: 2,
      label: 'x',
      custom_id: encodeFamily({ family: id, revision: family?.revision ?? 0, act: { is: 'discard' } }),
    })
    const reply = await wren().click(
      posted,
      encodeFamily({ family: id, revision: family?.revision ?? 0, act: { is: 'discard' } }),
    )
    expect(text(messageOf(reply))).toMatch(/moderat/i)
    expect(await room.services.families.store.load(server, id)).toMatchObject({ revision: family?.revision })
  })

  test('that is retired is named with its successor and starts no check any more', async () => {
    const id = await made()
    expect(offered(messageOf(await wren().run('check start')))).toContain(id)
    let page = await pressed(tomas(), messageOf(await tomas().run('family show', { family: id })), 'Change it')
    page = await pressed(tomas(), page, 'More')
    const done = await filled(tomas(), await press(tomas(), page, 'Retire'), {
      why: 'not made any more',
      successor: ['-'],
    })
    expect(text(done)).toMatch(/Retired/)
    expect(text(messageOf(await wren().run('check start', { family: id })))).toMatch(/There is no model/)
    expect(offered(messageOf(await wren().run('check start')))).not.toContain(id)
  })
})
