// What comes out of a photo: the picture, upright and small, and nothing else that was in the file, searched byte by byte.
import fc from 'fast-check'
import jpeg from 'jpeg-js'
import { PNG } from 'pngjs'
import { describe, expect, test } from 'vitest'
import { cleanPhoto } from '../../src/readers/photo/clean-photo.ts'
import {
  bomb,
  chunk,
  corners,
  movingWebp,
  quarters,
  samplePhoto,
  samplePng,
  sampleWebp,
  secrets,
} from './sample-photos.ts'

const bounds = { megapixels: 52, inPasses: 26, side: 9_999 }

async function cleaned(bytes: Buffer) {
  const photo = await cleanPhoto(bytes, bounds)
  if ('refusal' in photo) throw new Error(`refused: ${JSON.stringify(photo.refusal)}`)
  return { ...photo, bytes: Buffer.from(photo.bytes) }
}

/** The markers of a JPEG's segments up to the pixels, and whatever stands behind its end (ITU-T T.81, annex B). */
function segmentsOf(bytes: Buffer) {
  const markers: number[] = []
  let at = 2
  for (; bytes[at + 1] !== 0xda; at += 2 + bytes.readUInt16BE(at + 2)) markers.push(bytes[at + 1] as number)
  return { markers, behind: bytes.length - (bytes.lastIndexOf(Buffer.from('ffd9', 'hex')) + 2) }
}

/** Start of frame, tables and restart interval; no APP1 to APP15 and no comment. APP0 is JFIF's own 16 bytes. */
const allowed = [0xc0, 0xc2, 0xc4, 0xdb, 0xdd, 0xe0]

function expectClean(bytes: Buffer) {
  expect(bytes.subarray(0, 3).toString('hex')).toBe('ffd8ff')
  const { markers, behind } = segmentsOf(bytes)
  expect(markers.filter(marker => !allowed.includes(marker))).toEqual([])
  expect(behind).toBe(0)
  for (const secret of [...secrets, 'Exif', 'xap', 'ICC_PROFILE', 'GPS', 'JFXX', '<'.repeat(3)])
    for (const encoding of ['latin1', 'utf16le'] as const)
      expect(bytes.includes(Buffer.from(secret, encoding)), secret).toBe(false)
}

/** The colours a little inside the four corners, clockwise from the upper left, as the nearest of the known ones. */
function cornersOf(bytes: Buffer): number[] {
  const { width, height, data } = jpeg.decode(bytes)
  const places = [
    [3, 3],
    [width - 4, 3],
    [width - 4, height - 4],
    [3, height - 4],
  ] as const
  return places.map(([x, y]) => {
    const pixel = data.subarray((y * width + x) * 4)
    const far = corners.map(colour => Math.hypot(...colour.map((value, i) => value - (pixel[i] ?? 0))))
    expect(Math.min(...far)).toBeLessThan(40)
    return far.indexOf(Math.min(...far))
  })
}

describe('the samples hold what is searched for', () => {
  test('in JPEG', () => {
    for (const secret of secrets) expect(samplePhoto().includes(secret), secret).toBe(true)
  })
  test('in PNG and WebP', async () => {
    for (const secret of ['COMMENT-OF-THE-PHOTO', 'XMP-CREATOR-TOOL', 'SERIAL-4711-0815', 'GULLHOUSE-CAMERA'])
      expect(samplePng().includes(secret), secret).toBe(true)
    for (const secret of ['XMP-CREATOR-TOOL', 'GULLHOUSE-CAMERA', 'THUMBNAIL-INSIDE'])
      expect((await sampleWebp()).includes(secret), secret).toBe(true)
  })
})

describe('only the picture comes out', () => {
  test.each([
    ['a JPEG', () => samplePhoto()],
    ['a PNG', () => samplePng()],
    ['a WebP', () => sampleWebp()],
    [
      'a JPEG with a zip archive behind it',
      () => Buffer.concat([samplePhoto(), Buffer.from('PK\x03\x04SERIAL-4711-0815')]),
    ],
    [
      'a JPEG with a page behind it',
      () => Buffer.concat([samplePhoto(), Buffer.from('<<<script>COMMENT-OF-THE-PHOTO')]),
    ],
    ['a JPEG with another one behind it', () => Buffer.concat([samplePhoto(), samplePhoto()])],
    ['a PNG with a program behind it', () => Buffer.concat([samplePng(), Buffer.from('MZ SERIAL-4711-0815')])],
    [
      'a PNG with a chunk that would run',
      () => samplePng([chunk('htMl', Buffer.from('<<<script>COMMENT-OF-THE-PHOTO'))]),
    ],
  ])('of %s', async (_what, make) => {
    const { bytes, width, height } = await cleaned(await make())
    expectClean(bytes)
    expect({ width, height }).toEqual({ width: 64, height: 32 })
    expect(cornersOf(bytes)).toEqual([0, 1, 2, 3])
  })
})

