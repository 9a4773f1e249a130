// What a family looks like by its pack: a few views of one cell, named in the reader's language.
import type { Family } from '../../engine/pack/pack.ts'
import type { Key } from '../../words/catalogue.ts'
import type { Say } from '../../words/say.ts'
import { drawReference } from '../cell/draw-reference.ts'
import type { CellParameters } from '../cell/parameters.ts'
import { readCellParameters } from '../cell/read-cell-parameters.ts'
import type { Drawing } from '../drawing.ts'

type View = { readonly show: Partial<CellParameters>; readonly label: Key }

/** Words under what shows through a wrap: it is drawn pale, and is not on the wrap. */
const below: Readonly<Record<string, Key>> = {
  'picture.lettering can': 'picture.lettering.can',
  'picture.lettering second-wrap': 'picture.lettering.second-wrap',
  'picture.code can': 'picture.code.can',
}
const labelOf = (label: Key, { lettering, code }: Family['show']): string =>
  `${label} ${label === 'picture.code' ? code : lettering}`

type Tell = readonly (keyof CellParameters)[]
const end: Tell = ['legs', 'contact', 'top']

/** Each tell is drawn where a pack says anything of it: a view of what is not known would be a statement. `without`: what another view shows with it, so that no two of one end differ. */
const views: readonly (View & { readonly tells?: Tell; readonly beside?: Tell; readonly without?: Tell })[] = [
  { show: { view: 'side', pointAt: 'body' }, label: 'picture.side' },
  { show: { view: 'top', pointAt: 'legs' }, label: 'picture.top', tells: end, without: ['dimples'] },
  { show: { view: 'top', pointAt: 'dimples' }, label: 'picture.top-dimples', tells: end, beside: ['dimples'] },
  { show: { view: 'top', pointAt: 'vent' }, label: 'picture.vent', tells: ['vent'] },
  { show: { view: 'side', pointAt: 'lettering' }, label: 'picture.lettering', tells: ['lettering'] },
  { show: { view: 'side', pointAt: 'code' }, label: 'picture.code', tells: ['code'] },
  { show: { view: 'top', pointAt: 'dimples' }, label: 'picture.dimples', tells: ['dimples'], without: end },
]

/** Undefined where the pack shows nothing of the family, or something that cannot be drawn. `row`: small and beside each other, without the view that shows no more than the others. */
export function drawFamily(say: Say, family: Family, row = false): Drawing | undefined {
  const known = Object.keys(family.show)
  if (known.length === 0 || !readCellParameters(family.show).ok) return undefined
  const says = (tell: Tell) => tell.some(one => known.includes(one))
  const told = views.filter(
    ({ tells, beside, without = [] }) => (!tells || says(tells)) && (!beside || says(beside)) && !says(without),
  )
  const count = Number(family.show['dimples'] ?? 0)
  const inRow = row && told.length > 1
  const shown = (inRow ? told.filter(one => one.tells) : told).map(({ show, label }) => ({
    show: { ...family.show, ...show },
    // Beside the lines that say so, where it is need not be said again.
    label: say((inRow ? undefined : below[labelOf(label, family.show)]) ?? label, { count }),
  }))
  return drawReference(shown, inRow)
}
