// Photos as devices write them, made by other people's libraries (jpeg-js, piexifjs, pngjs, node-webpmux), full of what must not get out.
import { createRequire } from 'node:module'
import { crc32, deflateSync } from 'node:zlib'
import jpeg from 'jpeg-js'
import piexif from 'piexifjs'
import { PNG } from 'pngjs'

/** Invented, and in every place of a file that can hold text: none of it may be found in what comes out. */
export const secrets = [
  'GULLHOUSE-CAMERA',
  'SERIAL-4711-0815',
  'ANNE-OF-THE-PIER',
  '2019:03:14 15:09:26',
  'XMP-CREATOR-TOOL',
  'COMMENT-OF-THE-PHOTO',
  'PROFILE-OF-THE-SCREEN',
  'THUMBNAIL-INSIDE',
] as const

type Colour = readonly [number, number, number]
/** The corners of the test picture, clockwise from the upper left, and the colour a few pixels around each. */
export const corners: readonly Colour[] = [
  [220, 30, 30],
  [30, 200, 30],
  [40, 40, 220],
  [230, 220, 40],
]

/** 64 by 32 pixels with a colour in each quarter. */
export function quarters(width = 64, height = 32): Buffer {
  const data = Buffer.alloc(width * height * 4, 255)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const right = x >= width / 2
      const lower = y >= height / 2
      data.set(corners[lower ? (right ? 2 : 3) : right ? 1 : 0] as Colour, (y * width + x) * 4)
    }
  return data
}

const segment = (marker: number, body: Buffer) =>
  Buffer.concat([Buffer.from([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 255]), body])

const xmp = Buffer.from(
  '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmp:CreatorTool="XMP-CREATOR-TOOL"/></rdf:RDF></x:xmpmeta>',
)

function exifDump(orientation: number): string {
  const thumbnail = jpeg.encode(
    { ...{ width: 16, height: 8 }, data: quarters(16, 8), comments: ['THUMBNAIL-INSIDE'] },
    80,
  )
  const { ImageIFD, ExifIFD, GPSIFD } = piexif
  return piexif.dump({
    '0th': {
      [ImageIFD.Make]: 'GULLHOUSE-CAMERA',
      [ImageIFD.Artist]: 'ANNE-OF-THE-PIER',
      [ImageIFD.Orientation]: orientation,
    },
    Exif: { [ExifIFD.DateTimeOriginal]: '2019:03:14 15:09:26', [ExifIFD.BodySerialNumber]: 'SERIAL-4711-0815' },
    GPS: {
      [GPSIFD.GPSLatitudeRef]: 'N',
      [GPSIFD.GPSLatitude]: [
        [12, 1],
        [34, 1],
        [5678, 100],
      ],
    },
    Interop: {},
    '1st': { [ImageIFD.Compression]: 6 },
    thumbnail: thumbnail.data.toString('latin1'),
  })
}

/** A JPEG with EXIF (camera, person, time, place, thumbnail), XMP, a comment, a colour profile's name and an orientation. */
export function samplePhoto(orientation = 1, width = 64, height = 32): Buffer {
  const plain = jpeg.encode({ width, height, data: quarters(width, height), comments: ['COMMENT-OF-THE-PHOTO'] }, 92)
  const withExif = Buffer.from(piexif.insert(exifDump(orientation), plain.data.toString('latin1')), 'latin1')
  // Behind the start of the image: XMP (Adobe, XMP part 3) and what is no profile but stands where one would.
  return Buffer.concat([
    withExif.subarray(0, 2),
    segment(0xe1, Buffer.concat([Buffer.from('http://ns.adobe.com/xap/1.0/\0'), xmp])),
    segment(0xed, Buffer.from('Photoshop 3.0\0PROFILE-OF-THE-SCREEN')),
    withExif.subarray(2),
  ])
}

export function chunk(type: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(body.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc32(named))
  return Buffer.concat([length, named, sum])
}

/** A PNG (pngjs) with text, compressed text, XMP, EXIF and a chunk of nobody's kind, before its pixels (PNG 3rd edition, 11.3). */
export function samplePng(extra: readonly Buffer[] = []): Buffer {
  const png = PNG.sync.write(Object.assign(new PNG({ width: 64, height: 32 }), { data: quarters() }))
  const head = 8 + 25
  return Buffer.concat([
    png.subarray(0, head),
    ...extra,
    chunk('tEXt', Buffer.from('Comment\0COMMENT-OF-THE-PHOTO')),
    chunk('zTXt', Buffer.concat([Buffer.from('Author\0\0'), deflateSync('ANNE-OF-THE-PIER')])),
    chunk('iTXt', Buffer.concat([Buffer.from('XML:com.adobe.xmp\0\0\0\0\0'), xmp])),
    chunk('eXIf', Buffer.from(exifDump(1).slice('Exif\0\0'.length), 'latin1')),
    chunk('prVt', Buffer.from('SERIAL-4711-0815')),
    png.subarray(head),
  ])
}

type WebP = {
  exif: Buffer
  xmp: Buffer
  setImageData(data: Buffer, options: { width: number; height: number; quality: number }): Promise<void>
  save(path: null, options?: { frames: readonly unknown[]; width: number; height: number }): Promise<Buffer>
}
const { Image } = createRequire(import.meta.url)('node-webpmux') as {
  Image: {
    initLib(): Promise<void>
    getEmptyImage(extended?: boolean): Promise<WebP>
    generateFrame(options: { img: WebP; delay: number }): Promise<unknown>
    save(path: null, options: { frames: readonly unknown[]; width: number; height: number }): Promise<Buffer>
  }
}

async function webpOf(): Promise<WebP> {
  await Image.initLib()
  const image = await Image.getEmptyImage(true)
  await image.setImageData(quarters(), { width: 64, height: 32, quality: 90 })
  return image
}

/** A WebP with EXIF and XMP. */
export async function sampleWebp(): Promise<Buffer> {
  const image = await webpOf()
  image.exif = Buffer.from(exifDump(1), 'latin1')
  image.xmp = xmp
  return image.save(null)
}

export async function movingWebp(): Promise<Buffer> {
  const img = await webpOf()
  const frames = [await Image.generateFrame({ img, delay: 100 }), await Image.generateFrame({ img, delay: 100 })]
  return Image.save(null, { frames, width: 64, height: 32 })
}

/** A picture of one colour that says it is `width` by `height`: a few hundred kilobytes that unpack to as many pixels. */
export function bomb(width: number, height: number, comes: 'in rows' | 'in passes' = 'in rows'): Buffer {
  const head = Buffer.alloc(13)
  head.writeUInt32BE(width)
  head.writeUInt32BE(height, 4)
  head.set([1, 0, 0, 0, comes === 'in passes' ? 1 : 0], 8)
  const rows = Buffer.alloc(Math.ceil(width / 8 + 1) * height)
  return Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ])
}
