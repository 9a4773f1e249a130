// What stands on a bench: simple shapes that the measuring pictures are put together from.
import { inks, lineWidths, metals, wraps } from '../ink.ts'
import { line, part, round, tag } from '../svg.ts'

export const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner } as const
export const bold = { stroke: inks.line, 'stroke-width': lineWidths.outline } as const
const toolColour = '#3f4b57'
const screenColour = '#e4efe0'

/** An upright cell: middle `x`, top `y`, `width` × `height` px; the plus contact stands out on top. */
export function upright(x: number, y: number, width: number, height: number, fill = wraps.sample): string {
  const [left, nub] = [x - width / 2, width * 0.44]
  return part(
    'cell',
    tag('rect', { x: x - nub / 2, y: y - 5, width: nub, height: 9, rx: 1.5, fill: metals.light, ...edge }),
    tag('rect', { x: left, y, width, height, rx: width * 0.09, fill, ...bold }),
    tag('rect', {
      x: left + width * 0.74,
      y: y + 3,
      width: width * 0.2,
      height: height - 6,
      fill: inks.line,
      'fill-opacity': 0.16,
    }),
    tag('rect', {
      x: left + width * 0.12,
      y: y + 6,
      width: width * 0.07,
      height: height - 14,
      fill: '#ffffff',
      'fill-opacity': 0.5,
    }),
    tag('path', {
      d: `M${round(left + 2)} ${round(y + height * 0.07)}h${round(width - 4)}`,
      ...edge,
      'stroke-opacity': 0.5,
    }),
  )
}

/** A lying cell, plus contact to the right; top left corner `x`, `y`. */
export function lying(x: number, y: number, length: number, width: number, fill = wraps.sample): string {
  const nub = width * 0.44
  return part(
    'cell',
    tag('rect', {
      x: x + length - 4,
      y: y + (width - nub) / 2,
      width: 9,
      height: nub,
      rx: 1.5,
      fill: metals.light,
      ...edge,
    }),
    tag('rect', { x, y, width: length, height: width, rx: width * 0.09, fill, ...bold }),
    tag('rect', {
      x: x + 3,
      y: y + width * 0.72,
      width: length - 6,
      height: width * 0.2,
      fill: inks.line,
      'fill-opacity': 0.16,
    }),
    tag('rect', {
      x: x + 6,
      y: y + width * 0.13,
      width: length - 14,
      height: width * 0.07,
      fill: '#ffffff',
      'fill-opacity': 0.5,
    }),
  )
}

/** A plus or minus sign with arms of `r` px. */
export const sign = (kind: 'plus' | 'minus', x: number, y: number, r: number, colour: string = inks.line): string =>
  tag('path', {
    d: `M${round(x - r)} ${round(y)}h${round(2 * r)}${kind === 'plus' ? `M${round(x)} ${round(y - r)}v${round(2 * r)}` : ''}`,
    stroke: colour,
    'stroke-width': 3.4,
    fill: 'none',
  })

/** A meter with a screen; `text` is short (a unit), never a value. */
export function meter(x: number, y: number, width: number, height: number, screen: string): string {
  return part(
    'meter',
    tag('rect', { x, y, width, height, rx: 9, fill: toolColour, ...bold }),
    tag('rect', { x: x + 9, y: y + 9, width: width - 18, height: height * 0.36, rx: 3, fill: screenColour, ...edge }),
    screen,
    tag('circle', { cx: x + width / 2, cy: y + height * 0.68, r: height * 0.15, fill: metals.light, ...edge }),
    tag('path', {
      d: `M${round(x + width / 2)} ${round(y + height * 0.68)}l${round(height * 0.07)} ${round(-height * 0.1)}`,
      ...bold,
    }),
  )
}

/** A wire through points, cased so that crossings read as one wire over another. */
export const wire = (d: string, colour: string): string =>
  tag('path', { d, fill: 'none', stroke: inks.casing, 'stroke-width': 7 }) +
  tag('path', { d, fill: 'none', stroke: inks.line, 'stroke-width': 5.4 }) +
  tag('path', { d, fill: 'none', stroke: colour, 'stroke-width': 2.8 })

/** A probe whose tip is at `x`, `y`; `way` is the direction it comes from, in radians. */
export function probe(x: number, y: number, way: number, fill: string): string {
  const at = (along: number, across: number) => ({
    x: x + along * Math.cos(way) - across * Math.sin(way),
    y: y + along * Math.sin(way) + across * Math.cos(way),
  })
  const needle = line([at(0, 0), at(16, 1.8), at(16, -1.8)], true)
  const grip = line([at(14, 5), at(52, 7), at(52, -7), at(14, -5)], true)
  return part('probe', tag('path', { d: needle, fill: metals.light, ...edge }), tag('path', { d: grip, fill, ...bold }))
}

