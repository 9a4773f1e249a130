// Puts a PNG of indexed colours together (W3C "Portable Network Graphics", third edition: colour type 3).
import { crc32 } from 'node:zlib'
import type { Indexed } from './few-colours.ts'

const pngSignature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)

function chunk(type: string, data: Uint8Array): Buffer {
  const bytes = Buffer.alloc(data.length + 12)
  bytes.writeUInt32BE(data.length, 0)
  bytes.write(type, 4, 'latin1')
  bytes.set(data, 8)
  bytes.writeUInt32BE(crc32(bytes.subarray(4, data.length + 8)), data.length + 8)
  return bytes
}

function header(width: number, height: number): Buffer {
  const data = Buffer.alloc(13)
  data.writeUInt32BE(width, 0)
  data.writeUInt32BE(height, 4)
  // Eight bits a pixel, indexed; the one compression and the one filter method there is; not interlaced.
  data.set([8, 3, 0, 0, 0], 8)
  return data
}

/** The rows of a picture `width` px wide, each behind its filter byte: none, since neighbouring indices say nothing of each other. */
export function scanlines({ indices }: Indexed, width: number): Uint8Array {
  const height = indices.length / width
  const rows = new Uint8Array((width + 1) * height)
  for (let y = 0; y < height; y++) rows.set(indices.subarray(y * width, (y + 1) * width), y * (width + 1) + 1)
  return rows
}

/** The bytes of the file; `packed` are the scanlines as a zlib stream. */
export const indexedPng = ({ indices, palette }: Indexed, width: number, packed: Uint8Array): Buffer =>
  Buffer.concat([
    pngSignature,
    chunk('IHDR', header(width, indices.length / width)),
    chunk(
      'PLTE',
      palette.filter((_, i) => i % 4 !== 3),
    ),
    chunk(
      'tRNS',
      palette.filter((_, i) => i % 4 === 3),
    ),
    chunk('IDAT', packed),
    chunk('IEND', new Uint8Array()),
  ])
