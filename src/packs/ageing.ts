// Figures that stop counting soon: said to whoever runs the packs, months before.
import type { Pack } from '../engine/pack/pack.ts'

/** One day on which rules of a pack stop counting. */
export type Ageing = { readonly pack: string; readonly day: string; readonly rules: readonly string[] }

/** So long before their last day figures are named: half a year is enough to look up new ones. */
const noticeDays = 183

/** What stops counting within half a year of `today` (YYYY-MM-DD), or has stopped already; by pack and day, the earliest first. */
export function ageingSoon(packs: readonly Pack[], today: string): Ageing[] {
  const until = new Date(Date.parse(today) + noticeDays * 24 * 3600_000).toISOString().slice(0, 10)
  const found = new Map<string, { pack: string; day: string; rules: string[] }>()
  for (const pack of packs)
    for (const { id, validUntil } of pack.rules) {
      if (validUntil === undefined || validUntil > until) continue
      const key = `${validUntil} ${pack.id}`
      const entry = found.get(key) ?? { pack: pack.id, day: validUntil, rules: [] }
      entry.rules.push(id)
      found.set(key, entry)
    }
  return [...found.values()].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
}
