// The sign of a verdict: one shape per verdict, so that it is told without colour.
import type { Verdict } from '../../ground/verdicts.ts'
import { inks } from '../ink.ts'
import { oval, part, round, tag } from '../svg.ts'

/** Dark enough for white text (WCAG 2.2 contrast, computed in the tests). No tone is green: no verdict says safe. */
export const toneOf: Readonly<Record<Verdict, string>> = {
  danger: '#8e1b16',
  'ruled-out': '#7a2a52',
  doubtful: '#7a4a00',
  open: '#40505f',
  'nothing-found': '#25557a',
}

const polygon = (x: number, y: number, r: number, n: number, turn: number): string =>
  `${Array.from({ length: n }, (_, i) => {
    const angle = turn + (2 * Math.PI * i) / n
    return `${i === 0 ? 'M' : 'L'}${round(x + r * Math.cos(angle))} ${round(y + r * Math.sin(angle))}`
  }).join('')}Z`

/** Draws the sign in white around `x`, `y`, about `r` px in radius, on the tone's own colour. */
export function verdictSign(tone: Verdict, x: number, y: number, r: number): string {
  const pen = { fill: 'none', stroke: inks.casing, 'stroke-width': r * 0.17 }
  const dot = (dy: number): string => tag('circle', { cx: x, cy: y + dy * r, r: r * 0.11, fill: inks.casing })
  const exclaim = (top: number, end: number, point: number): string =>
    tag('path', { d: `M${x} ${round(y + top * r)}V${round(y + end * r)}`, ...pen, 'stroke-width': r * 0.2 }) +
    dot(point)
  const shape: Record<Verdict, string> = {
    danger: tag('path', { d: polygon(x, y, r, 8, Math.PI / 8), ...pen }) + exclaim(-0.5, 0.15, 0.48),
    'ruled-out':
      tag('path', { d: polygon(x, y, r * 1.15, 4, Math.PI / 4), ...pen }) +
      tag('path', {
        d: `M${round(x - 0.4 * r)} ${round(y - 0.4 * r)}l${round(0.8 * r)} ${round(0.8 * r)}m0 ${round(-0.8 * r)}l${round(-0.8 * r)} ${round(0.8 * r)}`,
        ...pen,
        'stroke-width': r * 0.2,
      }),
    doubtful:
      tag('path', { d: polygon(x, y + r * 0.15, r * 1.12, 3, -Math.PI / 2), ...pen }) + exclaim(-0.32, 0.18, 0.46),
    open:
      tag('path', { d: oval(x, y, r, r), ...pen, 'stroke-dasharray': `${round(r * 0.5)} ${round(r * 0.36)}` }) +
      tag('path', {
        d: `M${round(x - r * 0.28)} ${round(y - r * 0.22)}a${round(r * 0.28)} ${round(r * 0.28)} 0 1 1 ${round(r * 0.4)} ${round(r * 0.24)}q${round(-r * 0.12)} ${round(r * 0.1)} ${round(-r * 0.12)} ${round(r * 0.26)}`,
        ...pen,
      }) +
      dot(0.52),
    'nothing-found': tag('path', {
      d: `${oval(x - r * 0.12, y - r * 0.12, r * 0.74, r * 0.74)}M${round(x + r * 0.42)} ${round(y + r * 0.42)}l${round(r * 0.48)} ${round(r * 0.48)}`,
      ...pen,
    }),
  }
  return part(`sign-${tone}`, shape[tone])
}
