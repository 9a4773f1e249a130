// A server's settings as a file, through the real client: given away, taken in after the difference was seen, and refused in a sentence.
import { expect, test } from 'vitest'
import { demoForum, demoReportsChannel, demoServer, demoWardens } from '../../src/bin/practice-room/demo-server.ts'
import { encodeSetup } from '../../src/custom-ids/setup-id.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { settingsFileBytes } from '../../src/server/exchange.ts'
import { caution, finalOf, messageOf, postButton, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { wardenOf } from './setup-hands.ts'

const server = demoServer.server.id
const { room, wren, ilse } = useFreshRoom(inEnglish)
const warden = wardenOf(room)

const fileOf = (content: unknown) => [
  { name: 'settings.json', bytes: Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)) },
]
async function send(content: unknown, person = warden.person): Promise<SeenMessage> {
  const form = await press(person, await warden.overview(), 'Import from a file')
  if (form.kind !== 'modal') throw new Error('no form')
  return finalOf(await person.submit(form.modal, content === undefined ? {} : { file: fileOf(content) }))
}

test('what is given away, taken in after it was changed, is shown as a difference, done by a press, and taken back', async () => {
  await warden.choose(await warden.open('reports'), [demoReportsChannel])
  await warden.choose(await warden.open('language'), ['de'])
  const given = await pressed(warden.person, await warden.overview(), 'Export as a file')
  expect(text(given)).toMatch(/but of no person/)
  const content = await (await fetch(given.attachments[0]?.url ?? '')).text()
  expect(content).not.toContain(warden.person.id)
  await warden.press(await warden.open('reports'), 'No channel')
  await warden.choose(await warden.open('language'), ['es'])
  const seen = await send(content)
  expect(text(seen)).toContain(`**Reports channel:** none → <#${demoReportsChannel}>`)
  expect(text(seen)).toContain('**Language:** Spanish → German')
  expect(text(seen)).toMatch(/Nothing is changed yet/)
  expect(text(seen)).toMatch(caution)
  expect(await warden.settings()).toMatchObject({ revision: 4, language: 'es', reportsChannel: null })
  expect(text(await warden.press(seen, 'Make these changes'))).toMatch(/This is how it is now/)
  expect(await warden.settings()).toMatchObject({ revision: 5, language: 'de', reportsChannel: demoReportsChannel })
  const history = await warden.press(await warden.overview(), 'What was changed')
  await pressed(warden.person, history, '.undo.5')
  expect(await warden.settings()).toMatchObject({ language: 'es', reportsChannel: null })
  expect(text(await send(content))).not.toMatch(/comes from another server/)
})

test('a file of another server: its channels and roles are told and left out, the rest is taken', async () => {
  const foreign = '911111111111111111'
  const seen = await send({
    'cellwary-settings': 1,
    server: '911111111111111110',
    settings: {
      reportsChannel: foreign,
      moderatorRoles: [foreign, demoWardens],
      helperRoles: [foreign],
      language: 'de',
    },
    links: [
      { url: 'https://quayside.example/', title: 'Quayside *cells*' },
      { url: 'http://plain.example/', title: 'Plain' },
    ],
  })
  expect(text(seen)).toMatch(/comes from another server/)
  expect(text(seen)).toMatch(/Reports channel:\*\* it is not on this server/)
  expect(text(seen)).toMatch(/Helpers:\*\* it is not on this server/)
  expect(text(seen)).toMatch(/Link “Plain”:\*\* Only https/)
  expect(text(seen)).toContain('quayside.example · Quayside \\*cells\\*')
  expect(seen.pinged).toEqual({ everyone: false, people: [], roles: [] })
  await warden.press(seen, 'Make these changes')
  expect(await warden.settings()).toMatchObject({
    ...{ reportsChannel: null, moderatorRoles: [demoWardens], helperRoles: [], language: 'de' },
    links: [{ url: 'https://quayside.example/' }],
  })
})

