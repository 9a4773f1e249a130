// Finds out whether a text is about a battery of cells, and how these are connected.
import { batteryWords, connection, otherVoltage } from './claim-words.ts'
import { type Fact, factsOf } from './facts.ts'
import { type Stretches, spanOf } from './stretches.ts'

/** What the text itself says: "13S4P", "power bank"; the notation is taken, a word stays for others to read. */
export function findBatteries(text: string, taken: Stretches): Fact[] {
  const facts: Fact[] = []
  for (const match of text.matchAll(connection)) {
    const span = spanOf(match)
    const [inSeries, inParallel] = [Number(match[1] ?? match[4]), Number(match[2] ?? match[3])]
    if (!taken.isFree(span) || inSeries === 0 || inParallel === 0) continue
    taken.take(span)
    facts.push({ kind: 'battery', inSeries, inParallel, from: 'notation', span })
  }
  const word = text.matchAll(batteryWords).next().value
  if (word && facts.length === 0)
    facts.push({ kind: 'battery', inSeries: null, inParallel: null, from: 'word', span: spanOf(word) })
  return facts
}

/** The lowest voltage that no single cell of any chemistry has, charged or not, and no USB socket either. */
const leastOfSeveral_V = 6
/** How far the capacity of all may lie from the sum of its parts, as labels round. */
const roundedBy = 0.03

/**
 * What follows from the figures: a voltage of several cells in series, or a capacity that is another's `count` times over
 * ("6800mAh (2x 3400)": two side by side).
 */
export function batteriesOf(text: string, facts: readonly Fact[]): Fact[] {
  if (factsOf(facts, 'battery').some(({ from }) => from === 'notation')) return []
  const found: Fact[] = []
  const capacities = factsOf(facts, 'capacity')
  const largest = capacities.reduce((most, { mAh }) => Math.max(most, mAh), 0)
  const counts = factsOf(facts, 'count')
  const parts = counts.find(({ cells }) =>
    capacities.some(({ mAh }) => mAh < largest && Math.abs((mAh * cells) / largest - 1) <= roundedBy),
  )
  if (parts) found.push({ kind: 'battery', inSeries: null, inParallel: parts.cells, from: 'parts', span: parts.span })
  const voltage = factsOf(facts, 'voltage').find(({ V, span }) => {
    const around = text.slice(Math.max(0, span.from - 24), span.to + 16)
    return V >= leastOfSeveral_V && !otherVoltage.test(around)
  })
  if (voltage && !parts)
    found.push({ kind: 'battery', inSeries: null, inParallel: null, from: 'voltage', span: voltage.span })
  return found
}
