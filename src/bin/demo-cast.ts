// The invented cells of the practice room's sixty weeks: families of Paper Harbour, their usual faults, and one new counterfeit.
import type { Program } from '../engine/compile.ts'
import type { DemoCast, DemoCourse } from '../trends/demo.ts'

const fault = (
  verdict: 'ruled-out' | 'doubtful' | 'danger',
  fired: readonly string[],
  options: Readonly<Record<string, string>>,
): DemoCourse => ({ verdict, fired, options })

const sound = (options: Readonly<Record<string, string>>): DemoCourse => ({
  verdict: 'nothing-found',
  fired: [],
  options: { 'weld-marks': 'none', ...options },
})

const salvaged = fault('ruled-out', ['weld-scars'], { 'weld-marks': 'spots', 'sold-as': 'new-bare' })
const printed = fault('doubtful', ['poor-print'], { print: 'misspelt' })
const rook = { 'code-place': 'wrap', legs: 'three', 'vent-disc': 'four-lines' } as const
const codeAlone = fault('ruled-out', ['brindlewick-code-on-the-can'], { ...rook, 'code-place': 'can' })
const legsAlone = fault('ruled-out', ['rook-and-bittern-legs'], { ...rook, legs: 'four' })

/** `program`: of one of the families, for the packs that judge them. */
export const demoCastOf = (server: string, program: Program): DemoCast => ({
  server,
  packs: program.packs,
  bought: ['known-shop', 'marketplace', 'no-name', 'second-hand'],
  families: [
    // The one that only grows with the server.
    {
      family: 'brindlewick-heron',
      format: '18650',
      part: 4,
      failing: 0.2,
      faults: [salvaged, printed],
      sound: sound({ 'code-place': 'wrap', legs: 'four', 'vent-disc': 'raised-button' }),
    },
    {
      family: 'brindlewick-rook',
      format: '18650',
      part: 3,
      failing: 0.12,
      // Each sign of the new counterfeit is seen alone now and then: it is the two together that are new.
      faults: [salvaged, codeAlone, legsAlone],
      sound: sound(rook),
    },
    {
      family: 'tarnhollow-slate',
      format: '21700',
      part: 2,
      failing: 0.15,
      faults: [salvaged, printed],
      sound: sound({ 'code-place': 'can', legs: 'four', 'vent-disc': 'four-lines' }),
    },
    {
      family: null,
      format: '18650',
      part: 2,
      failing: 0.3,
      faults: [fault('ruled-out', ['capacity-impossible-18650'], { format: '18650' }), salvaged],
      sound: { verdict: 'open', fired: [], options: { 'weld-marks': 'none' } },
    },
  ],
  planted: {
    family: 'brindlewick-rook',
    course: fault('ruled-out', ['brindlewick-code-on-the-can', 'rook-and-bittern-legs'], {
      ...rook,
      'code-place': 'can',
      legs: 'four',
    }),
    share: 0.6,
    bought: 'marketplace',
  },
})
