// Dimension lines beside a cell.
import { inks, lineWidths } from '../ink.ts'
import { part, round, tag } from '../svg.ts'
import { textLine } from '../type/text-block.ts'
import { formatSizes } from './anatomy.ts'
import type { CellParameters } from './parameters.ts'
import type { Box, Place, Scene } from './scene.ts'

const pen = { stroke: inks.point, 'stroke-width': lineWidths.outline, fill: 'none' }

const longestHead = 6

/** A line with a head and a bar at both ends, from (x1, y1) to (x2, y2); level or upright only. */
function dimensionLine(x1: number, y1: number, x2: number, y2: number): string {
  const upright = x1 === x2
  // Two heads never meet on a short line.
  const arrowHead = Math.min(longestHead, (upright ? y2 - y1 : x2 - x1) / 3)
  const bar = (x: number, y: number): string =>
    upright ? `M${round(x - 7)} ${round(y)}h14` : `M${round(x)} ${round(y - 7)}v14`
  const head = (x: number, y: number, way: 1 | -1): string =>
    upright
      ? `M${round(x - arrowHead)} ${round(y + way * arrowHead)}L${round(x)} ${round(y)}l${round(arrowHead)} ${round(way * arrowHead)}`
      : `M${round(x + way * arrowHead)} ${round(y - arrowHead)}L${round(x)} ${round(y)}l${round(way * arrowHead)} ${round(arrowHead)}`
  const d = `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}${bar(x1, y1)}${bar(x2, y2)}${head(x1, y1, 1)}${head(x2, y2, -1)}`
  return tag('path', { d, ...pen })
}

/** px below which there is no room for figures beside a cell: both then stand in one line below it. */
const leastBeside = 160
/** px that this line takes from the picture above it. */
const lineBelow = 20

/** What is left of a box for the cell itself, where its sizes are said in it. */
export const withoutSizes = (params: CellParameters, box: Box): Box =>
  params.sizes && box.width < leastBeside ? { ...box, height: box.height - lineBelow } : box

/** Length and diameter lines with nominal mm when `sizes` is on; only the line that is asked about otherwise. */
export function measures(params: CellParameters, drawn: Scene, bounds: Box): string {
  const cell = drawn.places['extent'] as Place
  const { diameter, length } = formatSizes[params.format]
  const [top, low] = [cell.y - cell.ry, cell.y + cell.ry]
  const x = Math.min(cell.x + cell.rx + 16, bounds.x + bounds.width - 10)
  const ask = params.pointAt
  const beside = params.sizes && bounds.width >= leastBeside
  let out = ''
  if (params.sizes && !beside) {
    const words = `${diameter} × ${length} mm`
    const low = bounds.y + bounds.height - 3
    out += textLine(words, bounds.x + bounds.width / 2, low, { size: 14, weight: 'bold', anchor: 'middle' })
  }
  if (params.sizes || ask === 'length') {
    out += dimensionLine(x, top, x, low)
    if (beside) {
      const [left, middle] = [x + 8, (top + low) / 2]
      out += textLine(`${length}`, left, middle, { size: 14, weight: 'bold' })
      out += textLine('mm', left, middle + 14, { size: 13, weight: 'bold' })
    }
  }
  if (params.sizes || ask === 'diameter') {
    const y = cell.y + cell.ry * 0.25
    out += dimensionLine(cell.x - cell.rx, y, cell.x + cell.rx, y)
    // Beside the cell: on it, the number would look like print.
    if (beside)
      out += textLine(`${diameter} mm`, cell.x - cell.rx - 6, y + 5, { size: 14, weight: 'bold', anchor: 'end' })
  }
  return part('measures', out)
}
