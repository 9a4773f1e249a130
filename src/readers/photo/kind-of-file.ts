// What a file is, told from its first bytes alone; its name and what a server calls it say nothing.
import type { OtherKind } from './photo-reader.ts'

export type TakenKind = 'jpeg' | 'png' | 'webp'

/**
 * Bytes as hexadecimal at a place; a dot stands for any digit. JPEG, PNG, WebP, GIF, BMP, PDF, ZIP and video: WHATWG, MIME Sniffing
 * (image type pattern matching, and the table of other types). TIFF: TIFF 6.0, section 2. JPEG XL: ISO/IEC 18181-2. MZ and ELF:
 * common practice, no source.
 */
const signatures: readonly (readonly [kind: TakenKind | OtherKind, hex: string])[] = [
  ['jpeg', 'ffd8ff'],
  ['png', '89504e470d0a1a0a'],
  ['webp', '52494646........5745425056'],
  ['gif', '47494638'],
  ['bmp', '424d'],
  ['tiff', '49492a00'],
  ['tiff', '4d4d002a'],
  ['jxl', 'ff0a'],
  ['jxl', '0000000c4a584c20'],
  ['pdf', '255044462d'],
  ['zip', '504b0304'],
  ['video', '1a45dfa3'],
  ['program', '4d5a'],
  ['program', '7f454c46'],
]

/** Brands of files that begin with a box of type “ftyp” (ISO/IEC 14496-12; those of pictures: ISO/IEC 23008-12 and AVIF 1.1). */
const brands: Readonly<Record<string, OtherKind>> = {
  heic: 'heic',
  heix: 'heic',
  heim: 'heic',
  heis: 'heic',
  hevc: 'heic',
  hevx: 'heic',
  mif1: 'heic',
  msf1: 'heic',
  avif: 'avif',
  avis: 'avif',
}

/** The kind of a file; undefined for one that looks like nothing known. */
export function kindOfFile(bytes: Uint8Array): TakenKind | OtherKind | undefined {
  const head = Buffer.from(bytes.subarray(0, 16)).toString('hex')
  const kind = signatures.find(([, hex]) => new RegExp(`^${hex}`).test(head))?.[0]
  if (kind === 'png' || kind === 'webp') return moves(bytes, kind) ? 'animation' : kind
  if (kind !== undefined) return kind
  if (ascii(bytes, 4, 8) === 'ftyp') return brands[ascii(bytes, 8, 12)] ?? 'video'
  return /<svg[\s/>]/i.test(ascii(bytes, 0, 1024)) ? 'svg' : undefined
}

/** An animated PNG says so in a chunk before its pixels (PNG 3rd edition, 11.3.6.1), an animated WebP in its header (RFC 9649, 2.7). */
function moves(bytes: Uint8Array, kind: 'png' | 'webp'): boolean {
  if (kind === 'webp') return ascii(bytes, 12, 16) === 'VP8X' && ((bytes[20] ?? 0) & 0b10) !== 0
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let at = 8; at + 8 <= bytes.length; at += 12 + view.getUint32(at)) {
    const chunk = ascii(bytes, at + 4, at + 8)
    if (chunk === 'acTL') return true
    if (chunk === 'IDAT') return false
  }
  return false
}

const ascii = (bytes: Uint8Array, from: number, to: number): string =>
  Buffer.from(bytes.subarray(from, to)).toString('latin1')
