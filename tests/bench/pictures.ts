// Bench of pictures: drawing and rendering one cold, against bare renders of the same SVG, in turns.
import { Resvg } from '@resvg/resvg-js'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { pictureKey, renderOptions, toPng } from '../../src/pictures/png.ts'
import { type Line, ms, quantile } from './table.ts'

const pictures: Readonly<Record<string, () => Drawing>> = {
  question: () => drawCell({ view: 'top', pointAt: 'legs' }),
  'close-up': () => drawCell({ view: 'side', pointAt: 'lettering', lettering: 'can' }),
  options: () =>
    drawOptions([3, 4, 5].map(legs => ({ show: { view: 'top', pointAt: 'legs', legs }, label: `${legs}` }))),
  verdict: () =>
    drawVerdictCard({
      tone: 'ruled-out',
      word: 'Ruled out',
      views: [{ show: { view: 'top', legs: 4 }, marks: [{ part: 'legs', text: 'Four legs instead of three.' }] }],
      caution: 'If you are not sure, do not use it.',
    }),
}

/** Most a cold picture may take, in bare renders of the same SVG. */
const mostRenders = 3
const warmUp = 10
const turns = 60

type Times = Record<'cold' | 'bare' | 'draw' | 'key', number[]>

async function timed(list: number[], run: () => unknown): Promise<void> {
  const begun = performance.now()
  await run()
  list.push(performance.now() - begun)
}

/** Each in turn, over and over, so that the machine's moods meet all of them alike. */
async function inTurns(draw: () => Drawing): Promise<Times> {
  const times: Times = { cold: [], bare: [], draw: [], key: [] }
  const drawing = draw()
  const options = renderOptions(drawing.svg, drawing.width * 2)
  for (let turn = 0; turn < warmUp + turns; turn++) {
    await timed(times.cold, () => toPng(draw()))
    await timed(times.bare, () => new Resvg(drawing.svg, options).render())
    await timed(times.draw, draw)
    await timed(times.key, () => pictureKey(drawing))
  }
  for (const list of Object.values(times)) list.splice(0, warmUp)
  return times
}

export async function benchPictures(): Promise<Line[]> {
  const lines: Line[] = []
  for (const [name, draw] of Object.entries(pictures)) {
    const times = await inTurns(draw)
    const median = (task: keyof Times): number => quantile(times[task], 0.5)
    const inside = `drawn in ${ms(median('draw'))}, keyed in ${ms(median('key'))}, ${(await toPng(draw())).length} bytes`
    lines.push({
      what: `a cold picture, drawn and made a PNG, median of ${turns} in turns: ${name} (${inside})`,
      ours: ms(median('cold')),
      baseline: `a bare render of the same SVG ${ms(median('bare'))}`,
      ratio: median('cold') / median('bare'),
      atMost: mostRenders,
    })
  }
  return lines
}
