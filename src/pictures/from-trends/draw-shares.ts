// The verdicts of a release as a chart.
import { verdicts } from '../../ground/verdicts.ts'
import type { Release } from '../../trends/release/release.ts'
import type { Say } from '../../words/say.ts'
import { drawRelease } from '../charts/draw-release.ts'
import type { Drawing } from '../drawing.ts'

/** The shares of the verdicts with their intervals; a verdict that is withheld says so. */
export function drawShares(say: Say, release: Release): Drawing {
  const percent = new Intl.NumberFormat(say.locale, { style: 'percent' })
  return drawRelease({
    title: say('trends.chart'),
    rows: verdicts.map(verdict => {
      const found = release.verdicts.find(one => one.verdict === verdict)?.share
      return {
        tone: verdict,
        label: say(`trends.verdict.${verdict}`),
        ...(found && { share: { value: found.share, low: found.low, high: found.high } }),
      }
    }),
    words: { interval: say('trends.chart.interval'), withheld: say('trends.chart.withheld') },
    percent: share => percent.format(share),
  })
}
