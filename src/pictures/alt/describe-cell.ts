// Turns cell parameters into facts for an alt text: only what the view shows, the tell that is asked about first.
import { formatSizes } from '../cell/anatomy.ts'
import { type CellParameters, counts, isPeeled, switches, usualCell, type View } from '../cell/parameters.ts'
import { type AltFact, ranks } from './alt-fact.ts'

type Key = Exclude<keyof CellParameters, 'view' | 'pointAt' | 'end'>
type Tell = { key: Key; views: readonly View[]; parts: readonly string[]; rank: number; always?: boolean }

const endViews: readonly View[] = ['top', 'top-angle']
const topViews: readonly View[] = ['top', 'top-angle', 'cut-away']
const allViews: readonly View[] = ['side', 'top', 'top-angle', 'cut-away']
const sideOnly: readonly View[] = ['side']
const outsideViews: readonly View[] = ['side', 'top', 'top-angle']

const tellList: readonly Tell[] = [
  { key: 'heat', views: ['side', 'top-angle'], parts: ['heat'], rank: ranks.damage },
  { key: 'leak', views: outsideViews, parts: ['leak'], rank: ranks.damage },
  { key: 'swollen', views: sideOnly, parts: ['swelling'], rank: ranks.damage },
  { key: 'dent', views: sideOnly, parts: ['dent'], rank: ranks.damage },
  { key: 'scorched', views: sideOnly, parts: ['scorch'], rank: ranks.damage },
  { key: 'rust', views: outsideViews, parts: ['rust'], rank: ranks.damage },
  { key: 'wet', views: outsideViews, parts: ['wet'], rank: ranks.damage },
  { key: 'wrap', views: allViews, parts: ['wrap'], rank: ranks.damage },
  { key: 'ring', views: topViews, parts: ['ring'], rank: ranks.damage },
  { key: 'secondWrap', views: allViews, parts: ['second-wrap'], rank: ranks.tell },
  { key: 'welds', views: endViews, parts: ['welds'], rank: ranks.tell },
  { key: 'terminal', views: endViews, parts: ['terminal'], rank: ranks.tell },
  { key: 'contact', views: endViews, parts: [], rank: ranks.tell },
  { key: 'legs', views: endViews, parts: ['legs'], rank: ranks.tell, always: true },
  { key: 'dimples', views: topViews, parts: ['dimples'], rank: ranks.tell },
  { key: 'vent', views: topViews, parts: ['vent'], rank: ranks.tell },
  { key: 'weldMarks', views: endViews, parts: ['weld-marks'], rank: ranks.tell },
  { key: 'lettering', views: sideOnly, parts: ['lettering'], rank: ranks.tell },
  { key: 'letteringPrint', views: sideOnly, parts: ['lettering-print'], rank: ranks.tell },
  { key: 'wording', views: sideOnly, parts: [], rank: ranks.asked },
  { key: 'bin', views: sideOnly, parts: ['bin'], rank: ranks.tell },
  { key: 'code', views: sideOnly, parts: ['code'], rank: ranks.tell },
  { key: 'codePrint', views: sideOnly, parts: ['code-print'], rank: ranks.tell },
  { key: 'codeKind', views: sideOnly, parts: [], rank: ranks.tell },
  { key: 'top', views: allViews, parts: ['top'], rank: ranks.tell },
  { key: 'board', views: sideOnly, parts: ['board'], rank: ranks.tell },
  { key: 'seam', views: sideOnly, parts: ['seam'], rank: ranks.setting },
  { key: 'wrapColour', views: allViews, parts: [], rank: ranks.setting },
  { key: 'format', views: sideOnly, parts: ['length', 'diameter', 'body'], rank: ranks.setting },
]

// On the negative end there is no contact, ring or vent to tell of.
const positiveOnly: readonly Key[] = ['ring', 'legs', 'contact', 'dimples', 'vent', 'weldMarks', 'top', 'secondWrap']

const kebab = (key: string): string => key.replace(/[A-Z]/g, sign => `-${sign.toLowerCase()}`)

