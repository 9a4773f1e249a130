// The measuring pictures, one function each: wordless, but for units and signs that are the same in every language.
import { inks, metals, wraps } from '../ink.ts'
import { round, tag } from '../svg.ts'
import { textLine } from '../type/text-block.ts'
import {
  bold,
  calliper,
  clock,
  edge,
  forbidden,
  lying,
  meter,
  probe,
  probeEnd,
  rightWay,
  sign,
  step,
  upright,
  wire,
} from './bench.ts'

const unit = (text: string, x: number, y: number, size = 15): string =>
  textLine(text, x, y, { size, weight: 'bold', anchor: 'middle' })
const plusRed = '#d65f56'
const darkGrey = '#6b7681'

/** Across the middle of the wrap, jaws square to the cell, away from the groove and from the seam. */
export const calliperDiameter = (): string =>
  upright(130, 18, 64, 182) +
  calliper(98, 152, 64, 62, 230) +
  unit('mm', 199, 169, 13) +
  tag('path', { d: 'M98 112h64m0 -9v18M98 103v18', stroke: inks.point, 'stroke-width': 2.6, fill: 'none' }) +
  rightWay(318, 42, 15)

/** Standing on a table beside a ruler, a piece of card level on top: nothing of metal reaches from end to end. */
export function rulerLength(): string {
  const [top, low] = [32, 188]
  const ticks = Array.from({ length: 27 }, (_, i) => `M206 ${round(low - i * 6)}h${i % 5 === 0 ? 20 : 11}`)
  return (
    tag('path', { d: `M40 ${low}H320V${low + 14}H40Z`, fill: '#cdc8b9', ...bold }) +
    tag('rect', { x: 206, y: 20, width: 46, height: low - 20, rx: 2, fill: '#f0e2a8', ...bold }) +
    tag('path', { d: ticks.join(''), stroke: inks.line, 'stroke-width': 1.6 }) +
    unit('mm', 236, 48, 13) +
    upright(160, top + 5, 60, low - top - 5) +
    tag('path', { d: `M112 ${top - 7}H224V${top}H112Z`, fill: '#fffaf0', ...bold }) +
    tag('path', {
      d: `M82 ${top}V${low}m-8 -9l8 9l8 -9M74 ${top + 9}l8 -9l8 9`,
      stroke: inks.point,
      'stroke-width': 2.6,
      fill: 'none',
    }) +
    rightWay(318, 42, 15)
  )
}

/** Out of the charger, then an hour or more of rest, then the meter. */
export function restBeforeVoltage(): string {
  const charger =
    tag('path', { d: 'M14 134H80V190H14Z', fill: darkGrey, ...bold }) +
    tag('path', { d: 'M30 134V118h-6v-8h12v24M64 134V118h6v-8h-12v24', fill: metals.mid, ...bold })
  const lift = tag('path', { d: 'M82 100V48m-10 12l10 -12l10 12', fill: 'none', stroke: inks.point, 'stroke-width': 4 })
  return (
    charger +
    upright(47, 22, 26, 92) +
    lift +
    step(98, 112, 24) +
    clock(158, 60, 30, 1) +
    unit('≥ 1 h', 158, 23, 17) +
    upright(158, 106, 26, 88) +
    step(190, 112, 24) +
    upright(250, 80, 30, 100) +
    meter(284, 70, 64, 108, unit('V', 316, 101, 20)) +
    wire('M300 70C300 42 264 36 252 56', plusRed) +
    wire('M312 178C312 208 256 210 250 196', '#2c3640') +
    tag('path', { d: 'M250 74l0 -14M250 183l0 11', stroke: metals.deep, 'stroke-width': 4 })
  )
}