/** EXIF 2.32 (CIPA DC-008), tag 274: where the file's four corners come to lie, clockwise from the upper left. */
test.each([
  [1, [0, 1, 2, 3]],
  [2, [1, 0, 3, 2]],
  [3, [2, 3, 0, 1]],
  [4, [3, 2, 1, 0]],
  [5, [0, 3, 2, 1]],
  [6, [3, 0, 1, 2]],
  [7, [2, 1, 0, 3]],
  [8, [1, 2, 3, 0]],
])('orientation %d is applied, then forgotten', async (orientation, upright) => {
  const { bytes, width, height } = await cleaned(samplePhoto(orientation))
  expectClean(bytes)
  expect([width, height]).toEqual(orientation < 5 ? [64, 32] : [32, 64])
  expect(cornersOf(bytes)).toEqual(upright)
})

test('a large photo gets a longest side of 2048, a small one keeps its own', async () => {
  expect(await cleaned(samplePhoto(6, 3000, 1500))).toMatchObject({ width: 1024, height: 2048 })
  expect(await cleaned(samplePhoto(1, 40, 20))).toMatchObject({ width: 40, height: 20 })
})

test('even noise stays within 2 MiB, so that ten photos fit into one message', async () => {
  const data = Buffer.alloc(2048 * 2048 * 4)
  for (let i = 0, noise = 1; i < data.length; i++) {
    noise = (noise * 48271) % 2147483647
    data[i] = noise >> 8
  }
  const { bytes } = await cleaned(jpeg.encode({ width: 2048, height: 2048, data }, 95).data)
  expect(bytes.length).toBeLessThanOrEqual(2 * 1024 ** 2)
})

describe('pixels are counted before any is unpacked', () => {
  test.each([
    ['10,000 by 10,000', 10_000, 10_000],
    ['more than 52 million', 8_000, 6_501],
    ['a very long one', 10_000, 4],
  ])('%s', async (_what, width, height) => {
    expect(await cleanPhoto(bomb(width, height), bounds)).toEqual({
      refusal: { code: 'too-many-pixels', megapixels: 52, side: 9_999 },
    })
  })
  test('fewer in a picture that comes in passes, which is held in memory as a whole', async () => {
    const refusal = { code: 'too-many-pixels', megapixels: 26, side: 9_999 }
    expect(await cleanPhoto(bomb(6_000, 5_000, 'in passes'), bounds)).toEqual({ refusal })
    expect(await cleanPhoto(bomb(6_000, 5_000), bounds)).toMatchObject({ width: 2048 })
  })
  test('what a head promises and the file does not hold is broken, not waited for', async () => {
    const small = bomb(16, 16)
    small.writeUInt32BE(2 ** 31 - 1, 16)
    expect(await cleanPhoto(small, bounds)).toMatchObject({ refusal: { code: expect.stringMatching(/pixels|broken/) } })
  })
  test('as many as a phone has are taken', async () => {
    expect(await cleanPhoto(bomb(8_160, 6_120), bounds)).toMatchObject({ width: 2048, height: 1536 })
  })
})

describe('the bytes say what a file is', () => {
  test.each([
    ['svg', '<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'],
    ['svg', '\u{feff}\n<!-- a photo --><svg/>'],
    ['gif', 'GIF89a\x01\x00\x01\x00'],
    ['pdf', '%PDF-1.7'],
    ['zip', 'PK\x03\x04'],
    ['program', 'MZ\x90\x00'],
    ['program', '\x7fELF'],
    ['tiff', 'II*\x00'],
    ['bmp', 'BM6\x00'],
    ['heic', '\x00\x00\x00\x18ftypheic\x00\x00\x00\x00'],
    ['heic', '\x00\x00\x00\x18ftypmif1\x00\x00\x00\x00'],
    ['avif', '\x00\x00\x00\x18ftypavif\x00\x00\x00\x00'],
    ['video', '\x00\x00\x00\x18ftypmp42\x00\x00\x00\x00'],
    ['video', '\x1aE\xdf\xa3'],
    ['jxl', '\xff\x0a'],
  ])('%s', async (looksLike, text) => {
    const bytes = Buffer.from(text, text.startsWith('\u{feff}') ? 'utf8' : 'latin1')
    expect(await cleanPhoto(bytes, bounds)).toEqual({ refusal: { code: 'kind-not-taken', looksLike } })
  })
  test('a moving PNG and a moving WebP are no photos', async () => {
    const moving = { refusal: { code: 'kind-not-taken', looksLike: 'animation' } }
    expect(await cleanPhoto(samplePng([chunk('acTL', Buffer.alloc(8))]), bounds)).toEqual(moving)
    expect(await cleanPhoto(await movingWebp(), bounds)).toEqual(moving)
  })
  test.each([
    ['text', Buffer.from('just a few words')],
    ['a page', Buffer.from('<!doctype html><title>photo</title>')],
    ['one byte', Buffer.from([0xff])],
    ['a wave file', Buffer.from('RIFF\x24\x00\x00\x00WAVEfmt ')],
  ])('%s is no picture', async (_what, bytes) => {
    expect(await cleanPhoto(bytes, bounds)).toEqual({ refusal: { code: 'not-a-picture' } })
  })
})

