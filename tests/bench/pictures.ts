// Bench of pictures: drawing and rendering one cold, against bare renders of the same SVG, in turns.
import { Resvg } from '@resvg/resvg-js'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { pictureKey, renderOptions, toPng } from '../../src/pictures/png.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, quantile } from './table.ts'

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
const turns = usually(60, 15)

/** Each run's time on the clock, and what of it the processor worked on it in all threads, in ms. */
type Taken = { clock: number[]; processor: number[] }
type Times = Record<'cold' | 'bare' | 'draw' | 'key', Taken>

async function timed(taken: Taken, run: () => unknown): Promise<void> {
  const worked = process.cpuUsage()
  const begun = performance.now()
  await run()
  taken.clock.push(performance.now() - begun)
  const { user, system } = process.cpuUsage(worked)
  taken.processor.push((user + system) / 1000)
}

/** Each in turn, over and over, so that the machine's moods meet all of them alike. */
async function inTurns(draw: () => Drawing): Promise<Times> {
  const none = (): Taken => ({ clock: [], processor: [] })
  const times: Times = { cold: none(), bare: none(), draw: none(), key: none() }
  const drawing = draw()
  const options = renderOptions(drawing.svg, drawing.width * 2)
  for (let turn = 0; turn < warmUp + turns; turn++) {
    await timed(times.cold, () => toPng(draw()))
    await timed(times.bare, () => new Resvg(drawing.svg, options).render())
    await timed(times.draw, draw)
    await timed(times.key, () => pictureKey(drawing))
  }
  for (const { clock, processor } of Object.values(times)) {
    clock.splice(0, warmUp)
    processor.splice(0, warmUp)
  }
  return times
}

export async function benchPictures(): Promise<Line[]> {
  const lines: Line[] = []
  for (const [name, draw] of Object.entries(pictures)) {
    const times = await inTurns(draw)
    // The lower quartile: a cold picture changes threads twice, and waits for them where other programs take the cores.
    const usual = (task: keyof Times, by: keyof Taken = 'clock'): number => quantile(times[task][by], 0.25)
    const inside = `drawn in ${ms(usual('draw'))}, keyed in ${ms(usual('key'))}, ${(await toPng(draw())).length} bytes`
    const line = (what: string, by: keyof Taken): Line => ({
      what,
      ours: ms(usual('cold', by)),
      baseline: `a bare render of the same SVG ${ms(usual('bare', by))}`,
      ...compared(times.cold[by], times.bare[by], 0.25),
      atMost: mostRenders,
    })
    const what = `a cold picture, drawn and made a PNG, lower quartile of ${turns} in turns: ${name} (${inside})`
    lines.push(line(what, 'clock'), line('the same in processor time of all threads', 'processor'))
  }
  return lines
}
