// What goes wrong while families are made: each has its sentence, and nothing is lost.
import { beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { limits } from '../../src/families/family.ts'
import { skeletonOf } from '../../src/families/names.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { draftOf } from '../families/made-families.ts'
import { answer, finalOf, messageOf, press, pressed, startCheck } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const { room, wren, tomas, maret } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: 1, reportsChannel: demoReportsChannel })
})

const store = () => room.services.families.store
const shown = async (person: Person, family = 'f-together') => messageOf(await person.run('family show', { family }))
const kept = async (facts: Facts) => {
  const key = skeletonOf(`${facts.identity.maker} ${facts.identity.name}`)
  expect(await store().create(draftOf(server, facts, { revision: 0 }), key)).toBe('saved')
}

/** A draft that Tomas has asked for, and the message in which it is asked. */
async function waiting(): Promise<SeenMessage> {
  await kept(builtFacts(room, 'f-together', 'Sandpiper 25'))
  const tried = await finalOf(await press(tomas(), await shown(tomas()), 'Try it'))
  const form = await press(tomas(), tried, 'Ask a second moderator')
  if (form.kind !== 'modal') throw new Error('no form')
  await finalOf(await tomas().submit(form.modal, { why: 'counted' }))
  const asked = maret()
    .sees(demoReportsChannel)
    .filter(one => buttons(one).some(each => each.label.startsWith('Agree')))
  const [last] = asked.slice(-1)
  if (!last) throw new Error('nobody was asked')
  return last
}

test('a moderator who stops being one between the review and the press puts nothing in force', async () => {
  await waiting()
  // In her own message, which she goes on seeing.
  const looked = await pressed(maret(), messageOf(await maret().run('family list')), 'Look: Sandpiper 25')
  room.standIn.removeRole(demoWardens)
  const told = text(await pressed(maret(), looked, 'Agree'))
  expect(told).toMatch(/moderat/i)
  expect(await store().load(server, 'f-together')).toMatchObject({ state: 'in-review', head: 0 })
})

test('a review that waits while the server forgets everything finds nothing to agree to', async () => {
  const asked = await waiting()
  await room.services.traces.forgetServer(server)
  expect(text(await pressed(maret(), asked, 'Agree'))).toMatch(/There is no such model here any more/)
  expect(await store().heads(server)).toEqual([])
})

test('a model that is retired while a check of it is open goes on to its verdict, and begins no further one', async () => {
  await putInForce(room, server, builtFacts(room, 'f-together', 'Sandpiper 25'))
  let open = await startCheck(wren(), { family: 'f-together', depth: 'quick' })
  const family = await store().load(server, 'f-together')
  if (!family) throw new Error('it is gone')
  const retired = { by: tomas().id, at: 1000, why: 'not made any more', successor: null }
  const after = { ...family, state: 'retired' as const, retired, revision: family.revision + 1, changedBy: 'retires' }
  expect(await store().save(after, skeletonOf('Larkmoor Sandpiper 25'))).toBe('saved')
  room.services.families.renew(server)
  for (let i = 0; i < 30 && !/Look again/.test(text(open)); i++)
    open = /How many legs hold up/.test(text(open))
      ? await answer(wren(), open, 'Four')
      : await pressed(wren(), open, '.unsure')
  const verdict = text(await answer(wren(), open, 'Four'))
  expect(verdict).toMatch(/^## Ruled out/m)
  expect(text(messageOf(await wren().run('check start', { family: 'f-together' })))).toMatch(/There is no model/)
})

test('a model whose construction the project does not know any more goes on as it was, and rules out no further looks', async () => {
  await putInForce(room, server, builtFacts(room, 'f-together', 'Sandpiper 25'))
  const { families } = room.services
  const without = families.constructions.filter(one => one.construction !== 'two-dimples-three-legs')
  Object.assign(families, { constructions: without })
  let open = await startCheck(wren(), { family: 'f-together', depth: 'quick' })
  for (let i = 0; i < 30 && !/Look again/.test(text(open)); i++)
    open = /How many legs hold up/.test(text(open))
      ? await answer(wren(), open, 'Four')
      : await pressed(wren(), open, '.unsure')
  expect(text(open)).toMatch(/Look again/)
  // What would come into force next has earned its strength from nothing.
  const page = await pressed(tomas(), await shown(tomas()), 'Change it')
  expect(text(page)).toMatch(/Legs:\*\* three · four or five: weak sign/)
})

test('looks that contradict each other are named when they are tried, and cannot be asked for', async () => {
  const facts = builtFacts(room, 'f-together', 'Sandpiper 25')
  const legs = facts.traits['legs'] ?? { made: [], against: [], remarks: [] }
  await kept({ ...facts, traits: { ...facts.traits, legs: { ...legs, made: ['three', 'four'] } } })
  const tried = await finalOf(await press(tomas(), await shown(tomas()), 'Try it'))
  expect(text(tried)).toMatch(/Not yet\. Legs: one answer counts both for and against it/)
  expect(buttons(tried).map(one => one.label)).not.toContain('Ask a second moderator')
})

test('what is said to rule out without a construction or cells that show it is offered, and kept, as a weak sign', async () => {
  const facts = builtFacts(room, 'f-together', 'Sandpiper 25')
  await kept({ ...facts, from: null })
  const page = await shown(tomas())
  expect(text(page)).not.toMatch(/Legs:.*ruled out/)
  expect(text(page)).toMatch(/Legs:\*\* three · four or five: weak sign/)
  const legs = await finalOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs']))
  expect(menus(legs)[1]?.options.map(one => one.value)).toEqual(['weak', 'no-bearing'])
})

test('of more models than a server may have the next one is refused with how many', async () => {
  for (let i = 0; i < limits.families; i++) {
    const facts = builtFacts(room, `f-many${String(i).padStart(4, '0')}`, `Model ${i}`)
    await store().create(draftOf(server, facts, { state: 'in-force', revision: 0, draft: null }), `many ${i}`)
  }
  const form = await tomas().run('family new')
  if (form.kind !== 'modal') throw new Error('no form')
  const typed = { name: 'One more', maker: 'Larkmoor', size: '18650-bare', figures: '' }
  expect(text(await finalOf(await tomas().submit(form.modal, typed)))).toMatch(
    /at most 300 models. Nothing was changed/,
  )
  expect(await store().heads(server)).toHaveLength(limits.families)
})
