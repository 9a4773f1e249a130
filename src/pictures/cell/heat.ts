// Heat and smoke over the plus end.
import { inks, lineWidths } from '../ink.ts'
import { type Point, part, round, tag } from '../svg.ts'
import type { CellParameters } from './parameters.ts'

/** Wavy lines of heat or puffs of smoke over the point `at`, `size` px tall. */
export function heatOver(params: CellParameters, at: Point, size: number): string {
  if (params.heat === 'none') return ''
  if (params.heat === 'hot') {
    const wave = (x: number): string =>
      `M${round(x)} ${round(at.y)}q${round(size * 0.22)} ${round(-size * 0.25)} 0 ${round(-size * 0.5)}t0 ${round(-size * 0.5)}`
    const d = [-0.5, 0, 0.5].map(k => wave(at.x + k * size * 0.9)).join('')
    return part(
      'heat',
      tag('path', { d, fill: 'none', stroke: inks.against, 'stroke-width': lineWidths.outline * 1.2 }),
    )
  }
  const puffs = [
    [0, -0.06, 0.13],
    [0.1, -0.26, 0.17],
    [-0.12, -0.42, 0.2],
    [0.14, -0.56, 0.22],
    [-0.04, -0.8, 0.26],
    [0.28, -0.84, 0.2],
  ]
  // Inked first and filled after, so that the puffs run into one cloud with one outline.
  const puff = ([dx = 0, dy = 0, r = 0]: number[], style: Record<string, string | number>): string =>
    tag('circle', { cx: at.x + dx * size, cy: at.y + dy * size, r: r * size, ...style })
  const inked = puffs.map(one =>
    puff(one, { fill: inks.line, stroke: inks.line, 'stroke-width': lineWidths.outline * 1.4 }),
  )
  return part('smoke', ...inked, ...puffs.map(one => puff(one, { fill: '#d3d6d9' })))
}
