// The heading of a chart.
import { sheetWidth } from '../panel.ts'
import { part } from '../svg.ts'
import { textBlock } from '../type/text-block.ts'
import { typeSizes } from './plot.ts'

/** Sets the title at the top of the panel, wrapped; returns where the rest may begin. */
export function title(words: string | undefined): { svg: string; end: number } {
  if (words === undefined || words === '') return { svg: '', end: 12 }
  const block = textBlock(words, 14, 10, sheetWidth - 28, { size: typeSizes.title, weight: 'bold' })
  return { svg: part('title', block.svg), end: 10 + block.height + 6 }
}
