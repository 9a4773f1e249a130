// The sheet a picture is drawn on: its own light panel, so that it reads on a dark page as well as on a light one.
import type { AltFact } from './alt/alt-fact.ts'
import type { Drawing } from './drawing.ts'
import { fontFamily, inks } from './ink.ts'
import { tag } from './svg.ts'

/** Width in px of every drawing, for which strokes and type sizes are chosen: a phone in upright position. */
export const sheetWidth = 360

/**
 * The most px a picture of a question may be tall: a third of a small phone's screen (360 × 640), so that the answers stay above
 * the fold.
 */
export const questionHeight = 212

/** Closes a drawing: panel, frame and content in one SVG, `height` px tall. */
export function panel(height: number, content: string, about: readonly AltFact[]): Drawing {
  const width = sheetWidth
  const svg = tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      'font-family': fontFamily,
      'font-weight': 500,
      'stroke-linejoin': 'round',
      'stroke-linecap': 'round',
    },
    tag('rect', {
      x: 0.75,
      y: 0.75,
      width: width - 1.5,
      height: height - 1.5,
      rx: 10,
      fill: inks.panel,
      stroke: inks.edge,
      'stroke-width': 1.5,
    }),
    content,
  )
  return { svg, width, height, about }
}
