// What moderators see of who helped: counts in steps of five, the most first, and nothing of who helped less often.
import { expect, test } from 'vitest'
import { shownHelp } from '../../src/server/helper-log.ts'

test('counts go down to fives, fewer than five are not shown, and equals stand by their ids', () => {
  const sums = [
    { person: 'd', count: 5 },
    { person: 'a', count: 4 },
    { person: 'c', count: 14 },
    { person: 'b', count: 9 },
    { person: 'e', count: 0 },
  ]
  expect(shownHelp(sums)).toEqual([
    { person: 'c', count: 10 },
    { person: 'b', count: 5 },
    { person: 'd', count: 5 },
  ])
})