function factOf(params: CellParameters, tell: Tell, asked: boolean): AltFact {
  const value = params[tell.key]
  const rank = asked ? ranks.asked : tell.rank
  if (tell.key === 'format') {
    const { diameter, length } = formatSizes[params.format]
    return params.sizes
      ? { code: 'format-sizes', values: { format: params.format, diameter, length }, rank }
      : { code: 'format', values: { format: params.format }, rank }
  }
  if (tell.key === 'vent' && value === 'lines') return { code: 'vent-lines', values: { n: params.ventLines }, rank }
  if (tell.key === 'weldMarks' && params.weldMarkShape === 'lines')
    return { code: 'weld-lines', values: { n: params.weldMarks }, rank }
  if (Object.hasOwn(counts, tell.key)) return { code: kebab(tell.key), values: { n: Number(value) }, rank }
  if ((switches as readonly string[]).includes(tell.key))
    return { code: value === true ? tell.key : `no-${tell.key}`, rank }
  return { code: `${kebab(tell.key)}-${value}`, rank }
}

/** Print is told where it is in the picture at all, and where it stands only where its place is asked about. */
function printed({ key }: Tell, params: CellParameters): boolean {
  if (key === 'lettering') return params.pointAt !== 'lettering-print'
  if (key === 'code') return params.pointAt !== 'code-print'
  if (key === 'letteringPrint' || key === 'wording') return params.lettering !== 'none'
  if (key === 'codePrint' || key === 'codeKind') return params.code !== 'none'
  // Lettering on a second wrap says that there is one.
  return key !== 'secondWrap' || params.lettering !== 'second-wrap'
}

function tells(params: CellParameters, asking: boolean): AltFact[] {
  const hidden = params.end === 'negative' && endViews.includes(params.view)
  return tellList
    .filter(
      tell => tell.views.includes(params.view) && !(hidden && positiveOnly.includes(tell.key)) && printed(tell, params),
    )
    .flatMap(tell => {
      if (tell.key === 'legs' && params.contact === 'closed') return []
      const asked = tell.parts.includes(params.pointAt)
      // A question shows the usual cell and must not give the answer away: what is pointed at is told by its pointer.
      if (asked && !asking && params[tell.key] === usualCell[tell.key]) return []
      const differs = params[tell.key] !== usualCell[tell.key]
      return asked || differs || (tell.always === true && params.pointAt === 'none')
        ? [factOf(params, tell, asked)]
        : []
    })
}

/** From where it is seen; `close`: as `lookClose` draws it. */
function viewFact(params: CellParameters, close: boolean): AltFact {
  const negative = params.end === 'negative' && endViews.includes(params.view) ? '-negative' : ''
  const code = close && isPeeled(params) ? 'view-close-up' : `view-${params.view}${negative}`
  return { code, rank: ranks.view }
}

/** What one cell picture tells, in reading order. */
export const describeCell = (params: CellParameters): AltFact[] => [
  viewFact(params, false),
  ...(params.pointAt === 'none' ? [] : [{ code: `point-${params.pointAt}`, rank: ranks.asked }]),
  ...tells(params, false),
]

const same = (a: AltFact, b: AltFact): boolean =>
  a.code === b.code && JSON.stringify(a.values) === JSON.stringify(b.values)

/** What a sheet of options tells: first what all share, then per option what sets it apart. */
export function describeOptions(
  cells: readonly (CellParameters | undefined)[],
  labels: readonly string[],
  letter: (i: number) => string,
): AltFact[] {
  const all = cells.map(cell => (cell === undefined ? undefined : [viewFact(cell, true), ...tells(cell, true)]))
  const shown = all.filter(facts => facts !== undefined)
  const shared = (shown[0] ?? []).filter(
    fact => shown.length > 1 && shown.every(facts => facts.some(one => same(one, fact))),
  )
  const options = all.map((facts, i): AltFact => {
    const own = (facts ?? []).filter(fact => !shared.some(one => same(one, fact)))
    const values = { letter: letter(i) }
    if (own.length > 0) return { code: 'option', values, rank: ranks.asked, parts: own }
    const label = labels[i] ?? ''
    return label === ''
      ? { code: 'option-open', values, rank: ranks.asked }
      : { code: 'option-named', values: { ...values, label }, rank: ranks.asked }
  })
  return [{ code: 'options', values: { n: cells.length }, rank: ranks.view }, ...shared, ...options]
}

/** What a reference sheet tells: each view's facts, without repeating what an earlier view told; a view that adds none is left out. */
export function describeReference(cells: readonly CellParameters[]): AltFact[] {
  const told: AltFact[] = []
  for (const cell of cells) {
    const added = tells(cell, true).filter(fact => !told.some(one => same(one, fact)))
    if (added.length > 0 || told.length === 0) told.push(viewFact(cell, true), ...added)
  }
  return [{ code: 'reference', values: { n: cells.length }, rank: ranks.view }, ...told]
}
