// Collects the head of a log, settles how it is written, and reads the rest row by row.
import type { LogAnswers, LogQuestion, LogRefusal } from './answers.ts'
import { type Assigned, assignColumns, timeKindOf } from './assign-columns.ts'
import { unitsOfColumns } from './cell-units.ts'
import { growing, type RawColumns } from './growing.ts'
import { type ChargeCount, chargeCount, counterColumn } from './own-counter.ts'
import { type BrokenRows, type RowReader, rowReader } from './row-reader.ts'
import { type Encoding, firstLineEnd, sniff } from './sniff.ts'
import { mostColumns, type SplitHead, splitHead } from './split-head.ts'
import { shapeOf, type TableShape } from './table-shape.ts'
import { isTwoPartClock, stampOrder, type TimeKind, timeReader } from './time-cell.ts'
import { hasWrappedLines, type LineUnwrapper, lineUnwrapper } from './unwrap-lines.ts'

/** How the table is written. */
export type Table = {
  readonly split: SplitHead
  readonly shape: TableShape
  readonly columns: Assigned
  readonly timeKind: TimeKind
  readonly twoPartClock: boolean
}

export type Body = {
  readonly encoding: Encoding
  readonly table: Table
  readonly raw: RawColumns
  readonly broken: BrokenRows
  readonly restarts: readonly number[]
  /** The charge by the file's own counter, over all its runs, mAh; null without one. */
  readonly counted_mAh: number | null
}

export type Stopped =
  | { readonly ok: false; readonly refusal: LogRefusal }
  | { readonly ok: false; readonly question: LogQuestion }

export type BodyReader = {
  push(chunk: Uint8Array): 'more' | 'enough'
  end(): Body | Stopped
}

/** Bytes looked at to find out the dialect. */
const headBytes = 32_768

export function openBody(answers: LogAnswers, mostRows: number): BodyReader {
  let waiting: Uint8Array[] = []
  let waitingBytes = 0
  let started:
    | {
        reader: RowReader
        table: Table
        encoding: Encoding
        decode: (chunk: Uint8Array) => Uint8Array
        unwrap: LineUnwrapper | null
        counted: () => number | null
      }
    | undefined
  let stopped: Stopped | undefined
  const into = growing()

  const stop = (refusal: LogRefusal | null) => {
    if (refusal) stopped ??= { ok: false, refusal }
  }
  const start = (whole: boolean) => {
    const bytes = joined(waiting)
    waiting = []
    const sniffed = sniff(bytes.subarray(0, headBytes))
    if (!sniffed.ok) return stop(sniffed.refusal)
    const decode = decoderOf(sniffed.encoding)
    const decoded = decode(bytes.subarray(sniffed.skip))
    const readable = sniffed.blankNuls ? withoutNuls(decoded) : decoded
    const unwrap = hasWrappedLines(new TextDecoder().decode(readable.subarray(0, headBytes))) ? lineUnwrapper() : null
    const text = unwrap ? unwrapped(unwrap, readable, whole) : readable
    const end = whole ? text.length : lastLineEnd(text)
    const wide = end === 0 ? columnsOf(text) : 0
    if (wide > mostColumns) return stop({ code: 'too-many-columns', columns: wide, most: mostColumns })
    if (end === 0 && !whole) return stop({ code: 'row-too-long', row: 1, longest: headBytes })
    const head = text.subarray(0, Math.min(end, 2 * headBytes))
    const read = readHead(head, answers)
    if ('ok' in read) {
      stopped ??= read
      return
    }
    const { table, readTime } = read
    const { columns, split, shape } = table
    const counter = counterColumn(shape.columns, split.mark, columns)
    const count: ChargeCount = chargeCount()
    const reader = rowReader(
      {
        delimiter: split.delimiter,
        mark: split.mark,
        time: columns.time,
        voltage: columns.voltage,
        current: columns.current,
        temperature: columns.temperature ?? -1,
        mode: columns.mode ?? -1,
        counter: counter?.column ?? -1,
        onCount: count.push,
        units: unitsOfColumns(shape.columns, columns, split.mark, counter),
        readTime,
        headerCells: shape.headerCells,
        firstRowNumber: shape.firstRowNumber,
        mostRows,
      },
      into,
    )
    const counted = () => {
      const total = count.total()
      return counter && total !== null ? total * counter.toMilliampereHours : null
    }
    started = { reader, table, encoding: sniffed.encoding, decode, unwrap, counted }
    stop(reader.push(text.subarray(shape.firstRowAt)))
  }

  return {
    push(chunk) {
      if (stopped) return 'enough'
      if (started) {
        const text = started.decode(chunk)
        stop(started.reader.push(started.unwrap ? started.unwrap.push(text) : text))
      } else {
        waiting.push(chunk)
        waitingBytes += chunk.length
        if (waitingBytes >= headBytes) start(false)
      }
      return stopped ? 'enough' : 'more'
    },
    end() {
      if (!stopped && !started) start(true)
      if (!stopped && started?.unwrap) stop(started.reader.push(started.unwrap.end()))
      if (!stopped && started) stop(started.reader.end())
      if (stopped || !started) return stopped ?? { ok: false, refusal: { code: 'empty' } }
      const { reader, table, encoding } = started
      const { broken, restarts } = reader
      return { encoding, table, raw: into.columns(), broken, restarts, counted_mAh: started.counted() }
    },
  }
}

