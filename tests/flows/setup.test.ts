// Setting a server up: walked through by who may manage it, one change at a time, and safe to run again.
import { describe, expect, test } from 'vitest'
import {
  demoBotRole,
  demoForum,
  demoReportsChannel,
  demoServer,
  demoWardens,
} from '../../src/bin/practice-room/demo-server.ts'
import { encodeSetup } from '../../src/custom-ids/setup-id.ts'
import { menus, text } from '../../src/practice/seen.ts'
import { caution, messageOf, postPart, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
const { room } = useFreshRoom(inEnglish)
const warden = wardenOf(room)

describe('the overview', () => {
  test('says of a new server that nothing is recorded, posted or offered, and what each part is for', async () => {
    const seen = text(await warden.overview())
    expect(seen).toMatch(/Reports channel:\*\* none/)
    expect(seen).toMatch(/What is recorded:\*\* nothing/)
    expect(seen).toMatch(/How long it is kept:\*\* 104 weeks/)
    expect(seen).toMatch(/Offers in forums:\*\* none/)
    expect(seen).toMatch(caution)
  })

  test('is private, and leads through every part and back', async () => {
    let message = await warden.overview()
    expect(message.onlyFor).toBe(warden.person.id)
    message = await pressed(warden.person, message, 'Step by step')
    const titles = [
      'Reports channel',
      'Review channel',
      'Moderators',
      'Helpers',
      'Reminders',
      'Language',
      'What is recorded',
      'How long it is kept',
      'Weekly note',
    ]
    for (const [i, title] of titles.entries()) {
      expect(text(message)).toContain(`### ${title} (${i + 1} of 10)`)
      message = await pressed(warden.person, message, 'Next: ')
    }
    expect(text(message)).toMatch(/Offers in forums \(10 of 10\)/)
    expect(text(await pressed(warden.person, message, 'Overview'))).toMatch(/How this server is set up/)
    expect((await warden.settings()).revision).toBe(0)
  })

  test('has a part for reminders: after how long, and which role is pinged, if any', async () => {
    const part = await warden.open('reminders')
    expect(text(part)).toMatch(/Now:\*\* none/)
    const six = await warden.choose(part, ['6'])
    expect(text(six)).toMatch(/after 6 hours; nobody is pinged/)
    const chosen = await warden.anyMenu(6, { is: 'ping', roles: 'chosen' }, [demoWardens])
    expect(text(chosen)).toMatch(/pinged: <@&900000000000000201>/)
    const everybody = await warden.anyMenu(6, { is: 'ping', roles: 'chosen' }, [server])
    expect(text(everybody)).toMatch(/everybody is never pinged/)
    // Seen again: nothing was chosen where it would be said, and nobody could be told.
    expect(text(await warden.open('reminders'))).toMatch(/There is no review channel/)
    expect(text(await warden.press(chosen, 'Ping nobody'))).toMatch(/after 6 hours; nobody is pinged/)
    expect((await warden.settings()).reminders).toEqual({ hours: 6, role: null })
  })

  test('is shown to nobody who may only moderate, by command or by a button', async () => {
    await room.services.servers.save({
      ...(await warden.settings()),
      revision: 1,
      moderatorRoles: ['900000000000000202'],
    })
    const ilse = room.standIn.as('Ilse')
    expect(ilse.commands().map(one => one.path)).not.toContain('setup')
    const refused = messageOf(await ilse.run('setup', {}, { anyway: true }))
    expect(text(refused)).toMatch(/moderator role alone is not enough/)
    const custom_id = encodeSetup({ revision: 1, act: { is: 'outcomes', on: true } })
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id })
    expect(text(messageOf(await ilse.click(posted, custom_id)))).toMatch(/manage this server/)
    expect((await warden.settings()).outcomes).toBe(false)
  })

  test('says what no longer works: a channel the bot lost, a role that is gone, a tag that is gone', async () => {
    const tag = '900000000000000999'
    await room.services.servers.save({
      ...(await warden.settings()),
      revision: 1,
      reportsChannel: demoReportsChannel,
      moderatorRoles: [demoWardens, '900000000000000202'],
      forumOffers: [{ forum: demoForum, tags: [tag] }],
    })
    room.standIn.changeRights(demoReportsChannel, { forbid: [{ who: server, what: ['view'] }] })
    room.standIn.removeRole('900000000000000202')
    const seen = text(await warden.overview())
    expect(seen).toMatch(/may not post in <#\d+>: give it \*\*View Channel\*\* there/)
    expect(seen).toContain('1 role that is gone')
    expect(seen).toMatch(/its tags are gone/)
  })
})

