// The goldens: one small drawing of every kind, kept as an SVG file that a reviewer can open.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawReference } from '../../src/pictures/cell/draw-reference.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import { drawDischargeCurve } from '../../src/pictures/charts/draw-discharge-curve.ts'
import { drawRelease } from '../../src/pictures/charts/draw-release.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'
import { drawMeasuring } from '../../src/pictures/measuring/draw-measuring.ts'
import { curve, release } from './gallery.ts'

export const folder = fileURLToPath(new URL('./golden', import.meta.url))

export const goldens: Readonly<Record<string, () => Drawing>> = {
  side: () => drawCell({ view: 'side', pointAt: 'lettering-print', lettering: 'wrap', code: 'can', seam: true }),
  top: () => drawCell({ view: 'top', pointAt: 'legs', legs: 4, wrapColour: 'blue' }),
  angle: () => drawCell({ view: 'top-angle', pointAt: 'ring', ring: 'torn', wrap: 'torn', wrapColour: 'orange' }),
  'cut-away': () =>
    drawCell({ view: 'cut-away', pointAt: 'vent', vent: 'lines', dimples: 2, ring: 'second', secondWrap: 'clear' }),
  options: () =>
    drawOptions([
      { show: { view: 'top', pointAt: 'vent', vent: 'lines', ventLines: 4 }, label: 'Four lines' },
      { show: { view: 'top', pointAt: 'vent', vent: 'button' }, label: 'A raised button in the middle' },
      { label: 'Something else' },
    ]),
  reference: () =>
    drawReference([
      { show: { view: 'side', pointAt: 'body', lettering: 'can', wrapColour: 'pink' }, label: 'From the side' },
      { show: { view: 'top', pointAt: 'dimples', dimples: 2, wrapColour: 'pink' }, label: 'Under the ring' },
    ]),
  'verdict-card': () =>
    drawVerdictCard({
      tone: 'ruled-out',
      word: 'Ruled out',
      views: [
        { show: { view: 'top', legs: 3 }, marks: [{ part: 'legs', text: 'Three legs, where this family has four.' }] },
      ],
      reasons: ['More capacity than any cell of this size can hold.'],
      caution: 'If you are not sure, do not use this cell.',
    }),
  measuring: () => drawMeasuring('calliper-diameter'),
  curve: () => drawDischargeCurve({ ...curve, points: curve.points.filter((_, i) => i % 100 === 99) }),
  'release-chart': () => drawRelease(release),
}

/** The same SVG with one element a line, so that a change is a change of a few lines. */
export function inLines(svg: string): string {
  let depth = 0
  return svg
    .replaceAll('><', '>\n<')
    .split('\n')
    .map(line => {
      if (line.startsWith('</')) depth--
      const indented = `${'  '.repeat(depth)}${line}`
      if (/^<[^/]/.test(line) && !line.endsWith('/>') && !line.includes('</')) depth++
      return indented
    })
    .join('\n')
    .concat('\n')
}

export const fileOf = (name: string): string => `${folder}/${name}.svg`

export const keptNames = (): string[] =>
  readdirSync(folder)
    .filter(file => file.endsWith('.svg'))
    .map(file => file.slice(0, -4))

export const kept = (name: string): string => readFileSync(fileOf(name), 'utf8')
