// What the weights of cells bought together say, through the real client; what could not be read; and the check that starts from it.
import { describe, expect, test } from 'vitest'
import { text } from '../../src/practice/seen.ts'
import { caution, messageOf, pressed } from './hands.ts'
import { useRoom } from './in-room.ts'

const { wren, ilse } = useRoom()
const batch = async (options: Record<string, string>) => messageOf(await wren().run('batch', options))

describe('/batch', () => {
  // Masses of two series of one laboratory's failure databank (revision 2, 2024), which the readings' own tests name in full.
  test('cells of one lot are told that this shows nothing, with the caution', async () => {
    const seen = text(await batch({ figures: '45.1, 45.2, 45.1, 45.3 g' }))
    expect(seen).toMatch(/as close together as the cells of one batch/)
    expect(seen).toMatch(/shows nothing about what they are/)
    expect(seen).toMatch(caution)
  })

  test('a mixed batch is no one lot, which is not “counterfeit”', async () => {
    const seen = text(await batch({ figures: '45.1, 38.4, 45.2, 38.6, 45.1, 38.5 g' }))
    expect(seen).toMatch(/not from one batch/)
    expect(seen).toMatch(/does not mean “counterfeit”/)
    expect(seen).toMatch(/two groups: 38.4–38.6 and 45.1–45.2 g/)
  })

  test('capacities are weighed as capacities, and start no check with the weights answered', async () => {
    const seen = await batch({ figures: '2950, 2400, 2960 mAh', quantity: 'capacity' })
    expect(text(seen)).toMatch(/What the capacities[\s\S]*Use alone makes cells unequal/)
    expect(text(seen)).not.toMatch(/Check one of these cells/)
  })

  test.each([
    ['45.1', /at least 2 are needed/],
    ['hello @everyone', /There is no figure in it/],
    ['43,1,44,9,46,8', /Put a semicolon between the figures/],
    ['45.1, 451, 45.2 g', /about ten times more or less than the others/],
    ['0, 0, 0 g', /Nothing is written there|0 g/],
  ])('“%s” gets a sentence that says what to change, under what was typed', async (figures, says) => {
    const seen = text(await batch({ figures }))
    expect(seen).toMatch(says)
    expect(seen).toContain('> ')
    expect(seen).not.toContain('> hello @everyone')
    expect(seen).toMatch(caution)
  })

  test('the longest text Discord takes still fits', async () => {
    const seen = text(await batch({ figures: '45.1; '.repeat(99).slice(0, 2000) }))
    expect(seen.length).toBeLessThanOrEqual(4000)
    expect(seen).toMatch(caution)
  })

  test('German reads a comma as the mark of decimals', async () => {
    const seen = text(await messageOf(await ilse().run('batch', { figures: '45,1; 45,3; 45,2 g' })))
    expect(seen).toMatch(/Zellen einer Charge/)
  })
})

test('the check that starts from it knows how far apart they are, and never asks', async () => {
  const seen = await batch({ figures: '45.1, 38.4, 45.2, 38.6 g' })
  const first = await pressed(wren(), seen, 'Check one of these cells')
  expect(text(first)).toMatch(/2 things are known already/)
})
