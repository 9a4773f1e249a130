// A small invented pack in which every kind of step of a check occurs.
import { compile, type Program } from '../../src/engine/compile.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

const yesNo = (yesOdds = 0.2) => [
  { id: 'no', label: 'No' },
  { id: 'yes', label: 'Yes', odds: yesOdds },
]

const raw = {
  pack: 'lantern',
  version: '1.0.0',
  written: '2026-11-25',
  title: 'For tests',
  about: 'For tests.',
  sources: { s: { kind: 'common-practice', text: 'common practice' } },
  questions: [
    {
      id: 'how-many',
      ask: 'How many?',
      care: 'look',
      effort: 1,
      options: [
        { id: 'one', label: 'One' },
        { id: 'several', label: 'Several' },
      ],
    },
    { id: 'smoke', ask: 'Smoke?', care: 'look', effort: 5, quick: true, options: yesNo(0.01) },
    { id: 'wrap', ask: 'Torn?', care: 'handle', effort: 1, quick: true, options: yesNo() },
    {
      id: 'legs',
      ask: 'How many legs?',
      care: 'look',
      effort: 1,
      quick: true,
      options: [
        { id: 'three', label: 'Three' },
        { id: 'four', label: 'Four' },
      ],
    },
    { id: 'print', ask: 'Poor print?', care: 'look', effort: 1, options: yesNo() },
    { id: 'seam', ask: 'Odd seam?', care: 'look', effort: 1, options: yesNo() },
    { id: 'price', ask: 'Very cheap?', care: 'look', effort: 1, options: yesNo() },
    { id: 'mass', ask: 'Mass?', care: 'meter', effort: 2, reading: { quantity: 'mass', least: 5, most: 200 } },
    {
      id: 'dimples',
      ask: 'Dimples?',
      care: 'unwrap',
      effort: 4,
      options: [
        { id: 'two', label: 'Two' },
        { id: 'none', label: 'None' },
      ],
    },
    {
      id: 'load',
      ask: 'Under load?',
      care: 'bench',
      effort: 60,
      options: [
        { id: 'fine', label: 'Fine' },
        { id: 'weak', label: 'Weak' },
      ],
    },
    { id: 'serials', ask: 'Same number twice?', care: 'look', effort: 1, options: yesNo() },
  ],
  rules: [
    { id: 'smoking', kind: 'hazard', act: 'get-away', when: { smoke: 'yes' }, says: 'Smoke.', source: ['s'] },
    { id: 'torn', kind: 'hazard', act: 'isolate', when: { wrap: 'yes' }, says: 'Torn.', source: ['s'] },
    { id: 'legs-four', kind: 'must', means: 'counterfeit', when: { legs: 'four' }, says: 'Four legs.', source: ['s'] },
    {
      id: 'dimples-none',
      kind: 'must',
      means: 'another-cell',
      when: { dimples: 'none' },
      says: 'No dimples.',
      source: ['s'],
    },
    { id: 'poor-print', kind: 'sign', strength: 'weak', when: { print: 'yes' }, says: 'Poor print.', source: ['s'] },
    {
      id: 'far-too-light',
      kind: 'must',
      means: 'another-cell',
      when: { mass: { below: 10 } },
      says: 'Far too light.',
      source: ['s'],
    },
    { id: 'odd-seam', kind: 'sign', strength: 'moderate', when: { seam: 'yes' }, says: 'Odd seam.', source: ['s'] },
    { id: 'cheap', kind: 'sign', strength: 'weak', when: { price: 'yes' }, says: 'Cheap.', source: ['s'] },
    { id: 'light', kind: 'sign', strength: 'strong', when: { mass: { below: 42 } }, says: 'Light.', source: ['s'] },
    { id: 'weak-load', kind: 'sign', strength: 'strong', when: { load: 'weak' }, says: 'Weak.', source: ['s'] },
    {
      id: 'twins',
      kind: 'sign',
      strength: 'strong',
      when: { 'how-many': 'several', serials: 'yes' },
      says: 'Twins.',
      source: ['s'],
    },
  ],
  families: [{ id: 'lamp', name: 'Lamp', maker: 'Nobody', given: {}, enough: ['legs-four', 'light', 'torn'] }],
}

/** The pack as a later version may have it: other questions, other families' facts. */
export function lanternOf(change: Partial<typeof raw> = {}, digest = 'sha256:test'): Pack {
  const read = readPack({ ...raw, ...change }, [], digest)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.pack
}
export const lanternPack = lanternOf()
export const { questions: lanternQuestions, rules: lanternRules, families: lanternFamilies } = raw

export function lanternProgram(family?: 'lamp', pack = lanternPack): Program {
  const result = compile([pack], '2026-11-25', family)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.program
}
