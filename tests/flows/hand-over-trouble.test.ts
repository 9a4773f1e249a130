// Danger, and trouble of every kind, while a check is in other hands: nobody beside a cell is left waiting, no photograph left standing.
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import { sweepNotices } from '../../src/discord/check/hand-over/sweep-notices.ts'
import type { Services } from '../../src/discord/services.ts'
import type { Person } from '../../src/practice/people/person.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { samplePhoto } from '../photos/sample-photos.ts'
import { closeAll, correctLast, finalOf, messageOf, press, pressed, settled, unsureUntil, untouched } from './hands.ts'
import { useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const everybody = '900000000000000301'
const ids = { Wren: '900000000000000401', Ilse: '900000000000000402', Tomas: '900000000000000403' } as const
const { room, wren, ilse, tomas } = useRoom(() =>
  openRoom(
    services => ({
      ...services,
      posts: {
        ...services.posts,
        post: (...all) => (change.posts?.post ?? services.posts.post)(...all),
        redraw: (...all) => (change.posts?.redraw ?? services.posts.redraw)(...all),
      },
      photos: { clean: asked => (change.photos ?? services.photos).clean(asked) },
      notices: { ...services.notices, put: notice => (change.notices?.put ?? services.notices.put)(notice) },
    }),
    englishServer,
  ),
)
/** What a test changes of the services for itself. */
let change: {
  posts?: Partial<Services['posts']>
  photos?: Services['photos']
  notices?: Partial<Services['notices']>
} = {}
beforeAll(async () => {
  await seedPractice(room.services)
}, 60_000)
beforeEach(async () => {
  change = {}
  for (const person of [wren(), ilse(), tomas()]) await closeAll(person)
})

const busy = () => Promise.reject(Object.assign(new Error('reset'), { code: 'ECONNRESET' }))
const photo = { name: 'one.jpg', bytes: samplePhoto() }
async function fill(person: Person, form: Reply, fields: Parameters<Person['submit']>[1]): Promise<SeenMessage> {
  if (form.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(form)}`)
  return finalOf(await person.submit(form.modal, fields))
}
const own = async () => messageOf(await wren().run('check start', { depth: 'full' }, { channel: everybody }))
/** At the first question that a photograph can tell something of. */
const atRing = async () => unsureUntil(wren(), await own(), /insulating ring around/)
async function formFor(question: SeenMessage): Promise<Reply> {
  return press(wren(), await pressed(wren(), question, 'Ask or hand over'), 'Ask a helper')
}
const ask = async (question: SeenMessage, fields: Parameters<Person['submit']>[1] = { why: 'hm' }) =>
  fill(wren(), await formFor(question), fields)
async function latest(person: Person, channel: string, says: RegExp): Promise<SeenMessage> {
  await room.services.queue.idle()
  return person.sees(channel).findLast(one => !one.private && says.test(text(one))) as SeenMessage
}
const helpRequest = () => latest(tomas(), demoReportsChannel, /stuck on a question|dealt with/)
const panel = (person: Person) => latest(person, everybody, /A cell to check/)

describe('danger', () => {
  test('that whoever took the check finds is told to whoever started it, who may be beside the cell', async () => {
    await wren().run('check start', { depth: 'full', for: ids.Ilse }, { channel: everybody })
    const question = await pressed(ilse(), await panel(ilse()), 'Take it')
    expect(text(await pressed(ilse(), question, 'At least one'))).toMatch(
      /Drop the cell if you are holding it, get away now/,
    )
    const told = await latest(wren(), everybody, /has found danger/)
    expect(told.pinged.people).toEqual([ids.Wren])
    expect(text(told)).toMatch(/let go of it now; if it is on you, .* Get away from it.*emergency number/)
  })

  test('is never ruled out by a moderator who is not beside the cell', async () => {
    await ask(await own(), { why: 'it feels a bit warm' })
    const question = await pressed(tomas(), await helpRequest(), 'Answer for them')
    expect(text(question)).toMatch(/it feels a bit warm/)
    const given = buttons(question).map(one => [one.label.slice(4, 12), one.disabled])
    expect(given.slice(0, 3)).toEqual([
      ['None of ', true],
      ['Warm on ', false],
      ['At least', false],
    ])
    await pressed(tomas(), question, '.unsure')
    expect(text(await latest(wren(), everybody, /could not tell either/))).toMatch(/Treat the cell as unsafe/)
  })

  test('is not photographed, and whoever waits reads what to do when it comes', async () => {
    const form = await formFor(await own())
    expect(form.kind === 'modal' && form.modal.fields.map(one => one.customId)).toEqual(['why'])
    expect(text(await fill(wren(), form, { why: 'hm' }))).toMatch(/get away.*emergency number.*do not wait/)
    const waiting = messageOf(await ilse().run('check start', { depth: 'full', for: ids.Wren }, { channel: everybody }))
    expect(text(waiting)).toMatch(/get away.*emergency number/)
  })

  test('stays on the screen, though the check is offered from a menu that was still open', async () => {
    const hands = await pressed(wren(), await ask(await own()), 'Ask or hand over')
    await pressed(tomas(), await pressed(tomas(), await helpRequest(), 'Answer for them'), 'At least one')
    expect(text(await fill(wren(), await press(wren(), hands, 'Hand it over'), { why: 'x' }))).toMatch(
      /^## 🛑 Drop the cell if you are holding it, get away now/,
    )
    expect(text(messageOf(await wren().run('check resume')))).toMatch(
      /^## 🛑 Drop the cell if you are holding it, get away now/,
    )
  })

  test('can be said while photographs of an earlier question are still being cleaned', async () => {
    const form = await formFor(await atRing())
    if (form.kind !== 'modal') throw new Error('no form')
    const held = Promise.withResolvers<void>()
    change.photos = { clean: () => held.promise.then(() => ({ is: 'cleaned', photos: [] }) as const) }
    const asking = wren().submit(form.modal, { why: 'x', photos: [photo] })
    const resumed = messageOf(await wren().run('check resume'))
    expect(text(await pressed(wren(), resumed, 'Back'))).toMatch(/Safety.* · Label/)
    held.resolve()
    const reply = await asking
    await room.services.queue.idle()
    expect(reply.kind).not.toBe('silent')
    const [check] = await room.services.checks.heldBy(ids.Wren, room.services.now())
    expect(check?.custody?.helpRequest).toBeUndefined()
  })
})

describe('who is told', () => {
  test('that nobody was alerted, where no channel could show the question', async () => {
    change.posts = { post: async () => ({ is: 'forbidden' }) }
    expect(text(await ask(await own()))).toMatch(/nobody was alerted/)
  })

  test('whose check is taken over', async () => {
    await ask(await own())
    await fill(tomas(), await press(tomas(), await helpRequest(), 'Take the check over'), { why: 'x' })
    expect((await latest(wren(), everybody, /has taken over/)).pinged.people).toEqual([ids.Wren])
  })

  test('a moderator, that they must reach somebody themselves, where danger could not be told', async () => {
    await ask(await own())
    const question = await pressed(tomas(), await helpRequest(), 'Answer for them')
    change.posts = { post: async () => ({ is: 'forbidden' }) }
    expect(text(await settled(room, await pressed(tomas(), question, 'At least one')))).toMatch(
      /Contact .* another way, now.*must not touch the cell.*read the result/,
    )
  })
})

test('a check of a server is not offered from a direct message', async () => {
  await own()
  const there = messageOf(await wren().run('check resume', {}, { channel: 'direct' }))
  const hands = await pressed(wren(), there, 'Ask or hand over')
  expect(text(await pressed(wren(), hands, 'Hand it over'))).toMatch(/only in the server/)
})

test('words and photographs stay with the question they were written for', async () => {
  const form = await formFor(await own())
  await pressed(wren(), messageOf(await wren().run('check resume')), 'None of these')
  if (form.kind !== 'modal') throw new Error('no form')
  await wren().submit(form.modal, { why: 'it does not feel hot' })
  await room.services.queue.idle()
  expect(
    wren()
      .sees()
      .some(one => /Somebody else got there first/.test(text(one))),
  ).toBe(true)
  const [check] = await room.services.checks.heldBy(ids.Wren, room.services.now())
  expect(check?.custody?.helpRequest).toBeUndefined()
})

test('the menu opens, however long and however marked what people wrote', async () => {
  let now = await own()
  for (let i = 0; i < 5; i++) {
    await ask(now, { why: '*'.repeat(300) })
    await fill(tomas(), await press(tomas(), await helpRequest(), 'Send it back'), { why: '*'.repeat(300) })
    now = messageOf(await wren().run('check resume'))
  }
  expect(text(await pressed(wren(), now, 'Ask or hand over'))).toMatch(/Get help, or hand your check over/)
})

test('from a result without anything untold a helper is asked as the menu says', async () => {
  const begun = messageOf(await wren().run('check start', { depth: 'quick' }, { channel: everybody }))
  const now = await pressed(wren(), await pressed(wren(), begun, 'None of these'), 'Stop and show the result')
  expect(text(now)).toMatch(/^## Undecided/m)
  const menu = await pressed(wren(), now, 'Ask or hand over')
  expect(text(menu)).toMatch(
    /press “Change an answer” under the result, choose that question, and then “Ask or hand over”/,
  )
  const question = await correctLast(wren(), await pressed(wren(), menu, 'Back to the check'))
  const hands = await pressed(wren(), question, 'Ask or hand over')
  expect(buttons(hands).map(one => one.label)).toContain('Ask a helper')
})

test('whoever took a check and has their data deleted gives it back, without what they answered', async () => {
  await ilse().run('check start', { depth: 'full', for: ids.Wren }, { channel: everybody })
  await pressed(wren(), await pressed(wren(), await panel(wren()), 'Take it'), '.unsure')
  const sure = await pressed(wren(), messageOf(await wren().run('privacy')), 'Delete what is kept')
  await pressed(wren(), sure, 'Delete it now')
  expect(text(messageOf(await ilse().run('check resume')))).toMatch(untouched)
})

describe('photographs go', () => {
  const asked = async () => {
    await ask(await atRing(), { why: 'x', photos: [photo] })
    return helpRequest()
  }
  const stands = (id: string) =>
    tomas()
      .sees(demoReportsChannel)
      .find(one => one.id === id)
  const answer = async () => pressed(tomas(), await pressed(tomas(), await helpRequest(), 'Answer for them'), '.unsure')

  test('when the check is closed by its command', async () => {
    const { id } = await asked()
    await wren().run('check close')
    await room.services.queue.idle()
    await sweepNotices(room.services)
    expect(stands(id)?.attachments ?? []).toEqual([])
  })

  test.each([
    ['Discord was out of reach', busy],
    ['the bot might not change its message', async () => 'forbidden' as const],
  ])('with the next sweep, though %s when the question was answered', async (_why, redraw) => {
    const { id } = await asked()
    change.posts = { redraw }
    await answer()
    await room.services.queue.idle()
    expect(stands(id)?.attachments).toHaveLength(1)
    change = {}
    await sweepNotices(room.services)
    expect(stands(id)).toBeUndefined()
  })

  test('at once, where it could not be written down that they stand there', async () => {
    change.notices = { put: busy }
    await ask(await atRing(), { why: 'x', photos: [photo] })
    const now = await helpRequest()
    expect(now?.attachments ?? []).toEqual([])
  })
})
