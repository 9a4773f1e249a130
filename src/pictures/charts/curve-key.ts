// How each mark of a discharge is drawn, and the key that names them.
import { inks, lineWidths } from '../ink.ts'
import { round, tag } from '../svg.ts'
import type { DischargeCurve } from './discharge-curve.ts'
import type { KeyEntry } from './key.ts'
import { hatch, seriesInks } from './plot.ts'

export const solid = { fill: 'none', stroke: seriesInks.first, 'stroke-width': 2.8 }
export const dashed = { fill: 'none', stroke: seriesInks.second, 'stroke-width': 2.2, 'stroke-dasharray': '7 5' }
export const dotted = { fill: 'none', stroke: inks.line, 'stroke-width': 1.8, 'stroke-dasharray': '1.5 5' }
export const bar = { fill: 'none', stroke: inks.line, 'stroke-width': 2 }

/** The head of a line that comes down from the upper edge. */
export const down = (x: number, y: number): string => `M${round(x - 6)} ${round(y - 9)}h12l-6 9Z`

/** Only what is there is named; `warm`: temperatures were logged. */
export function curveEntries(curve: DischargeCurve, warm: boolean): KeyEntry[] {
  const { words } = curve
  const list: KeyEntry[] = [
    { words: words.voltage, sample: (x, y) => tag('path', { d: `M${x - 13} ${y}h26`, ...solid }) },
  ]
  if (warm)
    list.push({ words: words.temperature, sample: (x, y) => tag('path', { d: `M${x - 13} ${y}h26`, ...dashed }) })
  list.push({ words: words.cutOff, sample: (x, y) => tag('path', { d: `M${x - 13} ${y}h26`, ...dotted }) })
  if (curve.result) {
    list.push({
      words: words.result,
      sample: (x, y) =>
        tag('rect', { x: x - 8, y: y - 7, width: 16, height: 14, fill: seriesInks.fill, 'fill-opacity': 0.6 }) +
        tag('path', { d: `M${x} ${y - 7}v14`, ...bar }),
    })
  }
  if (curve.promised !== undefined) {
    list.push({
      words: words.promised,
      sample: (x, y) =>
        tag('path', { d: down(x, y + 1), fill: inks.line }) +
        tag('path', { d: `M${x} ${y}v8`, ...bar, 'stroke-dasharray': '4 3' }),
    })
  }
  if ((curve.gaps ?? []).length > 0) {
    list.push({
      words: words.gap,
      sample: (x, y) =>
        tag('path', {
          d: hatch({ left: x - 11, right: x + 11, top: y - 7, bottom: y + 7 }, 5),
          stroke: seriesInks.quiet,
          'stroke-width': lineWidths.fine,
        }),
    })
  }
  return list
}
