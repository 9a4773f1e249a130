// Families and the rest of the bot: a second process, files, findings, rights that are lost, and what stays a server's own.
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { writeFamilyFile } from '../../src/packs/read-family-file.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { answer, finalOf, messageOf, postPart, press, pressed, startCheck } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const { room, wren, tomas } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: 1, reportsChannel: demoReportsChannel })
})

const facts = (id: string, name: string, built?: string) => builtFacts(room, id, name, built)
const put = (where: string, made: Facts, number?: number) => putInForce(room, where, made, number)

async function legsQuestion(message: SeenMessage): Promise<SeenMessage> {
  let now = message
  for (let i = 0; i < 40 && !/How many legs hold up/.test(text(now)); i++) now = await pressed(wren(), now, '.unsure')
  return now
}

describe('two processes', () => {
  test('see a new version on the next start, and a check goes on by its own in either', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    const stop = await room.another()
    const old = await legsQuestion(await startCheck(wren(), { family: 'f-together', depth: 'quick' }))
    // Put in force by a store of its own, as another process would: nothing tells this one.
    await put(server, facts('f-together', 'Sandpiper 25', 'two-dimples-four-legs'), 2)
    const next = await legsQuestion(await startCheck(wren(), { family: 'f-together', depth: 'quick' }))
    // Four legs contradict the first version and are as made by the second.
    expect(text(await answer(wren(), old, 'Four'))).toMatch(/Look again/)
    expect(text(await answer(wren(), next, 'Four'))).not.toMatch(/Look again/)
    await stop()
  })
})

describe("a server's own", () => {
  test('families are in no list and no check of another server', async () => {
    await put('900000000000000999', facts('f-elsewhere', 'Hidden 30'))
    const offered = await wren().suggest('check start', { name: 'family', value: '' })
    expect(offered.map(one => one.name).join()).not.toMatch(/Hidden/)
    expect(text(messageOf(await wren().run('check start', { family: 'f-elsewhere' })))).toMatch(/There is no model/)
    expect(text(messageOf(await wren().run('family show', { family: 'f-elsewhere' })))).toMatch(/no such model/)
  })

  test('completion shows them first, with the ways of building, and finds look-alike letters', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    const all = await wren().suggest('check start', { name: 'family', value: '' })
    expect(all[0]?.value).toBe('-')
    expect(all[1]?.name).toMatch(/Sandpiper 25/)
    expect(all.some(one => one.name.startsWith('Built like: '))).toBe(true)
    const found = await wren().suggest('check start', { name: 'family', value: 'sandpiper' })
    expect(found[0]?.value).toBe('f-together')
  })

  test('that are retired come last wherever one is chosen, with what to use instead', async () => {
    await put(server, facts('f-retired1', 'Avocet 25'))
    await put(server, facts('f-retired2', 'Bittern 25'))
    await put(server, facts('f-together', 'Sandpiper 25'))
    const { store } = room.services.families
    for (const [id, successor] of [
      ['f-retired1', 'f-together'],
      ['f-retired2', null],
    ] as const) {
      const family = await store.load(server, id)
      if (!family) throw new Error('it is gone')
      const retired = { by: wren().id, at: room.services.now(), why: 'Not made any more.', successor }
      const revision = family.revision + 1
      await store.save({ ...family, state: 'retired', retired, revision, changedBy: 'retires' }, id)
    }
    const marked = [
      'Sandpiper 25 (Larkmoor)',
      'Avocet 25 (Larkmoor): retired, use Sandpiper 25',
      'Bittern 25 (Larkmoor): retired',
    ]
    for (const path of ['family show', 'check start']) {
      const offered = await wren().suggest(path, { name: 'family', value: 'larkmoor' })
      expect(offered.map(one => one.name).filter(one => one.includes('Larkmoor'))).toEqual(marked)
    }
  })

  test('facts that nothing can be made of any more are named in the list, and the rest works on', async () => {
    const broken = facts('f-broken01', 'Broken 10')
    await put(server, { ...broken, traits: {}, figures: {} })
    await put(server, facts('f-together', 'Sandpiper 25'))
    const listed = text(messageOf(await wren().run('family list')))
    expect(listed).toMatch(/Broken 10 · 18650 · cannot be used/)
    expect(listed).toMatch(/Sandpiper 25 · 18650 · In force/)
    expect(text(messageOf(await wren().run('check start', { family: 'f-broken01' })))).toMatch(/There is no model/)
    expect(text(await startCheck(wren(), { family: 'f-together' }))).toMatch(/Sandpiper 25/)
  })

  test('goes with the server', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    await room.services.traces.forgetServer(server)
    expect(await room.services.families.store.heads(server)).toEqual([])
  })
})

