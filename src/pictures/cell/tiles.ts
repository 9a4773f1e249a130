// Lays cell pictures out in columns that are still readable 360 px wide.
import { inks, lineWidths } from '../ink.ts'
import { sheetWidth } from '../panel.ts'
import { part, tag } from '../svg.ts'
import { textBlock } from '../type/text-block.ts'
import { type CellParameters, isPeeled } from './parameters.ts'
import type { Box } from './scene.ts'

const tileSpace = 8

/** One tile: its name in the SVG, words under the picture ('' for none), and how to draw into the box it is given. */
export type Tile = { name: string; label: string; draw: (box: Box, corner: { x: number; y: number }) => string }

const tileHeights = { side: 206, top: 156, 'top-angle': 150, 'cut-away': 116 } as const

/** How tall in px the picture of a tile is, by what it shows. */
export function tileHeight(params: CellParameters): number {
  if (isPeeled(params)) return 116
  // Sizes are compared over many tiles: lower ones keep the sheet from being shrunk where room is short.
  return params.pointAt === 'length' ? 172 : tileHeights[params.view]
}

/** Draws the tiles from `top` px on, all pictures `picture` px tall, in so many columns (two); a single tile gets the whole width. */
export function tiles(
  list: readonly Tile[],
  picture: number,
  top: number,
  columns = Math.min(2, list.length),
): { svg: string; height: number } {
  const width = (sheetWidth - (columns + 1) * tileSpace) / columns
  const inset = columns > 2 ? 8 : 14
  // Four beside each other have room for a long word only up to their edges.
  const room = width - (columns > 3 ? 4 : 16)
  const style = { size: columns > 3 ? 12.5 : 14.5, anchor: 'middle' } as const
  let y = top
  let svg = ''
  for (let row = 0; row < list.length; row += columns) {
    const here = list.slice(row, row + columns)
    const words = here.map(tile => (tile.label === '' ? undefined : textBlock(tile.label, 0, 0, room, style)))
    const text = Math.max(0, ...words.map(block => block?.height ?? 0))
    const height = picture + (text === 0 ? 8 : text + 20)
    here.forEach((tile, column) => {
      const x = tileSpace + column * (width + tileSpace)
      const box = { x: x + inset, y: y + 12, width: width - 2 * inset, height: picture - 12 }
      svg += part(
        tile.name,
        tag('rect', {
          x,
          y,
          width,
          height,
          rx: 8,
          fill: inks.casing,
          stroke: inks.edge,
          'stroke-width': lineWidths.inner,
        }),
        tile.draw(box, { x: x + 17, y: y + 17 }),
        tile.label === '' ? '' : textBlock(tile.label, x + width / 2, y + picture + 10, room, style).svg,
      )
    })
    y += height + tileSpace
  }
  return { svg, height: y - top }
}

/** px between the panel's edge and the first tile, and between tiles. */
export const tileGap = tileSpace
