// What is kept of a person, through the real client: seen, shown, deleted; and of a server that removes the bot, or is out of reach.
import { afterEach, describe, expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodePrivacy } from '../../src/custom-ids/privacy-id.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { weekOf } from '../../src/trends/week.ts'
import { everyByte } from '../faults/every-byte.ts'
import { answer, caution, closeAll, finalOf, messageOf, postButton, pressed, startCheck, unsureUntil } from './hands.ts'
import { inEnglish, useRoom } from './in-room.ts'

const server = demoServer.server.id
const { room, wren, odalys } = useRoom(inEnglish)
afterEach(async () => {
  for (const name of ['Wren', 'Odalys']) {
    await room.services.traces.forgetPerson(room.standIn.as(name).id)
    await room.services.trends.optOuts.remove(room.standIn.as(name).id)
  }
  await room.services.trends.outcomes.purgeBefore('9999-W01')
})

const counting = async (outcomes: boolean) => {
  const { revision, ...before } = await room.services.servers.load(server)
  await room.services.servers.save({ ...before, outcomes, revision: revision + 1 })
}
const open = async (): Promise<SeenMessage> => messageOf(await wren().run('privacy'))
/** The file that "show" gives, read. */
async function shown(message: SeenMessage): Promise<Record<string, unknown[]>> {
  const [file] = (await pressed(wren(), message, '.show')).attachments
  return (await fetch(file?.url ?? '')).json() as Promise<Record<string, unknown[]>>
}
/** A check that comes to its verdict, is closed and leaves its outcome. */
async function countOne(): Promise<void> {
  await counting(true)
  const asked = await unsureUntil(wren(), await startCheck(wren()), /./)
  const verdict = await pressed(wren(), await answer(wren(), asked, 'A · '), '.finish')
  await pressed(wren(), verdict, '.close')
}

describe('a person', () => {
  test('reads what is kept, how long and why, with the caution, and only they see it', async () => {
    const message = await open()
    expect(text(message)).toMatch(/two weeks after the last step/)
    expect(text(message)).toMatch(/Your checks are counted/)
    expect(text(message)).toMatch(caution)
    expect(message.onlyFor).toBe(wren().id)
    expect(buttons(message)).toHaveLength(4)
  })

  test('is shown everything as a file: open and closed checks, and what was counted', async () => {
    await countOne()
    await startCheck(wren(), { family: 'brindlewick-rook' })
    await startCheck(odalys())
    const kept = await shown(await open())
    expect(kept).toMatchObject({ person: wren().id, drafts: [], decisions: [], countsNothingOfMine: false })
    expect(kept['checks']).toHaveLength(2)
    expect(kept['countedThisQuarter']).toMatchObject([{ verdict: 'open', server }])
    expect(JSON.stringify(kept)).not.toContain(odalys().id)
  })

  test('has neither their name nor what they wrote nor a file they sent in any file of the bot, only their id', async () => {
    const words = 'my uncle Gerolamo sold me a rewrapped cell'
    await wren().run('ask', { question: words })
    await wren().run('claim', { text: `${words} 18650 9900mAh` })
    const log = 'time_s,voltage_V,current_A\n0,4.1,0.5\n'
    await finalOf(await wren().run('log', { file: { name: 'gerolamo.csv', bytes: new TextEncoder().encode(log) } }))
    await startCheck(wren())
    const kept = await everyByte(room.data)
    expect(kept.includes(wren().id)).toBe(true)
    for (const word of ['Wren', 'Gerolamo', 'gerolamo', 'voltage_V,current_A'])
      expect(kept.includes(word), word).toBe(false)
  })

  test('is asked once more, and whoever keeps it keeps it', async () => {
    await startCheck(wren())
    const sure = await pressed(wren(), await open(), '.delete')
    expect(text(sure)).toMatch(/cannot be undone/)
    expect(text(sure)).toMatch(/published/)
    expect(text(sure)).toMatch(caution)
    await pressed(wren(), sure, 'Keep it')
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
  })

  test('deletes all of it: an old button then says that nothing is kept, and others lose nothing', async () => {
    await countOne()
    const asked = await startCheck(wren())
    await startCheck(odalys())
    await room.services.drafts.keep({ person: wren().id }, 60_000)
    const done = await pressed(wren(), await pressed(wren(), await open(), '.delete'), '.deleted')
    expect(text(done)).toMatch(/Deleted: 2 checks, 1 waiting question, 1 counted record, .* 0 decisions/)
    expect(text(done)).toMatch(/cannot be deleted/)
    expect(text(await pressed(wren(), asked, '.unsure'))).toMatch(/no longer kept/)
    const kept = await shown(done)
    expect([kept['checks'], kept['drafts'], kept['countedThisQuarter']]).toEqual([[], [], []])
    expect(await room.services.checks.heldBy(odalys().id, Date.now())).toHaveLength(1)
  })

  test('deletes twice by a doubled click: once is told, nothing goes wrong', async () => {
    await startCheck(wren())
    const sure = await pressed(wren(), await open(), '.delete')
    room.standIn.faults.deliverTwice(true)
    const done = await pressed(wren(), sure, '.deleted')
    room.standIn.faults.clear()
    expect(text(done)).toMatch(/Deleted: [01] checks?/)
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toEqual([])
  })

  test('stops and resumes being counted from here, and deleting does not undo a no', async () => {
    const out = await pressed(wren(), await open(), 'Do not count my checks')
    expect(text(out)).toMatch(/Your checks are not counted/)
    await pressed(wren(), await pressed(wren(), await open(), '.delete'), '.deleted')
    expect(text(await open())).toMatch(/Your checks are not counted/)
    await pressed(wren(), await open(), 'Count my checks again')
    expect(text(await open())).toMatch(/Your checks are counted/)
  })

  test('pressing a delete button that stands where all can see it deletes one’s own only', async () => {
    await startCheck(wren())
    await startCheck(odalys())
    const posted = await postButton(room.standIn, encodePrivacy({ is: 'deleted' }))
    await odalys().click(posted, encodePrivacy({ is: 'deleted' }))
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toHaveLength(1)
    expect(await room.services.checks.heldBy(odalys().id, Date.now())).toEqual([])
  })
})

