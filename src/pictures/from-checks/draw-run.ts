// A discharge as a chart, with its words in the reader's language.

import type { RunReading } from '../../readings/discharge/measure-run.ts'
import type { DischargeClaim } from '../../readings/weigh-discharge.ts'
import type { Say } from '../../words/say.ts'
import { drawDischargeCurve } from '../charts/draw-discharge-curve.ts'
import { numbersIn } from '../charts/plot.ts'
import type { Drawing } from '../drawing.ts'

/** Voltage and temperature over the charge drawn, the cut-off (or where the load ended), the result, what it is held against, the gaps. */
export function drawRun(say: Say, { curve, cutoff, figures }: RunReading, claim: DischargeClaim): Drawing {
  const { capacity, endVoltage } = figures
  const least = capacity.interval?.to === null ? capacity.interval.from : undefined
  const value = least ?? (capacity.interval === null ? (capacity.value ?? undefined) : undefined)
  const promised = claim.minimum?.capacity_mAh ?? claim.label_mAh
  const gaps = curve.flatMap((point, i) => {
    const before = curve[i - 1]
    return point.afterGap && before ? [{ from: before.capacity_mAh, to: point.capacity_mAh }] : []
  })
  return drawDischargeCurve({
    title: say('curve.title'),
    points: curve.map(point => ({
      capacity: point.capacity_mAh,
      voltage: point.voltage_V,
      ...(point.temperature_C !== null && { temperature: point.temperature_C }),
    })),
    gaps,
    cutOff: cutoff.cutoff_V ?? endVoltage.value ?? 0,
    ...(value !== undefined && { result: { value, u: capacity.k * capacity.u, atLeast: least !== undefined } }),
    ...(promised !== undefined && { promised }),
    words: {
      capacity: say('curve.capacity'),
      voltage: say('curve.voltage'),
      temperature: say('curve.temperature'),
      cutOff: say(cutoff.cutoff_V === null ? 'curve.end' : 'curve.cut-off'),
      result: say('curve.result'),
      promised: say(claim.minimum === undefined ? 'curve.label' : 'curve.minimum'),
      gap: say('curve.gap'),
    },
    number: numbersIn(say.locale),
  })
}
