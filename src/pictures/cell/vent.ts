// The vent disc in the well under the top contact.
import { inks, lineWidths, metals } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import { type Cell, radii } from './anatomy.ts'
import { type Camera, circle, rise, spot } from './camera.ts'
import type { CellParameters } from './parameters.ts'

/** How light the disc is drawn: in the shade of the contact, or laid open because it is what the picture is about. */
export type Light = 'shade' | 'open'

// Below the contact the disc's marks stay quiet: bright ones between the legs were counted as legs.
const shadedMetal = '#7d8892'

/** Draws the well and its disc; `z` is the height of the disc in mm. */
export function vent(params: CellParameters, cell: Cell, camera: Camera, z: number, light: Light): string {
  const { radius } = cell
  const open = light === 'open'
  const pen = {
    stroke: open ? inks.line : shadedMetal,
    'stroke-width': open ? lineWidths.outline : lineWidths.fine,
    fill: 'none',
  }
  const disc = tag('path', {
    d: circle(camera, radii.vent * radius, z),
    fill: open ? metals.light : '#4b5761',
    stroke: inks.line,
    'stroke-width': lineWidths.fine,
  })
  let tells = ''
  if (params.vent === 'plain') {
    tells = tag('path', {
      d: circle(camera, radii.vent * 0.72 * radius, z),
      ...pen,
      'stroke-width': open ? lineWidths.inner : lineWidths.fine,
    })
  }
  if (params.vent === 'lines') {
    tells = Array.from({ length: params.ventLines }, (_, i) => {
      // Offset by half a step, so that the lines lie between legs of the same number.
      const angle = Math.PI / 2 + (2 * Math.PI * (i + 0.5)) / params.ventLines
      const a = spot(camera, radii.vent * 0.22 * radius, angle, z)
      const b = spot(camera, radii.vent * 0.88 * radius, angle, z)
      return tag('path', { d: `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`, ...pen })
    }).join('')
  }
  if (params.vent === 'button') tells = ventButton(cell, camera, z, open)
  return part('well', disc) + part('vent', tells)
}

function ventButton(cell: Cell, camera: Camera, z: number, open: boolean): string {
  const r = radii.ventButton * cell.radius
  const height = 0.8 * cell.grow
  const shadow = { x: 0.08 * r * camera.scale, y: 0.18 * r * camera.scale }
  const cast = circle({ ...camera, x: camera.x + shadow.x, y: camera.y + shadow.y }, r * 1.12, z)
  const fill = open ? '#ffffff' : metals.light
  const edge = { stroke: inks.line, 'stroke-width': open ? lineWidths.outline : lineWidths.inner }
  let body = ''
  if (rise(camera) * height > 1) {
    const y = camera.y - rise(camera) * (z + height)
    const rx = r * camera.scale
    const d = `M${camera.x - rx} ${y}v${rise(camera) * height}a${rx} ${rx * camera.tilt} 0 0 0 ${2 * rx} 0V${y}Z`
    body = tag('path', { d, fill: metals.dark, ...edge })
  }
  return (
    tag('path', { d: cast, fill: inks.line, 'fill-opacity': 0.45 }) +
    body +
    tag('path', { d: circle(camera, r, z + height), fill, ...edge }) +
    tag('path', {
      d: circle(camera, r * 0.6, z + height),
      fill: 'none',
      stroke: metals.dark,
      'stroke-width': lineWidths.fine,
    })
  )
}
