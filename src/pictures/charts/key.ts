// The key of a chart: a sample of each mark beside its words, wrapped into as many lines as it needs.
import { sheetWidth } from '../panel.ts'
import { part } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { textBlock } from '../type/text-block.ts'
import { typeSizes } from './plot.ts'

/** `sample` draws the mark around the middle of a 26 px wide slot whose centre it is given. */
export type KeyEntry = { words: string; sample: (x: number, y: number) => string }

const slotWidth = 26
const leftEdge = 14

/** Lays the entries out from `top` px; entries share a line while they fit, long words wrap. */
export function key(entries: readonly KeyEntry[], top: number): { svg: string; height: number } {
  let x = leftEdge
  let y = top
  let row = 0
  let svg = ''
  for (const { words, sample } of entries) {
    const room = sheetWidth - leftEdge * 2 - slotWidth - 6
    const width = Math.min(room, measureText(words, typeSizes.axis) + 1)
    if (x > leftEdge && x + slotWidth + 6 + width > sheetWidth - leftEdge) {
      x = leftEdge
      y += row
      row = 0
    }
    const block = textBlock(words, x + slotWidth + 6, y, room, { size: typeSizes.axis })
    svg += part('key', sample(x + slotWidth / 2, y + typeSizes.axis * 0.64), block.svg)
    row = Math.max(row, block.height + 4)
    x += slotWidth + 6 + width + 16
  }
  return { svg, height: y + row - top }
}
