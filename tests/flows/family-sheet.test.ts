// The page of a family that is printed: for everybody once it is in force, one A4 page whatever is known, with the caution on it.
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { PNG } from 'pngjs'
import { expect, test } from 'vitest'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeFamily } from '../../src/custom-ids/family-id.ts'
import { drawnOf } from '../../src/families/drawn.ts'
import { featuresOf } from '../../src/families/features.ts'
import { drawFacts } from '../../src/pictures/from-packs/draw-facts.ts'
import { drawSheet } from '../../src/pictures/from-packs/draw-sheet.ts'
import { text } from '../../src/practice/seen.ts'
import { saySheet } from '../../src/words/family-sheet-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { messageOf, postPart, press } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

/** Where the page is left to be looked at; nowhere when unset. */
const shots = process.env['CELLWARY_SHOTS']
const server = demoServer.server.id
const family = 'f-avocet25'
const { room, tomas } = useFreshRoom(inEnglish)

const facts = () => ({
  ...builtFacts(room, family, 'Avocet *25*'),
  figures: { capacity: { typical: 2500 }, mass: { middle: 44.6, cells: 3, from: 'references' as const } },
  fakes: [
    {
      ...{ id: 'k1', title: 'Four legs', since: '2026-W45', look: { legs: ['four'] }, copies: [] },
      ...{ says: 'It stands on four legs.', state: 'seen' as const },
    },
  ],
})

test('everybody gets it as a picture, with what is checked, what tells nothing, and the caution in its words', async () => {
  await putInForce(room, server, facts())
  const wren = room.standIn.as('Wren')
  const page = messageOf(await press(wren, messageOf(await wren.run('family show', { family })), 'As one page'))
  const [file] = page.attachments
  expect(file?.name).toBe(`${family}.png`)
  expect(file?.description).toMatch(/do not use or charge the cell/)
  const bytes = Buffer.from(await (await fetch(file?.url ?? '')).arrayBuffer())
  if (shots) await writeFile(join(shots, 'family-sheet.png'), bytes)
  const { width, height } = PNG.sync.read(bytes)
  expect(height / width).toBeCloseTo(Math.SQRT2, 2)
  expect(width).toBeGreaterThan(1240)
})

test('a draft has none, by whatever button', async () => {
  const { store } = room.services.families
  const made = { is: 'sheet' } as const
  const id = encodeFamily({ family, revision: 1, act: made })
  const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id: id })
  expect(text(messageOf(await tomas().click(posted, id)))).toMatch(/no such model/)
  expect(await store.heads(server)).toEqual([])
})

test.each(['en-GB', 'de', 'es-ES'] as const)(
  'in %s it stays one page whatever is known, and no word is cut',
  language => {
    const say = sayIn(language)
    const { base } = room.services.families
    const all = [...featuresOf(base).values()].slice(0, 25).map(({ id, answer }) => {
      const [first, ...others] = answer.options.map(one => one.id)
      return [
        id,
        {
          made: [first ?? ''],
          against: [{ options: others, tells: 'weak' as const, from: 'moderator' as const }],
          remarks: [],
        },
      ]
    })
    const traits = Object.fromEntries(all)
    const parts = saySheet(say, base, { ...facts(), traits })
    expect(parts.map(one => one.lines.length)).toEqual([28, 1])
    const caution = [say('caution.line'), say('caution.full')] as const
    const sheet = drawSheet({
      title: 'Avocet 25',
      about: [],
      picture: drawFacts(say, facts().identity, drawnOf(facts())),
      parts,
      caution,
    })
    expect(sheet.height / sheet.width).toBeCloseTo(Math.SQRT2, 2)
    const drawn = [...sheet.svg.matchAll(/<text[^>]*y="([\d.]+)"[^>]*>([^<]*)/g)]
    const words = drawn
      .map(one => one[2])
      .join(' ')
      .replaceAll('&apos;', "'")
    for (const sentence of [...caution, ...parts.flatMap(one => one.lines)])
      for (const word of sentence.split(/\s+/).filter(one => /^[\p{L}]+$/u.test(one))) expect(words).toContain(word)
    expect(Math.max(...drawn.map(one => Number(one[1])))).toBeLessThan(sheet.height)
  },
)
