// Drops of water.
import { damageInks, inks, lineWidths } from '../ink.ts'
import { round, tag } from '../svg.ts'
import { drop } from './blob.ts'

const edge = { stroke: inks.line, 'stroke-width': lineWidths.inner }

// Places as shares of a box, and sizes.
const drops: readonly (readonly [number, number, number])[] = [
  [0.3, 0.2, 1],
  [0.68, 0.34, 0.8],
  [0.42, 0.5, 1.1],
  [0.72, 0.64, 1],
  [0.3, 0.76, 0.8],
]

/** Draws them over a box in px, the largest `size` px wide or so. */
export const waterDrops = (x: number, y: number, width: number, height: number, size: number): string =>
  drops
    .map(([dx, dy, s]) => {
      const [px, py] = [x + dx * width, y + dy * height]
      return (
        tag('path', { d: drop(px, py, size * s), fill: damageInks.water, ...edge }) +
        tag('path', {
          d: `M${round(px - size * s * 0.3)} ${round(py + size * s * 1.5)}a${round(size * s * 0.4)} ${round(size * s * 0.4)} 0 0 0 ${round(size * s * 0.3)} ${round(size * s * 0.45)}`,
          fill: 'none',
          stroke: '#ffffff',
          'stroke-width': lineWidths.inner,
        })
      )
    })
    .join('')
