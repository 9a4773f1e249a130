// A discharge: voltage and temperature over the charge drawn, with cut-off, result, what was promised and gaps.
import { describeCurve } from '../alt/describe-curve.ts'
import type { Drawing } from '../drawing.ts'
import { inks, lineWidths } from '../ink.ts'
import { panel, sheetWidth } from '../panel.ts'
import { part, round, tag } from '../svg.ts'
import { bar, curveEntries, dashed, dotted, down, solid } from './curve-key.ts'
import type { CurvePoint, DischargeCurve } from './discharge-curve.ts'
import { key } from './key.ts'
import {
  type Area,
  type Axis,
  along,
  axisWidth,
  brokenLine,
  floorAxis,
  hatch,
  levelAxis,
  type Range,
  seriesInks,
} from './plot.ts'
import { thin } from './thin.ts'
import { title } from './title.ts'

const plotHeight = 190

const widen = (list: readonly number[], pad: number, least: number): Range => {
  const low = Math.min(...list)
  const high = Math.max(...list)
  const span = Math.max(high - low, least)
  const middle = (low + high) / 2
  return { from: middle - span * (0.5 + pad), to: middle + span * (0.5 + pad) }
}

/** Points with a break between the two that have the middle of a gap between them. */
function withBreaks(points: readonly CurvePoint[], gaps: readonly Range[]): (CurvePoint | undefined)[] {
  const middles = gaps.map(gap => (gap.from + gap.to) / 2)
  return points.flatMap((point, i) => {
    const before = points[i - 1]
    const broken = before !== undefined && middles.some(middle => before.capacity < middle && point.capacity > middle)
    return broken ? [undefined, point] : [point]
  })
}

function marks(curve: DischargeCurve, area: Area, x: (v: number) => number, y: (v: number) => number): string {
  const gaps = (curve.gaps ?? []).map(gap => {
    const box = { left: x(gap.from), right: Math.max(x(gap.to), x(gap.from) + 3), top: area.top, bottom: area.bottom }
    return tag('path', {
      d: hatch(box, 7),
      stroke: seriesInks.quiet,
      'stroke-width': lineWidths.fine,
      'stroke-opacity': 0.75,
    })
  })
  const cut = tag('path', { d: `M${area.left} ${round(y(curve.cutOff))}H${area.right}`, ...dotted })
  let result = ''
  if (curve.result) {
    const { value, u } = curve.result
    const [from, to] = [x(value - u), x(value + u)]
    result =
      tag('rect', {
        x: from,
        y: area.top,
        width: Math.max(2, to - from),
        height: area.bottom - area.top,
        fill: seriesInks.fill,
        'fill-opacity': 0.6,
      }) + tag('path', { d: `M${round(x(value))} ${area.top}V${area.bottom}`, ...bar })
  }
  const promised =
    curve.promised === undefined
      ? ''
      : tag('path', {
          d: `M${round(x(curve.promised))} ${area.top}V${area.bottom}`,
          ...bar,
          'stroke-dasharray': '6 4',
        }) + tag('path', { d: down(x(curve.promised), area.top), fill: inks.line })
  return part('result', result) + part('gaps', ...gaps) + part('cut-off', cut) + part('promised', promised)
}

/** Draws the chart, 360 px wide; points are thinned to what a phone can show. */
export function drawDischargeCurve(curve: DischargeCurve): Drawing {
  const head = title(curve.title)
  const warm = curve.points.some(point => point.temperature !== undefined)
  const legend = key(curveEntries(curve, warm), head.end)
  const volts = widen([...curve.points.map(p => p.voltage), curve.cutOff], 0.06, 0.2)
  const degrees = widen(
    curve.points.flatMap(p => (p.temperature === undefined ? [] : [p.temperature])),
    0.12,
    6,
  )
  const most = Math.max(
    1,
    ...curve.points.map(p => p.capacity),
    curve.promised ?? 0,
    (curve.result?.value ?? 0) + (curve.result?.u ?? 0),
  )
  const span = { from: 0, to: most * 1.04 }
  const top = head.end + legend.height + 12
  const { number } = curve
  const left: Axis = { range: volts, count: 5, side: 'left', fill: seriesInks.first, unit: 'V', number }
  const right: Axis = { range: degrees, count: 4, side: 'right', fill: seriesInks.second, unit: '°C', number }
  const area: Area = {
    left: 8 + axisWidth(left),
    right: sheetWidth - (warm ? 8 + axisWidth(right) : 16),
    top,
    bottom: top + plotHeight,
  }
  const x = along(span, area.left, area.right)
  const y = along(volts, area.bottom, area.top)
  const t = along(degrees, area.bottom, area.top)
  const points = withBreaks(thin(curve.points, area.right - area.left), curve.gaps ?? [])
  const voltage = brokenLine(points.map(p => p && { x: x(p.capacity), y: y(p.voltage) }))
  const heat = brokenLine(
    points.map(p => (p?.temperature === undefined ? undefined : { x: x(p.capacity), y: t(p.temperature) })),
  )
  const axes = levelAxis(area, left) + (warm ? levelAxis(area, right) : '') + floorAxis(area, span, number)
  const foot = key(
    [
      {
        words: curve.words.capacity,
        sample: (cx, cy) => tag('path', { d: `M${cx - 12} ${cy}h22m-7 -5l7 5l-7 5`, ...bar }),
      },
    ],
    area.bottom + 28,
  )
  const lines =
    part('temperature', warm ? tag('path', { d: heat, ...dashed }) : '') +
    part('voltage', tag('path', { d: voltage, ...solid }))
  const content = head.svg + legend.svg + axes + marks(curve, area, x, y) + lines + foot.svg
  return panel(Math.ceil(area.bottom + 28 + foot.height + 6), content, describeCurve(curve, warm))
}
