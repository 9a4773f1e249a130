// Sets wrapped text into a column and says how tall it became.
import { inks } from '../ink.ts'
import { escapeXml, tag } from '../svg.ts'
import type { Weight } from './measure.ts'
import { wrapText } from './wrap.ts'

export type TextStyle = {
  size: number
  weight?: Weight
  fill?: string
  anchor?: 'start' | 'middle' | 'end'
}

/** One line of text at a base line; sizes in px. */
export const textLine = (text: string, x: number, y: number, style: TextStyle): string =>
  tag(
    'text',
    {
      x,
      y,
      'font-size': style.size,
      'font-weight': style.weight === 'bold' ? 700 : 500,
      'text-anchor': style.anchor === 'start' ? undefined : style.anchor,
      fill: style.fill ?? inks.text,
    },
    escapeXml(text),
  )

/** A wrapped block whose top edge is `y`; `x` is its left edge, middle or right edge by `anchor`. */
export function textBlock(
  text: string,
  x: number,
  y: number,
  width: number,
  style: TextStyle,
): { svg: string; height: number } {
  const step = style.size * 1.28
  const lines = wrapText(text, width, style.size, style.weight ?? 'medium')
  const svg = lines.map((one, i) => textLine(one, x, y + style.size * 0.98 + i * step, style)).join('')
  return { svg, height: lines.length * step }
}
