// What all charts share: plot area, axes, grid, hatching, key. Series differ by shape and dash, not by colour alone.
import { inks, lineWidths } from '../ink.ts'
import { type Point, part, round, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { textLine } from '../type/text-block.ts'
import { tickDigits, ticks } from './ticks.ts'

/** Formats a number for the reader, with so many decimals. */
export type NumberWords = (value: number, digits: number) => string

/** Numbers in a locale by the platform's own tables. */
export const numbersIn = (locale: string): NumberWords => {
  const formats = new Map<number, Intl.NumberFormat>()
  return (value, digits) => {
    const known =
      formats.get(digits) ??
      new Intl.NumberFormat(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits })
    formats.set(digits, known)
    return known.format(value)
  }
}

export type Range = { from: number; to: number }
export type Area = { left: number; top: number; right: number; bottom: number }

/**
 * Series colours: both at least 4.5 : 1 against the panel (they colour axis numbers) and at least 3 : 1 against each other,
 * also as colour-blind eyes see them (computed in the tests, WCAG 2.2 contrast ratio).
 */
export const seriesInks = { first: '#08183a', second: '#8f6b00', quiet: '#4d5865', fill: '#9db8de' } as const

export const typeSizes = { axis: 13, label: 14, title: 16 } as const

/** Maps a value of `range` to px between `a` and `b`. */
export const along =
  (range: Range, a: number, b: number) =>
  (value: number): number =>
    a + ((value - range.from) / (range.to - range.from)) * (b - a)

/** An upright axis: its range, about how many numbers, on which side, in which colour; the unit stands beside the topmost number. */
export type Axis = {
  range: Range
  count: number
  side: 'left' | 'right'
  fill: string
  unit?: string
  number: NumberWords
}

/** The numbers of an axis and how they read. */
function labelsOf({ range, count, unit, number }: Axis): { value: number; text: string }[] {
  const list = ticks(range.from, range.to, count)
  const digits = tickDigits(list)
  return list.map((value, i) => ({
    value,
    text: `${number(value, digits)}${unit !== undefined && i === list.length - 1 ? `\u00a0${unit}` : ''}`,
  }))
}

/** px the numbers of an axis need. */
export const axisWidth = (axis: Axis): number =>
  Math.max(0, ...labelsOf(axis).map(({ text }) => measureText(text, typeSizes.axis))) + 8

/** Numbers beside the plot; the left axis draws the grid. */
export function levelAxis(area: Area, axis: Axis): string {
  const y = along(axis.range, area.bottom, area.top)
  const left = axis.side === 'left'
  const grid = (at: number): string =>
    tag('path', { d: `M${area.left} ${round(at)}H${area.right}`, stroke: inks.grid, 'stroke-width': lineWidths.fine })
  return part(
    `axis-${axis.side}`,
    ...labelsOf(axis).map(({ value, text }) => {
      const style = { size: typeSizes.axis, anchor: left ? 'end' : 'start', fill: axis.fill } as const
      const words = textLine(text, left ? area.left - 6 : area.right + 6, y(value) + 4.5, style)
      return left ? grid(y(value)) + words : words
    }),
  )
}

/** Numbers below the plot, fewer when they would touch. */
export function floorAxis(area: Area, range: Range, number: NumberWords): string {
  const x = along(range, area.left, area.right)
  const width = area.right - area.left
  let list: number[] = []
  for (const count of [6, 5, 4, 3, 2]) {
    list = ticks(range.from, range.to, count)
    const digits = tickDigits(list)
    const needed = list.reduce((sum, value) => sum + measureText(number(value, digits), typeSizes.axis) + 14, 0)
    if (needed <= width) break
  }
  const digits = tickDigits(list)
  return part(
    'axis-floor',
    ...list.map(value => {
      const text = number(value, digits)
      const half = measureText(text, typeSizes.axis) / 2
      const at = Math.min(Math.max(x(value), 4 + half), 356 - half)
      return (
        tag('path', {
          d: `M${round(x(value))} ${area.bottom}v5`,
          stroke: inks.line,
          'stroke-width': lineWidths.inner,
        }) + textLine(text, at, area.bottom + 19, { size: typeSizes.axis, anchor: 'middle' })
      )
    }),
    tag('path', {
      d: `M${area.left} ${area.bottom}H${area.right}`,
      stroke: inks.line,
      'stroke-width': lineWidths.inner,
    }),
  )
}

/** Path data of slanted lines that fill a rectangle: a texture that needs no pattern ids. */
export function hatch(area: Area, gap = 6): string {
  const out: string[] = []
  for (let c = area.left + area.top + gap / 2; c < area.right + area.bottom; c += gap) {
    const x1 = Math.max(area.left, c - area.bottom)
    const x2 = Math.min(area.right, c - area.top)
    if (x2 > x1) out.push(`M${round(x1)} ${round(c - x1)}L${round(x2)} ${round(c - x2)}`)
  }
  return out.join('')
}

/** Path data through points, broken where `undefined` stands. */
export function brokenLine(points: readonly (Point | undefined)[]): string {
  let pen = 'M'
  let d = ''
  for (const p of points) {
    if (p === undefined) pen = 'M'
    else {
      d += `${pen}${round(p.x)} ${round(p.y)}`
      pen = 'L'
    }
  }
  return d
}
