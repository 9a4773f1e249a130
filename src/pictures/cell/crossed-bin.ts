// The crossed-out wheeled bin that European law asks for on batteries: Regulation (EU) 2023/1542, Annex VI part B (from memory).
import { part, round, tag } from '../svg.ts'

/** Draws the sign in a square of `side` px around `x`, `y`; `ground` keeps the cross apart from the bin. */
export function crossedBin(x: number, y: number, side: number, ink: string, ground: string): string {
  const at = (dx: number, dy: number): string => `${round(x + dx * side)} ${round(y + dy * side)}`
  const pen = { fill: 'none', stroke: ink, 'stroke-width': side * 0.055 }
  const bin = `M${at(-0.26, -0.26)}L${at(-0.18, 0.36)}H${round(x + 0.18 * side)}L${at(0.26, -0.26)}M${at(-0.32, -0.28)}H${round(x + 0.32 * side)}M${at(-0.1, -0.3)}V${round(y - 0.38 * side)}H${round(x + 0.1 * side)}V${round(y - 0.3 * side)}`
  const cross = `M${at(-0.4, -0.42)}L${at(0.4, 0.42)}M${at(0.4, -0.42)}L${at(-0.4, 0.42)}`
  return part(
    'bin',
    tag('path', { d: bin, ...pen }),
    tag('circle', { cx: x + 0.15 * side, cy: y + 0.38 * side, r: side * 0.075, fill: ink }),
    tag('path', { d: cross, fill: 'none', stroke: ground, 'stroke-width': side * 0.13 }),
    tag('path', { d: cross, fill: 'none', stroke: ink, 'stroke-width': side * 0.065 }),
  )
}