/** One probe on the plus contact, one on the flat end, meter set to direct voltage. */
export function meterOnEnds(): string {
  const [plus, minus] = [
    { x: 251, y: 50, way: -0.5 },
    { x: 108, y: 50, way: Math.PI + 0.5 },
  ]
  const a = probeEnd(plus.x, plus.y, plus.way)
  const b = probeEnd(minus.x, minus.y, minus.way)
  const direct = tag('path', { d: 'M190 124h22M190 130h5m4 0h5m4 0h4', stroke: inks.line, 'stroke-width': 2 })
  return (
    lying(108, 28, 138, 44) +
    sign('plus', 262, 88, 8) +
    sign('minus', 94, 88, 8) +
    wire(`M${round(a.x)} ${round(a.y)}C352 16 352 186 236 182`, plusRed) +
    wire(`M${round(b.x)} ${round(b.y)}C8 16 8 186 124 182`, '#2c3640') +
    probe(plus.x, plus.y, plus.way, plusRed) +
    probe(minus.x, minus.y, minus.way, '#2c3640') +
    meter(122, 96, 116, 106, unit('V', 164, 134, 24) + direct)
  )
}

/** Left: two wires, whose own resistance is read as well. Right: four wires, two that carry and two that sense. */
export function twoWireFourWire(): string {
  const half = (x: number, wires: 2 | 4): string => {
    const [left, right] = [x + 34, x + 126]
    const outer =
      wire(`M${left - 8} 54C${left - 26} 80 ${x + 40} 98 ${x + 52} 128`, plusRed) +
      wire(`M${right + 12} 54C${right + 28} 80 ${x + 120} 98 ${x + 108} 128`, plusRed)
    const inner =
      wires === 4
        ? wire(`M${left + 3} 60C${left} 84 ${x + 66} 98 ${x + 69} 128`, '#5b95d3') +
          wire(`M${right + 1} 60C${right + 4} 84 ${x + 94} 98 ${x + 91} 128`, '#5b95d3')
        : ''
    const clip = (cx: number): string =>
      tag('rect', { x: cx - 10, y: 24, width: 20, height: 34, rx: 4, fill: metals.mid, ...bold })
    const split =
      wires === 4
        ? [left - 1, right + 5]
            .map(cx => tag('path', { d: `M${cx} 26v30`, stroke: inks.line, 'stroke-width': 2.4 }))
            .join('')
        : ''
    return (
      lying(left, 26, 92, 30) +
      outer +
      inner +
      clip(left - 2) +
      clip(right + 6) +
      split +
      meter(x + 40, 124, 80, 78, unit('mΩ', x + 80, 152, 17)) +
      unit(String(wires), x + 20, 186, 40)
    )
  }
  return (
    half(8, 2) +
    half(184, 4) +
    tag('path', { d: 'M180 14V198', stroke: inks.grid, 'stroke-width': 2 }) +
    rightWay(342, 18, 12)
  )
}

/** Alone on the pan, lying still. */
export const scale = (): string =>
  tag('path', { d: 'M70 124H290L306 196H54Z', fill: darkGrey, ...bold }) +
  tag('path', { d: 'M58 102H302V120H58Z', fill: metals.light, ...bold }) +
  // Paper, longer than the cell, so that no end lies on metal.
  tag('path', { d: 'M70 97H290V104L282 110H62L70 104Z', fill: '#ffffff', ...edge }) +
  tag('rect', { x: 128, y: 138, width: 104, height: 42, rx: 4, fill: '#e4efe0', ...edge }) +
  unit('g', 206, 168, 24) +
  tag('path', { d: 'M144 166h10m6 0h10m6 0h4m6 0h8', stroke: inks.line, 'stroke-width': 4 }) +
  lying(98, 42, 158, 56)

