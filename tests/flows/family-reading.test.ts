// How much two moderators read, and how long they take, from the first form to a model in force: a letter that fits, a second press; and with two features added that the letter leaves open.
import { beforeEach, expect, test, vi } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, menus, pictures, type SeenMessage, text } from '../../src/practice/seen.ts'
import { finalOf, messageOf, press, pressed } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'

/** Of everything that both people are shown: forms, texts, words in drawings, buttons, and menus as they stand closed; what is shown twice counts twice. */
const mostWords = 785

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

/** What is written in a drawing is read as well; the print on the cell that is drawn, and the letter of a row, is looked at. */
const wordsIn = (svg: string): string =>
  svg
    .replaceAll(/<text[^>]*>/g, ' ')
    .replaceAll(/<[^>]+>/g, '')
    .split(/\s+/)
    .filter(one => /\p{L}{2}/u.test(one))
    .join(' ')

test(`is no more than ${mostWords} words, and nothing that warns is left out`, async () => {
  const drawn = vi.spyOn(room.services.pictures, 'ofDrawing')
  const counted: Record<string, number> = {}
  const count = (screen: string, lines: readonly string[]) => {
    const words = lines.flatMap(one => one.split(/\s+/)).filter(one => /[\p{L}\d]/u.test(one))
    counted[screen] = words.length
  }
  /** The drawings of a message are the last ones made. */
  const shown = (screen: string, message: SeenMessage) => {
    const drawings = pictures(message).map((_, i, all) => drawn.mock.calls.at(i - all.length)?.[1].svg ?? '')
    count(screen, [
      text(message),
      ...buttons(message).map(one => one.label),
      ...menus(message).map(one => one.placeholder ?? ''),
      ...drawings.map(wordsIn),
    ])
    return message
  }
  const filled = async (
    person: Person,
    form: string,
    reply: Awaited<ReturnType<Person['run']>>,
    fields: Record<string, string>,
  ) => {
    if (reply.kind !== 'modal') throw new Error('no form')
    count(form, [...new Set(saidIn(reply.modal))])
    return finalOf(await person.submit(reply.modal, fields))
  }

  const typed = { name: 'Sandpiper 30', maker: 'Larkmoor', size: '18650-bare', figures: '3000 mAh 20 A 46 g' }
  const letters = shown('letters', await filled(tomas(), 'form', await tomas().run('family new'), typed))
  const page = shown('page', await pressed(tomas(), letters, '.build.all-print-on-can'))
  const tried = shown('tried', await finalOf(await press(tomas(), page, 'Try it')))
  const why = { why: 'Counted on five cells' }
  const asked = shown('asked', await filled(tomas(), 'why', await press(tomas(), tried, 'Ask a second'), why))
  const list = shown('list', messageOf(await maret().run('family list')))
  const waits = shown('waits', await pressed(maret(), list, 'Look: Sandpiper 30'))
  const agreed = shown('agreed', await pressed(maret(), waits, 'Agree'))

  expect(text(letters)).toContain('A wrong letter rules out good cells')
  for (const one of [page, waits]) {
    expect(text(one)).toMatch(/Square code:\*\* on the can · on the wrap: ruled out†; none alone: no sign/)
    expect(text(one)).toContain('weight never against protected cells.')
    expect(text(one)).toContain('† Not against openly rewrapped cells.')
    expect(text(one)).toMatch(/Not counted so far: .*Vent disc, .*Small weld marks, .*Dimples/)
  }
  for (const one of [letters, page, tried, asked, list, waits, agreed])
    expect(text(one)).toContain('Unsure? Then do not use or charge the cell.')
  // No description has a past before it is in force, and no weight a source that nobody named.
  expect(text(tried)).toContain('No past checks of it yet.')
  expect(text(waits)).toContain('about 46 g · outside')
  // The page is read by each of them once, and led to from what comes after.
  for (const one of [asked, agreed]) {
    expect(text(one)).not.toContain('Signs add up')
    expect(buttons(one).map(each => each.label)).toContain('Look at it')
  }
  const words = Object.values(counted).reduce((sum, one) => sum + one, 0)
  expect(words, JSON.stringify(counted)).toBeLessThanOrEqual(mostWords)
  // None of the screens has been missed.
  expect(Object.keys(counted)).toHaveLength(9)
  for (const [screen, least] of Object.entries({ letters: 100, page: 150, waits: 120 }))
    expect(counted[screen], screen).toBeGreaterThan(least)
})

