// The top of the cell sawn through the middle: what lies on what. Thicknesses are widened so that layers can be told apart.
import { inks, lineWidths, metals, papers, wraps } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import type { CellParameters } from './parameters.ts'
import type { Box, Place, Scene } from './scene.ts'
import { underWrap } from './wrap-colours.ts'

type Pen = { x: (mm: number) => string; y: (mm: number) => string; scale: number }

/** A sheet of material along a path: an inked line with its filling on top. */
function sheet(pen: Pen, d: string, thickness: number, fill: string): string {
  const width = thickness * pen.scale
  const open = { d, fill: 'none', 'stroke-linecap': 'butt' }
  return (
    tag('path', {
      ...open,
      stroke: inks.line,
      'stroke-width': width + 2 * lineWidths.inner,
      'stroke-linecap': 'square',
    }) + tag('path', { ...open, stroke: fill, 'stroke-width': width, 'stroke-linecap': 'square' })
  )
}

const path = (pen: Pen, flip: 1 | -1, text: string): string =>
  text.replace(/(-?[\d.]+),(-?[\d.]+)/g, (_, x: string, y: string) => `${pen.x(flip * Number(x))} ${pen.y(Number(y))}`)

const both = (draw: (flip: 1 | -1) => string): string => draw(1) + draw(-1)

function wrapLayers(params: CellParameters, pen: Pen): string {
  if (params.wrap === 'missing') return ''
  const skin = (out: number, fill: string, end: number): string =>
    both(flip =>
      sheet(
        pen,
        path(
          pen,
          flip,
          `M${9.2 + out},-9.4L${9.2 + out},-0.3Q${9.2 + out},${0.75 + out} ${8.2 + out},${0.75 + out}L${end},${0.75 + out}`,
        ),
        0.34,
        fill,
      ),
    )
  const outer = params.secondWrap === 'none' ? 0 : 0.62
  return (
    (outer === 0 ? '' : part('second-wrap', skin(0, underWrap(params), 6.6))) +
    part('wrap', skin(outer, wraps[params.wrapColour], 7.4))
  )
}

function canWall(params: CellParameters, pen: Pen): string {
  const shoulder = (dimple: boolean): string => (dimple ? 'L7.9,-0.4Q7.2,-1.7 6.6,-0.4L6.1,-0.4' : 'L6.1,-0.4')
  const wall = (dimple: boolean): string =>
    `M8.6,-9.4L8.6,-6.1Q8.6,-5.6 7.9,-5.3Q7.2,-4.8 7.9,-4.3Q8.6,-4 8.6,-3.5L8.6,-1Q8.6,-0.4 8,-0.4${shoulder(dimple)}`
  return part(
    'can',
    both(flip => sheet(pen, path(pen, flip, wall(params.dimples >= (flip === -1 ? 1 : 2))), 0.55, metals.mid)),
  )
}

function ventSheet(params: CellParameters, pen: Pen): string {
  const middle = {
    plain: 'L-3.2,-3.2L-2.7,-3.9L-2.2,-3.2L2.2,-3.2L2.7,-3.9L3.2,-3.2',
    lines: 'L-3.4,-3.2L-2.2,-5.3L-1,-3.2L1,-3.2L2.2,-5.3L3.4,-3.2',
    button: 'L-1.9,-3.2L-1.5,-1.7L1.5,-1.7L1.9,-3.2',
    smooth: '',
  }[params.vent]
  const d = path(pen, 1, `M-6.9,-2.65L-4.8,-2.65L-4.1,-3.2${middle}L4.1,-3.2L4.8,-2.65L6.9,-2.65`)
  // Where the disc is asked about it takes the colour of marks, and the cap over it steps back.
  return part('vent', sheet(pen, d, 0.42, params.pointAt === 'vent' ? '#7db0f5' : metals.dark))
}

function capSheet(params: CellParameters, pen: Pen): string {
  const top = params.top === 'button' ? 'L-3,-0.1L-2.4,-0.1L-2.2,2L2.2,2L2.4,-0.1L3,-0.1' : 'L-2.6,0.75L2.6,0.75'
  const d = path(pen, 1, `M-6.9,-1.95L-5,-1.95${top}L5,-1.95L6.9,-1.95`)
  return part(
    'contact',
    tag('g', { opacity: params.pointAt === 'vent' ? 0.45 : undefined }, sheet(pen, d, 0.36, metals.light)),
  )
}

function ringSlab(params: CellParameters, pen: Pen): string {
  if (params.ring === 'missing') return ''
  const slab = (flip: 1 | -1, low: number, inner: number): string =>
    tag('path', {
      d: path(pen, flip, `M8.6,${low}L${inner},${low}L${inner},${low + 0.45}L8.6,${low + 0.45}Z`),
      fill: papers[params.ringColour],
      stroke: inks.line,
      'stroke-width': lineWidths.inner,
    })
  const kept: (1 | -1)[] = params.ring === 'torn' ? [1] : [1, -1]
  return (
    part('ring', ...kept.map(flip => slab(flip, 0.02, 5.3))) +
    part('second-ring', ...(params.ring === 'second' ? kept.map(flip => slab(flip, 0.55, 5.9)) : []))
  )
}

function inside(pen: Pen): string {
  const sheets = Array.from({ length: 23 }, (_, i) => -7.7 + i * 0.7).map(
    x => `M${pen.x(x)} ${pen.y(-6.6)}V${pen.y(-9.4)}`,
  )
  const block = `M${pen.x(-8.1)} ${pen.y(-6.5)}H${pen.x(8.1)}V${pen.y(-9.4)}H${pen.x(-8.1)}Z`
  return part(
    'roll',
    tag('path', { d: block, fill: '#eceae2' }),
    tag('path', { d: sheets.join(''), stroke: metals.deep, 'stroke-width': lineWidths.fine }),
  )
}

/** Draws the section into `box`. Every format has the same section: only sizes differ. */
export function cutAway(params: CellParameters, box: Box): Scene {
  const scale = Math.min(box.width / 21, box.height / 12.6)
  const [cx, top] = [box.x + box.width / 2, box.y + (box.height - 12.4 * scale) / 2 + 2.7 * scale]
  const pen: Pen = { scale, x: mm => round(cx + mm * scale), y: mm => round(top - mm * scale) }
  const gasket = part(
    'gasket',
    both(flip => sheet(pen, path(pen, flip, 'M5.9,-1.15L7.7,-1.15L7.7,-3.35L6.2,-3.35'), 0.4, '#38434d')),
  )
  const svg =
    inside(pen) +
    ventSheet(params, pen) +
    capSheet(params, pen) +
    gasket +
    canWall(params, pen) +
    ringSlab(params, pen) +
    wrapLayers(params, pen)
  const place = (x: number, y: number, rx: number, ry = rx): Place => ({
    x: cx + x * scale,
    y: top - y * scale,
    rx: rx * scale,
    ry: ry * scale,
  })
  const places = {
    wrap: place(9.4, -6.5, 1.1),
    'second-wrap': place(9.3, -6.5, 1.3),
    ring: place(6.9, 0.3, 2, 1.1),
    legs: place(3.8, -0.6, 1.8),
    dimples: place(-7.3, -0.7, 1.5),
    vent: place(0, -3, 4.4, 1.5),
    can: place(8.4, -4.8, 1.4),
  }
  return { svg, places }
}
