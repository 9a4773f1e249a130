// Pictures of how to measure and of a safe place to do it.
import type { Drawing } from '../drawing.ts'
import { panel } from '../panel.ts'
import { part } from '../svg.ts'
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

const scenes = {
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

export type MeasuringKind = keyof typeof scenes

/** Every measuring picture there is. */
export const measuringKinds = Object.keys(scenes) as MeasuringKind[]

/** Draws one, 360 px wide. */
export function drawMeasuring(kind: MeasuringKind): Drawing {
  const { draw, height } = scenes[kind]
  return panel(height, part(kind, draw()), [{ code: `measuring-${kind}`, rank: 0 }])
}