describe('a check against a way of building', () => {
  test('says what it was held against, rules nothing out and finds nothing', async () => {
    const message = await legsQuestion(await startCheck(wren(), { family: 'c-two-dimples-three-legs', depth: 'quick' }))
    let now = await answer(wren(), message, 'Four')
    for (let i = 0; i < 30 && buttons(now).some(one => one.customId?.includes('.unsure')); i++)
      now = /How many legs hold up/.test(text(now))
        ? await answer(wren(), now, 'Four')
        : await pressed(wren(), now, '.unsure')
    expect(text(now)).toMatch(/^## Doubtful/m)
    expect(text(now)).toMatch(/Compared with a construction/)
  })
})

describe('a finding', () => {
  test('about a family of the server is made a known fake, filled with what was found', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    const pattern = {
      family: 'f-together',
      items: ['answer:legs=four', 'bought:marketplace', 'rule:f-together-code-place-1'] as const,
      ...{ recent: 10, recentOf: 30, earlier: 0, earlierOf: 50, growth: 3 },
    }
    await room.services.trends.findings.add(
      server,
      [{ key: 'k', family: 'f-together', week: '2026-W45', parts: [{ is: 'pattern', pattern }] }],
      () => 'finding001',
    )
    const id = encodeTrends({ is: 'finding', id: 'finding001', does: 'fake' })
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: id })
    const reply = await tomas().click(posted, id)
    if (reply.kind !== 'modal') throw new Error('no form')
    const filled = JSON.stringify(reply.modal)
    expect(filled).toMatch(/legs=four/)
    expect(filled).not.toMatch(/marketplace/)
    const page = await finalOf(
      await tomas().submit(reply.modal, {
        title: 'Four legs',
        says: 'Four legs under a good wrap.',
        looks: ['legs=four', 'code-place=can'],
      }),
    )
    expect(text(page)).toMatch(/Four legs/)
    const family = await room.services.families.store.load(server, 'f-together')
    expect(family?.draft?.fakes).toMatchObject([
      { finding: 'finding001', look: { legs: ['four'], 'code-place': ['can'] } },
    ])
  })
})