function readHead(
  head: Uint8Array,
  answers: LogAnswers,
): { table: Table; readTime: ((text: string) => number) | null } | Stopped {
  const text = new TextDecoder('utf-8').decode(head)
  if (text.trim() === '') return { ok: false, refusal: { code: 'empty' } }
  const split = splitHead(text)
  if (!split.ok) return split
  const shape = shapeOf(split.value)
  if (!shape.ok) return shape
  const { mark } = split.value
  const assigned = assignColumns(shape.value, mark, answers)
  if (!assigned.ok) return assigned
  const { cells, header } = shape.value.columns[assigned.columns.time]!
  const timeKind = timeKindOf(cells, mark) ?? 'number'
  const twoPart = timeKind === 'clock' && cells.filter(cell => cell !== '').every(isTwoPartClock)
  // "mm:ss" in the header, or decimals, settle it; "hh:mm" does so the other way.
  const said = /^h+:m+$/i.test(header.unit) ? 'h:mm' : 'm:ss'
  const settled = /^(h+:m+|m+:s+|min:sec)$/i.test(header.unit) || cells.some(cell => /^\d+:\d+[.,]\d/.test(cell))
  const readTime = timeKind === 'number' ? null : timeReader(timeKind, settled ? said : 'm:ss', stampOrder(cells))
  const table = {
    split: split.value,
    shape: shape.value,
    columns: assigned.columns,
    timeKind,
    twoPartClock: twoPart && !settled,
  }
  return { table, readTime }
}

/** The text with blanks for the NUL bytes of its first line. */
function withoutNuls(text: Uint8Array): Uint8Array {
  const blanked = text.slice()
  const end = firstLineEnd(blanked)
  for (let at = 0; at < end; at++) if (blanked[at] === 0) blanked[at] = 32
  return blanked
}

/** The first lines without the quotes around them; all of the text, where it is `whole`. */
function unwrapped(unwrap: LineUnwrapper, text: Uint8Array, whole: boolean): Uint8Array {
  const first = unwrap.push(text)
  return whole ? joined([first, unwrap.end()]) : first
}

/** From bytes as they come to bytes in UTF-8. */
function decoderOf(encoding: Encoding): (chunk: Uint8Array) => Uint8Array {
  if (encoding === 'utf-8') return chunk => chunk
  const decoder = new TextDecoder(encoding)
  const encoder = new TextEncoder()
  return chunk => encoder.encode(decoder.decode(chunk, { stream: true }))
}

/** One past the last line end, 0 if there is none. */
function lastLineEnd(bytes: Uint8Array): number {
  return Math.max(bytes.lastIndexOf(10), bytes.lastIndexOf(13)) + 1
}

/** The columns of a single endless line, by its commonest delimiter. */
function columnsOf(bytes: Uint8Array): number {
  const counts = new Map<number, number>([44, 59, 9, 124].map(byte => [byte, 1]))
  for (const byte of bytes) if (counts.has(byte)) counts.set(byte, counts.get(byte)! + 1)
  return Math.max(...counts.values())
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  if (chunks.length === 1) return chunks[0]!
  const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const chunk of chunks) {
    all.set(chunk, at)
    at += chunk.length
  }
  return all
}
