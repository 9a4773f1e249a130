// Pictures of how to measure and of a safe place to do it.
import type { Drawing } from '../drawing.ts'
import { panel, SHEET_WIDTH } from '../panel.ts'
import { part } from '../svg.ts'
import { textBlock } from '../type/text-block.ts'
import {
  calliperDiameter,
  keepApart,
  lampAtAnAngle,
  meterOnEnds,
  restBeforeVoltage,
  rulerLength,
  safeBench,
  scale,
  twoWireFourWire,
} from './scenes.ts'

const SCENES = {
  'calliper-diameter': { draw: calliperDiameter, height: 244 },
  'ruler-length': { draw: rulerLength, height: 232 },
  'rest-before-voltage': { draw: restBeforeVoltage, height: 244 },
  'meter-on-ends': { draw: meterOnEnds, height: 260 },
  'two-wire-four-wire': { draw: twoWireFourWire, height: 250 },
  scale: { draw: scale, height: 240 },
  'safe-bench': { draw: safeBench, height: 226 },
  'lamp-at-an-angle': { draw: lampAtAnAngle, height: 220 },
  'keep-apart': { draw: keepApart, height: 222 },
} as const

export type MeasuringKind = keyof typeof SCENES

/** Every measuring picture there is. */
export const MEASURING_KINDS = Object.keys(SCENES) as MeasuringKind[]

const MARGIN = 16

/** Draws one, 360 px wide; `caption` (handed in, may be left out) is set below it and wrapped, never cut. */
export function drawMeasuring(kind: MeasuringKind, caption?: string): Drawing {
  const { draw, height } = SCENES[kind]
  const words =
    caption === undefined ? undefined : textBlock(caption, MARGIN, height + 2, SHEET_WIDTH - 2 * MARGIN, { size: 15 })
  const content = part(kind, draw()) + (words?.svg ?? '')
  const about = [
    { code: `measuring-${kind}`, rank: 0 },
    ...(caption === undefined ? [] : [{ code: 'caption', values: { text: caption }, rank: 3 }]),
  ]
  return panel(SHEET_WIDTH, Math.ceil(height + (words === undefined ? 0 : words.height + 12)), content, about)
}
