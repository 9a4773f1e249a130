// A discharge: voltage and temperature over the charge drawn, with cut-off, result, what was promised and gaps.
import type { AltFact } from '../alt/alt-fact.ts'
import type { Drawing } from '../drawing.ts'
import { INK, STROKE } from '../ink.ts'
import { panel, SHEET_WIDTH } from '../panel.ts'
import { part, round, tag } from '../svg.ts'
import { type KeyEntry, key } from './key.ts'
import {
  type Area,
  type Axis,
  along,
  axisWidth,
  brokenLine,
  floorAxis,
  hatch,
  levelAxis,
  type NumberWords,
  type Range,
  SERIES,
} from './plot.ts'
import { thin } from './thin.ts'
import { title } from './title.ts'

/** Charge drawn so far in mAh, voltage in V, surface temperature in °C where it was logged. */
export type CurvePoint = { capacity: number; voltage: number; temperature?: number }

export type DischargeCurve = {
  title?: string
  points: readonly CurvePoint[]
  /** stretches without readings, mAh */
  gaps?: readonly Range[]
  /** V at which the discharge ends */
  cutOff: number
  /** capacity in mAh with its expanded uncertainty (k = 2); a lower bound when the log stopped above the cut-off */
  result?: { value: number; u: number; atLeast?: boolean }
  /** what the cell is held against, mAh: its label, or the least its maker promises */
  promised?: number
  /** words in the reader's language; units are part of them */
  words: {
    capacity: string
    voltage: string
    temperature: string
    cutOff: string
    result: string
    promised: string
    gap: string
  }
  number: NumberWords
}

const PLOT_HEIGHT = 190

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

const solid = { fill: 'none', stroke: SERIES.first, 'stroke-width': 2.8 }
const dashed = { fill: 'none', stroke: SERIES.second, 'stroke-width': 2.2, 'stroke-dasharray': '7 5' }
const dotted = { fill: 'none', stroke: INK.line, 'stroke-width': 1.8, 'stroke-dasharray': '1.5 5' }
const bar = { fill: 'none', stroke: INK.line, 'stroke-width': 2 }

const down = (x: number, y: number): string => `M${round(x - 6)} ${round(y - 9)}h12l-6 9Z`

function entries(curve: DischargeCurve, warm: boolean): KeyEntry[] {
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
        tag('rect', { x: x - 8, y: y - 7, width: 16, height: 14, fill: SERIES.fill, 'fill-opacity': 0.6 }) +
        tag('path', { d: `M${x} ${y - 7}v14`, ...bar }),
    })
  }
  if (curve.promised !== undefined) {
    list.push({
      words: words.promised,
      sample: (x, y) =>
        tag('path', { d: down(x, y + 1), fill: INK.line }) +
        tag('path', { d: `M${x} ${y}v8`, ...bar, 'stroke-dasharray': '4 3' }),
    })
  }
  if ((curve.gaps ?? []).length > 0) {
    list.push({
      words: words.gap,
      sample: (x, y) =>
        tag('path', {
          d: hatch({ left: x - 11, right: x + 11, top: y - 7, bottom: y + 7 }, 5),
          stroke: SERIES.quiet,
          'stroke-width': STROKE.fine,
        }),
    })
  }
  return list
}

function marks(curve: DischargeCurve, area: Area, x: (v: number) => number, y: (v: number) => number): string {
  const gaps = (curve.gaps ?? []).map(gap => {
    const box = { left: x(gap.from), right: Math.max(x(gap.to), x(gap.from) + 3), top: area.top, bottom: area.bottom }
    return tag('path', { d: hatch(box, 7), stroke: SERIES.quiet, 'stroke-width': STROKE.fine, 'stroke-opacity': 0.75 })
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
        fill: SERIES.fill,
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
        }) + tag('path', { d: down(x(curve.promised), area.top), fill: INK.line })
  return part('result', result) + part('gaps', ...gaps) + part('cut-off', cut) + part('promised', promised)
}

function about(curve: DischargeCurve, warm: boolean): AltFact[] {
  const first = curve.points[0]
  const last = curve.points[curve.points.length - 1]
  if (first === undefined || last === undefined) return [{ code: 'curve-empty', rank: 0 }]
  const heat = curve.points.flatMap(point => (point.temperature === undefined ? [] : [point.temperature]))
  const gaps = (curve.gaps ?? []).length
  const { result, promised } = curve
  return [
    { code: 'curve', values: { from: first.voltage, to: last.voltage, cutOff: curve.cutOff }, rank: 1 },
    ...(result
      ? [
          {
            code: result.atLeast === true ? 'curve-at-least' : 'curve-result',
            values: { value: result.value, u: result.u },
            rank: 0,
          },
        ]
      : []),
    ...(promised === undefined
      ? []
      : [{ code: 'curve-promised', values: { label: curve.words.promised, value: promised }, rank: 1 }]),
    ...(warm
      ? [{ code: 'curve-temperature', values: { from: heat[0] as number, most: Math.max(...heat) }, rank: 2 }]
      : []),
    ...(gaps === 0 ? [] : [{ code: 'curve-gaps', values: { n: gaps }, rank: 2 }]),
  ]
}

/** Draws the chart, 360 px wide; points are thinned to what a phone can show. */
export function drawDischargeCurve(curve: DischargeCurve): Drawing {
  const head = title(curve.title)
  const warm = curve.points.some(point => point.temperature !== undefined)
  const legend = key(entries(curve, warm), head.end)
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
  const left: Axis = { range: volts, count: 5, side: 'left', fill: SERIES.first, unit: 'V', number }
  const right: Axis = { range: degrees, count: 4, side: 'right', fill: SERIES.second, unit: '°C', number }
  const area: Area = {
    left: 8 + axisWidth(left),
    right: SHEET_WIDTH - (warm ? 8 + axisWidth(right) : 16),
    top,
    bottom: top + PLOT_HEIGHT,
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
  return panel(Math.ceil(area.bottom + 28 + foot.height + 6), content, about(curve, warm))
}
