// Pictures of how to measure and of a safe place to do it.
import type { Drawing } from '../drawing.ts'
import { panel, questionHeight } from '../panel.ts'
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
  'calliper-diameter': calliperDiameter,
  'ruler-length': rulerLength,
  'rest-before-voltage': restBeforeVoltage,
  'meter-on-ends': meterOnEnds,
  'two-wire-four-wire': twoWireFourWire,
  scale,
  'safe-bench': safeBench,
  'lamp-at-an-angle': lampAtAnAngle,
  'keep-apart': keepApart,
} as const

export type MeasuringKind = keyof typeof scenes

/** Every measuring picture there is. */
export const measuringKinds = Object.keys(scenes) as MeasuringKind[]

/** Draws one, 360 px wide, as tall as a question's picture may be. */
export const drawMeasuring = (kind: MeasuringKind): Drawing =>
  panel(questionHeight, part(kind, scenes[kind]()), [{ code: `measuring-${kind}`, rank: 0 }])
