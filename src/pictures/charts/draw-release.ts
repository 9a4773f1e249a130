// One closed week's release: the share of each verdict as a bar, with its interval.
import type { Verdict } from '../../ground/verdicts.ts'
import type { AltFact } from '../alt/alt-fact.ts'
import { toneOf, verdictSign } from '../cell/verdict-sign.ts'
import type { Drawing } from '../drawing.ts'
import { inks, lineWidths } from '../ink.ts'
import { panel, sheetWidth } from '../panel.ts'
import { part, round, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import { textBlock, textLine } from '../type/text-block.ts'
import { key } from './key.ts'
import { along, seriesInks, typeSizes } from './plot.ts'
import { title } from './title.ts'

/** One row: its verdict (for the sign), words, share with interval (0 to 1; undefined: not released). */
export type ReleaseRow = { tone: Verdict; label: string; share?: { value: number; low: number; high: number } }

export type Release = {
  title?: string
  rows: readonly ReleaseRow[]
  words: { interval: string; withheld: string }
  /** a share (0 to 1) as whole per cent, the way the language writes it */
  percent: (share: number) => string
}

const leftEdge = 42
const rightEdge = sheetWidth - 16
const barHeight = 15

const signOf = (tone: Verdict, y: number): string =>
  tag('rect', { x: 10, y: y - 12, width: 24, height: 24, rx: 5, fill: toneOf[tone] }) + verdictSign(tone, 22, y, 7.6)

function whisker(from: number, to: number, y: number): string {
  const d = `M${round(from)} ${round(y)}H${round(to)}M${round(from)} ${round(y - 5)}v10M${round(to)} ${round(y - 5)}v10`
  return (
    tag('path', { d, stroke: inks.casing, 'stroke-width': 5, fill: 'none' }) +
    tag('path', { d, stroke: inks.line, 'stroke-width': 2.2, fill: 'none' })
  )
}

function row(release: Release, one: ReleaseRow, top: number): { svg: string; height: number } {
  const x = along({ from: 0, to: 1 }, leftEdge, rightEdge)
  const figure = one.share === undefined ? release.words.withheld : release.percent(one.share.value)
  const room = rightEdge - leftEdge - measureText(figure, typeSizes.label, 'bold') - 12
  const words = textBlock(one.label, leftEdge, top, room, { size: typeSizes.label })
  const y = top + words.height + 4
  const track = tag('rect', {
    x: leftEdge,
    y,
    width: rightEdge - leftEdge,
    height: barHeight,
    rx: 3,
    fill: inks.casing,
    stroke: inks.edge,
    'stroke-width': lineWidths.fine,
  })
  const bar =
    one.share === undefined
      ? ''
      : tag('rect', {
          x: leftEdge,
          y,
          width: Math.max(2, x(one.share.value) - leftEdge),
          height: barHeight,
          rx: 3,
          fill: seriesInks.fill,
          stroke: seriesInks.first,
          'stroke-width': lineWidths.inner,
        }) + whisker(x(one.share.low), x(one.share.high), y + barHeight / 2)
  const share = textLine(figure, rightEdge, top + typeSizes.label * 0.98, {
    size: typeSizes.label,
    weight: 'bold',
    anchor: 'end',
  })
  return {
    svg: part('row', words.svg, share, track, bar, signOf(one.tone, y - 2)),
    height: words.height + 4 + barHeight + 12,
  }
}

const facts = (release: Release): AltFact[] => [
  ...(release.title === undefined ? [] : [{ code: 'chart-title', values: { title: release.title }, rank: 1 }]),
  ...release.rows.map(
    (one, i): AltFact =>
      one.share === undefined
        ? { code: 'release-withheld', values: { label: one.label }, rank: 3 }
        : {
            code: 'release-row',
            values: { label: one.label, share: one.share.value, low: one.share.low, high: one.share.high },
            rank: i < 4 ? 0 : 2,
          },
  ),
]

/** Draws the chart, 360 px wide; its height follows from the rows and their words. */
export function drawRelease(release: Release): Drawing {
  const head = title(release.title)
  let y = head.end + 4
  let content = head.svg
  for (const one of release.rows) {
    const drawn = row(release, one, y)
    content += drawn.svg
    y += drawn.height
  }
  const legend = key([{ words: release.words.interval, sample: (x, cy) => whisker(x - 10, x + 10, cy) }], y + 2)
  return panel(Math.ceil(y + legend.height + 10), content + legend.svg, facts(release))
}
