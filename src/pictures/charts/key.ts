// The key of a chart: a sample of each mark beside its words, wrapped into as many lines as it needs.
import { SHEET_WIDTH } from '../panel.ts'
import { part } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { textBlock } from '../type/text-block.ts'
import { TYPE } from './plot.ts'

/** `sample` draws the mark around the middle of a 26 px wide slot whose centre it is given. */
export type KeyEntry = { words: string; sample: (x: number, y: number) => string }

const SLOT = 26
const LEFT = 14

/** Lays the entries out from `top` px; entries share a line while they fit, long words wrap. */
export function key(entries: readonly KeyEntry[], top: number): { svg: string; height: number } {
  let x = LEFT
  let y = top
  let row = 0
  let svg = ''
  for (const { words, sample } of entries) {
    const room = SHEET_WIDTH - LEFT * 2 - SLOT - 6
    const width = Math.min(room, measureText(words, TYPE.axis) + 1)
    if (x > LEFT && x + SLOT + 6 + width > SHEET_WIDTH - LEFT) {
      x = LEFT
      y += row
      row = 0
    }
    const block = textBlock(words, x + SLOT + 6, y, room, { size: TYPE.axis })
    svg += part('key', sample(x + SLOT / 2, y + TYPE.axis * 0.64), block.svg)
    row = Math.max(row, block.height + 4)
    x += SLOT + 6 + width + 16
  }
  return { svg, height: y + row - top }
}
