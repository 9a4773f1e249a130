// What a discharge tells: result first, then from where to where, what was promised, heat and gaps.
import type { DischargeCurve } from '../charts/discharge-curve.ts'
import type { AltFact } from './alt-fact.ts'

/** `warm`: temperatures were logged. */
export function describeCurve(curve: DischargeCurve, warm: boolean): AltFact[] {
  const first = curve.points[0]
  const last = curve.points[curve.points.length - 1]
  if (first === undefined || last === undefined) return [{ code: 'curve-empty', rank: 0 }]
  const heat = curve.points.flatMap(point => (point.temperature === undefined ? [] : [point.temperature]))
  const gaps = (curve.gaps ?? []).length
  const { result, promised } = curve
  return [
    { code: 'curve', values: { from: first.voltage, to: last.voltage, cutOff: curve.cutOff }, rank: 1 },
    ...(result
      ? [
          {
            code: result.atLeast === true ? 'curve-at-least' : 'curve-result',
            values: { value: result.value, u: result.u },
            rank: 0,
          },
        ]
      : []),
    ...(promised === undefined
      ? []
      : [{ code: 'curve-promised', values: { label: curve.words.promised, value: promised }, rank: 1 }]),
    ...(warm
      ? [{ code: 'curve-temperature', values: { from: heat[0] as number, most: Math.max(...heat) }, rank: 2 }]
      : []),
    ...(gaps === 0 ? [] : [{ code: 'curve-gaps', values: { n: gaps }, rank: 2 }]),
  ]
}
