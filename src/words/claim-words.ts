// Says what was read out of a claim, and what weighs how much in it.
import type { Fact } from '../readings/claims/facts.ts'
import type { ClaimFinding } from '../readings/claims/finding.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'

const units = { capacity: 'mAh', current: 'A', mass: 'g', energy: 'Wh', voltage: 'V', resistance: 'mΩ' } as const

/** One fact; `text` is what it was read from. */
export function sayFact(say: Say, fact: Fact, text: string): string {
  switch (fact.kind) {
    case 'format':
      return say('fact.format', { format: fact.format })
    case 'designation': {
      const { diameter_mm: diameter, height_mm: height } = fact.designation
      return say('fact.designation', { diameter, height, format: fact.format ?? 'none' })
    }
    case 'chemistry':
      return say('fact.chemistry', { chemistry: say(`chemistry.${fact.chemistry}`) })
    case 'capacity':
      return say('fact.capacity', { value: fact.mAh, grade: fact.grade })
    case 'energy':
      return say('fact.energy', { value: fact.Wh })
    case 'current':
      return say('fact.current', { value: fact.A, sort: fact.sort, seconds: fact.seconds ?? 'none' })
    case 'rate':
      return say('fact.rate', { value: fact.C, sort: fact.sort })
    case 'mass':
      return say('fact.mass', { value: fact.g })
    case 'voltage':
      return say('fact.voltage', { value: fact.V })
    case 'resistance':
      return say('fact.resistance', { value: fact.mΩ })
    case 'protection':
      return say('fact.protection', { has: fact.protected ? 'yes' : 'no' })
    case 'count':
      return say('fact.count', { cells: fact.cells })
    case 'unclear': {
      const typed = plain(text.slice(fact.span.from, fact.span.to))
      return say('fact.unclear', { typed, readings: sayReadings(say, fact.of, fact.readings) })
    }
  }
}

export function sayClaimFinding(say: Say, finding: ClaimFinding): string {
  const says = sayWeighed(say, finding)
  return 'outOfDate' in finding && finding.outOfDate ? say('weighed.out-of-date', { says }) : says
}

function sayWeighed(say: Say, finding: ClaimFinding): string {
  switch (finding.code) {
    case 'capacity': {
      const { value, best, cells, atNominalSize } = finding
      const density = atNominalSize ? wholeOf(say, atNominalSize.value) : 'none'
      return say('weighed.capacity', { value: Math.round(value), best, cells, density })
    }
    case 'energy-per-volume':
    case 'energy-per-mass':
      return say(`weighed.${finding.code}`, {
        value: Math.round(finding.value),
        best: finding.best,
        size: finding.size,
      })
    case 'continuous-current':
      return say('weighed.continuous-current', { value: finding.value, best: finding.best })
    case 'capacity-and-current':
      return say('weighed.capacity-and-current', {
        capacity: finding.capacity_mAh,
        current: finding.current_A,
        pairCapacity: finding.pair.capacity_mAh,
        pairCurrent: finding.pair.continuous_A,
      })
    case 'mass':
      return say('weighed.mass', { value: finding.value, lightest: finding.lightest_g })
    case 'energy-and-capacity':
      return say('weighed.energy-and-capacity', {
        energy: finding.energy_Wh,
        fromCapacity: Math.round(finding.fromCapacity_Wh * 10) / 10,
      })
    case 'two-formats':
      return say('weighed.two-formats', { formats: new Intl.ListFormat(say.locale).format(finding.formats) })
    case 'current-not-comparable':
    case 'capacity-not-comparable':
      return say(`weighed.${finding.because}`, { value: finding.value })
    case 'unclear-figure':
      return say('weighed.unclear-figure', { readings: sayReadings(say, finding.of, finding.readings) })
  }
}

const wholeOf = (say: Say, value: number): string =>
  new Intl.NumberFormat(say.locale, { maximumFractionDigits: 0 }).format(value)

function sayReadings(say: Say, of: keyof typeof units, readings: readonly number[]): string {
  const list = new Intl.ListFormat(say.locale, { type: 'disjunction' })
  return list.format(readings.map(value => say('answer.reading', { value, unit: units[of] })))
}