describe("a member's good cell", () => {
  test('is offered, counts nothing until a moderator has accepted it, and no more than three wait', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    const offer = async (order: string) => {
      const form = await wren().run('family offer', { family: 'f-together' })
      if (form.kind !== 'modal') throw new Error('no form')
      let now = messageOf(await wren().submit(form.modal, { how: ['maker'], order, mass: '' }))
      for (let i = 0; i < 20 && buttons(now).some(one => one.customId?.endsWith('.unsure')); i++)
        now = await (/How many legs hold up/.test(text(now))
          ? answer(wren(), now, 'Three')
          : pressed(wren(), now, '.unsure'))
      if (!buttons(now).some(one => one.customId?.endsWith('.leave'))) return text(now)
      return text(await pressed(wren(), await pressed(wren(), now, '.leave'), 'Offer it'))
    }
    expect(await offer('one')).toMatch(/counts once one of them has accepted it/)
    const { store } = room.services.families
    expect(await store.references(server, 'f-together')).toMatchObject([
      { state: 'offered', by: wren().id, acceptedBy: null },
    ])
    const page = await pressed(
      tomas(),
      messageOf(await tomas().run('family show', { family: 'f-together' })),
      'Change it',
    )
    const references = await pressed(tomas(), page, 'Reference cells')
    await pressed(tomas(), references, 'Accept 1')
    expect(await store.references(server, 'f-together')).toMatchObject([{ state: 'accepted', acceptedBy: tomas().id }])
    for (const order of ['two', 'three', 'four']) expect(await offer(order)).toMatch(/Thank you/)
    expect(await offer('five')).toMatch(/offered 3 cells of this model already/)
  })

  test('that was checked is offered from its verdict, once, with what was seen; and not where something speaks against it', async () => {
    await put(server, facts('f-together', 'Sandpiper 25'))
    const check = async (legs: string) => {
      let now = await answer(wren(), await legsQuestion(await startCheck(wren(), { family: 'f-together' })), legs)
      if (/Look again/.test(text(now))) now = await answer(wren(), now, legs)
      return pressed(wren(), now, '.finish')
    }
    const false_ = await check('Four')
    expect(buttons(false_).map(one => one.label)).not.toContain('Offer as a good cell')
    const verdict = await check('Three')
    const send = async () => {
      const form = await press(wren(), verdict, 'Offer as a good cell')
      if (form.kind !== 'modal') throw new Error('no form')
      const summary = messageOf(await wren().submit(form.modal, { how: ['maker'], order: 'one', mass: '45' }))
      expect(text(summary)).toMatch(/Legs: Three/)
      return pressed(wren(), summary, 'Offer it')
    }
    expect(text(await send())).toMatch(/Thank you/)
    expect(text(await send())).toMatch(/Thank you/)
    const { store } = room.services.families
    // A scale of whole grams shows no middle.
    expect(await store.references(server, 'f-together')).toMatchObject([
      { state: 'offered', by: wren().id, looks: { legs: 'three' }, mass: { value: 45, u: 0.5 } },
    ])
    const page = await pressed(
      tomas(),
      messageOf(await tomas().run('family show', { family: 'f-together' })),
      'Change it',
    )
    await pressed(tomas(), await pressed(tomas(), page, 'Reference cells'), 'Accept 1')
    expect(text(await send())).toMatch(/Thank you/)
    expect(await store.references(server, 'f-together')).toMatchObject([{ state: 'accepted' }])
    // Another's buttons do nothing for him.
    const [ask] = buttons(verdict).filter(one => one.label === 'Offer as a good cell')
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: ask?.customId ?? '' })
    expect(text(messageOf(await tomas().click(posted, ask?.customId ?? '')))).toMatch(/cannot be offered/)
  })
})

describe('a file', () => {
  test('comes in as a draft of this server, and one that is broken changes nothing', async () => {
    const file = (name: string, content: string) => ({ name, type: 'text/yaml', bytes: Buffer.from(content) })
    const made = writeFamilyFile(facts('f-stranger', 'Whimbrel 30'))
    const taken = await finalOf(await tomas().run('family import', { file: file('family.yaml', made) }))
    expect(text(taken)).toMatch(/Whimbrel 30/)
    const [head] = await room.services.families.store.heads(server)
    expect(head).toMatchObject({ name: 'Whimbrel 30', state: 'draft', head: 0 })
    expect(head?.id).not.toBe('f-stranger')
    const refused = await finalOf(await tomas().run('family import', { file: file('family.yaml', 'a: &x [1]\nb: *x') }))
    expect(text(refused)).toMatch(/cannot be imported: .*Nothing was changed/)
    const twin = await finalOf(await tomas().run('family import', { file: file('family.yaml', made) }))
    expect(text(twin)).toMatch(/has this name already, or one that looks alike/)
    expect(await room.services.families.store.heads(server)).toHaveLength(1)
    expect(menus(taken).length).toBeGreaterThan(0)
    expect(await press(tomas(), taken, 'Try it')).toBeTruthy()
  })
})
