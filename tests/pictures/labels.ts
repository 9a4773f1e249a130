// The labels of a drawing with the room they take; stand-in lettering of the drawn cell is picture, not label.
import type { Drawing } from '../../src/pictures/drawing.ts'
import { measureText } from '../../src/pictures/type/measure.ts'
import { parseSvg, walk } from './svg-tree.ts'

export type Label = {
  text: string
  size: number
  fill: string
  left: number
  right: number
  top: number
  base: number
}

/** Labels in drawing order; `top` to `base` is about the height of capitals. */
export function labelsOf(drawing: Drawing): Label[] {
  const root = parseSvg(drawing.svg)
  const lettering = new Set(
    walk(root)
      .filter(node => node.attributes['data-part'] === 'lettering')
      .flatMap(walk),
  )
  return walk(root)
    .filter(node => node.name === 'text' && !lettering.has(node))
    .map(({ text, attributes }) => {
      const size = Number(attributes['font-size'])
      const width = measureText(text, size, attributes['font-weight'] === '700' ? 'bold' : 'medium')
      const anchor = attributes['text-anchor']
      const left = Number(attributes['x']) - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0)
      const base = Number(attributes['y'])
      const fill = attributes['fill'] ?? '#000000'
      return { text, size, fill, left, right: left + width, top: base - size * 0.7, base }
    })
}