describe('moderator roles', () => {
  test('are chosen, shown, and taken away', async () => {
    const after = await warden.choose(await warden.open('moderators'), [demoWardens, '900000000000000202'])
    expect(text(after)).toContain(`<@&${demoWardens}> and <@&900000000000000202>`)
    expect(after.pinged).toEqual({ people: [], roles: [], everyone: false })
    expect(menus(after)[0]?.chosen).toHaveLength(2)
    await warden.press(after, 'No roles')
    expect((await warden.settings()).moderatorRoles).toEqual([])
  })

  test('cannot be the one everybody has, nor a bot’s', async () => {
    expect(text(await warden.choose(await warden.open('moderators'), [server]))).toMatch(
      /everybody would be a moderator/,
    )
    expect(text(await warden.choose(await warden.open('moderators'), [demoBotRole]))).toMatch(/belongs to a bot/)
    expect((await warden.settings()).revision).toBe(0)
  })

  test('one deleted while it is chosen is said to be gone', async () => {
    const message = await warden.open('moderators')
    const { load } = room.services.servers
    Object.assign(room.services.servers, {
      load: async (id: string) => {
        const found = await load(id)
        if (demoServer.roles.length > 0) room.standIn.removeRole('900000000000000202')
        return found
      },
    })
    expect(text(await warden.choose(message, ['900000000000000202', demoWardens]))).toMatch(
      /One of these roles is gone/,
    )
    Object.assign(room.services.servers, { load })
    expect((await warden.settings()).moderatorRoles).toEqual([])
  })
})

describe('what is recorded', () => {
  test('is said plainly before it is turned on, with how long', async () => {
    const seen = text(await warden.open('recording'))
    for (const said of [
      /\*\*Never\*\* a name, an id, a text, a file, a photo or a time/,
      /104 weeks/,
      /at least five people/,
      /can say no/,
    ])
      expect(seen).toMatch(said)
  })

  test('is turned on, pooled, and turned off after what happens to it was said', async () => {
    let message = await pressed(warden.person, await warden.open('recording'), 'Record finished checks')
    expect(await warden.settings()).toMatchObject({ outcomes: true, pooling: false })
    message = await pressed(warden.person, message, 'Add our numbers')
    expect(await warden.settings()).toMatchObject({ outcomes: true, pooling: true })
    message = await pressed(warden.person, message, 'Stop recording…')
    expect(text(message)).toMatch(/stays, without names, until it is 104 weeks old, and is then deleted/)
    expect((await warden.settings()).outcomes).toBe(true)
    message = await pressed(warden.person, await pressed(warden.person, message, 'Leave it on'), 'Stop recording…')
    message = await pressed(warden.person, message, '.outcomes.off')
    expect(await warden.settings()).toMatchObject({ outcomes: false, pooling: false })
    expect(text(message)).toMatch(/Now:\*\* nothing/)
  })

  test('cannot be pooled while nothing is recorded', async () => {
    const custom_id = encodeSetup({ revision: 0, act: { is: 'pooling', on: true } })
    const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id })
    expect(text(messageOf(await warden.person.click(posted, custom_id)))).toMatch(/nothing to pool/)
  })

  test.each([
    ['25', /between 26 and 260/],
    ['261', /between 26 and 260/],
    ['0', /between 26 and 260/],
    ['-30', /not a whole number/],
    ['1e2', /not a whole number/],
    ['a few', /not a whole number/],
  ])('weeks: %s is refused and changes nothing', async (weeks, said) => {
    const form = await press(warden.person, await warden.open('keeping'), 'Change the number')
    if (form.kind !== 'modal') throw new Error('no form')
    expect(text(messageOf(await warden.person.submit(form.modal, { weeks })))).toMatch(said)
    expect(await warden.settings()).toMatchObject({ keepWeeks: 104, revision: 0 })
  })

  const typeWeeks = async (weeks: string) => {
    const form = await press(warden.person, await warden.open('keeping'), 'Change the number')
    if (form.kind !== 'modal') throw new Error('no form')
    return messageOf(await warden.person.submit(form.modal, { weeks }))
  }

  test('weeks: more are taken at once, and fewer only once it was said what they delete', async () => {
    expect(text(await typeWeeks(' 156 '))).toMatch(/Now:\*\* 156 weeks/)
    const asked = await typeWeeks('52')
    expect(text(asked)).toMatch(/older are then deleted .* nobody can bring them back/)
    expect((await warden.settings()).keepWeeks).toBe(156)
    expect(text(await pressed(warden.person, asked, 'Leave it as it is'))).toMatch(/Now:\*\* 156 weeks/)
    const sure = await pressed(warden.person, await typeWeeks('52'), 'Delete what is older')
    expect(text(sure)).toMatch(/Now:\*\* 52 weeks/)
    expect((await warden.settings()).keepWeeks).toBe(52)
  })
})

