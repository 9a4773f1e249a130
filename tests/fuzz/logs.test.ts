// A short run of the fuzz over mutated logs; the long one is node tests/fuzz/logs.ts 100000.
import { expect, test } from 'vitest'
import { fuzzLogs } from './logs.ts'

test('1,500 mutated logs: no crash, no hang, every figure a number', () => {
  const report = fuzzLogs(1500, 20_260_301)
  expect(report.failures).toEqual([])
  // The mutations reach the reading as well as many different refusals.
  expect(report.outcomes['read']).toBeGreaterThan(100)
  expect(Object.keys(report.outcomes).length).toBeGreaterThan(8)
})
