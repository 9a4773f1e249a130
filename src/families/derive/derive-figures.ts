// From a family's figures to rules: the capacity and current printed on it, its mass, size and resistance.
import type { Pack, Question } from '../../engine/pack/pack.ts'
import type { FactProblem } from '../facts/fact-problems.ts'
import type { Facts, Figures } from '../facts/facts-schema.ts'
import { figureLetter } from './figure-letters.ts'
import { capacityLimit, currentLimits, massBands, resistanceLimit, sizeBands } from './figure-limits.ts'
import { type CaseAnswers, type RuleDraft, soldExcepted, soldUnless, type Weight } from './rule-draft.ts'
import { exceptionSentence, type FigureSentence, figureSentence } from './sentences.ts'

type Draft = { readonly rules: RuleDraft[]; readonly problems: FactProblem[] }

export function deriveFigures({ identity, figures }: Facts, base: Pack): Draft {
  const rules: RuleDraft[] = []
  const problems: FactProblem[] = []
  const bounds = (id: string) => {
    const question = base.questions.find(one => one.id === id)
    return question?.answer.kind === 'reading' ? question.answer : undefined
  }
  /** A limit outside what its question takes could never be met, or always. */
  const within = (figure: string, question: Question['id'], value: number): boolean => {
    const known = bounds(question)
    if (!known) return false
    if (value > known.least && value < known.most) return true
    problems.push({ code: 'figure-out-of-range', figure, value, least: known.least, most: known.most })
    return false
  }
  const family = identity.id
  const add = (name: string, one: Omit<RuleDraft, 'id' | 'source' | 'holdsBack'>) =>
    rules.push({ id: `${family}-${name}`, source: 'described', holdsBack: false, ...one })
  addCapacity(figures, within, add, problems)
  addCurrents(figures, within, add)
  addMass(identity.kind, figures, within, add, rule => rules.push(rule), family, base)
  addSize(figures, within, add)
  addResistance(figures, within, add)
  return { rules, problems }
}

type Within = (figure: string, question: string, value: number) => boolean
type Add = (name: string, one: Omit<RuleDraft, 'id' | 'source' | 'holdsBack'>) => void

const typed = (value: number): CaseAnswers[string] => ({ reading: round(value), u: 0 })
const round = (value: number): number => Math.round(value * 1000) / 1000
const weak: Weight = { kind: 'sign', strength: 'weak' }
const moderate: Weight = { kind: 'sign', strength: 'moderate' }
const strong: Weight = { kind: 'sign', strength: 'strong' }
const told = (figure: FigureSentence) => ({ says: figureSentence(figure), letter: figureLetter(figure) })

/** The printed figure is read off the label, so its limit needs no room for a scale. */
function addCapacity({ capacity }: Figures, within: Within, add: Add, problems: FactProblem[]): void {
  if (!capacity) return
  const { least, typical } = capacity
  const limit = capacityLimit(capacity)
  if (least !== undefined && least > typical) problems.push({ code: 'least-above-typical', least, typical })
  if (within('capacity', 'claimed-capacity', limit))
    add('capacity-above', {
      weight: { kind: 'must', means: 'another-cell' },
      when: { 'claimed-capacity': { above: limit } },
      ...told({ is: 'capacity-above', typical }),
      fires: [{ 'claimed-capacity': typed(Math.min(limit + 1, 50_000)) }],
      quiet: { 'claimed-capacity': typed(Math.min(typical, limit)) },
      unknown: { 'claimed-capacity': 'cant-tell' },
      enough: true,
    })
  if (least !== undefined && least <= typical && within('capacity', 'claimed-capacity', least))
    add('capacity-below', {
      weight: moderate,
      when: { 'claimed-capacity': { below: least } },
      ...told({ is: 'capacity-below', least }),
      fires: [{ 'claimed-capacity': typed(Math.max(least - 1, 50)) }],
      quiet: { 'claimed-capacity': typed(typical) },
      unknown: { 'claimed-capacity': 'cant-tell' },
      enough: true,
    })
}

