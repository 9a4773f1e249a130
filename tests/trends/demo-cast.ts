// Invented families and faults for the demo outcomes of the tests; the practice room brings its own.
import type { DemoCast } from '../../src/trends/demo.ts'

const fault = (verdict: 'ruled-out' | 'doubtful' | 'danger', fired: string[], options: Record<string, string>) => ({
  verdict,
  fired,
  options,
})
const sound = {
  verdict: 'nothing-found',
  fired: [],
  options: { 'bottom-code': 'none', legs: 'three', weight: 'meets' },
} as const
const salvaged = fault('ruled-out', ['weld-marks'], { 'bottom-code': 'none', legs: 'three', ends: 'weld-marks' })
const light = fault('doubtful', ['too-light'], { 'bottom-code': 'none', legs: 'three', weight: 'below' })

export const demoCast: DemoCast = {
  server: 'tidewater',
  packs: [{ id: 'invented-makers', version: '1.0.0', digest: 'a'.repeat(64) }],
  bought: ['market', 'shop', 'from-a-person', 'pulled-from-a-pack'],
  families: [
    { family: 'harrow-30', part: 4, failing: 0.25, faults: [salvaged, light], sound },
    { family: 'brant-40', part: 2, failing: 0.1, faults: [salvaged], sound },
    { family: 'quillon-25', part: 1, failing: 0.15, faults: [light, salvaged], sound },
    {
      family: null,

      part: 2,
      failing: 0.3,
      faults: [
        fault('ruled-out', ['impossible-capacity'], { legs: 'four' }),
        fault('danger', ['torn-wrap'], { wrap: 'torn' }),
      ],
      sound: { verdict: 'open', fired: [], options: { legs: 'three', wrap: 'whole' } },
    },
  ],
  planted: {
    family: 'brant-40',
    course: fault('ruled-out', ['box-code-on-can', 'four-legs'], {
      'bottom-code': 'box',
      legs: 'four',
      weight: 'meets',
    }),
    share: 0.6,
    bought: 'market',
  },
}