/** What each of them is shown for the first time, and how often they tap. */
const mostSeconds = 280
const [wordsAMinute, secondsATap, charactersASecond] = [230, 2.5, 3]

test(`takes both of them at most ${mostSeconds} seconds with two features that the letter leaves open`, async () => {
  const drawn = vi.spyOn(room.services.pictures, 'ofDrawing')
  let [words, taps] = [0, 0]
  const reader = () => {
    const known = new Set<string>()
    return (lines: readonly string[]) => {
      const pieces = lines.flatMap(one => one.replaceAll(/\*\*|###|-#/g, '').split(/\n| · |; |(?<=[.?!:]) /))
      for (const piece of pieces.map(one => one.trim()).filter(one => !known.has(one))) {
        known.add(piece)
        words += piece.split(/\s+/).filter(one => /[\p{L}\d]/u.test(one)).length
      }
    }
  }
  const [author, second] = [reader(), reader()]
  const tapped = async (person: Person, message: SeenMessage, label: string) => {
    taps++
    return press(person, message, label)
  }
  const shown = async (read: ReturnType<typeof reader>, reply: Awaited<ReturnType<Person['run']>>) => {
    const message = await finalOf(reply)
    const drawings = pictures(message).map((_, i, all) => drawn.mock.calls.at(i - all.length)?.[1].svg ?? '')
    read([
      text(message),
      ...buttons(message).map(one => one.label),
      ...menus(message).map(one => one.placeholder ?? ''),
      ...drawings.map(wordsIn),
    ])
    return message
  }
  const filled = async (reply: Awaited<ReturnType<Person['run']>>, fields: Record<string, string>) => {
    if (reply.kind !== 'modal') throw new Error('no form')
    author([...new Set(saidIn(reply.modal))])
    taps++
    return shown(author, await tomas().submit(reply.modal, fields))
  }
  const typed = { name: 'Sandpiper 300', maker: 'Larkmoor', size: '18650-bare', figures: '3000 mAh, 20 A, 46 g' }
  // The command, the first field and the size.
  taps += 3
  let page = await filled(await tomas().run('family new'), typed)
  for (const label of [
    '.build.all-print-on-can',
    '+ Vent disc',
    'A · Four lines',
    '+ Dimples',
    'A · Two dimples',
    'Try it',
  ])
    page = await shown(author, await tapped(tomas(), page, label))
  await filled(await tapped(tomas(), page, 'Ask a second'), {})
  taps++
  let theirs = await shown(second, await maret().run('family list'))
  for (const label of ['Look: Sandpiper 300', 'Agree'])
    theirs = await shown(second, await tapped(maret(), theirs, label))
  expect(text(theirs)).toMatch(/version 1 is in force/)
  const [family] = await room.services.families.store.heads(demoServer.server.id)
  const version = await room.services.families.store.version(demoServer.server.id, family?.id ?? '', 1)
  expect(version?.facts.traits['vent-disc']?.made).toEqual(['four-lines'])
  expect(version?.facts.traits['dimples']?.made).toEqual(['two'])
  const characters = typed.name.length + typed.maker.length + typed.figures.length
  expect(taps).toBe(15)
  expect(words).toBeGreaterThan(600)
  expect((words / wordsAMinute) * 60 + taps * secondsATap + characters / charactersASecond).toBeLessThanOrEqual(
    mostSeconds,
  )
})