/** Bare stone or tile, the cell in a holder, nothing that burns near it, someone who watches. */
export function safeBench(): string {
  const tiles = Array.from({ length: 6 }, (_, i) =>
    tag('rect', { x: 12 + i * 56, y: 184, width: 56, height: 20, fill: i % 2 === 0 ? '#dcd8cc' : '#cdc8b9', ...edge }),
  )
  const holder =
    tag('path', { d: 'M132 184V160H226V184Z', fill: darkGrey, ...bold }) +
    tag('path', { d: 'M132 160V140h9v20M226 160V140h-9v20', fill: metals.mid, ...bold })
  const eye =
    tag('path', { d: 'M146 52Q179 20 212 52Q179 84 146 52Z', fill: '#ffffff', ...bold }) +
    tag('circle', { cx: 179, cy: 52, r: 12, fill: inks.point }) +
    tag('circle', { cx: 179, cy: 52, r: 5, fill: inks.line })
  const flame =
    tag('path', {
      d: 'M300 96C322 118 326 132 318 146C312 158 290 158 283 146C276 132 286 128 288 114C294 120 298 112 300 96Z',
      fill: '#e7934a',
      ...bold,
    }) +
    tag('rect', { x: 262, y: 150, width: 74, height: 34, rx: 3, fill: '#e8d9b4', ...bold }) +
    tag('path', { d: 'M268 159h60M268 167h60M268 175h44', ...edge, fill: 'none' })
  return tiles.join('') + holder + lying(142, 134, 74, 26) + eye + flame + forbidden(300, 138, 46)
}

/** A lamp beam between the legs, and a phone that takes a photo of what is below the contact: no face is near that end. */
export const lampAtAnAngle = (): string =>
  tag('path', { d: 'M262 38L132 112L176 164L286 66Z', fill: '#ffe9a3', 'fill-opacity': 0.85 }) +
  tag('path', { d: 'M262 38L286 66L300 58L304 44L290 26L276 26Z', fill: metals.mid, ...bold }) +
  tag('path', { d: 'M290 26L304 44L344 20L330 2Z', fill: darkGrey, ...bold }) +
  tag('path', { d: 'M80 130A74 40 0 0 1 228 130V202H80Z', fill: wraps.sample, ...bold }) +
  tag('ellipse', { cx: 154, cy: 132, rx: 66, ry: 33, fill: '#fffaf0', ...edge }) +
  tag('ellipse', { cx: 154, cy: 133, rx: 44, ry: 21, fill: metals.gap, ...edge }) +
  tag('path', { d: 'M150 118L196 128L176 151Z', fill: '#ffe9a3', 'fill-opacity': 0.6 }) +
  tag('path', {
    d: 'M147 140h14l2 14h-18ZM136 126l-26 -8l-4 8l28 8ZM172 126l26 -8l4 8l-28 8Z',
    fill: metals.light,
    ...edge,
  }) +
  tag('ellipse', { cx: 154, cy: 127, rx: 21, ry: 11, fill: metals.light, ...edge }) +
  tag('rect', { x: 22, y: 30, width: 40, height: 76, rx: 6, fill: darkGrey, ...bold }) +
  tag('circle', { cx: 50, cy: 44, r: 7, fill: '#ffffff', ...edge }) +
  tag('circle', { cx: 50, cy: 44, r: 3, fill: inks.line })

/** Set aside: ends taped, alone in a loosely covered box that does not burn. */
export function keepApart(): string {
  const tape = (x: number): string => tag('rect', { x, y: 112, width: 20, height: 46, rx: 2, fill: '#f0e2a8', ...bold })
  return (
    tag('path', { d: 'M58 92H302V204H58Z', fill: metals.light, ...bold }) +
    tag('path', { d: 'M70 104H290V192H70Z', fill: '#e3c988', ...edge }) +
    tag('path', { d: 'M50 70H310V94H50Z', fill: metals.mid, ...bold }) +
    tag('path', { d: 'M160 70V60H200V70', fill: 'none', ...bold }) +
    Array.from({ length: 26 }, (_, i) =>
      tag('circle', { cx: 80 + ((i * 37) % 204), cy: 112 + ((i * 23) % 74), r: 1.7, fill: '#7a5a22' }),
    ).join('') +
    lying(120, 117, 120, 36) +
    tape(106) +
    tape(238)
  )
}
