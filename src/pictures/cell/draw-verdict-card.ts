// The verdict card: the word, the cell with the contradicted parts numbered, why, and the caution. All words handed in.
import type { Verdict } from '../../ground/verdicts.ts'
import { describeVerdict } from '../alt/describe-verdict.ts'
import type { Drawing } from '../drawing.ts'
import { inks } from '../ink.ts'
import { panel, sheetWidth } from '../panel.ts'
import { part, round, tag } from '../svg.ts'
import { textBlock } from '../type/text-block.ts'
import { lookClose } from './compose-cell.ts'
import { numberBadge, numberedMark } from './mark.ts'
import { type CellParameters, completeCell, type Part } from './parameters.ts'
import type { Box } from './scene.ts'
import { tileGap, tileHeight, tiles } from './tiles.ts'
import { toneOf, verdictSign } from './verdict-sign.ts'

/** A part that does not fit, and the sentence that says so. */
export type VerdictMark = { part: Exclude<Part, 'none'>; text: string }

/** The answers' cell in one view, with the marks that can be seen there. */
export type VerdictView = { show: Partial<CellParameters>; marks: readonly VerdictMark[] }

export type VerdictCard = {
  tone: Verdict
  /** the verdict in the reader's language */
  word: string
  /** at most two or three views; their marks are numbered through */
  views: readonly VerdictView[]
  /** reasons that have no place on the cell */
  reasons?: readonly string[]
  /** figures the verdict rests on, as the person gave them */
  figures?: readonly string[]
  /** low, to stand in a message that gives the reasons itself: the sentences of the marks are then told, not drawn */
  brief?: true
  /** the do-not-use-if-unsure guidance: always drawn whole */
  caution: string
}

const margin = 14
/** px of the pictures in a brief card. */
const briefHeight = 96

function heading(card: VerdictCard): { svg: string; height: number } {
  const words = textBlock(card.word, 62, 13, sheetWidth - 62 - margin, { size: 24, weight: 'bold', fill: inks.casing })
  const height = Math.max(52, words.height + 22)
  const band = `M1.5 ${height}V10.5A9 9 0 0 1 10.5 1.5H${sheetWidth - 10.5}A9 9 0 0 1 ${sheetWidth - 1.5} 10.5V${height}Z`
  const svg = tag('path', { d: band, fill: toneOf[card.tone] }) + verdictSign(card.tone, 33, height / 2, 16) + words.svg
  return { svg: part('verdict', svg), height }
}

function pictures(card: VerdictCard, top: number): { svg: string; height: number } {
  if (card.views.length === 0) return { svg: '', height: 0 }
  let number = 0
  const list = card.views.map((view, i) => {
    const params = completeCell({ ...view.show, pointAt: view.marks[0]?.part ?? view.show.pointAt ?? 'none' })
    const first = number + 1
    number += view.marks.length
    const draw = (box: Box): string => {
      const seen = lookClose(params, box)
      const bounds = { x: box.x - 12, y: box.y - 10, width: box.width + 24, height: box.height + 18 }
      const marks = view.marks.map((mark, k) => {
        const place = seen.places[mark.part]
        return place === undefined ? '' : numberedMark(place, first + k, bounds)
      })
      return seen.svg + marks.join('')
    }
    return { tile: { name: `view-${i + 1}`, label: '', draw }, tall: tileHeight(params) }
  })
  const shown = list.map(one => one.tile)
  if (card.brief) return tiles(shown, briefHeight, top, Math.max(2, list.length))
  return tiles(shown, Math.max(...list.map(one => one.tall)), top)
}

/** The person's own figures, large: beside a single picture of a brief card, above several. */
function figures(card: VerdictCard, top: number): { svg: string; height: number } {
  if (!card.figures || card.figures.length === 0) return { svg: '', height: 0 }
  const style = { size: 20, weight: 'bold' } as const
  const beside = card.brief === true && card.views.length === 1
  const left = beside ? sheetWidth / 2 + margin : margin
  const words = textBlock(card.figures.join(' · '), left, top + (beside ? 34 : 2), sheetWidth - left - margin, style)
  return { svg: part('figures', words.svg), height: beside ? 0 : words.height + 8 }
}

function reasons(card: VerdictCard, top: number): { svg: string; height: number } {
  const marked = card.brief ? [] : card.views.flatMap(view => view.marks.map(mark => mark.text))
  let y = top
  let svg = ''
  ;[...marked, ...(card.reasons ?? [])].forEach((text, i) => {
    const block = textBlock(text, 44, y, sheetWidth - 44 - margin, { size: 15 })
    const sign =
      i < marked.length
        ? numberBadge(25, y + 10, i + 1)
        : tag('circle', { cx: 25, cy: y + 10, r: 3.5, fill: inks.line })
    svg += part('reason', sign, block.svg)
    y += Math.max(block.height, 24) + 7
  })
  return { svg, height: y - top }
}

function cautionBox(text: string, top: number): { svg: string; height: number } {
  const inner = textBlock(text, 56, top + 11, sheetWidth - 56 - margin - 12, { size: 14.5, weight: 'bold' })
  const height = Math.max(48, inner.height + 22)
  const y = top + height / 2
  const sign = `M34 ${round(y - 13)}L48 ${round(y + 11)}H20Z`
  const svg =
    tag('rect', {
      x: 10,
      y: top,
      width: sheetWidth - 20,
      height,
      rx: 8,
      fill: '#fff3cf',
      stroke: inks.line,
      'stroke-width': 2,
    }) +
    tag('path', { d: sign, fill: 'none', stroke: inks.line, 'stroke-width': 2.4 }) +
    tag('path', { d: `M34 ${round(y - 4)}v6`, stroke: inks.line, 'stroke-width': 2.6 }) +
    tag('circle', { cx: 34, cy: y + 7, r: 1.7, fill: inks.line }) +
    inner.svg
  return { svg: part('caution', svg), height }
}

/** Draws the card, 360 px wide; its height follows from the words, and no word is ever cut. */
export function drawVerdictCard(card: VerdictCard): Drawing {
  const head = heading(card)
  const typed = figures(card, head.height + tileGap)
  const cells = pictures(card, head.height + tileGap + typed.height)
  const drawn = head.height + tileGap + typed.height + cells.height
  const why = reasons(card, drawn + 4)
  const end = drawn + why.height + (card.brief ? 0 : 8)
  const caution = cautionBox(card.caution, end)
  const height = Math.ceil(end + caution.height + 10)
  return panel(height, typed.svg + cells.svg + why.svg + caution.svg + head.svg, describeVerdict(card))
}
