// Looks at the first bytes of a file: is it text, and in which encoding, or what else is it?
import type { LogRefusal } from './answers.ts'

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'
export type Sniffed =
  /** `skip` bytes of byte order mark come first; `blankNuls`: the first line holds NUL bytes, to be read as blanks. */
  | { readonly ok: true; readonly encoding: Encoding; readonly skip: number; readonly blankNuls?: true }
  | { readonly ok: false; readonly refusal: LogRefusal }

const starts: readonly (readonly [readonly number[], 'zip' | 'image' | 'pdf' | 'compressed' | 'binary'])[] = [
  [[0x50, 0x4b, 0x03, 0x04], 'zip'],
  [[0x50, 0x4b, 0x05, 0x06], 'zip'],
  [[0x89, 0x50, 0x4e, 0x47], 'image'],
  [[0xff, 0xd8, 0xff], 'image'],
  [[0x47, 0x49, 0x46, 0x38], 'image'],
  [[0x52, 0x49, 0x46, 0x46], 'image'],
  [[0x42, 0x4d, 0xff], 'image'],
  [[0x25, 0x50, 0x44, 0x46], 'pdf'],
  [[0x1f, 0x8b], 'compressed'],
  [[0x37, 0x7a, 0xbc, 0xaf], 'compressed'],
  [[0x52, 0x61, 0x72, 0x21], 'compressed'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'binary'],
]

/** Sniffs the head of a file, at least its first kilobyte unless the file is shorter. */
export function sniff(head: Uint8Array): Sniffed {
  if (head.length === 0) return refuse({ code: 'empty' })
  for (const [magic, looksLike] of starts) {
    if (magic.every((byte, at) => head[at] === byte)) {
      return refuse({
        code: 'not-text',
        looksLike: looksLike === 'zip' && isSpreadsheet(head) ? 'spreadsheet' : looksLike,
      })
    }
  }
  if (head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf) return { ok: true, encoding: 'utf-8', skip: 3 }
  if (head[0] === 0xff && head[1] === 0xfe) return { ok: true, encoding: 'utf-16le', skip: 2 }
  if (head[0] === 0xfe && head[1] === 0xff) return { ok: true, encoding: 'utf-16be', skip: 2 }
  const { nuls, firstNul, lastNul, oddNuls, controls } = count(head)
  if (nuls > 0) {
    // Latin text in UTF-16 has every other byte zero.
    const pairs = Math.floor(head.length / 2)
    if (pairs >= 4 && oddNuls > 0.9 * pairs && oddNuls === nuls) return { ok: true, encoding: 'utf-16le', skip: 0 }
    if (pairs >= 4 && nuls > 0.9 * pairs && oddNuls === 0) return { ok: true, encoding: 'utf-16be', skip: 0 }
    if (controls > 0.1 * head.length) return refuse({ code: 'not-text', looksLike: 'binary' })
    // Some devices write the end of a text into their first line; anywhere else a NUL is damage.
    if (lastNul < firstLineEnd(head)) return { ok: true, encoding: encodingOf(head), skip: 0, blankNuls: true }
    return refuse({ code: 'nul-bytes', at: firstNul })
  }
  if (controls > 0.02 * head.length) return refuse({ code: 'not-text', looksLike: 'binary' })
  return { ok: true, encoding: encodingOf(head), skip: 0 }
}

const encodingOf = (head: Uint8Array): Encoding => (isUtf8(head) ? 'utf-8' : 'windows-1252')

/** One past the first line that holds anything. */
export function firstLineEnd(bytes: Uint8Array): number {
  let written = false
  for (let at = 0; at < bytes.length; at++) {
    const isEnd = bytes[at] === 10 || bytes[at] === 13
    if (isEnd && written) return at
    if (!isEnd && bytes[at]! > 32) written = true
  }
  return 0
}

function count(head: Uint8Array) {
  let [nuls, firstNul, lastNul, oddNuls, controls] = [0, -1, -1, 0, 0]
  for (let at = 0; at < head.length; at++) {
    const byte = head[at]!
    if (byte === 0) {
      if (firstNul < 0) firstNul = at
      lastNul = at
      nuls++
      if (at % 2 === 1) oddNuls++
    } else if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13 && byte !== 12) controls++
  }
  return { nuls, firstNul, lastNul, oddNuls, controls: controls + nuls }
}

function isUtf8(head: Uint8Array): boolean {
  try {
    // A sequence cut off by the end of the head is no error, so the decoder is told that more may come.
    new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true })
    return true
  } catch {
    return false
  }
}

/** A zip that names the parts of an office document in its first entries. */
function isSpreadsheet(head: Uint8Array): boolean {
  const text = new TextDecoder('latin1').decode(head.subarray(0, 4096))
  return text.includes('[Content_Types].xml') || text.includes('xl/') || text.includes('opendocument.spreadsheet')
}

function refuse(refusal: LogRefusal): Sniffed {
  return { ok: false, refusal }
}
