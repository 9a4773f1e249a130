// A page to be printed: what a family looks like beside words about it, and the caution, in the shape of an A4 sheet. All words handed in.
import { type AltFact, ranks } from '../alt/alt-fact.ts'
import type { Drawing } from '../drawing.ts'
import { fontFamily, inks } from '../ink.ts'
import { sheetWidth } from '../panel.ts'
import { part, tag } from '../svg.ts'
import { type TextStyle, textBlock } from '../type/text-block.ts'

export type SheetPart = { readonly title: string; readonly lines: readonly string[] }
export type Sheet = {
  readonly title: string
  /** Under the title: by whom it is described, since when, by how many references. */
  readonly about: readonly string[]
  readonly picture: Drawing | undefined
  readonly parts: readonly SheetPart[]
  /** The do-not-use-if-unsure guidance, the first line in bold: always drawn whole. */
  readonly caution: readonly [string, ...string[]]
}

const margin = 24
/** Two columns of a picture's width: the drawing, and the words beside it. */
const width = 2 * sheetWidth + 3 * margin
/** ISO 216: the long side by the short one. */
const ratio = Math.SQRT2

/** Blocks of text below each other from `top`; gives the y below the last. */
function column(
  blocks: readonly { text: string; style: TextStyle; gap: number }[],
  x: number,
  top: number,
  wide: number,
) {
  let y = top
  let svg = ''
  for (const { text, style, gap } of blocks) {
    const block = textBlock(text, x, y + gap, wide, style)
    svg += block.svg
    y += gap + block.height
  }
  return { svg, bottom: y }
}

const heading = { size: 17, weight: 'bold' } as const
const body = { size: 14 } as const

/** What needs more room than an A4 sheet makes the sheet larger in both directions, so that it prints as one page all the same. */
export function drawSheet({ title, about, picture, parts, caution }: Sheet): Drawing {
  const whole = width - 2 * margin
  const head = column(
    [
      { text: title, style: { size: 28, weight: 'bold' }, gap: margin },
      ...about.map(text => ({ text, style: { ...body, fill: inks.soft }, gap: 4 })),
    ],
    margin,
    0,
    whole,
  )
  const top = head.bottom + 16
  const left = picture ? margin + sheetWidth + margin : margin
  const words = column(
    parts.flatMap(({ title: name, lines }) => [
      { text: name, style: heading, gap: 8 },
      ...lines.map(text => ({ text, style: body, gap: 5 })),
    ]),
    left,
    top - 8,
    width - left - margin,
  )
  const [first, ...rest] = caution
  const below = Math.max(words.bottom, top + (picture?.height ?? 0)) + 16
  const warned = column(
    [
      { text: first, style: { size: 17, weight: 'bold' }, gap: 12 },
      ...rest.map(text => ({ text, style: { size: 13 }, gap: 6 })),
    ],
    margin + 14,
    below,
    whole - 28,
  )
  const frame = tag('rect', {
    ...{ x: margin, y: below, width: whole, height: warned.bottom - below + 12, rx: 8 },
    ...{ fill: '#fff3cf', stroke: inks.line, 'stroke-width': 2 },
  })
  const tall = Math.max(warned.bottom + 12 + margin, width * ratio)
  const drawn = picture ? tag('g', { transform: `translate(${margin} ${top})` }, picture.svg) : ''
  return onPage(tall, [head.svg, drawn, words.svg, part('caution', frame + warned.svg)].join(''), [
    ...(picture?.about ?? []),
    ...parts.flatMap(one => one.lines).map(text => ({ code: 'verdict-reason', values: { text }, rank: ranks.setting })),
    { code: 'verdict-caution', values: { text: first }, rank: ranks.kept },
  ])
}

function onPage(tall: number, content: string, about: readonly AltFact[]): Drawing {
  const height = Math.ceil(tall)
  const wide = Math.ceil(height / ratio)
  const svg = tag(
    'svg',
    {
      ...{ xmlns: 'http://www.w3.org/2000/svg', width: wide, height, viewBox: `0 0 ${wide} ${height}` },
      ...{ 'font-family': fontFamily, 'font-weight': 500, 'stroke-linejoin': 'round', 'stroke-linecap': 'round' },
    },
    tag('rect', { x: 0, y: 0, width: wide, height, fill: '#ffffff' }),
    tag('g', { transform: `translate(${Math.floor((wide - width) / 2)} 0)` }, content),
  )
  return { svg, width: wide, height, about }
}