describe('a check in other hands', () => {
  const tomas = () => room.standIn.as('Tomas')
  const everybody = '900000000000000301'
  const panels = () => room.standIn.messages(everybody).filter(one => /A cell to check/.test(text(one)))
  async function handToWren(): Promise<SeenMessage> {
    await tomas().run('check start', { depth: 'full', for: wren().id }, { channel: everybody })
    await room.services.queue.idle()
    const question = await pressed(wren(), panels().at(-1) as SeenMessage, 'Take it')
    await room.services.queue.idle()
    return question
  }
  const deleteAll = async (person: Person): Promise<SeenMessage> => {
    const sure = await pressed(person, messageOf(await person.run('privacy')), '.delete')
    return pressed(person, sure, '.deleted')
  }
  afterEach(async () => {
    await room.services.traces.forgetPerson(tomas().id)
  })

  test('goes back to its starter without what its holder answered, and what the channel showed of it goes', async () => {
    await pressed(wren(), await handToWren(), '.unsure')
    expect(panels()).toHaveLength(1)
    expect(text(await deleteAll(wren()))).toMatch(/Deleted: 1 check,/)
    expect(panels()).toEqual([])
    expect(text(messageOf(await tomas().run('check list')))).toMatch(/nothing answered/)
  })

  test('stays with its holder when its starter is forgotten, without their name', async () => {
    const question = await handToWren()
    expect(text(await deleteAll(tomas()))).toMatch(/Deleted: 0 checks/)
    const [check] = await room.services.checks.heldBy(wren().id, Date.now())
    expect(JSON.stringify(check)).not.toContain(tomas().id)
    expect(text(await pressed(wren(), question, '.unsure'))).toMatch(/earlier step|answered/)
    const progress = await pressed(wren(), panels().at(-1) as SeenMessage, 'How far')
    expect(text(progress)).toMatch(/\(name deleted\) offered it to/)
  })
})

describe('a server', () => {
  /** What Wren has left there for the counts. */
  const left = async () => {
    const week = weekOf(room.services.now())
    const { reporter } = await room.services.trends.reporterOf({ server, user: wren().id, week, pooling: false })
    return room.services.trends.outcomes.of([reporter])
  }
  const settled = async () => (await room.services.servers.load(server)).revision > 0

  test('that is out of reach for a while loses nothing', async () => {
    await countOne()
    const asked = await startCheck(wren())
    room.standIn.faults.outage(true)
    room.standIn.faults.outage(false)
    // An answer that came after the outage has been through the same line.
    expect(text(await pressed(wren(), asked, '.unsure'))).not.toMatch(/no longer kept/)
    expect(await settled()).toBe(true)
    expect(await left()).not.toEqual([])
    expect(room.log.join()).not.toContain('has removed the bot')
    room.standIn.faults.outage(true)
    await room.services.queue.idle()
    expect(room.whereabouts(server)).toBe('here')
    room.standIn.faults.outage(false)
    await closeAll(wren())
  })

  test('that removes the bot takes its settings, checks and counts along; twice is as once', async () => {
    await countOne()
    await startCheck(wren())
    room.standIn.removeBot()
    await expect.poll(() => room.log.join()).toContain('has removed the bot')
    expect(await settled()).toBe(false)
    expect(await room.services.checks.heldBy(wren().id, Date.now())).toEqual([])
    expect(await left()).toEqual([])
    await room.services.traces.forgetServer(server)
    expect(await settled()).toBe(false)
    expect(room.whereabouts(server)).toBe('absent')
  })
})
