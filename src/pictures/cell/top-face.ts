// The positive end as seen from above, straight down or at an angle: can, vent, ring, contact, fold of the wrap.
import { inks, lineWidths, metals, papers, wraps } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import { type Cell, heights, radii } from './anatomy.ts'
import { type Ring, tornEdge, tornRing, wholeRing } from './broken-ring.ts'
import { arc, type Camera, circle, dot, rise } from './camera.ts'
import { contact } from './contact.ts'
import type { CellParameters } from './parameters.ts'
import { tearShape } from './tear.ts'
import { vent } from './vent.ts'
import { underWrap } from './wrap-colours.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }
const ringShape = { 'fill-rule': 'evenodd' } as const

function shoulder(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius } = cell
  const outer = params.wrap === 'missing' ? 0.96 : 0.93
  const plate = (r: number, fill: string): string => tag('path', { d: circle(camera, r * radius, 0), fill, ...edge })
  return (
    part('shoulder', plate(outer, metals.mid)) +
    part('gasket', plate(radii.shoulderInner, '#38434d')) +
    part('flange', plate(radii.gasketInner, metals.light), plate(radii.flangeInner, metals.gap))
  )
}

function dimples(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius } = cell
  const hollows = Array.from({ length: params.dimples }, (_, i) => {
    const angle = Math.PI + (2 * Math.PI * i) / params.dimples
    const d = dot(camera, radii.dimple * radius, angle, 0, radii.dimpleSize * radius)
    return tag('path', { d, fill: metals.deep, stroke: inks.line, 'stroke-width': lineWidths.outline })
  })
  return part('dimples', ...hollows)
}

function insulator(params: CellParameters, cell: Cell, camera: Camera, seeThrough: boolean): string {
  if (params.ring === 'missing') return ''
  const { radius, grow } = cell
  const fill = papers[params.ringColour]
  const at = (z: number, outer: number = radii.ringOuter, inner: number = radii.ringInner): Ring => ({
    outer: outer * radius,
    outerZ: z * grow,
    inner: inner * radius,
    innerZ: z * grow,
  })
  const { start, end } = tearShape.ring
  const path = (ring: Ring): string =>
    params.ring === 'torn' ? tornRing(camera, ring, start, end) : wholeRing(camera, ring)
  if (seeThrough) {
    // No glare and no dashes on it: both were taken for marks beside the dimples.
    const film = { ...ringShape, fill, 'fill-opacity': 0.4, stroke: metals.deep, 'stroke-width': lineWidths.fine }
    return part('ring', tag('path', { d: path(at(heights.ring)), ...film }))
  }
  const slab = (top: number, bottom: number, paper: string, outer: number, inner: number): string =>
    tag('path', { d: path(at(bottom, outer, inner)), ...ringShape, fill: metals.dark, ...edge }) +
    tag('path', { d: path(at(top, outer, inner)), ...ringShape, fill: paper, ...edge })
  // A second ring never lies quite true: its hole is wider here, so that both inner edges show.
  const second =
    params.ring === 'second'
      ? slab(
          heights.secondRing,
          heights.ring,
          params.ringColour === 'white' ? papers.grey : papers.white,
          radii.ringOuter * 0.985,
          radii.ringInner * 1.19,
        )
      : ''
  return part('ring', slab(heights.ring, 0, fill, radii.ringOuter, radii.ringInner)) + part('second-ring', second)
}

function fold(params: CellParameters, cell: Cell, camera: Camera): string {
  if (params.wrap === 'missing') return ''
  const { radius, grow } = cell
  const clear = params.wrapColour === 'clear'
  const flat = rise(camera) < 0.01
  const outer = flat ? { outer: radius, outerZ: 0 } : { outer: 0.955 * radius, outerZ: -0.2 * grow }
  const one: Ring = { ...outer, inner: radii.wrapFold * radius, innerZ: 0.3 * grow }
  const torn = params.wrap === 'torn'
  const { start, end } = tearShape.wrap
  const fill = { fill: wraps[params.wrapColour], 'fill-opacity': clear ? 0.55 : undefined, ...ringShape }
  const skin = tag('path', {
    d: torn ? tornRing(camera, one, start, end) : wholeRing(camera, one),
    ...fill,
    ...(flat ? edge : {}),
  })
  const lip =
    torn && flat
      ? [start, end].map(a => tag('path', { d: line(tornEdge(camera, one, a)), fill: 'none', ...edge })).join('') +
        tag('path', { d: arc(camera, one.inner, one.innerZ, end, start + 2 * Math.PI), fill: 'none', ...edge })
      : tag('path', {
          d: torn
            ? arc(camera, one.inner, one.innerZ, end, start + 2 * Math.PI)
            : circle(camera, one.inner, one.innerZ),
          fill: 'none',
          ...edge,
        })
  const under =
    params.secondWrap === 'none'
      ? ''
      : tag('path', {
          d: wholeRing(camera, {
            ...one,
            outer: one.inner,
            outerZ: one.innerZ,
            inner: (radii.wrapFold - 0.075) * radius,
          }),
          ...ringShape,
          fill: underWrap(params),
          'fill-opacity': params.secondWrap === 'clear' ? 0.7 : undefined,
          ...edge,
        })
  return part('second-wrap', under) + part('wrap-fold', skin, lip)
}

/**
 * Draws the end; what lies above the part that is pointed at turns see-through (the ring over dimples, which are drawn on
 * it at full strength) or is lifted off (the contact over the vent, seen at an angle).
 */
export function topFace(params: CellParameters, cell: Cell, camera: Camera): string {
  const flat = rise(camera) < 0.01
  const onVent = params.pointAt === 'vent'
  const onDimples = params.pointAt === 'dimples'
  const lift = onVent && !flat ? 6.2 * cell.grow : 0
  const { radius, grow } = cell
  const guides =
    lift === 0
      ? ''
      : [0, 1]
          .map(i => {
            const x = camera.x + (i === 0 ? -1 : 1) * radii.flangeInner * radius * camera.scale
            const d = `M${x} ${camera.y - rise(camera) * 0.16 * lift}V${camera.y - rise(camera) * 0.84 * lift}m-5 6l5 -6l5 6`
            return tag('path', { d, fill: 'none', stroke: inks.point, 'stroke-width': lineWidths.outline })
          })
          .join('')
  return (
    shoulder(params, cell, camera) +
    (onDimples ? '' : dimples(params, cell, camera)) +
    (params.view === 'side' ? '' : vent(params, cell, camera, flat ? 0 : -0.5 * grow, onVent ? 'open' : 'shade')) +
    insulator(params, cell, camera, onDimples) +
    (onDimples ? dimples(params, cell, camera) : '') +
    fold(params, cell, camera) +
    guides +
    contact(params, cell, camera, onVent && flat ? 'see-through' : 'drawn', lift)
  )
}
