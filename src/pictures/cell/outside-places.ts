// Where the nameable parts of an outside view are on paper, so that an arrow or ring can be put there.
import { type Cell, contactHeight, heights, radii } from './anatomy.ts'
import { type Camera, rise, spot } from './camera.ts'
import type { CellParameters } from './parameters.ts'
import type { Place } from './scene.ts'
import { dentAt } from './silhouette.ts'
import { tearShape } from './tear.ts'

function endPlaces(params: CellParameters, cell: Cell, camera: Camera): Record<string, Place> {
  const { radius, grow } = cell
  const px = radius * camera.scale
  const disc = (share: number, z: number): Place => ({
    x: camera.x,
    y: camera.y - rise(camera) * z,
    rx: share * px,
    ry: share * px * camera.tilt,
  })
  const at = (share: number, angle: number, size: number, z = 0): Place => {
    const p = spot(camera, share * radius, angle, z)
    return { ...p, rx: size * px, ry: size * px * Math.max(camera.tilt, 0.6) }
  }
  const negative = params.end === 'negative'
  const flat = heights.flatTop * grow
  const top = contactHeight(params, cell)
  const lifted = params.view === 'top-angle' && params.pointAt === 'vent'
  const middle = (tearShape.wrap.start + tearShape.wrap.end) / 2
  return {
    top: disc(1, 0),
    wrap: params.wrap === 'torn' ? at(0.92, middle, 0.32) : at(0.92, -0.8, 0.14),
    ring:
      params.ring === 'torn' ? at(0.72, (tearShape.ring.start + tearShape.ring.end) / 2, 0.26) : at(0.7, -0.8, 0.16),
    legs: disc(radii.gasketInner, flat * 0.4),
    dimples: disc(0.9, 0),
    vent: lifted ? disc(radii.flangeInner, -0.3 * grow) : disc(radii.flangeInner, 0),
    'weld-marks': disc(radii.plateau * 1.1, top),
    welds: negative ? disc(0.62, 0) : disc(radii.plateau * (params.welds === 'nickel' ? 1.7 : 1.15), top),
    terminal: negative ? disc(0.64, 0) : disc(radii.plateau * 1.1, top),
    leak: params.leak === 'none' ? disc(0.9, 0) : at(0.8, 2.2, 0.55),
    rust: disc(0.88, 0),
    wet: disc(0.95, 0),
    heat:
      params.heat === 'none' ? disc(0.95, 0) : { x: camera.x, y: camera.y - px * 0.72, rx: px * 0.5, ry: px * 0.42 },
  }
}

function sidePlaces(params: CellParameters, cell: Cell, camera: Camera, bottom: number): Record<string, Place> {
  const px = cell.radius * camera.scale
  const y = (z: number): number => camera.y - rise(camera) * z + px * camera.tilt
  const whole: Place = {
    x: camera.x,
    y: (y(0) + y(bottom)) / 2 - px * 0.1,
    rx: px * (params.swollen ? 1.42 : 1.22),
    ry: (y(bottom) - y(0)) / 2 + px * 0.36,
    shape: 'box',
  }
  const spotAt = (z: number, dx: number, rx: number, ry = rx): Place => ({
    x: camera.x + dx * px,
    y: y(z),
    rx: rx * px,
    ry: ry * px,
  })
  const dentZ = dentAt(params, cell)
  const contactTop = camera.y - rise(camera) * contactHeight(params, cell)
  const end = (where: 'none' | 'top' | 'bottom'): Place =>
    where === 'bottom' ? spotAt(bottom + 1, 0, 1.25, 0.6) : spotAt(-1, 0, 1.25, 0.7)
  return {
    body: whole,
    /** from the top of the contact to the foot, and as wide as the straight side */
    extent: { x: camera.x, y: (contactTop + y(bottom)) / 2, rx: px, ry: (y(bottom) - contactTop) / 2 },
    swelling: whole,
    wet: whole,
    length: whole,
    diameter: whole,
    wrap: params.wrap === 'torn' ? spotAt(-7, 0.4, 0.75, 1.1) : spotAt(-cell.length * 0.5, 0, 0.8),
    seam: spotAt(-cell.length * 0.5, -0.33, 0.4),
    'second-wrap': spotAt(-1.5, 0, 1.1, 0.5),
    lettering: spotAt(-cell.length * 0.36, 0, 0.8, 1.7),
    'lettering-print': spotAt(-cell.length * 0.36, 0, 0.8, 1.7),
    code: spotAt(-cell.length * 0.76, -0.08, 0.75),
    'code-print': spotAt(-cell.length * 0.76, -0.08, 0.75),
    bin: spotAt(-cell.length * 0.63, -0.08, 0.7),
    top: spotAt(0, 0, 1.2, 0.6),
    bottom: spotAt(bottom + 1, 0, 1.2, 0.6),
    board: spotAt(bottom + 1.6, 0, 1.25, 0.6),
    dent: dentZ === undefined ? whole : spotAt(dentZ, 0.75, 0.75, 1.1),
    scorch: spotAt(-cell.length * 0.58, -0.05, 1, 1.35),
    leak: end(params.leak),
    rust: end(params.rust),
    heat: params.heat === 'none' ? whole : spotAt(3, 0, 1.2, 1),
  }
}

/** Places by part name; a part that is absent from the drawing has the place where it would be. */
export const outsidePlaces = (
  params: CellParameters,
  cell: Cell,
  camera: Camera,
  bottom: number,
): Record<string, Place> =>
  params.view === 'side' ? sidePlaces(params, cell, camera, bottom) : endPlaces(params, cell, camera)