/** The paper end of a probe's grip, where its wire begins. */
export const probeEnd = (x: number, y: number, way: number): { x: number; y: number } => ({
  x: x + 52 * Math.cos(way),
  y: y + 52 * Math.sin(way),
})

/** A struck-out sign over what must not be there: a ring with a bar. */
export const forbidden = (x: number, y: number, r: number): string => {
  const k = r * Math.SQRT1_2
  const d = `M${round(x - k)} ${round(y - k)}L${round(x + k)} ${round(y + k)}`
  const ring = (stroke: string, width: number): string =>
    tag('circle', { cx: x, cy: y, r, fill: 'none', stroke, 'stroke-width': width }) +
    tag('path', { d, stroke, 'stroke-width': width })
  return part('forbidden', ring(inks.casing, 8), ring(inks.against, 4.4))
}

/** A tick in a filled disc: done this way. */
export const rightWay = (x: number, y: number, r: number): string =>
  part(
    'right-way',
    tag('circle', { cx: x, cy: y, r, fill: inks.point, stroke: inks.casing, 'stroke-width': 2 }),
    tag('path', {
      d: `M${round(x - r * 0.45)} ${round(y)}l${round(r * 0.32)} ${round(r * 0.36)}l${round(r * 0.58)} ${round(-r * 0.7)}`,
      fill: 'none',
      stroke: inks.casing,
      'stroke-width': 3,
    }),
  )

/** A clock face with the share of an hour (0 to 1) shaded. */
export function clock(x: number, y: number, r: number, share: number): string {
  const end = -Math.PI / 2 + 2 * Math.PI * Math.min(share, 0.9999)
  const sector = `M${x} ${y}V${y - r * 0.8}A${r * 0.8} ${r * 0.8} 0 ${share > 0.5 ? 1 : 0} 1 ${round(x + r * 0.8 * Math.cos(end))} ${round(y + r * 0.8 * Math.sin(end))}Z`
  const ticks = Array.from({ length: 12 }, (_, i) => {
    const a = (Math.PI * i) / 6
    return `M${round(x + r * 0.86 * Math.cos(a))} ${round(y + r * 0.86 * Math.sin(a))}L${round(x + r * Math.cos(a))} ${round(y + r * Math.sin(a))}`
  })
  return part(
    'clock',
    tag('circle', { cx: x, cy: y, r, fill: '#ffffff', ...bold }),
    tag('path', { d: sector, fill: inks.point, 'fill-opacity': 0.28 }),
    tag('path', { d: ticks.join(''), ...edge }),
    tag('path', {
      d: `M${x} ${y - r * 0.72}V${y}L${round(x + r * 0.45)} ${y}`,
      fill: 'none',
      stroke: inks.line,
      'stroke-width': 3,
    }),
  )
}

/** An arrow from left to right between two steps. */
export const step = (x: number, y: number, length: number): string =>
  part(
    'step',
    tag('path', { d: `M${x} ${y}h${length}m-9 -8l9 8l-9 8`, fill: 'none', stroke: inks.point, 'stroke-width': 4 }),
  )

/** The calliper's beam, lying: zero at `x`, `y` (its upper edge), both jaws reaching up by `reach`, `gap` px apart. */
export function calliper(x: number, y: number, gap: number, reach: number, length: number): string {
  const jaw = (tip: number, way: 1 | -1): string =>
    `M${round(tip)} ${round(y - reach)}L${round(tip - way * 7)} ${round(y - reach + 8)}L${round(tip - way * 22)} ${round(y - 4)}V${round(y + 8)}H${round(tip)}Z`
  const ticks = Array.from(
    { length: Math.floor((length - 30) / 6) },
    (_, i) => `M${round(x + 4 + i * 6)} ${round(y + 22)}v${i % 5 === 0 ? -11 : -6}`,
  )
  return part(
    'calliper',
    tag('path', { d: jaw(x, 1), fill: metals.mid, ...bold }),
    tag('rect', { x: x - 22, y, width: length, height: 22, rx: 2, fill: metals.light, ...bold }),
    tag('path', { d: ticks.join(''), stroke: inks.line, 'stroke-width': lineWidths.fine }),
    tag('path', { d: jaw(x + gap, -1), fill: metals.mid, ...bold }),
    tag('rect', { x: x + gap, y: y - 6, width: 74, height: 36, rx: 5, fill: toolColour, ...bold }),
    tag('rect', { x: x + gap + 9, y: y + 2, width: 56, height: 20, rx: 2, fill: screenColour, ...edge }),
  )
}