test('offers in forums: those that are here are taken, of the others it is said; a file of the first format had one forum with one tag', async () => {
  const foreign = '911111111111111111'
  const [tag = ''] =
    menus(await warden.choose(await warden.open('offers'), [demoForum]))[0]?.options.map(one => one.value) ?? []
  const old = await send({ 'cellwary-settings': 1, settings: { forumOffers: { forum: demoForum, tag } } })
  await warden.press(old, 'Make these changes')
  expect((await warden.settings()).forumOffers).toEqual([{ forum: demoForum, tags: [tag] }])
  const none = await send({ 'cellwary-settings': 1, settings: { forumOffers: null } })
  await warden.press(none, 'Make these changes')
  expect((await warden.settings()).forumOffers).toEqual([])
  const seen = await send({
    'cellwary-settings': 2,
    settings: {
      forumOffers: [
        { forum: demoForum, tags: [tag, foreign] },
        { forum: foreign, tags: [foreign] },
      ],
    },
  })
  expect(text(seen)).toMatch(
    /Offers in forums:\*\* That tag is gone[\s\S]*Offers in forums:\*\* it is not on this server/,
  )
  await warden.press(seen, 'Make these changes')
  expect((await warden.settings()).forumOffers).toEqual([{ forum: demoForum, tags: [tag] }])
})

test('what it would delete is said above the button', async () => {
  await pressed(warden.person, await warden.open('recording'), 'Record finished checks')
  const seen = await send({ 'cellwary-settings': 1, settings: { keepWeeks: 30, outcomes: false } })
  expect(text(seen)).toMatch(/older than 30 weeks are deleted/)
  expect(text(seen)).toMatch(/nothing more is recorded of any check/)
})

test.each([
  ['nothing', undefined, /No file came with it/],
  ['too much', 'x'.repeat(settingsFileBytes + 1), /more than 32 kB/],
  ['no JSON', '{"cellwary', /cannot be read/],
  ['something else', { hello: '@everyone' }, /not a file of settings/],
  ['a newer form', { 'cellwary-settings': 7 }, /has format 7, and this version of the bot knows only format 2/],
  ['markup as a name', { 'cellwary-settings': 1, '**@everyone**': 1 }, /wrong in the file at “\\\*\\\*\\@everyone/],
])('%s is refused in a sentence and changes nothing', async (_, content, said) => {
  const shown = await send(content)
  expect(text(shown)).toMatch(said)
  expect(shown.pinged.everyone).toBe(false)
  expect((await warden.settings()).revision).toBe(0)
})

test('what a file has as it is here already leaves nothing to press', async () => {
  const seen = await send({ 'cellwary-settings': 1, settings: { outcomes: false } })
  expect(text(seen)).toMatch(/Nothing: everything is here already/)
  expect(buttons(seen).map(one => one.label)).not.toContain('Make these changes')
})

test('two at once: whoever presses after somebody has changed something is told; nobody else’s file lands, nor without the right', async () => {
  const seen = await send({ 'cellwary-settings': 1, settings: { language: 'de' } })
  await warden.choose(await warden.open('language'), ['es'])
  expect(text(await warden.press(seen, 'Make these changes'))).toMatch(/Somebody else got there first/)
  const file = { server: null, fields: { language: 'de' }, links: [] }
  const theirs = { is: 'settings', person: wren().id, server, file }
  const draft = await room.services.drafts.keep(theirs, 60_000)
  const id = encodeSetup({ revision: 1, act: { is: 'take-in', draft } })
  const posted = await postButton(room.standIn, id)
  expect(text(messageOf(await ilse().click(posted, id)))).toMatch(/may manage this server/)
  expect(text(await finalOf(await warden.person.click(posted, id)))).toMatch(/not kept|forgotten|again/i)
  const exporting = encodeSetup({ revision: 1, act: { is: 'export' } })
  const forged = messageOf(await ilse().click(await postButton(room.standIn, exporting), exporting))
  expect(forged.attachments).toEqual([])
  expect(await room.services.servers.load(server)).toMatchObject({ language: 'es', revision: 1 })
})
