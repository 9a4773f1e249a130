// What a discharge answers of the questions a check asks; nothing where the test was not one that counts.

import { option, reading } from '../../engine/answers.ts'
import type { RunReading } from '../../readings/discharge/measure-run.ts'
import type { DischargeFinding } from '../../readings/weigh-discharge.ts'
import type { CarriedFacts } from './carried-facts.ts'

const shares: Partial<Record<DischargeFinding['code'], string>> = {
  'far-below-label': 'under-half',
  'below-label': 'half-to-80',
  'label-reached': 'from-80',
}

/** What a test at the claimed current, or at less, came to. */
const loads: Partial<Record<DischargeFinding['code'], string>> = {
  'too-hot-at-claimed-current': 'too-hot',
  'gives-out-at-claimed-current': 'gave-out',
  'holds-claimed-current': 'held',
}

/** `label_mAh` is what the label claims; without it a capacity has nothing to be compared with. */
export function factsOfLog(
  run: RunReading,
  findings: readonly DischargeFinding[],
  label_mAh: number | undefined,
): CarriedFacts {
  const load = findings.map(finding => loads[finding.code]).find(one => one !== undefined)
  const held = load === undefined ? {} : { 'load-test': option(load) }
  if (label_mAh === undefined) return held
  const found = findings.find(finding => finding.code in shares)
  const share = found && shares[found.code]
  const current = run.figures.meanCurrent.value
  // A low capacity only counts at a known room temperature; a pass never counts for a cell anyhow.
  const counts = share !== undefined && (share === 'from-80' || run.room_C !== null)
  return {
    ...held,
    'claimed-capacity': reading(label_mAh),
    ...(counts && { 'measured-capacity': option(share) }),
    ...(counts &&
      current !== null && { 'test-current': option(current <= 1 ? 'low' : current < 5 ? 'middle' : 'high') }),
  }
}
