// Puts a point of the cell (radius, angle, height) on paper: one parallel projection for all outside views.
import { oval, type Point, round } from '../svg.ts'

/**
 * `x`, `y` are where the middle of the rim lands in px, `scale` is px per mm, `tilt` the sine of the viewer's elevation:
 * 1 looks straight down on the top, 0 straight at the side.
 */
export type Camera = { x: number; y: number; scale: number; tilt: number }

/** px per mm of height. */
export const rise = (camera: Camera): number => camera.scale * Math.sqrt(1 - camera.tilt ** 2)

/** The paper position of radius `r` mm, angle `angle`, height `z` mm. */
export const spot = (camera: Camera, r: number, angle: number, z: number): Point => ({
  x: camera.x + camera.scale * r * Math.cos(angle),
  y: camera.y - rise(camera) * z + camera.scale * r * Math.sin(angle) * camera.tilt,
})

/** Path data of the level circle of radius `r` mm at height `z` mm. */
export const circle = (camera: Camera, r: number, z: number): string =>
  oval(camera.x, camera.y - rise(camera) * z, r * camera.scale, r * camera.scale * camera.tilt)

/** Path data of a small round spot of `size` mm lying level at radius `r`, `angle`, height `z`. */
export function dot(camera: Camera, r: number, angle: number, z: number, size: number): string {
  const p = spot(camera, r, angle, z)
  return oval(p.x, p.y, size * camera.scale, size * camera.scale * camera.tilt)
}

/** Path data of the part of a level circle between two angles, `start` to `end` clockwise on paper. */
export function arc(camera: Camera, r: number, z: number, start: number, end: number): string {
  const a = spot(camera, r, start, z)
  const b = spot(camera, r, end, z)
  const rx = round(r * camera.scale)
  const ry = round(r * camera.scale * camera.tilt)
  return `M${round(a.x)} ${round(a.y)}A${rx} ${ry} 0 ${end - start > Math.PI ? 1 : 0} 1 ${round(b.x)} ${round(b.y)}`
}
