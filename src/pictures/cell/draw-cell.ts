// One picture of one cell: a question's "look here", or a family's reference.

import { describeCell } from '../alt/describe-cell.ts'
import type { Drawing } from '../drawing.ts'
import { panel, questionHeight, sheetWidth } from '../panel.ts'
import { part } from '../svg.ts'
import { lookHere } from './compose-cell.ts'
import { type CellParameters, completeCell } from './parameters.ts'

const sheetHeights = {
  side: questionHeight,
  top: questionHeight,
  'top-angle': questionHeight,
  'cut-away': 200,
} as const

/** Draws a cell, 360 px wide; parameters left out take their defaults. Never fails: read packs with `readCellParameters`. */
export function drawCell(some: Partial<CellParameters>): Drawing {
  const params = completeCell(some)
  const height = sheetHeights[params.view]
  const margin = 16
  const box = { x: 40, y: margin, width: sheetWidth - 80, height: height - 2 * margin }
  const bounds = { x: 10, y: 8, width: sheetWidth - 20, height: height - 16 }
  return panel(height, part('cell', lookHere(params, box, bounds).svg), describeCell(params))
}
