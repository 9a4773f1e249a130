// The positive end as seen from above, straight down or at an angle: can, vent, ring, contact, fold of the wrap.
import { INK, METAL, PAPER, STROKE, WRAP } from '../ink.ts'
import { line, part, tag } from '../svg.ts'
import { type Cell, HEIGHT, RADIUS } from './anatomy.ts'
import { type Ring, tornEdge, tornRing, wholeRing } from './broken-ring.ts'
import { arc, type Camera, circle, dot, rise } from './camera.ts'
import { contact } from './contact.ts'
import type { CellParameters } from './parameters.ts'
import { TEAR } from './tear.ts'
import { vent } from './vent.ts'
import { underWrap } from './wrap-colours.ts'

const edge = { stroke: INK.line, 'stroke-width': STROKE.inner }
const ringShape = { 'fill-rule': 'evenodd' } as const

function shoulder(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius } = cell
  const outer = params.wrap === 'missing' ? 0.96 : 0.93
  const plate = (r: number, fill: string): string => tag('path', { d: circle(camera, r * radius, 0), fill, ...edge })
  return (
    part('shoulder', plate(outer, METAL.mid)) +
    part('gasket', plate(RADIUS.shoulderInner, '#38434d')) +
    part('flange', plate(RADIUS.gasketInner, METAL.light), plate(RADIUS.flangeInner, METAL.gap))
  )
}

function dimples(params: CellParameters, cell: Cell, camera: Camera): string {
  const { radius } = cell
  const hollows = Array.from({ length: params.dimples }, (_, i) => {
    const angle = Math.PI + (2 * Math.PI * i) / params.dimples
    const d = dot(camera, RADIUS.dimple * radius, angle, 0, RADIUS.dimpleSize * radius)
    return tag('path', { d, fill: METAL.deep, stroke: INK.line, 'stroke-width': STROKE.outline })
  })
  return part('dimples', ...hollows)
}

function insulator(params: CellParameters, cell: Cell, camera: Camera, seeThrough: boolean): string {
  if (params.ring === 'missing') return ''
  const { radius, grow } = cell
  const fill = PAPER[params.ringColour]
  const at = (z: number, outer: number = RADIUS.ringOuter, inner: number = RADIUS.ringInner): Ring => ({
    outer: outer * radius,
    outerZ: z * grow,
    inner: inner * radius,
    innerZ: z * grow,
  })
  const { start, end } = TEAR.ring
  const path = (ring: Ring): string =>
    params.ring === 'torn' ? tornRing(camera, ring, start, end) : wholeRing(camera, ring)
  if (seeThrough) {
    // No glare and no dashes on it: both were taken for marks beside the dimples.
    const film = { ...ringShape, fill, 'fill-opacity': 0.4, stroke: METAL.deep, 'stroke-width': STROKE.fine }
    return part('ring', tag('path', { d: path(at(HEIGHT.ring)), ...film }))
  }
  const slab = (top: number, bottom: number, paper: string, outer: number, inner: number): string =>
    tag('path', { d: path(at(bottom, outer, inner)), ...ringShape, fill: METAL.dark, ...edge }) +
    tag('path', { d: path(at(top, outer, inner)), ...ringShape, fill: paper, ...edge })
  // A second ring never lies quite true: its hole is wider here, so that both inner edges show.
  const second =
    params.ring === 'second'
      ? slab(
          HEIGHT.secondRing,
          HEIGHT.ring,
          params.ringColour === 'white' ? PAPER.grey : PAPER.white,
          RADIUS.ringOuter * 0.985,
          RADIUS.ringInner * 1.19,
        )
      : ''
  return part('ring', slab(HEIGHT.ring, 0, fill, RADIUS.ringOuter, RADIUS.ringInner)) + part('second-ring', second)
}

function fold(params: CellParameters, cell: Cell, camera: Camera): string {
  if (params.wrap === 'missing') return ''
  const { radius, grow } = cell
  const clear = params.wrapColour === 'clear'
  const flat = rise(camera) < 0.01
  const outer = flat ? { outer: radius, outerZ: 0 } : { outer: 0.955 * radius, outerZ: -0.2 * grow }
  const one: Ring = { ...outer, inner: RADIUS.wrapFold * radius, innerZ: 0.3 * grow }
  const torn = params.wrap === 'torn'
  const { start, end } = TEAR.wrap
  const fill = { fill: WRAP[params.wrapColour], 'fill-opacity': clear ? 0.55 : undefined, ...ringShape }
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
            inner: (RADIUS.wrapFold - 0.075) * radius,
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
            const x = camera.x + (i === 0 ? -1 : 1) * RADIUS.flangeInner * radius * camera.scale
            const d = `M${x} ${camera.y - rise(camera) * 0.16 * lift}V${camera.y - rise(camera) * 0.84 * lift}m-5 6l5 -6l5 6`
            return tag('path', { d, fill: 'none', stroke: INK.point, 'stroke-width': STROKE.outline })
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
