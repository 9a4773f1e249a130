// Bench of pictures: drawing and rendering one cold, against bare renders of the same SVG in the same run.
import { Resvg } from '@resvg/resvg-js'
import { Bench } from 'tinybench'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { pictureKey, renderOptions, toPng } from '../../src/pictures/png.ts'

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
export const MOST_RENDERS = 3

export type PictureBench = {
  name: string
  coldMs: number
  bareMs: number
  ratio: number
  drawMs: number
  keyMs: number
  bytes: number
}

/** Runs the bench and prints its table; a ratio over three means a cold picture is slower than three bare renders. */
export async function benchPictures(): Promise<PictureBench[]> {
  const rows: PictureBench[] = []
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
    const [coldMs, bareMs, drawMs, keyMs] = [median('cold'), median('bare'), median('draw'), median('key')]
    const bytes = (await toPng(drawing)).length
    rows.push({ name, coldMs, bareMs, ratio: coldMs / bareMs, drawMs, keyMs, bytes })
  }
  console.log('pictures: cold picture (draw + PNG) against bare renders of the same SVG, medians')
  for (const row of rows) {
    const ms = (value: number): string => `${value.toFixed(value < 1 ? 3 : 1)} ms`
    const verdict = row.ratio <= MOST_RENDERS ? 'holds' : 'MISSED'
    console.log(
      `  ${row.name.padEnd(9)} cold ${ms(row.coldMs)}, bare ${ms(row.bareMs)}, ratio ${row.ratio.toFixed(2)} (at most ${MOST_RENDERS}: ${verdict}); draw ${ms(row.drawMs)}, key ${ms(row.keyMs)}, ${row.bytes} bytes`,
    )
  }
  return rows
}
