// What a person sends with a log: the file, what the label claims and how the test was done; typed values read and checked.
import type { ChatInputCommandInteraction } from 'discord.js'
import type { MenuInstrument } from '../readings/instrument.ts'
import type { LogOptions } from '../readings/open-log.ts'
import type { Quantity } from '../readings/quantity.ts'
import { readTyped } from '../readings/read-typed.ts'
import type { DischargeClaim } from '../readings/weigh-discharge.ts'
import type { LogFile } from './log-reader.ts'
import type { Say } from './words/say.ts'
import { sayTypedRefusal, type TypedField } from './words/typed-words.ts'

/** Plain JSON, so that it can be kept while a question about the file is open. */
export type LogRequest = {
  readonly file: LogFile
  readonly options: LogOptions
  readonly claim: DischargeClaim
}

export type Requesting =
  | { readonly ok: true; readonly request: LogRequest }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** A full iron phosphate cell rests at about 3.3 to 3.4 V (from memory); nickel and cobalt kinds are the reader's own default. */
const fullIronPhosphate_V = 3.36

const typed = {
  label: { quantity: 'capacity', field: 'capacity' },
  current: { quantity: 'current', field: 'claimed-current' },
  cutoff: { quantity: 'voltage', field: 'cutoff' },
  room: { quantity: 'temperature', field: 'room' },
} as const satisfies Record<string, { quantity: Quantity; field: TypedField }>
type TypedOption = keyof typeof typed

export function readLogRequest(say: Say, interaction: ChatInputCommandInteraction): Requesting {
  const { options } = interaction
  const { url, size } = options.getAttachment('file', true)
  const sentences: string[] = []
  const read = (name: TypedOption): number | undefined => {
    const text = options.getString(name)
    if (text === null) return undefined
    const { quantity, field } = typed[name]
    const reading = readTyped(text, quantity, interaction.locale)
    if (reading.ok) return reading.value
    sentences.push(sayTypedRefusal(say, { field, refusal: reading.refusal }))
    return undefined
  }
  const [label_mAh, continuous_A, cutoff_V, room_C] = [read('label'), read('current'), read('cutoff'), read('room')]
  if (sentences.length > 0) return { ok: false, sentences }
  return {
    ok: true,
    request: {
      file: { url, size },
      options: {
        instrument: { kind: (options.getString('instrument') ?? 'hobby-load') as MenuInstrument },
        wiring: options.getString('wires') === 'four-wire' ? 'four-wire' : 'two-wire',
        ...(options.getString('chemistry') === 'iron-phosphate' && { full_V: fullIronPhosphate_V }),
        ...(cutoff_V !== undefined && { cutoff_V }),
        ...(room_C !== undefined && { room_C }),
        ...(label_mAh !== undefined && { claimed_mAh: label_mAh }),
      },
      claim: {
        ...(label_mAh !== undefined && { label_mAh }),
        ...(continuous_A !== undefined && { continuous_A }),
      },
    },
  }
}
