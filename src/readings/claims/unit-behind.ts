// The unit that stands behind a number of a claim, and what figure the two make.
import { type Dimension, type Unit, unitKey, unitsWritten } from '../typed/units.ts'

export type ClaimedKind = 'capacity' | 'current' | 'mass' | 'energy' | 'voltage' | 'resistance' | 'rate'

export type UnitBehind = {
  readonly kind: ClaimedKind
  readonly factor: number
  /** Written with an m that changes what the figure looks like: mWh. */
  readonly milli: boolean
  /** One past its last character. */
  readonly to: number
}

const kinds: Partial<Record<Dimension, ClaimedKind>> = {
  capacity: 'capacity',
  current: 'current',
  mass: 'mass',
  energy: 'energy',
  voltage: 'voltage',
  resistance: 'resistance',
}

/** Letters of a unit typed in another order, as they are found on listings; read in claims alone. */
const swapped: Readonly<
  Record<string, { readonly kind: ClaimedKind; readonly factor: number; readonly milli: boolean }>
> = {
  mha: { kind: 'capacity', factor: 1, milli: false },
  amh: { kind: 'capacity', factor: 1, milli: false },
  ahm: { kind: 'capacity', factor: 1, milli: false },
  hma: { kind: 'capacity', factor: 1, milli: false },
  mhw: { kind: 'energy', factor: 0.001, milli: true },
  wmh: { kind: 'energy', factor: 0.001, milli: true },
  hw: { kind: 'energy', factor: 1, milli: false },
}

/** Only in these capitals, right behind the number: "3ha" is land. */
const swappedAh = { kind: 'capacity', factor: 1000, milli: false } as const

// At most three words, of at most two dozen letters each: no unit is longer, and no text makes this search for long.
const unitText = /[ \u00a0\u202f-]?([\p{L}Ωµμ°"″]{1,24}(?:[ .·*-]?\p{L}{1,24}){0,2})/uy
const unitWord = /[\p{L}Ωµμ°"″]+/gu

/** The unit that begins at `at`, in as many words as make one: "milliamp hours" before "milliamp". */
export function unitBehind(text: string, at: number): UnitBehind | null {
  unitText.lastIndex = at
  const match = unitText.exec(text)
  if (!match) return null
  const gap = match[0].length - match[1]!.length
  const ends = [...match[1]!.matchAll(unitWord)].map(word => word.index + word[0].length).reverse()
  for (const end of ends) {
    const written = match[1]!.slice(0, end)
    const to = at + gap + end
    // "from 30 a 40 g", "de 30 à 40": a lower-case a apart from its number is a word. 10C is a rate, 20 °C is not.
    if (/^[aà]$/u.test(written) && gap > 0) continue
    if (/^c$/i.test(written)) return gap === 0 ? { kind: 'rate', factor: 1, milli: false, to } : null
    const unit = unitsWritten(written).find(each => each.measures in kinds)
    if (unit) return { kind: kinds[unit.measures]!, factor: factorOf(unit, written), milli: unit.symbol === 'mWh', to }
    const meant = written === 'hA' ? swappedAh : swapped[written.toLowerCase()]
    if (meant) return { ...meant, to }
  }
  return null
}

function factorOf(unit: Unit, written: string): number {
  // No cell has a resistance of megohms; in a claim "MΩ" can only be a slip for mΩ.
  return unit.measures === 'resistance' && unitKey(written).startsWith('m') ? 1 : unit.factor
}
