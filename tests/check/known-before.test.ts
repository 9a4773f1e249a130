// What is known before a check begins: of a batch's masses, of a listing's claims, of a discharge; and what is left to be asked.
import { describe, expect, test } from 'vitest'
import type { CarriedFacts } from '../../src/check/known/carried-facts.ts'
import { factsOfBatch } from '../../src/check/known/facts-of-batch.ts'
import { factsOfClaim } from '../../src/check/known/facts-of-claim.ts'
import { factsOfLog } from '../../src/check/known/facts-of-log.ts'
import type { Answers } from '../../src/engine/answers.ts'
import { formatNames } from '../../src/ground/formats.ts'
import type { BatchFinding } from '../../src/readings/batch/weigh-batch.ts'
import type { RunReading } from '../../src/readings/discharge/measure-run.ts'
import { readClaims } from '../../src/readings/read-claims.ts'
import type { DischargeFinding } from '../../src/readings/weigh-discharge.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'

/** Answers by their option's id or their value. */
const said = (facts: CarriedFacts) =>
  Object.fromEntries(
    Object.entries(facts as Answers).map(([id, one]) => [
      id,
      one.kind === 'option' ? one.option : one.kind === 'reading' ? one.value : one.kind,
    ]),
  )

describe('a batch', () => {
  const batch = (more: object) =>
    said(factsOfBatch({ ...{ quantity: 'mass', found: 'one-lot' }, ...more } as unknown as BatchFinding))
  test.each([
    [0.01, 'close'],
    [0.025, 'close'],
    [0.026, 'apart'],
    [0.05, 'apart'],
    [0.051, 'far-apart'],
  ])('of masses %d of the middle apart', (share, spread) => {
    expect(batch({ share })).toEqual({ 'how-many': 'several', 'batch-masses': spread })
  })
  test('of capacities, or weighed too coarsely, answers nothing', () => {
    expect(batch({ share: 0.01, quantity: 'capacity' })).toEqual({})
    expect(batch({ share: 0.01, found: 'scale-too-coarse' })).toEqual({})
  })
})

describe('a claim', () => {
  test.each([
    ['18650 3000mAh', { format: '18650', 'claimed-capacity': 3000 }],
    ['4680 25Ah', { format: 'other', 'other-format': '46800', 'claimed-capacity': 25_000 }],
    // Two sizes in one listing are left to be asked.
    ['18650 21700 3000 mAh', { 'claimed-capacity': 3000 }],
    // Shared out among the cells side by side, and only where it is known how many these are.
    [
      '2S2P 18650 6000mAh 20A continuous',
      { format: '18650', 'claimed-capacity': 3000, 'claimed-current': 10, 'current-word': 'continuous' },
    ],
    // A continuous current before one up to a temperature, that before a bare one; the largest of its kind.
    ['15A 20A continuous 30A 80°C cutoff', { 'claimed-current': 20, 'current-word': 'continuous' }],
    ['30A 80°C cutoff', { 'claimed-current': 30, 'current-word': 'to-temperature' }],
    ['30A', { 'claimed-current': 30, 'current-word': 'bare' }],
    // Nothing can be held against a pulse, so its figure is not kept; what charges a cell is no discharge.
    ['30A pulse', { 'current-word': 'pulse' }],
    ['charge 4A', {}],
    ['LTO', { chemistry: 'titanate' }],
    ['LiFePO4 INR18650', { format: '18650' }],
    // All of them are lithium-ion: that name tells nothing.
    ['Li-ion 18650', { format: '18650' }],
    ['1.5V 2600mWh li-ion USB', { chemistry: 'fixed-voltage' }],
  ])('“%s”', (text, facts) => {
    expect(said(factsOfClaim(readClaims(text, 'en')))).toEqual(facts)
  })

  test('names each size as it is asked for: some at once, others behind another size, and what is neither as none of them', () => {
    const asks = shippedProgram().questions
    const options = (id: string) => {
      const answer = asks.get(id)?.answer
      return answer?.kind === 'options' ? answer.options.map(one => one.id) : []
    }
    for (const format of [...formatNames, 'a-size-nobody-asks-for']) {
      const facts = said(factsOfClaim([{ kind: 'format', format, from: 'trade-code' }] as never))
      const other = options('other-format').includes(format) ? format : 'none'
      expect(facts, format).toEqual(
        options('format').includes(format) ? { format } : { format: 'other', 'other-format': other },
      )
    }
  })

  test('answers in options that the shipped packs have', () => {
    const asks = shippedProgram().questions
    for (const text of ['10440', '33140', '14500 1.5V', '26650 30A pulse', '30A 80°C cutoff', '20700 LiFePO4'])
      for (const [id, answer] of Object.entries(factsOfClaim(readClaims(text, 'en')))) {
        const question = asks.get(id)?.answer
        if (answer?.kind === 'option')
          expect(question?.kind === 'options' && question.options.map(one => one.id)).toContain(answer.option)
      }
  })
})

describe('a discharge', () => {
  const run = (A: number | null, room_C: number | null = 21) =>
    ({ figures: { meanCurrent: { value: A } }, room_C }) as unknown as RunReading
  const found = (...codes: readonly DischargeFinding['code'][]) => codes.map(code => ({ code }) as DischargeFinding)
  const log = (of: RunReading, findings: readonly DischargeFinding[], label?: number) =>
    said(factsOfLog(of, findings, label))

  test.each([
    ['far-below-label', 'under-half'],
    ['below-label', 'half-to-80'],
    ['label-reached', 'from-80'],
  ] as const)('%s', (code, share) => {
    const facts = { 'claimed-capacity': 3000, 'measured-capacity': share, 'test-current': 'low' }
    expect(log(run(1), found(code), 3000)).toEqual(facts)
  })
  test.each([
    [1, 'low'],
    [1.01, 'middle'],
    [4.99, 'middle'],
    [5, 'high'],
  ])('at %d A', (A, current) => {
    expect(log(run(A), found('label-reached'), 3000)).toMatchObject({ 'test-current': current })
  })
  test('at a current that is not known, says nothing of it', () => {
    expect(log(run(null), found('label-reached'), 3000)).not.toHaveProperty('test-current')
  })
  test('of little counts only in a room whose temperature is known; what a label promised counts anyhow', () => {
    expect(log(run(1, null), found('below-label'), 3000)).toEqual({ 'claimed-capacity': 3000 })
    expect(log(run(1, null), found('label-reached'), 3000)).toMatchObject({ 'measured-capacity': 'from-80' })
  })
  test.each([
    ['too-hot-at-claimed-current', 'too-hot'],
    ['gives-out-at-claimed-current', 'gave-out'],
    ['holds-claimed-current', 'held'],
  ] as const)('%s answers the test under load, with a label or without', (code, held) => {
    expect(log(run(10), found('label-undecided', code))).toEqual({ 'load-test': held })
    expect(log(run(10), found(code), 3000)).toEqual({ 'claimed-capacity': 3000, 'load-test': held })
  })
  test('that was compared with nothing answers nothing but the label', () => {
    expect(log(run(1), found('label-undecided'), 3000)).toEqual({ 'claimed-capacity': 3000 })
    expect(log(run(1), found('label-reached'))).toEqual({})
  })
})
