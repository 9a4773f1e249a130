// Reads an outcome back from where it was kept, and says what is wrong with a row that was damaged.
import { verdicts } from '../ground/verdicts.ts'
import { cellCountBands } from './bands.ts'
import { isDigest, isName, isPseudonym, isVersion } from './names.ts'
import { type BandedReading, type Outcome, type PackStamp, unknownFamily } from './outcome.ts'
import { isWeek } from './week.ts'

export type ReadOutcome =
  | { readonly ok: true; readonly outcome: Outcome }
  | { readonly ok: false; readonly refusal: { readonly code: 'damaged-outcome'; readonly field: string } }

/** Checks every field of a stored outcome. Fields it does not know are a fault too: they could hold what must not be kept. */
export function readOutcome(row: unknown): ReadOutcome {
  if (!isRecord(row)) return { ok: false, refusal: { code: 'damaged-outcome', field: '' } }
  for (const [field, holds] of Object.entries(fields)) {
    if (!holds(row[field])) return { ok: false, refusal: { code: 'damaged-outcome', field } }
  }
  const stray = Object.keys(row).find(field => !(field in fields))
  if (stray !== undefined) return { ok: false, refusal: { code: 'damaged-outcome', field: stray } }
  return { ok: true, outcome: row as Outcome }
}

const listOf =
  (holds: (value: unknown) => boolean) =>
  (value: unknown): boolean =>
    Array.isArray(value) && value.every(holds)

const isReading = (value: unknown): value is BandedReading =>
  isRecord(value) &&
  isName(value['question']) &&
  isName(value['quantity']) &&
  Number.isFinite(value['from']) &&
  Number.isFinite(value['to']) &&
  (value['from'] as number) < (value['to'] as number)

const isStamp = (value: unknown): value is PackStamp =>
  isRecord(value) && isName(value['id']) && isVersion(value['version']) && isDigest(value['digest'])

const fields: Readonly<Record<keyof Outcome, (value: unknown) => boolean>> = {
  server: value => typeof value === 'string' && value !== '',
  reporter: isPseudonym,
  pooled: value => value === null || isPseudonym(value),
  week: isWeek,
  family: value => value === null || (isName(value) && value !== unknownFamily),
  format: isName,
  verdict: value => (verdicts as readonly unknown[]).includes(value),
  fired: listOf(isName),
  options: value => isRecord(value) && Object.entries(value).every(([q, o]) => isName(q) && isName(o)),
  readings: listOf(isReading),
  claims: listOf(isReading),
  cantTell: listOf(isName),
  bought: isName,
  cells: value => (cellCountBands as readonly unknown[]).includes(value),
  packs: listOf(isStamp),
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
