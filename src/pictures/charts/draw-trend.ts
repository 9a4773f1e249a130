// Failed checks week by week, with the weeks in which something rose marked, and how many would be too many.
import type { AltFact } from '../alt/alt-fact.ts'
import type { Drawing } from '../drawing.ts'
import { inks, lineWidths } from '../ink.ts'
import { panel, sheetWidth } from '../panel.ts'
import { part, round, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { textLine } from '../type/text-block.ts'
import { type KeyEntry, key } from './key.ts'
import {
  type Area,
  type Axis,
  along,
  axisWidth,
  brokenLine,
  hatch,
  levelAxis,
  type NumberWords,
  seriesInks,
  typeSizes,
} from './plot.ts'
import { title } from './title.ts'

/** One week: its name (handed in, short), failed checks (undefined: not released), alarm, and the most that is no surprise. */
export type TrendWeek = { name: string; failed?: number; alarm?: boolean; bound?: number }

export type Trend = {
  title?: string
  weeks: readonly TrendWeek[]
  /** `bound` stands in the key where any week has one. */
  words: { failed: string; alarm: string; withheld: string; bound?: string }
  number: NumberWords
}

const plotHeight = 160

/** A triangle with an exclamation mark on the point `x`, `y`, `half` px to each side. */
const bell = (x: number, y: number, half = 9): string =>
  tag('path', {
    d: `M${round(x)} ${round(y - half * 1.67)}l${round(half)} ${round(half * 1.67)}h${round(-2 * half)}Z`,
    fill: inks.against,
    stroke: inks.casing,
    'stroke-width': 1.4,
  }) +
  tag('path', {
    d: `M${round(x)} ${round(y - half * 1.1)}v${round(half * 0.55)}`,
    stroke: inks.casing,
    'stroke-width': half * 0.22,
  }) +
  tag('circle', { cx: x, cy: y - half * 0.28, r: half * 0.13, fill: inks.casing })

const column = { fill: seriesInks.fill, stroke: seriesInks.first, 'stroke-width': lineWidths.inner }
const boundLine = {
  fill: 'none',
  stroke: seriesInks.second,
  'stroke-width': lineWidths.outline,
  'stroke-dasharray': '7 4',
}

const hasBound = ({ weeks }: Trend): boolean => weeks.some(week => week.bound !== undefined)

function entries(trend: Trend): KeyEntry[] {
  const { weeks, words } = trend
  const list: KeyEntry[] = [
    { words: words.failed, sample: (x, y) => tag('rect', { x: x - 6, y: y - 7, width: 12, height: 14, ...column }) },
  ]
  if (hasBound(trend) && words.bound !== undefined)
    list.push({
      words: words.bound,
      sample: (x, y) => tag('path', { d: `M${x - 12} ${round(y)}h24`, ...boundLine }),
    })
  if (weeks.some(week => week.alarm === true)) list.push({ words: words.alarm, sample: (x, y) => bell(x, y + 7) })
  if (weeks.some(week => week.failed === undefined)) {
    list.push({
      words: words.withheld,
      sample: (x, y) =>
        tag('path', {
          d: hatch({ left: x - 7, right: x + 7, top: y - 7, bottom: y + 7 }, 5),
          stroke: seriesInks.quiet,
          'stroke-width': lineWidths.fine,
        }),
    })
  }
  return list
}

/** Names under the columns: as many as fit, always the last one. */
function names(weeks: readonly TrendWeek[], area: Area, slot: number): string {
  const widest = Math.max(...weeks.map(week => measureText(week.name, typeSizes.axis))) + 8
  const every = Math.max(1, Math.ceil(widest / slot))
  const last = weeks.length - 1
  return weeks
    .map((week, i) => {
      if ((last - i) % every !== 0) return ''
      const half = measureText(week.name, typeSizes.axis) / 2
      const x = Math.min(Math.max(area.left + slot * (i + 0.5), 6 + half), sheetWidth - 6 - half)
      return textLine(week.name, x, area.bottom + 18, { size: typeSizes.axis, anchor: 'middle' })
    })
    .join('')
}

function about(trend: Trend): AltFact[] {
  const shown = trend.weeks.filter(week => week.failed !== undefined)
  const last = shown[shown.length - 1]
  const alarms = trend.weeks.filter(week => week.alarm === true)
  const hidden = trend.weeks.length - shown.length
  return [
    ...(trend.title === undefined ? [] : [{ code: 'chart-title', values: { title: trend.title }, rank: 1 }]),
    { code: 'trend', values: { n: trend.weeks.length }, rank: 2 },
    ...(last === undefined
      ? []
      : [{ code: 'trend-last', values: { name: last.name, failed: last.failed ?? 0 }, rank: 0 }]),
    ...(last?.bound === undefined ? [] : [{ code: 'trend-bound', values: { bound: last.bound }, rank: 1 }]),
    ...alarms.map(week => ({ code: 'trend-alarm', values: { name: week.name, failed: week.failed ?? 0 }, rank: 1 })),
    ...(alarms.length === 0 ? [{ code: 'trend-quiet', rank: 1 }] : []),
    ...(hidden === 0 ? [] : [{ code: 'trend-withheld', values: { n: hidden }, rank: 3 }]),
  ]
}

/** Draws the chart, 360 px wide; up to about 52 weeks stay readable. */
export function drawTrend(trend: Trend): Drawing {
  const head = title(trend.title)
  const legend = key(entries(trend), head.end)
  const most = Math.max(4, ...trend.weeks.map(week => Math.max(week.failed ?? 0, week.bound ?? 0)))
  const range = { from: 0, to: most * 1.18 }
  const top = head.end + legend.height + 8
  const axis: Axis = { range, count: 4, side: 'left', fill: inks.text, number: trend.number }
  const area: Area = {
    left: 8 + axisWidth(axis),
    right: sheetWidth - 12,
    top,
    bottom: top + plotHeight,
  }
  const y = along(range, area.bottom, area.top)
  const slot = (area.right - area.left) / Math.max(1, trend.weeks.length)
  const columns = trend.weeks.map((week, i) => {
    const x = area.left + slot * i
    const wide = Math.min(slot * 0.68, 34)
    const left = x + (slot - wide) / 2
    if (week.failed === undefined) {
      const box = { left, right: left + wide, top: area.bottom - 26, bottom: area.bottom }
      return part(
        'withheld',
        tag('path', { d: hatch(box, 5), stroke: seriesInks.quiet, 'stroke-width': lineWidths.fine }),
      )
    }
    const high = y(week.failed)
    const body = tag('rect', {
      x: left,
      y: high,
      width: wide,
      height: Math.max(0, area.bottom - high),
      ...column,
    })
    return part(
      'week',
      body,
      week.alarm === true ? bell(x + slot / 2, Math.max(high - 3, area.top + 15), Math.min(9, slot * 0.47)) : '',
    )
  })
  // Half a count higher than the most that is no surprise, so that a column that touches the line is still under it.
  const bound = trend.weeks.flatMap(({ bound: at }, i) => {
    const level = at === undefined ? undefined : y(at + 0.5)
    return [area.left + slot * i, area.left + slot * (i + 1)].map(x => (level === undefined ? level : { x, y: level }))
  })
  const floor = tag('path', {
    d: `M${area.left} ${area.bottom}H${area.right}`,
    stroke: inks.line,
    'stroke-width': lineWidths.inner,
  })
  const threshold = hasBound(trend) ? part('bound', tag('path', { d: brokenLine(bound), ...boundLine })) : ''
  const content =
    head.svg +
    legend.svg +
    levelAxis(area, axis) +
    columns.join('') +
    threshold +
    floor +
    names(trend.weeks, area, slot)
  return panel(Math.ceil(area.bottom + 30), content, about(trend))
}
