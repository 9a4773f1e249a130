// The three outside views: side, straight from the top, top at an angle. One camera each, one set of parts.
import { inks, lineWidths, metals } from '../ink.ts'
import { part, tag } from '../svg.ts'
import { boardLength, type Cell, cellOf, contactHeight, formatSizes, heights, radii } from './anatomy.ts'
import { body } from './body.ts'
import { bottomFace } from './bottom-face.ts'
import { type Camera, circle, rise } from './camera.ts'
import { endDamage, footDamage } from './damage.ts'
import { heatOver } from './heat.ts'
import { outsidePlaces } from './outside-places.ts'
import type { CellParameters } from './parameters.ts'
import type { Box, Scene } from './scene.ts'
import { lowest } from './silhouette.ts'
import { terminalMarks } from './terminal-marks.ts'
import { topFace } from './top-face.ts'
import { waterDrops } from './water.ts'

const tilts = { side: 0.17, 'top-angle': 0.62, top: 1 } as const

/** mm of the side shown in the view at an angle. */
const angleDepth = 11.5

// Pictures that compare sizes keep one scale, so that a shorter cell is drawn shorter.
const trueSize = new Set(['length', 'diameter', 'board'])

function frame(params: CellParameters, cell: Cell, box: Box, sameScale: boolean): { camera: Camera; bottom: number } {
  const view = params.view as keyof typeof tilts
  const tilt = tilts[view]
  const up = Math.sqrt(1 - tilt * tilt)
  const smoke = (params.heat === 'none' && params.pointAt !== 'heat') || view === 'top' ? 0 : 0.2 * box.height
  const x = box.x + box.width / 2
  const head = params.end === 'positive' || view === 'side' ? heights.buttonTop * cell.grow : 0.5
  if (view === 'top') {
    return {
      camera: { x, y: box.y + box.height / 2, scale: Math.min(box.width, box.height) / 2 / cell.radius, tilt },
      bottom: 0,
    }
  }
  const lift = params.pointAt === 'vent' ? 6.2 * cell.grow : 0
  const fixed = sameScale && trueSize.has(params.pointAt)
  const biggest = formatSizes['21700'].length + boardLength + 2.4
  const bottom = view === 'side' ? lowest(params, cell) : -angleDepth * cell.grow
  const above =
    view === 'side'
      ? head * up + cell.radius * tilt
      : Math.max(cell.radius * tilt, (head + lift) * up + 0.3 * cell.radius * tilt)
  const puddle = params.leak === 'bottom' ? 0.5 * cell.radius : 0
  const below = view === 'side' ? -bottom * up + cell.radius * tilt + puddle : -bottom * up + 0.2 * cell.radius
  const tall = fixed ? biggest * up + 2 * cell.radius * tilt : above + below
  const wide = 2 * (fixed ? formatSizes['26650'].diameter / 2 : cell.radius) * (params.swollen ? 1.24 : 1.02)
  const scale = Math.min((box.height - smoke) / tall, box.width / wide)
  const spare = box.height - smoke - (above + below) * scale
  const y = box.y + smoke + Math.max(0, fixed ? spare : spare / 2) + above * scale
  return { camera: { x, y, scale, tilt }, bottom }
}

function swelling(params: CellParameters, cell: Cell, camera: Camera): string {
  if (!params.swollen) return ''
  const px = cell.radius * camera.scale
  const top = camera.y - rise(camera) * (heights.groove * cell.grow - 3)
  const low = camera.y - rise(camera) * (3 - cell.length)
  const straight = tag('path', {
    d: `M${camera.x - px} ${top}V${low}M${camera.x + px} ${top}V${low}`,
    stroke: inks.line,
    'stroke-width': lineWidths.inner,
    'stroke-dasharray': '5 4',
  })
  return part('swelling', straight)
}

/** Draws the cell into `box`, as large as it fits, or in the scale that all formats share when sizes are compared. */
export function outsideView(params: CellParameters, box: Box, sameScale: boolean): Scene {
  const cell = cellOf(params.format)
  const { camera, bottom } = frame(params, cell, box, sameScale)
  const px = cell.radius * camera.scale
  const cut = params.view === 'top-angle'
  const positive = params.end === 'positive' || params.view === 'side'
  const skin =
    params.view === 'top'
      ? part(
          'body',
          tag('path', {
            d: circle(camera, cell.radius * (params.wrap === 'missing' ? 0.96 : 0.995), 0),
            fill: metals.light,
            stroke: inks.line,
            'stroke-width': lineWidths.outline,
          }),
        )
      : body(cut ? { ...params, dent: 'none', swollen: false } : params, cell, camera, bottom, cut)
  const face = positive ? topFace(params, cell, camera) : bottomFace(params, cell, camera)
  const terminalZ = positive ? contactHeight(params, cell) : 0
  const share = !positive ? 0.6 : params.top === 'button' ? radii.plateau * 0.8 : radii.plateau
  const terminal = { x: camera.x, y: camera.y - rise(camera) * terminalZ, rx: share * px, ry: share * px * camera.tilt }
  const marks = params.view === 'side' ? '' : terminalMarks(params, terminal)
  const damage = endDamage(params, cell, camera, params.view === 'top' ? 0 : px * (cut ? 0.55 : 0.9), terminalZ)
  const foot = params.view === 'side' ? footDamage(params, cell, camera, bottom) : ''
  const wet = !params.wet
    ? ''
    : part(
        'wet',
        params.view === 'top'
          ? waterDrops(camera.x - px * 0.9, camera.y - px * 0.9, px * 1.8, px * 1.6, px * 0.16)
          : waterDrops(
              camera.x - px * 0.9,
              camera.y + px * 0.2,
              px * 1.8,
              rise(camera) * -bottom * 0.86,
              px * (cut ? 0.14 : 0.22),
            ),
      )
  const heat =
    params.view === 'top' ? '' : heatOver(params, { x: camera.x, y: terminal.y - terminal.ry - 5 }, 0.18 * box.height)
  const svg = skin + swelling(params, cell, camera) + face + marks + damage + foot + wet + heat
  return { svg, places: outsidePlaces(params, cell, camera, bottom) }
}
