// Handing a check over through the real client: panels, who takes it, what others see, and what goes wrong on the way.
import { beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { seedPractice } from '../../src/bin/practice-room/seed-practice.ts'
import type { Person } from '../../src/practice/people/person.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { caution, closeAll, finalOf, idOf, messageOf, postButton, press, pressed, settled, untouched } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'
import { englishServer, openRoom } from './open-room.ts'

const everybody = '900000000000000301'
const server = demoServer.server.id
const keepers = '900000000000000202'
const ids = { Wren: '900000000000000401', Ilse: '900000000000000402', Tomas: '900000000000000403' } as const

const { room } = useRoom(inEnglish)
const as = (name: 'Wren' | 'Ilse' | 'Tomas' | 'Odalys') => room.standIn.as(name)
beforeAll(async () => {
  await seedPractice(room.services)
}, 60_000)
beforeEach(async () => {
  for (const name of ['Wren', 'Ilse', 'Tomas', 'Odalys'] as const) await closeAll(as(name))
})

async function panelOf(person: Person): Promise<SeenMessage> {
  await room.services.queue.idle()
  return person.sees(everybody).findLast(one => /A cell to check/.test(text(one))) as SeenMessage
}
/** What is told in channels comes after the answer: it is there once the check's queue is empty. */
async function wordOf(person: Person): Promise<SeenMessage> {
  await room.services.queue.idle()
  return person
    .sees(everybody)
    .findLast(one => /Your check goes on|with you again|to a result|found danger/.test(text(one))) as SeenMessage
}
async function fill(person: Person, form: Reply, fields: Parameters<Person['submit']>[1]): Promise<SeenMessage> {
  if (form.kind !== 'modal') throw new Error(`no form but ${JSON.stringify(form)}`)
  return finalOf(await person.submit(form.modal, fields))
}
const offered = async (person: Person, options: Record<string, string | boolean>): Promise<SeenMessage> =>
  messageOf(await person.run('check start', { depth: 'full', ...options }, { channel: everybody }))

/** "Can't tell", on a message as it stood before it was redrawn. */
const oldPress = async (person: Person, message: SeenMessage): Promise<SeenMessage> =>
  messageOf(await person.click(message, idOf(message, '.unsure'), { stale: true }))

describe('offering a check', () => {
  test('to a person: they are told, they take it, and only they see the questions', async () => {
    const own = await offered(as('Tomas'), { for: ids.Wren })
    expect(text(own)).toMatch(/offered to <@900000000000000401>/)
    const panel = await panelOf(as('Ilse'))
    expect(panel.pinged.people).toEqual([ids.Wren])
    expect(text(panel)).toMatch(caution)
    expect(text(await pressed(as('Ilse'), panel, 'Take it'))).toMatch(/meant for somebody else/)
    const question = await press(as('Wren'), panel, 'Take it')
    expect(question.kind === 'message' && question.private).toBe(true)
    expect(text(messageOf(question))).toMatch(untouched)
    expect(text(await panelOf(as('Ilse')))).toMatch(/<@900000000000000401> has the check/)
    expect(text(await pressed(as('Tomas'), own, 'Take it back'))).toMatch(/Only the person who has this check/)
  })

  test('to a role, and to whoever takes it: two at the same moment, one has it, the other is told kindly', async () => {
    await offered(as('Tomas'), { for: keepers })
    expect((await panelOf(as('Wren'))).pinged).toEqual({ people: [], roles: [], everyone: false })
    expect(text(await pressed(as('Wren'), await panelOf(as('Wren')), 'Take it'))).toMatch(/meant for somebody else/)
    expect(text(await pressed(as('Ilse'), await panelOf(as('Ilse')), 'Take it'))).toMatch(untouched)

    await offered(as('Tomas'), { anyone: true })
    const panel = await panelOf(as('Wren'))
    const both = await Promise.all([press(as('Wren'), panel, 'Take it'), press(as('Odalys'), panel, 'Take it')])
    expect(both.map(messageOf).filter(one => /not offered any more/.test(text(one)))).toHaveLength(1)
    expect(both.map(messageOf).filter(one => untouched.test(text(one)))).toHaveLength(1)
  })

  test('two processes that get the same press twice hand it over once', async () => {
    const close = await room.another()
    await offered(as('Tomas'), { anyone: true })
    const replies = await Promise.all([
      press(as('Wren'), await panelOf(as('Wren')), 'Take it'),
      press(as('Odalys'), await panelOf(as('Odalys')), 'Take it'),
    ])
    const winners = replies.map(messageOf).filter(one => untouched.test(text(one)))
    expect(winners).toHaveLength(1)
    await close()
  })

  test('declined with a reason, and taken back', async () => {
    const own = await offered(as('Tomas'), { for: ids.Wren })
    const panel = await fill(as('Wren'), await press(as('Wren'), await panelOf(as('Wren')), 'No, thanks'), {
      why: 'no @time',
    })
    expect(text(panel)).toMatch(/not offered any more/)
    const progress = await pressed(as('Tomas'), await panelOf(as('Tomas')), 'How far')
    expect(text(progress)).toMatch(/did not want it \(“no \\@time”\)/)
    // The starter's own message is an old one by now: it says so, and the check goes on.
    expect(text(await pressed(as('Tomas'), own, 'Take it back'))).toMatch(/not offered any more/)
    await offered(as('Tomas'), { anyone: true })
    const mine = as('Tomas')
      .sees()
      .findLast(one => /Waiting for somebody/.test(text(one))) as SeenMessage
    expect(text(await pressed(as('Tomas'), mine, 'Take it back'))).toMatch(untouched)
    expect(text(await pressed(as('Wren'), await panelOf(as('Wren')), 'How far'))).toMatch(
      /Only people who are involved/,
    )
  })

  test.each([
    ['oneself', { for: ids.Tomas }, /You have this check already/],
    ['everybody', { for: server }, /to everyone at once/],
    ['somebody and anybody', { for: ids.Wren, anyone: true }, /not both/],
  ])('not to %s', async (_whom, options, says) => {
    expect(text(await offered(as('Tomas'), options))).toMatch(says)
    expect(await room.services.checks.heldBy(ids.Tomas, room.services.now())).toEqual([])
  })

  test('where the bot may not post, the check stays with its starter', async () => {
    const quiet = await openRoom(
      services => ({ ...services, posts: { ...services.posts, post: async () => ({ is: 'forbidden' }) } }),
      englishServer,
    )
    const wren = quiet.standIn.as('Wren')
    const own = messageOf(await wren.run('check start', { depth: 'full', anyone: true }))
    const after = await settled(quiet, own)
    expect(text(after)).toMatch(/The bot may not post in this channel/)
    expect(text(await pressed(wren, after, '.unsure'))).toMatch(/1 answered/)
    await quiet.close()
  })

  test('a panel that was deleted is no loss: the list shows what is offered', async () => {
    await offered(as('Tomas'), { for: ids.Wren })
    await room.services.queue.idle()
    const { channel, message } = (await room.services.notices.of((await heldBy('Tomas')) ?? ''))[0] ?? {
      channel: '',
      message: '',
    }
    await room.services.posts.remove({ channel, message })
    const list = messageOf(await as('Wren').run('check list'))
    expect(text(list)).toMatch(/Offered to you/)
    const progress = await pressed(as('Wren'), list, 'See 1')
    expect(text(await pressed(as('Wren'), progress, 'Take it'))).toMatch(untouched)
  })
})

const heldBy = async (name: keyof typeof ids) =>
  (await room.services.checks.heldBy(ids[name], room.services.now())).find(one => one.custody)?.id

/** Wren with a check that Tomas started, at its first question. */
async function withWren(): Promise<SeenMessage> {
  await offered(as('Tomas'), { for: ids.Wren })
  return pressed(as('Wren'), await panelOf(as('Wren')), 'Take it')
}

describe('while somebody else answers', () => {
  test('the starter sees how far it is, and no answers unless they are shared', async () => {
    let question = await withWren()
    question = await pressed(as('Wren'), question, '.unsure')
    const before = await pressed(as('Tomas'), await panelOf(as('Tomas')), 'How far')
    expect(text(before)).toMatch(/1 question answered/)
    expect(text(before)).not.toMatch(/Shared answers/)
    const hands = await pressed(as('Wren'), question, 'Ask or hand over')
    const sharing = await pressed(as('Wren'), hands, 'Show my answers to the person who started it')
    expect(text(sharing)).toMatch(/can see your answers/)
    expect(text(await pressed(as('Tomas'), await panelOf(as('Tomas')), 'How far'))).toMatch(/Shared answers/)
    await pressed(as('Wren'), sharing, 'Keep my answers private')
    expect(text(await pressed(as('Tomas'), await panelOf(as('Tomas')), 'How far'))).not.toMatch(/Shared answers/)
  })

  test('given back with a reason: the starter is told in the channel, and goes on where it stood', async () => {
    const question = await pressed(as('Wren'), await withWren(), '.unsure')
    const hands = await pressed(as('Wren'), question, 'Ask or hand over')
    await fill(as('Wren'), await press(as('Wren'), hands, 'Give it back'), { why: 'no calliper' })
    const word = await wordOf(as('Tomas'))
    expect(word.pinged.people).toEqual([ids.Tomas])
    const reply = await press(as('Tomas'), word, 'Continue')
    expect(reply.kind === 'message' && reply.private).toBe(true)
    expect(text(messageOf(reply))).toMatch(/1 answered/)
    expect(text(await oldPress(as('Wren'), question))).toMatch(/Only the person who has this check/)
  })

  test('handed on to whoever takes it, from the form', async () => {
    const question = await withWren()
    const hands = await pressed(as('Wren'), question, 'Ask or hand over')
    const waiting = await fill(as('Wren'), await press(as('Wren'), hands, 'Hand it over'), { why: 'I have no scale' })
    expect(text(waiting)).toMatch(/Waiting for somebody/)
    expect(text(await panelOf(as('Ilse')))).toMatch(/Why: I have no scale/)
    expect(text(await pressed(as('Ilse'), await panelOf(as('Ilse')), 'Take it'))).toMatch(untouched)
    expect(text(await pressed(as('Wren'), waiting, 'Take it back'))).toMatch(/Only the person who has this check/)
  })

  test('nobody holds more open checks than they may start', async () => {
    for (let i = 0; i < 10; i++) await as('Wren').run('check start', { depth: 'full' })
    await offered(as('Tomas'), { for: ids.Wren })
    expect(text(await pressed(as('Wren'), await panelOf(as('Wren')), 'Take it'))).toMatch(/10 checks open/)
  })

  test('a check outside a server has nobody to be handed to', async () => {
    const own = messageOf(await as('Wren').run('check start', { depth: 'full' }, { channel: 'direct' }))
    expect(buttons(own).map(one => one.label)).not.toContain('Ask or hand over')
    const refused = messageOf(
      await as('Wren').run('check start', { depth: 'full', anyone: true }, { channel: 'direct' }),
    )
    expect(text(refused)).toMatch(/only in the server/)
  })
})

describe('asking a moderator', () => {
  async function stuck(words = 'is that *smoke*?'): Promise<SeenMessage> {
    const hands = await pressed(as('Wren'), await withWren(), 'Ask or hand over')
    return fill(as('Wren'), await press(as('Wren'), hands, 'Ask a helper'), { why: words })
  }
  const helpRequest = async (): Promise<SeenMessage> => {
    await room.services.queue.idle()
    return as('Tomas')
      .sees(demoReportsChannel)
      .findLast(one => !one.private && /stuck on a question|dealt with/.test(text(one))) as SeenMessage
  }

  test('who answers for them: marked as theirs, and whoever asked is told to go on', async () => {
    expect(text(await stuck())).toMatch(/is waiting for a helper/)
    expect(text(await helpRequest())).toMatch(/is that \\\*smoke\\\*\?/)
    expect(as('Wren').sees(demoReportsChannel)).toEqual([])
    const question = await pressed(as('Tomas'), await helpRequest(), 'Answer for them')
    expect(buttons(question).map(one => one.label)).not.toContain('Back')
    const thanks = await pressed(as('Tomas'), question, '.unsure')
    expect(text(await settled(room, thanks))).toMatch(/Thank you.*was told in <#900000000000000301>/s)
    expect(text(await helpRequest())).toMatch(/has been dealt with/)
    const word = await wordOf(as('Wren'))
    expect(word.pinged.people).toEqual([ids.Wren])
    expect(text(await pressed(as('Wren'), word, 'Continue'))).toMatch(/1 answered/)
    expect(text(await pressed(as('Odalys'), word, 'Continue'))).toMatch(/Only the person who has this check/)
    expect(text(await oldPress(as('Tomas'), question))).toMatch(/Only the person who has this check/)
  })

  test('who finds danger: the person is told to look before they touch the cell', async () => {
    await stuck()
    let question = await pressed(as('Tomas'), await helpRequest(), 'Answer for them')
    // The first question that is asked is whether it smokes, hisses or swells.
    question = await pressed(as('Tomas'), question, 'At least one')
    expect(text(question)).toMatch(/Thank you/)
    expect(text(await wordOf(as('Wren')))).toMatch(/has found danger. If you are holding the cell, let go of it now/)
    expect(text(await pressed(as('Wren'), await wordOf(as('Wren')), 'Continue'))).toMatch(
      /Drop the cell if you are holding it, get away now/,
    )
  })

  test('who sends it back says why, and that is read by whoever asked alone', async () => {
    await stuck()
    await fill(as('Tomas'), await press(as('Tomas'), await helpRequest(), 'Send it back'), {
      why: 'Look from **above**.',
    })
    const now = await pressed(as('Wren'), await wordOf(as('Wren')), 'Continue')
    expect(text(now)).toMatch(/wrote: Look from \\\*\\\*above/)
    expect(text(await wordOf(as('Wren')))).not.toMatch(/above/)
  })

  test('nobody else can answer, though they come by the button; the queue is for moderators', async () => {
    await stuck()
    const id = buttons(await helpRequest())[0]?.customId as string
    expect(text(messageOf(await as('Ilse').click(await postButton(room.standIn, id), id)))).toMatch(/Only moderators/)
    expect(text(messageOf(await as('Ilse').run('check waiting')))).toMatch(/Only moderators/)
    const queue = messageOf(await as('Tomas').run('check waiting'))
    expect(text(queue)).toMatch(/stuck since/)
    expect(text(await pressed(as('Tomas'), queue, 'See it'))).toMatch(/You are answering for/)
  })

  test('a moderator takes over, and the question is asked no more', async () => {
    const waiting = await stuck()
    await fill(as('Tomas'), await press(as('Tomas'), await helpRequest(), 'Take the check over'), { why: 'they left' })
    expect(text(await pressed(as('Wren'), waiting, '.unsure'))).toMatch(/Only the person who has this check/)
    expect(text(await helpRequest())).toMatch(/has been dealt with/)
    expect(text(await panelOf(as('Ilse')))).toMatch(/<@900000000000000403> has the check/)
  })
})
