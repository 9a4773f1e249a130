// The positive top contact: a small plateau (or button) that stands on n legs over the vent.
import { inks, lineWidths, metals } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import { type Cell, contactHeight, heights, radii, spoke } from './anatomy.ts'
import { type Camera, circle, dot, rise, spot } from './camera.ts'
import type { CellParameters } from './parameters.ts'

export type Look = 'drawn' | 'see-through'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }
// A pale shape without an edge: dashes were taken for lines on the disc below.
const ghost = { fill: metals.dark, 'fill-opacity': 0.22 }

/** The four corners of leg `i`: its foot on the flange, its head under the plateau. */
function legPath(camera: Camera, cell: Cell, i: number, n: number, lift: number): string {
  const { radius, grow } = cell
  const angle = spoke(i, n)
  const foot = { r: radii.flangeInner * 1.07 * radius, half: 0.105 * radius, z: heights.flange * grow + lift }
  const head = { r: radii.plateau * 0.9 * radius, half: 0.08 * radius, z: (heights.flatTop - 0.2) * grow + lift }
  const corner = (at: typeof foot, side: number) => spot(camera, at.r, angle + side * Math.asin(at.half / at.r), at.z)
  return line([corner(foot, -1), corner(head, -1), corner(head, 1), corner(foot, 1)], true)
}

/** A short weld line across the spoke at `angle`, `r` mm from the middle. */
function dash(camera: Camera, r: number, angle: number, z: number, radius: number): string {
  const [half, turn] = [0.025 * radius, Math.asin((0.13 * radius) / Math.max(r, 0.14 * radius))]
  const corner = (out: number, side: number) => spot(camera, r + out * half, angle + side * turn, z)
  return line([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], true)
}

function drum(camera: Camera, r: number, bottom: number, top: number, look: Look): string {
  const style = look === 'drawn' ? { fill: metals.light, ...edge } : ghost
  const drop = rise(camera) * (top - bottom)
  const lid = tag('path', { d: circle(camera, r, top), ...style })
  if (look === 'see-through') return lid
  if (drop < 1) return castShadow(camera, r, top - bottom) + lid
  const { x, y } = { x: camera.x, y: camera.y - rise(camera) * top }
  const rx = r * camera.scale
  const ry = rx * camera.tilt
  const wall = `M${x - rx} ${y}V${y + drop}A${rx} ${ry} 0 0 0 ${x + rx} ${y + drop}V${y}Z`
  return tag('path', { d: wall, fill: metals.mid, ...edge }) + lid
}

/** From straight above, only its shadow tells how far a disc of radius `r` mm stands out. */
function castShadow(camera: Camera, r: number, height: number): string {
  const [dx, dy] = [0.25 * height * camera.scale, 0.4 * height * camera.scale]
  const moved = { ...camera, x: camera.x + dx, y: camera.y + dy }
  return tag('path', { d: circle(moved, r, 0), fill: inks.line, 'fill-opacity': 0.4 })
}

/**
 * Draws the contact, `lift` mm above its place (to show what is below it). Feet end on the flange ring, so the number
 * of legs is the number of paths in the part `legs`.
 */
export function contact(params: CellParameters, cell: Cell, camera: Camera, look: Look, lift = 0): string {
  const { radius, grow } = cell
  const style = look === 'drawn' ? { fill: metals.light, ...edge } : ghost
  if (params.view === 'side') return nub(params, cell, camera)
  if (params.contact === 'closed') return closedContact(params, cell, camera, look, lift)
  const order = Array.from({ length: params.legs }, (_, i) => i).sort(
    (a, b) => Math.sin(spoke(a, params.legs)) - Math.sin(spoke(b, params.legs)),
  )
  const legs = order.map(i => tag('path', { d: legPath(camera, cell, i, params.legs, lift), ...style }))
  const flat = heights.flatTop * grow + lift
  let plate = drum(camera, radii.plateau * radius, flat - 0.35 * grow, flat, look)
  if (params.top === 'button') {
    plate += drum(camera, radii.plateau * 0.8 * radius, flat, heights.buttonTop * grow + lift, look)
  }
  const z = contactHeight(params, cell) + lift
  const marks = Array.from({ length: look === 'drawn' ? params.weldMarks : 0 }, (_, i) => {
    const place = params.weldMarks === 1 ? 0 : radii.plateau * 0.48 * radius
    const angle = (2 * Math.PI * i) / params.weldMarks
    return tag('path', {
      d:
        params.weldMarkShape === 'lines'
          ? dash(camera, place, angle, z, radius)
          : dot(camera, place, angle, z, 0.05 * radius),
      fill: metals.deep,
      stroke: inks.line,
      'stroke-width': lineWidths.fine,
    })
  })
  // See-through, the plate would lie over the very middle of what is below it.
  return part('legs', ...legs) + part('contact', look === 'drawn' ? plate : '') + part('weld-marks', ...marks)
}

/** From the side the well is a sliver, and legs in it would be a smudge: only that something stands out is shown. */
function nub(params: CellParameters, cell: Cell, camera: Camera): string {
  const [low, top] = [heights.flange * cell.grow, contactHeight(params, cell)]
  return part('contact', drum(camera, radii.nub * cell.radius, low, top, 'drawn'))
}

/** A contact without gaps: one lid over the whole well. */
function closedContact(params: CellParameters, cell: Cell, camera: Camera, look: Look, lift: number): string {
  const { radius, grow } = cell
  const flat = heights.flatTop * grow + lift
  const lid = drum(camera, radii.flangeInner * 1.02 * radius, heights.flange * grow + lift, flat, look)
  const button =
    params.top === 'button' ? drum(camera, radii.button * radius, flat, heights.buttonTop * grow + lift, look) : ''
  return part('contact', lid, button)
}
