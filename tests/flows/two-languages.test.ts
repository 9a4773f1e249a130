// What one person sees is in their language, what everybody sees in the server's; a language there are no words in says so once.
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import type { Scenario } from '../../src/practice/scenario.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { sayIn } from '../../src/words/say.ts'
import { closeAll, messageOf, press, pressed, startCheck } from './hands.ts'
import { openRoom, type TestRoom } from './open-room.ts'

const everybody = '900000000000000301'
const [german, spanish, english] = ['de', 'es', 'en'].map(sayIn) as [
  ReturnType<typeof sayIn>,
  ReturnType<typeof sayIn>,
  ReturnType<typeof sayIn>,
]
const speaking = (home: string, screens: Readonly<Record<string, string>>): Scenario => ({
  ...demoServer,
  server: { ...demoServer.server, locale: home },
  people: demoServer.people.map(person => ({ ...person, locale: screens[person.name] ?? person.locale })),
})

describe.each([
  { home: 'de', chosen: null, posted: german, screen: 'es-ES', own: spanish },
  { home: 'en-US', chosen: 'es', posted: spanish, screen: 'de', own: german },
])(
  'a server of $home that has chosen $chosen, a moderator whose screen is in $screen',
  ({ home, chosen, posted, screen, own }) => {
    let room: TestRoom
    const tomas = () => room.standIn.as('Tomas')
    const open = (): SeenMessage => {
      const [first] = tomas()
        .sees(demoReportsChannel)
        .filter(one => buttons(one).some(seen => seen.customId?.endsWith('.warn')))
      if (!first) throw new Error('nothing is open')
      return first
    }
    beforeAll(async () => {
      room = await openRoom(undefined, speaking(home, { Tomas: screen }))
      await seedPractice(room.services)
      const before = await room.services.servers.load(demoServer.server.id)
      await room.services.servers.save({
        ...before,
        language: chosen,
        discordLanguage: home,
        revision: before.revision + 1,
      })
      await lookForWork({ ...room.job, services: room.services })
    }, 60_000)
    afterAll(() => room.close())

    test('findings are posted in the server’s language, and stay in it whoever decides', async () => {
      expect(text(open())).toContain(posted('finding.care'))
      const form = await press(tomas(), open(), '.watch')
      if (form.kind !== 'modal') throw new Error('no form')
      const off = messageOf(await tomas().submit(form.modal, { weeks: ['4'] }))
      expect(text(off)).toContain(posted('finding.care'))
      expect(text(off)).not.toContain(own('finding.care'))
    })

    test('a form is asked in the moderator’s language, the warning in it drafted and posted in the server’s', async () => {
      const form = await press(tomas(), open(), '.warn')
      if (form.kind !== 'modal') throw new Error('no form')
      expect(form.modal.title).toBe(own('finding.warn'))
      expect(JSON.stringify(form.modal)).toContain(posted('warning.draft', { what: '|' }).split('|')[0])
      await tomas().submit(form.modal, { warning: 'x', channel: [everybody] })
      const warning = room.standIn.messages(everybody).at(-1) as SeenMessage
      expect(text(warning)).toContain(posted('warning.title'))
      expect(text(warning)).toContain(posted('caution.full'))
    })

    test('what only the moderator sees is in their language', async () => {
      expect(text(messageOf(await tomas().run('trends')))).toContain(own('trends.fives'))
      expect(text(await startCheck(tomas()))).toContain(own('caution.line'))
      await closeAll(tomas())
    })
  },
)

describe('a language there are no words in', () => {
  let room: TestRoom
  const wren = () => room.standIn.as('Wren')
  const note = english('language.missing', { language: 'French', others: 'German and Spanish' })
  beforeAll(async () => {
    room = await openRoom(undefined, speaking('fr', { Wren: 'fr', Odalys: 'pt-BR', Ilse: 'de' }))
  })
  afterAll(() => room.close())
  afterEach(() => closeAll(wren()))

  test('gets English, and is told so where a check begins and nowhere after', async () => {
    const first = await startCheck(wren())
    expect(text(first)).toContain(note)
    expect(text(first)).toContain(english('caution.line'))
    expect(text(first)).not.toContain('[en]')
    expect(text(await pressed(wren(), first, '.unsure'))).not.toContain(note)
  })

  test('is told so in /privacy, by its name', async () => {
    expect(text(messageOf(await wren().run('privacy')))).toContain(note)
    const brazilian = messageOf(await room.standIn.as('Odalys').run('privacy'))
    expect(text(brazilian)).toContain(
      english('language.missing', { language: 'Portuguese', others: 'German and Spanish' }),
    )
  })

  test('nobody whose language is spoken is told anything of the kind', async () => {
    const said = text(await startCheck(room.standIn.as('Ilse')))
    expect(said).not.toContain(german('language.missing', { language: 'Deutsch', others: 'Spanisch' }).slice(0, 12))
    expect(said).not.toContain('so you see English')
    await closeAll(room.standIn.as('Ilse'))
  })
})
