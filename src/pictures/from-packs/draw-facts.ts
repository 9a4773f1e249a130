// Draws what families and constructions look like; loaded only where a picture is wanted.
import type { Construction, Facts } from '../../families/facts/facts-schema.ts'
import type { Say } from '../../words/say.ts'
import { drawOptions } from '../cell/draw-options.ts'
import type { CellParameters } from '../cell/parameters.ts'
import type { Drawing } from '../drawing.ts'
import { drawFamily } from './draw-family.ts'

/** What the drawing shows of a feature's option. */
const shows: Readonly<Record<string, Readonly<Record<string, Record<string, string | number>>>>> = {
  'lettering-place': {
    can: { lettering: 'can' },
    wrap: { lettering: 'wrap' },
    'clear-wrap': { lettering: 'second-wrap', secondWrap: 'clear' },
    nowhere: { lettering: 'none' },
  },
  'code-place': { wrap: { code: 'wrap' }, can: { code: 'can' }, nowhere: { code: 'none' } },
  dimples: { two: { dimples: 2 }, none: { dimples: 0 } },
  legs: { three: { legs: 3 }, four: { legs: 4 }, five: { legs: 5 } },
  'vent-disc': {
    'four-lines': { vent: 'lines', ventLines: 4 },
    'raised-button': { vent: 'button' },
    smooth: { vent: 'smooth' },
  },
  'weld-dots': { none: { weldMarks: 0 }, pair: { weldMarks: 2 } },
}

/** The drawing follows what is said of the features; what a construction shows besides stays. */
export function showOf({ traits, show, identity }: Facts): Facts['show'] {
  const said = Object.entries(shows).map(([feature, options]) => options[traits[feature]?.made[0] ?? ''] ?? {})
  return Object.assign({}, show, ...said, { format: identity.format })
}

export function drawFacts(say: Say, facts: Facts): Drawing | undefined {
  const { id, name, maker } = facts.identity
  return drawFamily(say, { id, pack: id, name, maker, given: {}, enough: [], show: showOf(facts) })
}

export const drawBuilt = (built: readonly { show: Construction['show']; label: string }[]): Drawing =>
  drawOptions(
    built.map(({ show, label }) => ({
      show: { ...(show as Partial<CellParameters>), view: 'top', pointAt: 'vent' },
      label,
    })),
  )
