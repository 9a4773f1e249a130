// Marks on a drawing: "look here" (ring and arrow) and "this does not fit" (ring and number).
import { inks } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import { textLine } from '../type/text-block.ts'
import type { Box, Place } from './scene.ts'

const leastSize = 11

/** A ring around a place, cased in white so that it shows on any colour; never smaller than a finger tip's worth. */
export const halo = (place: Place, colour: string, width: number): string => {
  const [rx, ry] = [Math.max(leastSize, place.rx), Math.max(leastSize, place.ry)]
  const ring = (stroke: string, thick: number): string =>
    place.shape === 'box'
      ? tag('rect', {
          x: place.x - rx,
          y: place.y - ry,
          width: 2 * rx,
          height: 2 * ry,
          rx: 16,
          fill: 'none',
          stroke,
          'stroke-width': thick,
        })
      : tag('ellipse', { cx: place.x, cy: place.y, rx, ry, fill: 'none', stroke, 'stroke-width': thick })
  return ring(inks.casing, width + 3.6) + ring(colour, width)
}

const labelReach = 44
const directions = [-0.7, -2.44, 0.7, 2.44, 0, Math.PI, -Math.PI / 2]

// Where an arrow from direction `way` meets the ring: on an ellipse by its angle, on a box at its upper or lower half.
const rim = (place: Place, way: number): { x: number; y: number } => {
  const [rx, ry] = [Math.max(leastSize, place.rx), Math.max(leastSize, place.ry)]
  const [cos, sin] = [Math.cos(way), Math.sin(way)]
  return place.shape === 'box'
    ? { x: place.x + Math.sign(cos) * rx, y: place.y + sin * ry * 0.6 }
    : { x: place.x + rx * cos, y: place.y + ry * sin }
}

const inside = (p: { x: number; y: number }, box: Box): boolean =>
  p.x > box.x && p.x < box.x + box.width && p.y > box.y && p.y < box.y + box.height

/** Ring and arrow in one colour; the arrow comes from the first direction that has room within `bounds`. */
export function pointer(place: Place, bounds: Box): string {
  const tail = (way: number) => {
    const tip = rim(place, way)
    return { x: tip.x + labelReach * Math.cos(way), y: tip.y + labelReach * Math.sin(way) }
  }
  const way = directions.find(one => inside(tail(one), bounds)) ?? (directions[0] as number)
  const tip = rim(place, way)
  const end = tail(way)
  const back = (spread: number, length: number): string =>
    `${round(tip.x + length * Math.cos(way + spread))} ${round(tip.y + length * Math.sin(way + spread))}`
  const shaft = `M${round(end.x)} ${round(end.y)}L${back(0, 8)}`
  const head = `M${round(tip.x)} ${round(tip.y)}L${back(0.5, 19)}L${back(-0.5, 19)}Z`
  const arrow =
    tag('path', { d: shaft + head, fill: inks.casing, stroke: inks.casing, 'stroke-width': 9 }) +
    tag('path', { d: shaft, fill: 'none', stroke: inks.point, 'stroke-width': 5 }) +
    tag('path', { d: head, fill: inks.point })
  return part('pointer', halo(place, inks.point, 3.2), arrow)
}

// A number on the side of a box would hide what stands there.
const corner = (place: Place, way: number): { x: number; y: number } => ({
  x: place.x + Math.sign(Math.cos(way)) * (place.rx - 4),
  y: place.y + Math.sign(Math.sin(way)) * (place.ry - 3),
})

/** A ring with a number set on it; the number is repeated beside the sentence it belongs to. */
export function numberedMark(place: Place, number: number, bounds: Box): string {
  const ways = [-0.78, -2.36, 0.78, 2.36]
  const spots = ways.map(way => (place.shape === 'box' ? corner(place, way) : rim(place, way)))
  const at =
    spots.find(p =>
      inside(p, { x: bounds.x + 13, y: bounds.y + 13, width: bounds.width - 26, height: bounds.height - 26 }),
    ) ?? (spots[0] as { x: number; y: number })
  return part('mark', halo(place, inks.against, 3.2), numberBadge(at.x, at.y, number))
}

/** A filled disc with a number or letter in it. */
export function badge(x: number, y: number, radius: number, sign: string, fill: string): string {
  return (
    tag('circle', { cx: x, cy: y, r: radius, fill, stroke: inks.casing, 'stroke-width': 2 }) +
    textLine(sign, x, y + radius * 0.44, { size: radius * 1.24, weight: 'bold', fill: '#ffffff', anchor: 'middle' })
  )
}

export const numberBadge = (x: number, y: number, number: number): string =>
  badge(x, y, 11, String(number), inks.against)
