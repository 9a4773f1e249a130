// How much two moderators read from the first form to a model in force, in the ordinary way: a letter that fits, a reason, a second press.
import { beforeEach, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'

/** At 230 words a minute this is less than four minutes; with the presses and the typing, five. */
const mostWords = 900

const { room, tomas, maret } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(demoServer.server.id)
  await room.services.servers.save({ ...settings, revision: settings.revision + 1, reportsChannel: demoReportsChannel })
})

/** Every label, hint and choice of a form. */
function* saidIn(part: unknown): Generator<string> {
  if (Array.isArray(part)) for (const one of part) yield* saidIn(one)
  else if (part && typeof part === 'object')
    for (const [key, value] of Object.entries(part)) {
      if (['label', 'description', 'title', 'placeholder'].includes(key) && typeof value === 'string') yield value
      else yield* saidIn(value)
    }
}

test(`is no more than ${mostWords} words, and nothing that warns is left out`, async () => {
  let words = 0
  /** What somebody has read before is not read again. */
  const reader = () => {
    const before = new Set<string>()
    return (lines: readonly string[]) => {
      for (const line of lines.flatMap(one => one.split('\n'))) {
        if (before.has(line)) continue
        before.add(line)
        words += line.split(/\s+/).filter(one => /[\p{L}\d]/u.test(one)).length
      }
    }
  }
  const shown = (message: SeenMessage) => [
    text(message),
    ...buttons(message).map(one => one.label),
    ...menus(message).map(one => one.placeholder ?? ''),
  ]
  const filled = async (
    person: Person,
    read: ReturnType<typeof reader>,
    reply: Awaited<ReturnType<Person['run']>>,
    fields: Record<string, string>,
  ) => {
    if (reply.kind !== 'modal') throw new Error('no form')
    read([...saidIn(reply.modal)])
    return finalOf(await person.submit(reply.modal, fields))
  }
  const [author, second] = [reader(), reader()]

  const letters = await filled(tomas(), author, await tomas().run('family new'), {
    ...{ name: 'Sandpiper 30', maker: 'Larkmoor', size: '18650-bare', figures: '3000 mAh 20 A 46 g' },
  })
  author(shown(letters))
  const page = await pressed(tomas(), letters, '.build.all-print-on-can')
  author(shown(page))
  const tried = await finalOf(await press(tomas(), page, 'Try it'))
  author(shown(tried))
  const why = { why: 'Counted on five cells' }
  const asked = await filled(tomas(), author, await press(tomas(), tried, 'Ask a second'), why)
  author(shown(asked))
  const list = messageOf(await maret().run('family list'))
  second(shown(list))
  const waits = await pressed(maret(), list, 'Look: Sandpiper 30')
  second(shown(waits))
  const agreed = await pressed(maret(), waits, 'Agree')
  second(shown(agreed))

  expect(text(letters)).toContain('A letter that does not fit rules out good cells')
  for (const one of [page, waits]) {
    expect(text(one)).toMatch(/Square code:\*\* on the metal can\. On the wrap: ruled out\./)
    expect(text(one)).toContain('Weight never counts against a cell sold with a protection circuit.')
    expect(text(one)).toContain('Not counted against openly rewrapped cells: Square code and Lettering.')
    expect(text(one)).toContain('Not described, so nothing of it counts: Vent disc and Small weld marks.')
  }
  for (const one of [letters, page, tried, asked, list, waits, agreed])
    expect(text(one)).toContain('Unsure? Then do not use or charge the cell.')
  // The page is read by each of them once, and led to from what comes after.
  for (const one of [asked, agreed]) {
    expect(text(one)).not.toContain('Signs add up')
    expect(buttons(one).map(each => each.label)).toContain('Look at it')
  }
  expect(words).toBeLessThanOrEqual(mostWords)
  expect(words).toBeGreaterThan(500)
})