describe('what is damaged is refused, never guessed', () => {
  const whole = samplePhoto(1, 640, 320)
  test.each([
    ['no bytes at all', () => Buffer.alloc(0)],
    ['a JPEG cut off in the middle', () => whole.subarray(0, whole.length / 2)],
    ['a JPEG of three bytes', () => whole.subarray(0, 3)],
    ['a PNG cut off in the middle', () => samplePng().subarray(0, -60)],
    [
      'a PNG whose pixels do not fit their sum',
      () => samplePng().fill(7, samplePng().length - 40, samplePng().length - 20),
    ],
    ['a GIF behind the first bytes of a JPEG', () => Buffer.from('\xff\xd8\xffGIF89a\x01\x00\x01\x00', 'latin1')],
    ['a WebP that ends behind its head', async () => (await sampleWebp()).subarray(0, 40)],
  ])('%s', async (_what, make) => {
    expect(await cleanPhoto(await make(), bounds)).toEqual({ refusal: { code: 'broken' } })
  })
})

test('whatever is done to a file, it is refused or comes out clean', async () => {
  const whole = [samplePhoto(6), samplePng(), await sampleWebp()]
  const damage = fc.record({
    file: fc.constantFrom(...whole),
    at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    does: fc.constantFrom('set', 'cut', 'drop', 'insert', 'repeat'),
    bytes: fc.uint8Array({ minLength: 1, maxLength: 12 }),
  })
  let clean = 0
  await fc.assert(
    fc.asyncProperty(damage, async ({ file, at, does, bytes }) => {
      const place = Math.floor(at * file.length)
      const [before, after] = [file.subarray(0, place), file.subarray(place)]
      const damaged = {
        set: () => Buffer.concat([before, bytes, after.subarray(bytes.length)]),
        cut: () => Buffer.from(before),
        drop: () => Buffer.concat([before, after.subarray(bytes.length)]),
        insert: () => Buffer.concat([before, bytes, after]),
        repeat: () => Buffer.concat([before, after, after]),
      }[does]()
      const photo = await cleanPhoto(damaged, bounds)
      if ('refusal' in photo) return
      clean++
      expectClean(Buffer.from(photo.bytes))
      expect(Math.max(photo.width, photo.height)).toBeLessThanOrEqual(2048)
    }),
    { numRuns: 400 },
  )
  // Most of the damage lies in what is left out anyway.
  expect(clean).toBeGreaterThan(40)
})

describe('every way in which a picture holds its pixels', () => {
  test.each([
    ['16 bits a channel', { bitDepth: 16, colorType: 2, inputColorType: 6 }],
    ['grey', { colorType: 0, inputColorType: 6 }],
    ['grey, and transparent in places', { colorType: 4, inputColorType: 6 }],
  ] as const)('PNG: %s', async (_what, options) => {
    const png = Object.assign(new PNG({ width: 64, height: 32 }), { data: quarters() })
    const { bytes, width, height } = await cleaned(PNG.sync.write(png, options))
    expectClean(bytes)
    expect([width, height]).toEqual([64, 32])
  })

  test('what is transparent comes out white, whatever colour stands behind it', async () => {
    const data = Buffer.alloc(16 * 16 * 4, 0)
    const { bytes } = await cleaned(PNG.sync.write(Object.assign(new PNG({ width: 16, height: 16 }), { data })))
    expect([...jpeg.decode(bytes).data.subarray(0, 3)]).toEqual([255, 255, 255])
  })
})

describe('a photo that is to be kept small', () => {
  const size = { side: 1280, bytes: 300_000 }
  /** What compresses worst: every pixel by chance, the same in every run. */
  const noise = (width: number, height: number): Buffer => {
    const png = new PNG({ width, height })
    let state = 7
    for (let i = 0; i < png.data.length; i++) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
      png.data[i] = i % 4 === 3 ? 255 : state >>> 24
    }
    return PNG.sync.write(png)
  }

  test('keeps to its side where that is enough', async () => {
    const photo = await cleanPhoto(flat(3000, 2000), bounds, size)
    expect(photo).toMatchObject({ width: 1280, height: 853 })
  })
  test('is made smaller where it does not fit, even noise', async () => {
    const photo = await cleanPhoto(noise(1600, 1200), bounds, size)
    if ('refusal' in photo) throw new Error('refused')
    expect(photo.bytes.length).toBeLessThanOrEqual(size.bytes)
    expect(Math.max(photo.width, photo.height)).toBeLessThan(size.side)
    expectClean(Buffer.from(photo.bytes))
  })
})

/** One colour. */
function flat(width: number, height: number): Buffer {
  const { data } = jpeg.encode({ width, height, data: Buffer.alloc(width * height * 4, 120) }, 80)
  return Buffer.from(data)
}
