// Photographs of families through the real client: added by moderators, cleaned, shown beside the drawing, a question and a known fake.
import jpeg from 'jpeg-js'
import { beforeEach, describe, expect, test } from 'vitest'
import { demoReportsChannel, demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { encodeFamily } from '../../src/custom-ids/family-id.ts'
import { limits } from '../../src/families/family.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import type { Upload } from '../../src/practice/world/files.ts'
import { samplePhoto, secrets } from '../photos/sample-photos.ts'
import { answer, finalOf, messageOf, postPart, press, pressed, startCheck } from './hands.ts'
import { inEnglish, useFreshRoom } from './in-room.ts'
import { builtFacts, putInForce } from './put-family.ts'

const server = demoServer.server.id
const family = 'f-avocet25'
const { room, wren, tomas } = useFreshRoom(inEnglish)
beforeEach(async () => {
  const settings = await room.services.servers.load(server)
  await room.services.servers.save({ ...settings, revision: 1, reportsChannel: demoReportsChannel })
  const facts = builtFacts(room, family, 'Avocet 25')
  const fake = {
    ...{ id: 'k1', title: 'Four legs', since: '2026-W45', look: { legs: ['four'] }, copies: [] },
    ...{ says: 'It stands on four legs.', state: 'seen' as const },
  }
  await putInForce(room, server, { ...facts, fakes: [fake] })
})

const photo: Upload = { name: 'IMG_0815 Pier.jpg', bytes: samplePhoto() }
const large: Upload = {
  name: 'large.jpg',
  bytes: jpeg.encode({ width: 2000, height: 1500, data: Buffer.alloc(2000 * 1500 * 4, 120) }, 80).data,
}
const good = {
  photo: [photo],
  ...{ shows: ['legs=three'], kind: ['good'], took: ['yes'], words: 'A little table on three legs' },
}
const bad = { ...good, shows: ['legs=four'], kind: ['false'], words: 'Four legs, the gaps between them are narrow' }

const page = async (): Promise<SeenMessage> =>
  pressed(
    tomas(),
    await pressed(tomas(), messageOf(await tomas().run('family show', { family })), 'Change it'),
    'Photos',
  )
async function add(message: SeenMessage, fields: Record<string, string | string[] | Upload[]>): Promise<SeenMessage> {
  const form = await press(tomas(), message, 'Add a photo')
  if (form.kind !== 'modal') throw new Error('no form')
  return finalOf(await tomas().submit(form.modal, fields as never))
}
const photosOf = ({ attachments }: SeenMessage) => attachments.filter(one => one.name.endsWith('.jpg'))

async function legsQuestion(): Promise<SeenMessage> {
  let now = await startCheck(wren(), { family, depth: 'quick' })
  for (let i = 0; i < 40 && !/How many legs hold up/.test(text(now)); i++) now = await pressed(wren(), now, '.unsure')
  return now
}

describe('a photograph', () => {
  test('is cleaned and stands beside the drawing and the question, good ones apart from false ones', async () => {
    const kept = await add(await page(), good)
    expect(text(kept)).toMatch(/The photo is kept/)
    expect(text(await add(kept, { ...bad, photo: [large] }))).toMatch(/2\. \*\*Fake\*\* · Legs: Four · Four legs/)
    const shown = messageOf(await wren().run('family show', { family }))
    expect(text(shown)).toMatch(/Good ones, photographed by moderators of this server: Legs: Three/)
    expect(text(shown)).toMatch(/\*\*Fakes\*\*, photographed by moderators of this server: Legs: Four/)
    expect(photosOf(shown).map(one => one.description)).toEqual([
      'Photo of a good one, Legs: Three. A little table on three legs',
      'Photo of a fake, Legs: Four. Four legs, the gaps between them are narrow',
    ])
    for (const one of await room.services.families.store.photos(server, family)) {
      const { bytes = new Uint8Array() } = (await room.services.families.store.photo(server, one.id)) ?? {}
      expect(Math.max(jpeg.decode(bytes).width, jpeg.decode(bytes).height)).toBe(one.genuine ? 64 : 1280)
      expect(bytes.length).toBeLessThanOrEqual(300_000)
    }
    for (const { url } of photosOf(shown)) {
      const bytes = Buffer.from(await (await fetch(url)).arrayBuffer()).toString('latin1')
      expect(bytes.slice(0, 3)).toBe('\xff\xd8\xff')
      for (const secret of secrets) expect(bytes).not.toContain(secret)
    }
    const question = await legsQuestion()
    expect(photosOf(question).map(one => one.name)).toEqual(['good-legs-1.jpg', 'false-legs-1.jpg'])
    expect(text(question)).toMatch(/Good ones, photographed by moderators of this server: Three/)
    // A check of a cell that is not listed shows nobody's family.
    const other = await startCheck(wren(), { depth: 'quick' })
    expect(photosOf(other)).toEqual([])
  })

  test('of a false one stands beside the verdict of a cell that matches the known fake', async () => {
    await add(await add(await page(), bad), { ...bad, shows: ['code-place=can'], words: 'A code on the can' })
    const question = await legsQuestion()
    const again = await answer(wren(), question, 'Four')
    const verdict = await answer(wren(), again, 'Four')
    expect(text(verdict)).toMatch(/seen here since .*2026 \(W45\): Four legs/)
    expect(photosOf(verdict).map(one => one.description)).toEqual([
      'Photo of a fake, Legs: Four. Four legs, the gaps between them are narrow',
    ])
  })

  test('can be of any feature, from that feature’s page', async () => {
    const work = await pressed(tomas(), messageOf(await tomas().run('family show', { family })), 'Change it')
    const menu = JSON.stringify(work.components).match(/cwf1\.[^"]*choose-feature/)?.[0] ?? ''
    const feature = messageOf(await tomas().choose(work, menu, ['code-print']))
    const kept = await add(feature, { ...good, shows: ['code-print=faint'] })
    expect(text(kept)).toMatch(/Good · .*Faint · A little table/)
  })

  test.each([
    ['taken by somebody else', { ...good, took: ['no'] }, /Only photos that you took yourself/],
    [
      'half a file',
      { ...good, photo: [{ ...photo, bytes: samplePhoto().subarray(0, 300) }] },
      /damaged, empty or cut off/,
    ],
    ['with an address in its words', { ...good, words: 'see https://false.example/x' }, /reads like a link/],
  ])('%s is refused with what to change, and nothing is kept', async (_what, fields, says) => {
    const told = await add(await page(), fields)
    const said =
      tomas()
        .sees()
        .findLast(one => says.test(text(one))) ?? told
    expect(text(said)).toMatch(says)
    expect(text(said)).toMatch(/What you typed:/)
    expect(await room.services.families.store.photos(server, family)).toEqual([])
  })

  test('is taken out again, given away only when asked for, and not by who does not moderate', async () => {
    await add(await add(await page(), good), bad)
    const work = await pressed(tomas(), messageOf(await tomas().run('family show', { family })), 'Change it')
    const more = await pressed(tomas(), work, 'More')
    expect(messageOf(await press(tomas(), more, 'Export')).attachments.map(one => one.name)).toEqual([`${family}.yaml`])
    const given = messageOf(await press(tomas(), more, 'with photos'))
    expect(given.attachments.map(one => one.name)).toEqual([
      `${family}.yaml`,
      `${family}-good-legs-1.jpg`,
      `${family}-false-legs-2.jpg`,
    ])
    const [first] = await room.services.families.store.photos(server, family)
    const revision = (await room.services.families.store.load(server, family))?.revision ?? 0
    for (const act of [
      { is: 'drop-photo', photo: first?.id ?? '' },
      { is: 'photos', page: 1 },
      { is: 'new-photo' },
      { is: 'export-photos' },
    ] as const) {
      const custom_id = encodeFamily({ family, revision, act })
      const posted = await postPart(room.standIn, { type: 2, style: 2, label: 'x', custom_id })
      expect(text(messageOf(await wren().click(posted, custom_id)))).toMatch(/moderat/i)
    }
    const after = await pressed(tomas(), await page(), 'Remove 1')
    expect(text(after)).toMatch(/The photo is gone/)
    expect(photosOf(after)).toHaveLength(1)
    expect(photosOf(messageOf(await wren().run('family show', { family })))).toHaveLength(1)
  })

  test('is the sixtieth of a server at most, five a page', async () => {
    const { store } = room.services.families
    const made = {
      server,
      family,
      feature: 'legs',
      option: 'three',
      genuine: true,
      alt: 'three legs',
      by: tomas().id,
      at: 1,
    }
    for (let n = 10; n < 10 + limits.photos; n++)
      await store.keepPhoto({ ...made, id: `p00000${n}`, bytes: samplePhoto() }, limits.photos)
    const full = await add(await page(), good)
    const said = tomas()
      .sees()
      .findLast(one => /at most 60 photos\. Remove one/.test(text(one)))
    expect(text(said ?? full)).toMatch(/A server keeps at most 60 photos\. Remove one first/)
    expect(await store.photos(server, family)).toHaveLength(limits.photos)
    const second = await pressed(tomas(), await page(), 'Next page')
    expect(text(second)).toMatch(/^6\. Good/m)
    expect(buttons(second).map(one => one.label)).toContain('Previous page')
    expect(photosOf(messageOf(await wren().run('family show', { family })))).toHaveLength(9)
  })
})