function addCurrents({ currents = [] }: Figures, within: Within, add: Add): void {
  if (currents.length === 0) return
  const { highest, uncut } = currentLimits(currents)
  const rule = (name: string, amps: number, weight: Weight, cutOff: boolean) => {
    if (!within('current', 'claimed-current', amps)) return
    const continuous = { 'current-word': 'continuous' }
    add(name, {
      weight,
      when: { 'claimed-current': { above: amps }, ...continuous },
      ...told({ is: 'current-above', amps, cutOff }),
      fires: [{ 'claimed-current': typed(amps + 0.5), ...continuous }],
      quiet: { 'claimed-current': typed(amps), ...continuous },
      unknown: { 'claimed-current': 'cant-tell', ...continuous },
      enough: false,
    })
  }
  rule('current-above', highest, moderate, false)
  if (uncut < highest) rule('current-uncut', uncut, weak, true)
}

/** A bare model sold with a protection circuit weighs more; what was added cannot be told apart, so its mass is no sign then. */
function addMass(
  kind: string,
  { mass }: Figures,
  within: Within,
  add: Add,
  push: (rule: RuleDraft) => void,
  family: string,
  base: Pack,
): void {
  if (!mass) return
  const { middle } = mass
  const { near, far } = massBands(mass)
  const side = kind === 'bare' ? soldUnless('protected') : {}
  const sold: CaseAnswers = kind === 'bare' ? { 'sold-as': 'new-bare' } : {}
  for (const [name, { low, high }, weight] of [
    ['mass-off', near, weak],
    ['mass-far-off', far, strong],
  ] as const) {
    if (!within('mass', 'mass', low) || !within('mass', 'mass', high)) return
    add(name, {
      weight,
      when: { any: [{ mass: { below: low } }, { mass: { above: high } }], ...side },
      ...told({ is: 'mass', middle, far: name === 'mass-far-off' }),
      fires: [
        { mass: typed(low - 0.2), ...sold },
        { mass: typed(high + 0.2), ...sold },
      ],
      quiet: { mass: typed(middle), ...sold },
      unknown: { mass: 'cant-tell', ...sold },
      enough: false,
    })
  }
  if (kind !== 'bare') return
  const excepted = { 'sold-as': soldExcepted('protected') }
  const { low, high } = near
  push({
    id: `${family}-mass-x`,
    source: 'described',
    weight: { kind: 'no-bearing' },
    when: { any: [{ mass: { below: low } }, { mass: { above: high } }], ...excepted },
    says: exceptionSentence(base, 'mass', 'protected'),
    fires: [{ mass: typed(high + 0.2), ...excepted }],
    quiet: { mass: typed(middle), ...excepted },
    unknown: { mass: 'cant-tell', ...excepted },
    enough: false,
    holdsBack: true,
  })
}

function addSize({ size }: Figures, within: Within, add: Add): void {
  if (!size) return
  const bands = sizeBands(size)
  for (const part of ['diameter', 'length'] as const) {
    const { low, high } = bands[part]
    if (!within('size', part, low) || !within('size', part, high)) continue
    add(`${part}-off`, {
      weight: weak,
      when: { any: [{ [part]: { below: low } }, { [part]: { above: high } }] },
      ...told({ is: 'size', ...size }),
      fires: [{ [part]: typed(low - 0.2) }, { [part]: typed(high + 0.2) }],
      quiet: { [part]: typed(size[part]) },
      unknown: { [part]: 'cant-tell' },
      enough: false,
    })
  }
}

/** Only four wires at room temperature can be compared. */
function addResistance({ resistance }: Figures, within: Within, add: Add): void {
  if (!resistance) return
  const limit = resistanceLimit(resistance)
  if (!within('resistance', 'ac-resistance', limit)) return
  const sides: CaseAnswers = { 'resistance-meter': 'four-wire', 'room-temperature': typed(22), 'sold-as': 'new-bare' }
  add('resistance-off', {
    weight: weak,
    when: {
      'ac-resistance': { above: limit },
      'resistance-meter': 'four-wire',
      'sold-as': ['new-bare', 'new-rewrap'],
      all: [{ 'room-temperature': { above: 18 } }, { 'room-temperature': { below: 27 } }],
    },
    ...told({ is: 'resistance', usual: resistance.usual }),
    fires: [{ 'ac-resistance': typed(limit + 1), ...sides }],
    quiet: { 'ac-resistance': typed(resistance.usual), ...sides },
    unknown: { 'ac-resistance': 'cant-tell', ...sides },
    enough: false,
  })
}
