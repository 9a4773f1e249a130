// The packs' limits against the one table of ceilings: what it calls impossible is ruled out from there on, and not a step before.
import { describe, expect, test } from 'vitest'
import { type Answers, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import type { Option } from '../../src/engine/pack/pack.ts'
import {
  agesOn,
  type CellChemistry,
  capacityLines,
  currentLines,
  densityLines,
  masses,
  tradeOffs,
} from '../../src/ground/ceilings.ts'
import { type FormatName, formatNames, isFormat } from '../../src/ground/formats.ts'
import type { Verdict } from '../../src/ground/verdicts.ts'
import { shippedPacks, shippedProgram } from './shipped-programs.ts'

const program = shippedProgram()
const verdictOn = (answers: Answers): Verdict => judge(program, answers).verdict

const optionsOf = (question: string): readonly Option[] => {
  const answer = program.questions.get(question)?.answer
  return answer?.kind === 'options' ? answer.options : []
}
const first = optionsOf('format').map(one => one.id)
const others = optionsOf('other-format').map(one => one.id)
const asked = [...first, ...others].filter(isFormat)
const sized = (format: FormatName): Answers =>
  first.includes(format) ? { format: option(format) } : { format: option('other'), 'other-format': option(format) }

const kinds: readonly CellChemistry[] = ['nickel-or-cobalt', 'iron-phosphate', 'sodium-ion', 'titanate']
/** Sodium and titanate are sold in few sizes; in the others the lines of nickel and cobalt hold. */
const kindOf: Record<CellChemistry, readonly FormatName[]> = {
  'nickel-or-cobalt': asked,
  'iron-phosphate': asked,
  'sodium-ion': ['14500', '18650', '21700', '26650', '26700', '32700', '33140', '46800'],
  titanate: ['14500', '18650', '21700', '26650', '26700', '32700', '33140', '46800'],
}
const pairs = kinds.flatMap(kind => kindOf[kind].map(format => [kind, format] as const))

test('the sizes that are asked about are among those of the trade, and the table has lines for every one', () => {
  expect(asked.length).toBeGreaterThanOrEqual(16)
  for (const kind of kinds)
    for (const format of formatNames) {
      const { high, credible, impossible, best } = capacityLines(format, kind)
      expect(best).toBeLessThanOrEqual(credible)
      expect(high).toBeLessThanOrEqual(credible)
      if (asked.includes(format)) expect(credible).toBeLessThan(impossible)
      // A quarter or more beyond the best known figure; rounding to the 50 mAh of a label aside.
      if (capacityLines(format, kind).ground !== 'derived') expect(impossible).toBeGreaterThanOrEqual(1.24 * best)
    }
})

describe.each(pairs)('%s in a %s', (kind, format) => {
  const claims = (capacity: number): Answers => ({
    ...sized(format),
    chemistry: option(kind),
    'claimed-capacity': reading(capacity),
  })
  const { best, credible, impossible } = capacityLines(format, kind)
  test('what is impossible is ruled out, and nothing below it', () => {
    expect(verdictOn(claims(impossible))).toBe('ruled-out')
    expect(verdictOn(claims(impossible - 1))).not.toBe('ruled-out')
  })
  test('the best known figure is neither', () => expect(verdictOn(claims(best))).toBe('open'))
  if (kind === 'nickel-or-cobalt' || kind === 'iron-phosphate' || format === '18650')
    test('what no believable sheet shows is doubtful, and nothing below it', () => {
      expect(verdictOn(claims(credible + 1))).toBe('doubtful')
      expect(verdictOn(claims(credible))).toBe('open')
    })
})

describe('energy per litre and kilogram', () => {
  const formats: readonly (FormatName | null)[] = ['14500', '18650', '20700', '21700', '26650', null]
  test.each(formats)('of a %s', format => {
    const { perVolume_WhpL, perMass_Whpkg } = densityLines(format)
    const about = { format: option(format ?? 'other') }
    for (const [question, lines] of [
      ['energy-by-size', perVolume_WhpL],
      ['energy-by-weight', perMass_Whpkg],
    ] as const) {
      const at = (value: number): Answers => ({ ...about, [question]: reading(value) })
      expect(verdictOn(at(lines.impossible + 0.1))).toBe('ruled-out')
      expect(verdictOn(at(lines.impossible))).not.toBe('ruled-out')
      if (format) expect(verdictOn(at(lines.credible + 0.1))).toBe('doubtful')
      expect(verdictOn(at(lines.credible))).toBe('open')
    }
  })
  test.each(['iron-phosphate', 'sodium-ion', 'titanate'] as const)('of %s', kind => {
    const { perVolume_WhpL, perMass_Whpkg } = densityLines(null, kind)
    for (const [question, lines] of [
      ['energy-by-size', perVolume_WhpL],
      ['energy-by-weight', perMass_Whpkg],
    ] as const) {
      const at = (value: number): Answers => ({ chemistry: option(kind), [question]: reading(value) })
      expect(verdictOn(at(lines.impossible + 0.1))).toBe('ruled-out')
      expect(verdictOn(at(lines.credible + 0.1))).toBe('doubtful')
      expect(verdictOn(at(lines.credible))).toBe('open')
    }
  })
})

describe.each(Object.entries(currentLines))('currents of a %s', (format, { free, toTemperature }) => {
  const at = (current: number, word: string): Answers => ({
    ...sized(format as FormatName),
    'claimed-current': reading(current),
    'current-word': option(word),
  })
  test('beyond the line it is doubtful, at the best known it is not', () => {
    expect(verdictOn(at(toTemperature.credible + 0.1, 'to-temperature'))).toBe('doubtful')
    expect(verdictOn(at(toTemperature.best, 'to-temperature'))).toBe('open')
    expect(verdictOn(at(free.best, 'continuous'))).toBe('open')
    expect(verdictOn(at(toTemperature.credible + 0.1, 'pulse'))).toBe('open')
  })
})
test.each(Object.entries(tradeOffs))('capacity and current of a %s are traded for each other', (format, pairs) => {
  for (const pair of pairs) {
    const at = (capacity: number, current: number, word: string): Answers => ({
      ...sized(format as FormatName),
      'claimed-capacity': reading(capacity),
      'claimed-current': reading(current),
      'current-word': option(word),
    })
    expect(verdictOn(at(pair.capacity_mAh + 1, pair.free_A + 0.1, 'continuous'))).toBe('doubtful')
    expect(verdictOn(at(pair.capacity_mAh + 1, pair.free_A, 'continuous'))).toBe('open')
    expect(verdictOn(at(pair.capacity_mAh + 1, pair.toTemperature_A + 0.1, 'to-temperature'))).toBe('doubtful')
  }
})

test('no genuine mass of the table is held against its cell, with its best claim beside it', () => {
  for (const [kind, windows] of Object.entries(masses))
    for (const [format, window] of Object.entries(windows)) {
      if (!isFormat(format) || !asked.includes(format)) continue
      const { best } = capacityLines(format, kind as CellChemistry)
      const at = (mass: number, capacity: number): Answers => ({
        ...sized(format),
        chemistry: option(kind),
        mass: reading(mass),
        'claimed-capacity': reading(capacity),
      })
      expect(verdictOn(at(window.lightest, Math.min(best, (window.full?.capacity_mAh ?? best) - 100))), format).toBe(
        'open',
      )
      if (window.full) expect(verdictOn(at(window.full.lightest, window.full.capacity_mAh))).toBe('open')
      expect(verdictOn(at(window.heaviest, best))).toBe('open')
    }
})

test('signs by a ceiling age on the day the table gives', () => {
  const aged = shippedPacks.flatMap(pack => pack.rules.filter(rule => rule.id.startsWith('claim-beyond')))
  expect(aged.length).toBeGreaterThanOrEqual(8)
  for (const rule of aged) expect(rule.validUntil).toBe(agesOn)
})
