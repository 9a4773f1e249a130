// A model while it is made: typed once and corrected, asked for, found by the second moderator, and checked by anybody.
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeFamily } from '../../src/custom-ids/family-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, postPart, press, pressed, settled } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const { room, wren, tomas, maret } = useFreshRoom(inEnglish)
beforeEach(async () => {
  await reportsIn(demoReportsChannel)
})

async function reportsIn(reportsChannel: string): Promise<void> {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: settings.revision + 1, reportsChannel })
}

type Fields = Record<string, string>
const larkmoor: Fields = { name: 'Sandpiper 25', maker: 'Larkmoor', size: '18650-bare', figures: '2500 mAh 20 A' }

async function filled(person: Person, reply: Awaited<ReturnType<Person['run']>>, fields: Fields) {
  if (reply.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(reply).slice(0, 300)}`)
  return finalOf(await person.submit(reply.modal, fields))
}
const begun = async (fields: Fields = larkmoor) => filled(tomas(), await tomas().run('family new'), fields)
const built = async (fields?: Fields) => pressed(tomas(), await begun(fields), '.build.two-dimples-three-legs')
const askedFor = async (page: SeenMessage) =>
  filled(tomas(), await press(tomas(), await finalOf(await press(tomas(), page, 'Try it')), 'Ask a second'), {
    why: 'counted',
  })
const listed = async (person: Person) => messageOf(await person.run('family list'))
const heads = () => room.services.families.store.heads(server)

describe('the form of a model', () => {
  test.each<[string, Fields, RegExp]>([
    ['figures without a unit', { figures: '2500' }, /could not be read: 2500. Write each figure with its unit/],
    ['figures in the wrong unit', { figures: '2500 mAh 45 kg' }, /could not be read: 45 kg/],
    ['a name in two alphabets', { name: 'Sаndpiper' }, /two alphabets/],
    ['a name that reads like a link', { maker: 'https://shop.example' }, /reads like a link/],
  ])('with %s changes nothing, says what to change, and gives back what was typed', async (_, wrong, says) => {
    const told = text(await begun({ ...larkmoor, ...wrong }))
    expect(told).toMatch(says)
    const { size: _size, ...typed } = { ...larkmoor, ...wrong }
    for (const one of Object.values(typed)) expect(told).toContain(one)
    expect(await heads()).toEqual([])
  })

  test('that was not taken is opened again with all that was typed, the size too, and sent in one go', async () => {
    const told = await begun({ ...larkmoor, size: '21700-protected', figures: '2500, 20A, 45g' })
    expect(text(told)).toMatch(/Is it the capacity\? Then write 2500 mAh/)
    const form = await press(tomas(), told, 'Open the form again')
    if (form.kind !== 'modal') throw new Error('no form')
    for (const one of ['Sandpiper 25', 'Larkmoor', '2500, 20A, 45g']) expect(JSON.stringify(form.modal)).toContain(one)
    expect(JSON.stringify(form.modal)).toMatch(/"value":"21700-protected","label":"[^"]+","default":true/)
    expect(text(await filled(tomas(), form, { ...larkmoor, figures: '2500 mAh, 20A, 45g' }))).toMatch(
      /How is a good Sand/,
    )
    expect((await heads()).map(one => one.name)).toEqual(['Sandpiper 25'])
    // Nobody else reads in it.
    const theirs = buttons(told)[0]?.customId ?? ''
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: theirs })
    expect(text(messageOf(await maret().click(posted, theirs)))).not.toContain('Larkmoor')
  })

  test('of a model that is there already comes back as it was typed, and leads on to its page', async () => {
    const form = await press(tomas(), await built(), 'Name and figures')
    const told = await filled(tomas(), form, { ...larkmoor, name: 'Sandpiper 26', figures: '2600' })
    expect(text(told)).toMatch(/could not be read: 2600/)
    const again = await press(tomas(), told, 'Open the form again')
    expect(JSON.stringify(again)).toContain('Sandpiper 26')
    const after = await filled(tomas(), again, { ...larkmoor, name: 'Sandpiper 26', figures: '2600 mAh' })
    expect(text(after)).toMatch(/### Sandpiper 26 by Larkmoor/)
  })

  test('is opened again with what it holds, and corrected in one go', async () => {
    const page = await built()
    const form = await press(tomas(), page, 'Name and figures')
    if (form.kind !== 'modal') throw new Error('no form')
    const held = JSON.stringify(form.modal)
    for (const one of ['Sandpiper 25', 'Larkmoor', '2500 mAh, 20 A']) expect(held).toContain(one)
    const corrected = { ...larkmoor, name: 'Sandpiper 26', figures: '2600 mAh, min 2550 mAh, 20 A, 30 A 75 °C, 45 g' }
    const after = await filled(tomas(), form, corrected)
    expect(text(after)).toMatch(/### Sandpiper 26 by Larkmoor/)
    expect(text(after)).toMatch(/2,600 mAh · above 2,704 mAh: ruled out · below 2,550 mAh: sign/)
    expect(text(after)).toMatch(/about 45 g · outside 43.9–46.1 g: weak sign/)
    // How it is made stays as it was.
    expect(text(after)).toMatch(/Legs:\*\* three/)
    const family = await room.services.families.store.load(server, (await heads())[0]?.id ?? '')
    expect(family?.draft?.identity).toMatchObject({ name: 'Sandpiper 26' })
  })

  test('takes no size that its construction is not for, and no name that another model has', async () => {
    const page = await built()
    await begun({ ...larkmoor, name: 'Curlew 30' })
    const form = await press(tomas(), page, 'Name and figures')
    const told = await filled(tomas(), form, { ...larkmoor, size: '21700-bare' })
    expect(text(told)).toMatch(/for another size or kind: 18650 · bare/)
    const again = await press(tomas(), told, 'Open the form again')
    expect(text(await filled(tomas(), again, { ...larkmoor, name: 'Curlew 3O' }))).toMatch(/has this name already/)
    expect((await heads()).map(one => one.name).sort()).toEqual(['Curlew 30', 'Sandpiper 25'])
  })
})

describe('a model that is asked for', () => {
  test('its asker reads where it went, and the other moderator finds it first, with a button', async () => {
    const asked = text(await askedFor(await built()))
    expect(asked).toContain(`in <#${demoReportsChannel}> or by /family list`)
    // Whoever asked is told that it waits for somebody else, and is not offered to agree.
    const mine = await listed(tomas())
    expect(text(mine)).toMatch(/^You asked for Sandpiper 25: it waits for another moderator/)
    expect(buttons(await pressed(tomas(), mine, 'Look: Sandpiper 25')).map(one => one.label)).toEqual([
      'Take it back',
      'Change it',
    ])
    const theirs = await listed(maret())
    expect(text(theirs)).toMatch(new RegExp(`^\\*\\*Waits for you:\\*\\* Sandpiper 25, from <@${tomas().id}>`))
    const waiting = await pressed(maret(), theirs, 'Look: Sandpiper 25')
    expect(text(waiting)).toMatch(
      /^### Sandpiper 25 by Larkmoor · 18650 · bare\nVersion 1 is waiting\. <@\d+> says: counted$/m,
    )
    expect(buttons(waiting).map(one => one.label)).toEqual(['Agree: put it in force', 'Send back', 'Change it'])
    // Of a first version all that it says stands there, dimples included.
    for (const says of [/Legs:\*\* three · four or five: ruled out/, /Dimples:\*\* two/, /2,500 mAh/])
      expect(text(waiting)).toMatch(says)
    const done = await pressed(maret(), waiting, 'Agree')
    expect(text(done)).toMatch(/Sandpiper 25: version 1 is in force/)
    expect(text(await listed(maret()))).not.toMatch(/Waits for you/)
    // Pressed once more, from the message of before: nothing waits any more.
    const before = buttons(theirs)[0]?.customId ?? ''
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: before })
    expect(text(messageOf(await maret().click(posted, before)))).toMatch(/nothing to agree to any more/)
    const begun = await pressed(maret(), done, 'Check one of these')
    expect(text(begun)).toMatch(/Sandpiper 25/)
    expect(buttons(begun).some(one => one.customId?.includes('.begin.quick'))).toBe(true)
  })

  test('is agreed to from its page, where that is the one strong button, with sending it back beside it', async () => {
    await askedFor(await built())
    const page = await pressed(
      maret(),
      await pressed(maret(), await listed(maret()), 'Look: Sandpiper 25'),
      'Change it',
    )
    const [first, second] = buttons(page)
    expect([first?.label, second?.label]).toEqual(['Agree: put it in force', 'Send back'])
    expect(buttons(page).filter(one => one.style === 1 || one.style === 3)).toHaveLength(1)
    expect(text(await pressed(maret(), page, 'Agree'))).toMatch(/version 1 is in force/)
  })

  test('tells its asker, in the message that said it waits, and the channel, who agreed, or sent it back', async () => {
    const asked = await askedFor(await built())
    const looking = async () => pressed(maret(), await listed(maret()), 'Look: Sandpiper 25')
    await pressed(maret(), await looking(), 'Send back')
    const back = await settled(room, asked)
    expect(text(back)).toContain(`<@${maret().id}> has sent it back to its draft`)
    const inChannel = () => tomas().sees(demoReportsChannel).at(-1)
    expect(text(inChannel() as SeenMessage)).toContain(`<@${maret().id}> has sent it back`)

    const [family] = await heads()
    const again = await askedFor(messageOf(await tomas().run('family show', { family: family?.id ?? '' })))
    await pressed(maret(), await looking(), 'Agree')
    const done = await settled(room, again)
    expect(text(done)).toMatch(
      new RegExp(`Sandpiper 25: version 1 is in force since <t:\\d+:f>, agreed to by <@${maret().id}>`),
    )
    expect(text(inChannel() as SeenMessage)).toMatch(/version 1 is in force since/)
    expect(text(await pressed(tomas(), done, 'Check one of these'))).toMatch(/Sandpiper 25/)
  })

  test('by nobody but moderators is it seen to wait', async () => {
    await putInForce(room, server, builtFacts(room, 'f-together', 'Curlew 30'))
    await askedFor(await built())
    expect(text(await listed(wren()))).not.toMatch(/Sandpiper/)
    const family = (await heads()).find(one => one.name === 'Sandpiper 25')
    const id = encodeFamily({ family: family?.id ?? '', revision: family?.revision ?? 0, act: { is: 'waiting' } })
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: id })
    expect(text(messageOf(await wren().click(posted, id)))).toMatch(/moderat/i)
  })

  test('where everybody reads the reports nothing is posted, and the asker is told the command alone', async () => {
    const [open] = demoServer.channels
    await reportsIn(open?.id ?? '')
    const asked = text(await askedFor(await built()))
    expect(asked).toMatch(/has to agree, {1,2}by \/family list/)
    expect(asked).not.toContain('<#')
    expect(text(await listed(maret()))).toMatch(/^\*\*Waits for you:\*\* Sandpiper 25/)
  })

  test('a further version of one in force waits like a first one, and is shown as what changes', async () => {
    await putInForce(room, server, builtFacts(room, 'f-together', 'Curlew 30'))
    const page = await pressed(
      tomas(),
      messageOf(await tomas().run('family show', { family: 'f-together' })),
      'Change it',
    )
    const legs = await finalOf(await tomas().choose(page, menus(page)[0]?.customId ?? '', ['legs']))
    await askedFor(await pressed(tomas(), legs, 'Not known'))
    const waiting = await pressed(maret(), await listed(maret()), 'Look: Curlew 30')
    expect(text(waiting)).toMatch(/What changes[\s\S]*Legs: nothing is said about it any more/)
    expect(text(waiting)).not.toMatch(/Dimples/)
  })
})

test('a check is begun from the page of a model, by anybody, and not of one that is only a draft', async () => {
  await putInForce(room, server, builtFacts(room, 'f-together', 'Curlew 30'))
  const page = messageOf(await wren().run('family show', { family: 'f-together' }))
  expect(text(await pressed(wren(), page, 'Check one of these'))).toMatch(/Curlew 30/)
  await begun()
  const draft = (await heads()).find(one => one.name === 'Sandpiper 25')
  const id = encodeFamily({ family: draft?.id ?? '', revision: 0, act: { is: 'check' } })
  const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: id })
  expect(text(messageOf(await wren().click(posted, id)))).toMatch(/There is no model/)
})
