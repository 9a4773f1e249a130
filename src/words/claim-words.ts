// Says what was read out of a claim, and what weighs how much in it.
import type { Fact } from '../readings/claims/facts.ts'
import type { ClaimFinding } from '../readings/claims/finding.ts'
import type { WeighedClaims } from '../readings/weigh-claims.ts'
import { listIn, wholeIn } from './formatters.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'

const units = { capacity: 'mAh', current: 'A', mass: 'g', energy: 'Wh', voltage: 'V', resistance: 'mΩ' } as const

/** One fact; `text` is what it was read from. */
export function sayFact(say: Say, fact: Fact, text: string): string {
  switch (fact.kind) {
    case 'format':
      return say('fact.format', { format: fact.format, doubled: yes(fact.from === 'doubled-digit') })
    case 'designation': {
      const { diameter_mm: diameter, height_mm: height } = fact.designation
      return say('fact.designation', { diameter, height, format: fact.format ?? 'none' })
    }
    case 'chemistry':
      return say('fact.chemistry', { chemistry: say(`chemistry.${fact.chemistry}`) })
    case 'capacity':
      return say('fact.capacity', { value: fact.mAh, grade: fact.grade, assumed: yes(fact.assumed) })
    case 'energy':
      return say('fact.energy', { value: fact.Wh, milli: yes(fact.milli) })
    case 'current':
      return say('fact.current', {
        value: fact.A,
        sort: fact.sort,
        seconds: fact.seconds ?? 'none',
        limit: fact.limit_C ?? 'none',
      })
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
    case 'battery':
      return say('fact.battery', {
        how: fact.inParallel === null ? fact.from : fact.inSeries === null ? 'parallel' : 'both',
        series: fact.inSeries ?? 1,
        parallel: fact.inParallel ?? 1,
      })
    case 'unclear': {
      const typed = plain(text.slice(fact.span.from, fact.span.to))
      return say('fact.unclear', { typed, readings: sayReadings(say, fact.of, fact.readings) })
    }
  }
}

const yes = (is: boolean | undefined): 'yes' | 'no' => (is ? 'yes' : 'no')

export function sayClaimFinding(say: Say, finding: ClaimFinding): string {
  const says = sayWeighed(say, finding)
  return 'outOfDate' in finding && finding.outOfDate ? say('weighed.out-of-date', { says }) : says
}

function sayWeighed(say: Say, finding: ClaimFinding): string {
  switch (finding.code) {
    case 'capacity': {
      const { value, best, cells, atNominalSize, weight } = finding
      const density = atNominalSize ? wholeOf(say, atNominalSize.value) : 'none'
      const assumed = yes(finding.assumed)
      return say('weighed.capacity', { value: Math.round(value), best, cells, density, weight, assumed })
    }
    case 'energy':
      return say('weighed.energy', { value: tenths(finding.value), best: tenths(finding.best) })
    case 'energy-per-volume':
    case 'energy-per-mass':
      return say(`weighed.${finding.code}`, {
        value: Math.round(finding.value),
        best: finding.best,
        size: finding.size,
      })
    case 'continuous-current':
      return say('weighed.continuous-current', {
        value: tenths(finding.value),
        best: finding.best,
        upTo: finding.upTo === 'temperature' ? 'temperature' : 'none',
        weight: finding.weight,
      })
    case 'capacity-and-current':
      return say('weighed.capacity-and-current', {
        capacity: Math.round(finding.capacity_mAh),
        current: tenths(finding.current_A),
        pairCapacity: finding.pair.capacity_mAh,
        pairCurrent: finding.pair.continuous_A,
      })
    case 'mass':
      return say('weighed.mass', { value: finding.value, lightest: finding.lightest_g })
    case 'energy-and-capacity':
      return say('weighed.energy-and-capacity', {
        energy: finding.energy_Wh,
        fromCapacity: tenths(finding.fromCapacity_Wh),
        volts: finding.volts,
      })
    case 'two-formats':
      return say('weighed.two-formats', { formats: listIn(say.locale, 'conjunction').format(finding.formats) })
    case 'current-not-comparable':
    case 'capacity-not-comparable':
      return say(`weighed.${finding.because}`, { value: tenths(finding.value) })
    case 'milliwatt-hours': {
      const { value, capacity_mAh, volts } = finding
      return say('weighed.milliwatt-hours', {
        value: Math.round(value * 1000),
        capacity: Math.round(capacity_mAh),
        volts,
      })
    }
    case 'unclear-figure':
      return say('weighed.unclear-figure', { readings: sayReadings(say, finding.of, finding.readings) })
  }
}

/** That nothing speaks against a claim, only as far as something could be compared; nothing where something does. */
export function sayNothingFound(say: Say, { findings, compared }: WeighedClaims): string[] {
  if (findings.some(({ weight }) => weight !== 'not-comparable')) return []
  return [say(compared.length > 0 ? 'claim.nothing' : 'claim.nothing-compared')]
}

const tenths = (value: number): number => Math.round(value * 10) / 10

const wholeOf = (say: Say, value: number): string => wholeIn(say.locale).format(value)

function sayReadings(say: Say, of: keyof typeof units, readings: readonly number[]): string {
  const said = readings.map(value => say('answer.reading', { value, unit: units[of] }))
  return listIn(say.locale, 'disjunction').format(said)
}
