// Bench of pictures: drawing and rendering one cold, against bare renders of the same SVG in the same run.
import { Resvg } from '@resvg/resvg-js'
import { Bench } from 'tinybench'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { pictureKey, renderOptions, toPng } from '../../src/pictures/png.ts'
import { type Line, ms } from './table.ts'

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

export async function benchPictures(): Promise<Line[]> {
  const lines: Line[] = []
  for (const [name, draw] of Object.entries(pictures)) {
    const drawing = draw()
    const options = renderOptions(drawing.svg, drawing.width * 2)
    const bench = new Bench({ time: 500, warmupTime: 100 })
    bench
      .add('cold', async () => {
        await toPng(draw())
      })
      .add('bare', () => {
        new Resvg(drawing.svg, options).render()
      })
      .add('draw', () => {
        draw()
      })
      .add('key', () => {
        pictureKey(drawing)
      })
    await bench.run()
    const median = (task: string): number => {
      const result = bench.getTask(task)?.result
      if (result === undefined || !('latency' in result)) throw new Error(`no figure for ${task}`)
      return result.latency.p50
    }
    const [cold, bare] = [median('cold'), median('bare')]
    const inside = `drawn in ${ms(median('draw'))}, keyed in ${ms(median('key'))}, ${(await toPng(drawing)).length} bytes`
    lines.push({
      what: `a cold picture, drawn and made a PNG, median: ${name} (${inside})`,
      ours: ms(cold),
      baseline: `a bare render of the same SVG ${ms(bare)}`,
      ratio: cold / bare,
      atMost: mostRenders,
    })
  }
  return lines
}