describe('the language', () => {
  test('is chosen, or left to what the server tells Discord, which is remembered', async () => {
    expect(text(await warden.choose(await warden.open('language'), ['de']))).toMatch(/Now:\*\* German/)
    expect(text(await warden.choose(await warden.open('language'), ['discord']))).toMatch(
      /set for this server in Discord, American English/,
    )
    expect(await warden.settings()).toMatchObject({ language: null, discordLanguage: 'en-US' })
  })
})

describe('the weekly note', () => {
  test('is turned on and off, and says where it cannot be posted', async () => {
    const on = await pressed(warden.person, await warden.open('note'), 'Post one a week')
    expect(text(on)).toMatch(/Now:\*\* one a week/)
    expect(text(await warden.overview())).toMatch(/There is no reports channel, so it is posted nowhere/)
    await warden.choose(await warden.open('reports'), [demoReportsChannel])
    expect(text(await warden.overview())).not.toMatch(/posted nowhere/)
    await pressed(warden.person, await warden.open('note'), 'No weekly note')
    expect((await warden.settings()).weeklyNote).toBe(false)
  })
})

describe('two at once', () => {
  test('the second is told kindly how it stands, and has changed nothing', async () => {
    const [one, two] = [await warden.open('recording'), await warden.open('language')]
    await warden.choose(two, ['de'])
    const late = await pressed(warden.person, one, 'Record finished checks')
    expect(text(late)).toMatch(/Somebody else got there first/)
    expect(await warden.settings()).toMatchObject({ revision: 1, outcomes: false, language: 'de' })
    // Pressed on what stands now, it is done.
    await pressed(warden.person, late, 'Record finished checks')
    expect((await warden.settings()).outcomes).toBe(true)
  })

  test('in two processes in the same moment: one change, one kind word', async () => {
    await room.another()
    const messages = await Promise.all([warden.open('recording'), warden.open('recording')])
    const replies = await Promise.all(messages.map(one => press(warden.person, one, 'Record finished checks')))
    expect(
      replies.map(one => messageOf(one)).filter(one => /Somebody else got there first/.test(text(one))),
    ).toHaveLength(1)
    expect((await warden.settings()).revision).toBe(1)
  })

  test('a click that two processes are given counts once, and is never called somebody else’s', async () => {
    await room.another()
    room.standIn.faults.deliverTwice(true)
    for (const label of ['Record finished checks', 'Add our numbers', 'Stop pooling']) {
      const reply = await press(warden.person, await warden.open('recording'), label)
      expect(text(messageOf(reply))).not.toMatch(/Somebody else got there first/)
    }
    await room.services.queue.idle()
    expect((await warden.settings()).revision).toBe(3)
  })
})
