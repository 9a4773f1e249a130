// What is said of a log besides the file: what the label claims and how the test was done; typed values read and checked.

import type { MeasuredQuantity } from '../../ground/quantities.ts'
import type { LogFile } from '../../readers/log/log-reader.ts'
import type { MenuInstrument } from '../../readings/instrument.ts'
import type { LogOptions } from '../../readings/open-log.ts'
import { readTyped } from '../../readings/read-typed.ts'
import type { DischargeClaim } from '../../readings/weigh-discharge.ts'
import type { Say } from '../../words/say.ts'
import { sayTypedRefusal, type TypedField } from '../../words/typed-words.ts'

/** How the test was done, and the claim it is held against. */
export type LogTest = { readonly options: LogOptions; readonly claim: DischargeClaim }

/** Plain JSON, so that it can be kept while a question about the file is open. */
export type LogRequest = LogTest & { readonly file: LogFile }

/** As a person gives it; null where nothing was said. */
export type SaidOfTest = Readonly<Record<TypedPart | 'instrument' | 'wires' | 'chemistry', string | null>>

export type TestReading =
  | { readonly ok: true; readonly test: LogTest }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** A full iron phosphate cell rests at about 3.3 to 3.4 V (from memory); nickel and cobalt kinds are the reader's own default. */
const fullIronPhosphate_V = 3.36

const parts = {
  label: { quantity: 'capacity', field: 'capacity' },
  current: { quantity: 'current', field: 'claimed-current' },
  cutoff: { quantity: 'voltage', field: 'cutoff' },
  room: { quantity: 'temperature', field: 'room' },
} as const satisfies Record<string, { quantity: MeasuredQuantity; field: TypedField }>
type TypedPart = keyof typeof parts

/** Reads what was said of a test; numbers as `locale` writes them. One sentence for each value that cannot be read. */
export function readTest(say: Say, said: SaidOfTest, locale: string): TestReading {
  const sentences: string[] = []
  const read = (name: TypedPart): number | undefined => {
    const text = said[name]
    if (text === null) return undefined
    const { quantity, field } = parts[name]
    const reading = readTyped(text, quantity, locale)
    if (reading.ok) return reading.value
    sentences.push(sayTypedRefusal(say, { field, refusal: reading.refusal }))
    return undefined
  }
  const [label_mAh, continuous_A, cutoff_V, room_C] = [read('label'), read('current'), read('cutoff'), read('room')]
  if (sentences.length > 0) return { ok: false, sentences }
  const options: LogOptions = {
    instrument: { kind: (said.instrument ?? 'hobby-load') as MenuInstrument },
    wiring: said.wires === 'four-wire' ? 'four-wire' : 'two-wire',
    ...(said.chemistry === 'iron-phosphate' && { full_V: fullIronPhosphate_V }),
    ...(cutoff_V !== undefined && { cutoff_V }),
    ...(room_C !== undefined && { room_C }),
    ...(label_mAh !== undefined && { claimed_mAh: label_mAh }),
  }
  const claim: DischargeClaim = {
    ...(label_mAh !== undefined && { label_mAh }),
    ...(continuous_A !== undefined && { continuous_A }),
  }
  return { ok: true, test: { options, claim } }
}

/** What can be said of a test that was read without it: null where nothing was typed. */
export type SaidLater = Readonly<Record<TypedPart, string | null>>

/** The request with what was typed afterwards; what had been said before stays, unless it is said anew. */
export function withClaim(
  say: Say,
  request: LogRequest,
  said: SaidLater,
  locale: string,
): { readonly ok: true; readonly request: LogRequest } | Extract<TestReading, { ok: false }> {
  const read = readTest(say, { ...said, instrument: null, wires: null, chemistry: null }, locale)
  if (!read.ok) return read
  // How it was measured is not asked again.
  const { instrument: _instrument, wiring: _wiring, ...figures } = read.test.options
  const options: LogOptions = { ...request.options, ...figures }
  return { ok: true, request: { ...request, options, claim: { ...request.claim, ...read.test.claim } } }
}
