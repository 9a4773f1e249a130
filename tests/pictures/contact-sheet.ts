// A contact sheet: many drawings on one page with their names, for a person to look over.
import type { Drawing } from '../../src/pictures/drawing.ts'
import { fontFamily, inks } from '../../src/pictures/ink.ts'
import { tag } from '../../src/pictures/svg.ts'
import { textBlock } from '../../src/pictures/type/text-block.ts'

export type SheetEntry = { name: string; drawing: Drawing }

const gap = 14

/** Puts the drawings into columns of 360 px each, every next one into the shortest column; names stand above them. */
export function contactSheet(entries: readonly SheetEntry[], columns = 4): Drawing {
  const wide = 360
  const ends = Array.from({ length: Math.max(1, columns) }, () => gap)
  let content = ''
  for (const { name, drawing } of entries) {
    const column = ends.indexOf(Math.min(...ends))
    const x = gap + column * (wide + gap)
    const y = ends[column] as number
    const words = textBlock(name, x, y, wide, { size: 14, fill: inks.casing })
    const scale = wide / drawing.width
    const placed = { x, y: y + words.height + 4, width: wide, height: drawing.height * scale }
    const inner = drawing.svg.replace(/^<svg xmlns="[^"]*" width="[^"]*" height="[^"]*"/, '<svg')
    content += words.svg + tag('svg', { ...placed, viewBox: `0 0 ${wide} ${placed.height}` }, inner)
    ends[column] = placed.y + placed.height + gap
  }
  const width = gap + ends.length * (wide + gap)
  const height = Math.ceil(Math.max(...ends))
  const frame = {
    xmlns: 'http://www.w3.org/2000/svg',
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    'font-family': fontFamily,
  }
  const ground = tag('rect', { width, height, fill: '#33363c' })
  return { svg: tag('svg', frame, ground, content), width, height, about: [] }
}
