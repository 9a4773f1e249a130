// A model that moderators know in part: ticked in one menu, seen by the second moderator, who is told on whichever screen they open first.
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, pictures, type SeenMessage, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const { room, tomas, maret } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: settings.revision + 1, reportsChannel: demoReportsChannel })
})

async function filled(person: Person, reply: Awaited<ReturnType<Person['run']>>, fields: Record<string, string>) {
  if (reply.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(reply).slice(0, 300)}`)
  return finalOf(await person.submit(reply.modal, fields))
}
const built = async (name = 'Sandpiper 25') =>
  pressed(
    tomas(),
    await filled(tomas(), await tomas().run('family new'), {
      ...{ name, maker: 'Larkmoor', size: '18650-bare', figures: '2500 mAh' },
    }),
    '.build.two-dimples-three-legs',
  )
const tick = async (page: SeenMessage, ...features: readonly string[]) =>
  messageOf(await tomas().choose(page, menus(page)[1]?.customId ?? '', [...features]))
const ticked = (page: SeenMessage) => menus(page)[1]?.options.flatMap(one => (one.default ? [one.value] : []))
const askedFor = async (page: SeenMessage, why = '') =>
  filled(tomas(), await press(tomas(), await finalOf(await press(tomas(), page, 'Try it')), 'Ask a second'), { why })

describe('what is not known', () => {
  test('is ticked all at once, said on the page, and taken back the same way', async () => {
    const page = await built()
    expect(ticked(page)).toEqual([])
    const after = await tick(page, 'legs', 'dimples')
    expect(text(after)).toMatch(/^Not known now: Legs and Dimples\./)
    expect(text(after)).toMatch(/Not known, so not counted: Legs and Dimples\./)
    // What the letter says nothing of is named, before anybody asks whether it was forgotten.
    for (const one of [page, after])
      expect(text(one)).toMatch(/^-# Not counted so far: .*Vent disc, .*Small weld marks/m)
    expect(text(after)).not.toMatch(/\*\*(Legs|Dimples):/)
    expect(ticked(after)).toEqual(['legs', 'dimples'])
    const one = await tick(after, 'dimples')
    expect(text(one)).toMatch(/^As it was at first: Legs\./)
    expect(text(one)).toMatch(/\*\*Legs:\*\* three · four or five: ruled out/)
    const none = await tick(one)
    expect(ticked(none)).toEqual([])
    expect(text(none)).toMatch(/\*\*Dimples:\*\* two · none: ruled out/)
    expect(text(none)).not.toMatch(/Not known, so/)
  })

  test('is not asked about in a check of it, and comes into force as that', async () => {
    await askedFor(await tick(await built(), 'legs', 'dimples'))
    const theirs = await pressed(maret(), messageOf(await maret().run('family list')), 'Look: Sandpiper 25')
    expect(text(theirs)).toMatch(/Not known, so not counted: Legs and Dimples\./)
    expect(text(theirs)).toContain(`Version 1 is waiting. <@${tomas().id}> gave no reason.`)
    await pressed(maret(), theirs, 'Agree')
    const [family] = await room.services.families.store.heads(server)
    const version = await room.services.families.store.version(server, family?.id ?? '', 1)
    expect(Object.keys(version?.facts.traits ?? {})).not.toContain('legs')
    expect(Object.keys(version?.facts.traits ?? {})).toContain('lettering-place')
    // What nobody typed is nobody’s reason.
    expect(version?.why).toBe('')
    const seen = messageOf(await maret().run('family show', { family: family?.id ?? '' }))
    const more = await pressed(maret(), await pressed(maret(), seen, 'Change it'), 'More…')
    expect(text(await pressed(maret(), more, 'History'))).toContain('First version')
  })

  test('comes from a page that somebody has changed meanwhile: nothing is lost, and it is said', async () => {
    const page = await built()
    const [family] = await room.services.families.store.heads(server)
    const theirs = messageOf(await maret().run('family show', { family: family?.id ?? '' }))
    await tick(page, 'legs')
    const late = messageOf(await maret().choose(theirs, menus(theirs)[1]?.customId ?? '', ['dimples']))
    expect(text(late)).toMatch(/changed meanwhile|somebody else|faster/i)
    expect(ticked(late)).toEqual(['legs'])
  })
})

describe('the lines of the page', () => {
  test('say that they came with the letter, until one is set here, which is marked', async () => {
    const page = await built()
    expect(text(page)).toMatch(/Features as in the bot’s construction [A-Z]\./)
    expect(text(page)).not.toContain('✎')
    const legs = messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs']))
    const four = messageOf(await tomas().choose(legs, menus(legs)[0]?.customId ?? '', ['four']))
    const after = text(await pressed(tomas(), four, 'Back to the page'))
    expect(after).toMatch(/✎ Set here; other features as in the bot’s construction [A-Z]/)
    expect(after).toMatch(/^✎ \*\*Legs:\*\* four/m)
    expect(after).toMatch(/^\*\*Dimples:/m)
  })

  test('are set by a press each where the letter left them open, one after the other without a way back', async () => {
    const page = await built()
    const labels = (shown: SeenMessage) => buttons(shown).map(one => one.label)
    expect(labels(page)).toEqual(expect.arrayContaining(['+ Vent disc', '+ Small weld marks']))
    expect(labels(page)).not.toContain('+ Legs')
    const vent = await pressed(tomas(), page, '+ Vent disc')
    expect(text(vent)).toContain('Press what a good one shows.')
    // Nothing is ticked, and nothing is to be decided yet.
    expect(text(vent)).not.toMatch(/Everything ticked|Anything else|Signs add up|At most/)
    expect(menus(vent)).toEqual([])
    expect(labels(vent).slice(0, 2)).toEqual(['A · Four lines from the middle', 'B · A raised button in the middle'])
    const saved = await pressed(tomas(), vent, 'A · Four lines')
    expect(text(saved)).toMatch(/^Saved: a good one shows four lines\./)
    expect(text(saved)).toContain('Everything ticked counts as right. Untick what is not.')
    // A word of one's own is a weak sign: there is nothing stronger to choose, and a new wrap changes no vent disc.
    expect(text(saved)).not.toMatch(/At most/)
    expect(labels(saved)).not.toContain('Do not count it for open rewraps')
    const [made, tells, next] = menus(saved)
    expect(made?.options.filter(one => one.default).map(one => one.label)).toEqual(['A · Four lines from the middle'])
    expect(tells?.options.map(one => one.value)).toEqual(['weak', 'no-bearing'])
    expect(next?.placeholder).toBe('Change or add a feature…')
    expect(next?.options[0]?.value).toBe('weld-dots')
    expect(next?.options.map(one => one.value)).not.toContain('vent-disc')
    // From there the next feature is one press away, and so is trying it.
    const weld = await pressed(tomas(), saved, '+ Small weld marks')
    const second = await pressed(tomas(), weld, 'A · ')
    expect(labels(second).filter(one => one.startsWith('+ '))).toEqual([])
    const tried = await finalOf(await press(tomas(), second, 'Try it'))
    expect(text(tried)).toMatch(/Tried on \d+ made-up cells: each came out as described/)
    expect(text(await pressed(tomas(), tried, 'Back to the page'))).toMatch(
      /^✎ \*\*Vent disc:\*\* four lines · .*weak sign$/m,
    )
  })

  test('of a feature that may tell more say how much at most, and what it takes', async () => {
    const page = await built()
    const legs = messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs']))
    // What the letter lets rule out needs no more.
    expect(text(legs)).not.toMatch(/At most|make it stronger/)
    const vent = await pressed(tomas(), await pressed(tomas(), page, '+ Vent disc'), 'A · ')
    expect(text(vent)).toContain('Reference cells make it stronger.')
  })

  test('that are set to another answer say what counts less than it did, and what to press', async () => {
    const page = await built()
    const code = messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['code-place']))
    expect(text(code)).toContain('Everything ticked counts as right.')
    const choose = async (shown: SeenMessage, ...looks: string[]) =>
      messageOf(await tomas().choose(shown, menus(shown)[0]?.customId ?? '', looks))
    const tells = (shown: SeenMessage) => menus(shown)[1]?.options.flatMap(one => (one.default ? [one.value] : []))
    const less = (now: string, before: string) =>
      `Anything else is set to “${now}”; it was “${before}”. Choose below how strongly it counts.`
    const changed = await choose(code, 'can')
    expect(text(changed)).toContain(`Saved: a good one shows on the can. ${less('Weak sign', 'Rules the cell out')}`)
    expect(tells(changed)).toEqual(['weak'])
    // Both ticked: it is said that both are right now, and that nothing counts.
    const both = await choose(changed, 'can', 'wrap')
    expect(text(both)).toContain('Saved: a good one shows on the wrap or on the can.')
    expect(text(both)).toContain(less('Proves nothing', 'Weak sign'))
    const back = await choose(both, 'can')
    expect(tells(back)).toEqual(['weak'])
    expect(text(back)).not.toContain('Anything else is set')
    expect(text(await pressed(tomas(), back, 'Back to the page'))).toMatch(
      /Square code:\*\* on the can · on the wrap: weak sign; none alone: no sign/,
    )
  })

  test('stand in the menu at the strength they may have, whatever was wished for', async () => {
    const page = await built()
    const legs = messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs']))
    const wider = messageOf(await tomas().choose(legs, menus(legs)[0]?.customId ?? '', ['three', 'four']))
    expect(menus(wider)[1]?.options.flatMap(one => (one.default ? [one.value] : []))).toEqual(['weak'])
    expect(text(wider)).toContain('Anything else is set to “Weak sign”; it was “Rules the cell out”.')
  })

  test('lead to a photo for what no feature can say', async () => {
    const page = await built()
    expect(text(page)).toMatch(/Something else, such as rows of lettering: add a photo/)
    expect(buttons(page).map(one => one.label)).toContain('Photos')
    const legs = messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['lettering-place']))
    expect(text(legs)).not.toMatch(/rows of lettering/)
    expect(buttons(legs).some(one => one.customId?.includes('new-photo-of.lettering-place'))).toBe(true)
  })

  test('are read with what a sign is worth beside them', async () => {
    const said = /Signs add up: doubtful from 1 strong sign, 2 signs or 4 weak/
    const page = await built()
    expect(text(page)).toMatch(said)
    expect(text(messageOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs'])))).toMatch(said)
  })
})

describe('a second moderator', () => {
  test('sees the drawing before anything is pressed', async () => {
    const asked = await askedFor(await built(), 'Counted on five cells')
    const posted = tomas().sees(demoReportsChannel).at(-1) as SeenMessage
    const theirs = await pressed(maret(), messageOf(await maret().run('family list')), 'Look: Sandpiper 25')
    for (const one of [posted, theirs]) {
      expect(pictures(one)).toHaveLength(1)
      expect(text(one)).toContain('Counted on five cells')
    }
    // Whoever has asked has seen it, and has just said why.
    expect(pictures(asked)).toEqual([])
    expect(text(asked)).not.toContain('Counted on five cells')
    // Once it is decided, nothing of the drawing is left over in the channel.
    await pressed(maret(), theirs, 'Agree')
    await room.services.queue.idle()
    expect(pictures(tomas().sees(demoReportsChannel).at(-1) as SeenMessage)).toEqual([])
  })

  test.each(['trends', 'check waiting'])(
    'is told first of all on /%s what waits for them, and led to it',
    async path => {
      const said = async (person: Person) => text(messageOf(await person.run(path)))
      const before = await said(maret())
      await askedFor(await built())
      // Whoever has asked for it cannot agree to it, and is told nothing.
      expect(await said(tomas())).toBe(before)
      const screen = messageOf(await maret().run(path))
      expect(text(screen)).toMatch(/^1 model waits for a second moderator. Look, then agree or send it back/)
      expect(text(screen)).toContain(before)
      const theirs = await pressed(maret(), screen, 'Look: Sandpiper 25')
      expect(text(theirs)).toMatch(/^### Sandpiper 25 by Larkmoor · 18650 · bare\nVersion 1 is waiting/)
      // What was asked for stays where it is.
      expect(theirs.id).not.toBe(screen.id)
      await askedFor(await built('Dunlin 25'))
      expect(await said(maret())).toMatch(/^2 models wait for a second moderator. Look, then agree or send each back/)
    },
  )

  test('finds what was asked last first, before what they have asked for themselves', async () => {
    await putInForce(room, server, builtFacts(room, 'f-together', 'Curlew 30'))
    await askedFor(await built())
    await askedFor(await built('Dunlin 25'))
    expect(buttons(messageOf(await maret().run('family list'))).map(one => one.label)).toEqual([
      'Look: Dunlin 25',
      'Look: Sandpiper 25',
    ])
    expect(text(messageOf(await tomas().run('family list')))).toMatch(/^You asked for Dunlin 25/)
  })
})
