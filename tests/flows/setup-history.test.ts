// What was changed about settings and links, through the real client: seen with who and when, taken back by one press, or why not.
import { describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { encodeLinks } from '../../src/custom-ids/links-id.ts'
import { encodeSetup } from '../../src/custom-ids/setup-id.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { caution, messageOf, postButton, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
const keepers = '900000000000000202'
const { room } = useFreshRoom(inEnglish)
const warden = wardenOf(room)

const history = async () => warden.press(await warden.overview(), 'What was changed')
const undos = (message: SeenMessage) => buttons(message).filter(one => one.label === 'Take it back')

describe('settings', () => {
  test('each change is there with who, when, from what to what, and goes back by one press', async () => {
    expect(text(await history())).toMatch(/Nothing has been changed yet/)
    await warden.choose(await warden.open('reports'), [demoReportsChannel])
    await warden.choose(await warden.open('language'), ['de'])
    const seen = await history()
    expect(text(seen)).toMatch(new RegExp(`<t:\\d+:f>, <@${warden.person.id}>:`))
    expect(text(seen)).toContain('**Language:** the one set for this server in Discord')
    expect(text(seen)).toContain(`**Reports channel:** none → <#${demoReportsChannel}>`)
    expect(text(seen)).toMatch(caution)
    expect(seen.onlyFor).toBe(warden.person.id)
    expect(seen.pinged).toEqual({ everyone: false, people: [], roles: [] })
    const back = await pressed(warden.person, seen, '.undo.1')
    expect(text(back)).toMatch(/Taken back\. This is how it is now/)
    expect(text(back)).toMatch(/took back the change of <t:\d+:f>/)
    expect(await warden.settings()).toMatchObject({ reportsChannel: null, language: 'de', revision: 3 })
    // The undo can be taken back, the change itself no more.
    expect(undos(back).map(one => one.customId)).toEqual([
      encodeSetup({ revision: 3, act: { is: 'undo', of: 3 } }),
      encodeSetup({ revision: 3, act: { is: 'undo', of: 2 } }),
    ])
    await pressed(warden.person, back, '.undo.3')
    expect((await warden.settings()).reportsChannel).toBe(demoReportsChannel)
  })

  test('what somebody changed after says so instead of a button; made-up presses are refused in the same words', async () => {
    await warden.choose(await warden.open('language'), ['de'])
    await warden.choose(await warden.open('language'), ['es'])
    const seen = await history()
    expect(text(seen)).toMatch(/cannot be taken back: <@\d+> changed the same thing after it/)
    expect(undos(seen)).toHaveLength(1)
    const id = encodeSetup({ revision: 2, act: { is: 'undo', of: 1 } })
    const forged = await warden.person.click(await postButton(room.standIn, id), id)
    expect(text(messageOf(forged))).toMatch(/changed the same thing after it/)
    expect(await warden.settings()).toMatchObject({ language: 'es', revision: 2 })
  })

  test('what taking it back deletes is asked first', async () => {
    const form = await press(warden.person, await warden.open('keeping'), 'Change the number')
    if (form.kind !== 'modal') throw new Error('no form')
    await warden.person.submit(form.modal, { weeks: '156' })
    const asked = await pressed(warden.person, await history(), '.undo.1')
    expect(text(asked)).toMatch(/older than 104 weeks are deleted within a quarter of an hour/)
    expect((await warden.settings()).keepWeeks).toBe(156)
    expect(text(await pressed(warden.person, asked, 'Leave it'))).toMatch(/What was changed here/)
    await pressed(warden.person, await pressed(warden.person, await history(), '.undo.1'), '.undone.1')
    expect((await warden.settings()).keepWeeks).toBe(104)
  })

  test('a channel that is gone, or a role, does not come back', async () => {
    await warden.choose(await warden.open('reports'), [demoReportsChannel])
    await warden.choose(await warden.open('moderators'), [keepers])
    await warden.press(await warden.open('reports'), 'No channel')
    await warden.press(await warden.open('moderators'), 'No roles')
    room.standIn.removeChannel(demoReportsChannel)
    room.standIn.removeRole(keepers)
    expect(text(await pressed(warden.person, await history(), '.undo.3'))).toMatch(/That channel is gone/)
    expect(text(await pressed(warden.person, await history(), '.undo.4'))).toMatch(/One of these roles is gone/)
    expect(await warden.settings()).toMatchObject({ reportsChannel: null, moderatorRoles: [], revision: 4 })
  })

  test('two at once, in two processes: one takes it back, the other is told', async () => {
    await room.another()
    await warden.choose(await warden.open('language'), ['de'])
    const both = [await history(), await history()]
    const replies = await Promise.all(both.map(one => press(warden.person, one, 'Take it back')))
    await room.services.queue.idle()
    const said = replies.map(reply => text(messageOf(reply)))
    expect(
      said.filter(one => /Somebody else got there first|took this back already/.test(one)).length,
    ).toBeLessThanOrEqual(1)
    expect(await warden.settings()).toMatchObject({ language: null, revision: 2 })
    expect(await room.services.servers.history(server)).toHaveLength(2)
  })

  test('whoever has their name deleted is somebody; the change stays and can be taken back', async () => {
    await warden.choose(await warden.open('language'), ['de'])
    await room.services.traces.forgetPerson(warden.person.id)
    const seen = await history()
    expect(text(seen)).toContain('(name deleted)')
    expect(text(seen)).not.toContain(warden.person.id)
    await pressed(warden.person, seen, '.undo.1')
    expect((await warden.settings()).language).toBeNull()
  })
})

describe('links', () => {
  const shop = (title: string, url: string) => ({
    id: title.toLowerCase(),
    url,
    title,
    addedAt: 1e12,
    reviewedAt: 1e12,
  })
  const keep = async () => {
    const message = await pressed(warden.person, messageOf(await warden.person.run('buying')), 'view.links.1')
    return pressed(warden.person, message, 'Manage the links')
  }
  const settle = async (links: ReturnType<typeof shop>[], moderatorRoles: string[] = [demoWardens]) => {
    const settings = await warden.settings()
    const next = { ...settings, moderatorRoles, links, revision: settings.revision + 1 }
    await room.services.servers.save(next, { by: '900000000000000499', at: Date.now() })
  }

  test('added, looked at, renamed and removed are told from one another, each goes back, and one page is not all', async () => {
    await settle([shop('Alder', 'https://alder.example/'), shop('Birch', 'https://birch.example/')])
    const settings = await warden.settings()
    const [alder, birch] = settings.links
    await room.services.servers.save(
      {
        ...settings,
        revision: 2,
        links: [
          { ...alder!, reviewedAt: 2e12 },
          { ...birch!, title: 'Beech *b*' },
        ],
      },
      { by: '900000000000000499', at: Date.now() },
    )
    await room.services.servers.save(
      { ...settings, revision: 3, links: [{ ...birch!, title: 'Beech *b*' }] },
      { by: '900000000000000499', at: Date.now() },
    )
    const seen = await warden.press(await keep(), 'What was changed')
    expect(text(seen)).toMatch(/Link removed:\*\* alder\.example · Alder/)
    expect(text(seen)).toMatch(/Looked at and still good:\*\* alder\.example/)
    expect(text(seen)).toContain('Title of the link to birch.example:** Birch → Beech \\*b\\*')
    const back = await pressed(warden.person, seen, 'clk1.undo.3')
    expect(text(back)).toMatch(/Taken back/)
    expect((await warden.settings()).links.map(link => link.id)).toEqual(['alder', 'birch'])
  })

  test('moderators see and take back what is about links; settings stay for those who manage the server', async () => {
    await settle([], [keepers])
    const ilse = room.standIn.as('Ilse')
    await settle([shop('Alder', 'https://alder.example/')], [keepers])
    await warden.choose(await warden.open('language'), ['de'])
    const view = await pressed(ilse, messageOf(await ilse.run('buying')), 'view.links.1')
    const seen = await pressed(ilse, await pressed(ilse, view, 'Manage the links'), 'What was changed')
    expect(text(seen)).toContain('Alder')
    expect(text(seen)).not.toContain('Language')
    const id = encodeLinks({ is: 'undo', of: 3, revision: 3 })
    const forged = await ilse.click(await postButton(room.standIn, id), id)
    expect(text(messageOf(forged))).toMatch(/Only people who may manage this server/)
    expect((await warden.settings()).language).toBe('de')
    await pressed(ilse, seen, 'clk1.undo.2')
    expect((await warden.settings()).links).toEqual([])
    const wren = room.standIn.as('Wren')
    const history = encodeLinks({ is: 'history', page: 1 })
    expect(text(messageOf(await wren.click(await postButton(room.standIn, history), history)))).toMatch(/moderat/i)
  })
})
