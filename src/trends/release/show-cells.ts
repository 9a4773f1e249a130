// From private cell states to the numbers of a release: sums of shown cells only, so that nothing withheld can be worked out.
import type { FamilyId } from '../../engine/answers.ts'
import type { Verdict } from '../../ground/verdicts.ts'
import { verdicts } from '../../ground/verdicts.ts'
import type { CellKey, Facet } from '../counts.ts'
import { wilson } from '../stats/wilson.ts'
import type { Release, Share, Shown, ShownFamily } from './release.ts'
import type { FamilyState } from './state.ts'

/** From so many shown checks on a share means something. */
const leastForShare = 20

type Families = Readonly<Record<FamilyId, FamilyState>>
/** Shown numbers of one facet by value: now, and in the release before. */
type Cells = ReadonlyMap<string, { readonly now: number; readonly before: number }>

/** Everything of a release that is counted. */
export function showCells(
  now: Families,
  before: Families,
): Pick<Release, 'checks' | 'more' | 'verdicts' | 'rules' | 'bought' | 'families'> {
  const families = Object.keys(now)
    .sort()
    .map(family => ({ family, cells: cellsOf(now[family], before[family]) }))
  return {
    ...table({
      verdict: addCells(families.map(f => f.cells.verdict)),
      rule: addCells(families.map(f => f.cells.rule)),
      bought: addCells(families.map(f => f.cells.bought)),
    }),
    families: families
      .map(({ family, cells }): ShownFamily => ({ family, ...table(cells) }))
      .filter(family => family.checks > 0),
  }
}

type Facets = { readonly verdict: Cells; readonly rule: Cells; readonly bought: Cells }

function table(facets: Facets): Omit<ShownFamily, 'family'> {
  const all = total(facets.verdict)
  // With one verdict shown its share would be 100 % whatever is withheld.
  const seen = [...facets.verdict.values()].filter(cell => cell.now > 0).length
  const shares = all.checks >= leastForShare && seen >= 2
  return {
    ...all,
    verdicts: list(facets.verdict, shares ? all.checks : undefined)
      .map(([verdict, shown]) => ({ verdict: verdict as Verdict, ...shown }))
      .sort((a, b) => verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict)),
    rules: list(facets.rule, shares ? all.checks : undefined).map(([rule, shown]) => ({ rule, ...shown })),
    bought: list(facets.bought, undefined).map(([bought, shown]) => ({ bought, ...shown })),
  }
}

/** Most first, then by name. */
function list(cells: Cells, of: number | undefined): [string, Shown][] {
  return [...cells]
    .filter(([, cell]) => cell.now > 0)
    .sort(([a, x], [b, y]) => y.now - x.now || (a < b ? -1 : 1))
    .map(([value, { now, before }]) => [
      value,
      { checks: now, more: now - before, ...(of === undefined ? {} : { share: shareOf(now, of) }) },
    ])
}

/** To four places: more would only look exact. */
function shareOf(k: number, of: number): Share {
  const { low, high } = wilson(k, of)
  const [share, least, most] = [k / of, low, high].map(part => Math.round(part * 10_000) / 10_000)
  return { of, share: share!, low: least!, high: most! }
}

function total(cells: Cells): { checks: number; more: number } {
  let checks = 0
  let more = 0
  for (const { now, before } of cells.values()) {
    checks += now
    more += now - before
  }
  return { checks, more }
}

function cellsOf(now: FamilyState | undefined, before: FamilyState | undefined): Facets {
  const of = (facet: Facet): Cells =>
    new Map(
      Object.entries(now?.cells ?? {})
        .filter(([key]) => key.startsWith(`${facet}:`))
        .map(([key, cell]) => [
          key.slice(facet.length + 1),
          { now: cell.shown, before: before?.cells[key as CellKey]?.shown ?? 0 },
        ]),
    )
  return { verdict: of('verdict'), rule: of('rule'), bought: of('bought') }
}

function addCells(parts: readonly Cells[]): Cells {
  const sum = new Map<string, { now: number; before: number }>()
  for (const part of parts)
    for (const [value, { now, before }] of part) {
      const old = sum.get(value) ?? { now: 0, before: 0 }
      sum.set(value, { now: old.now + now, before: old.before + before })
    }
  return sum
}
