// Turns cell parameters into facts for an alt text: only what the view shows, the tell that is asked about first.
import { SIZE } from '../cell/anatomy.ts'
import { type CellParameters, COUNTS, isPeeled, SWITCHES, USUAL, type View } from '../cell/parameters.ts'
import { type AltFact, RANK } from './alt-fact.ts'

type Key = Exclude<keyof CellParameters, 'view' | 'pointAt' | 'end'>
type Tell = { key: Key; views: readonly View[]; parts: readonly string[]; rank: number; always?: boolean }

const ENDS: readonly View[] = ['top', 'top-angle']
const TOPS: readonly View[] = ['top', 'top-angle', 'cut-away']
const ALL: readonly View[] = ['side', 'top', 'top-angle', 'cut-away']
const SIDE: readonly View[] = ['side']
const OUTSIDE: readonly View[] = ['side', 'top', 'top-angle']

const TELLS: readonly Tell[] = [
  { key: 'heat', views: ['side', 'top-angle'], parts: ['heat'], rank: RANK.damage },
  { key: 'leak', views: OUTSIDE, parts: ['leak'], rank: RANK.damage },
  { key: 'swollen', views: SIDE, parts: ['swelling'], rank: RANK.damage },
  { key: 'dent', views: SIDE, parts: ['dent'], rank: RANK.damage },
  { key: 'scorched', views: SIDE, parts: ['scorch'], rank: RANK.damage },
  { key: 'rust', views: OUTSIDE, parts: ['rust'], rank: RANK.damage },
  { key: 'wet', views: OUTSIDE, parts: ['wet'], rank: RANK.damage },
  { key: 'wrap', views: ALL, parts: ['wrap'], rank: RANK.damage },
  { key: 'ring', views: TOPS, parts: ['ring'], rank: RANK.damage },
  { key: 'secondWrap', views: ALL, parts: ['second-wrap'], rank: RANK.tell },
  { key: 'welds', views: ENDS, parts: ['welds'], rank: RANK.tell },
  { key: 'terminal', views: ENDS, parts: ['terminal'], rank: RANK.tell },
  { key: 'contact', views: ENDS, parts: [], rank: RANK.tell },
  { key: 'legs', views: ENDS, parts: ['legs'], rank: RANK.tell, always: true },
  { key: 'dimples', views: TOPS, parts: ['dimples'], rank: RANK.tell },
  { key: 'vent', views: TOPS, parts: ['vent'], rank: RANK.tell },
  { key: 'weldMarks', views: ENDS, parts: ['weld-marks'], rank: RANK.tell },
  { key: 'lettering', views: SIDE, parts: ['lettering'], rank: RANK.tell },
  { key: 'letteringPrint', views: SIDE, parts: ['lettering-print'], rank: RANK.tell },
  { key: 'wording', views: SIDE, parts: [], rank: RANK.asked },
  { key: 'bin', views: SIDE, parts: ['bin'], rank: RANK.tell },
  { key: 'code', views: SIDE, parts: ['code'], rank: RANK.tell },
  { key: 'codePrint', views: SIDE, parts: ['code-print'], rank: RANK.tell },
  { key: 'codeKind', views: SIDE, parts: [], rank: RANK.tell },
  { key: 'top', views: ALL, parts: ['top'], rank: RANK.tell },
  { key: 'board', views: SIDE, parts: ['board'], rank: RANK.tell },
  { key: 'seam', views: SIDE, parts: ['seam'], rank: RANK.setting },
  { key: 'wrapColour', views: ALL, parts: [], rank: RANK.setting },
  { key: 'format', views: SIDE, parts: ['length', 'diameter', 'body'], rank: RANK.setting },
]

// On the negative end there is no contact, ring or vent to tell of.
const POSITIVE_ONLY: readonly Key[] = ['ring', 'legs', 'contact', 'dimples', 'vent', 'weldMarks', 'top', 'secondWrap']

const kebab = (key: string): string => key.replace(/[A-Z]/g, sign => `-${sign.toLowerCase()}`)

function factOf(params: CellParameters, tell: Tell, asked: boolean): AltFact {
  const value = params[tell.key]
  const rank = asked ? RANK.asked : tell.rank
  if (tell.key === 'format') {
    const { diameter, length } = SIZE[params.format]
    return params.sizes
      ? { code: 'format-sizes', values: { format: params.format, diameter, length }, rank }
      : { code: 'format', values: { format: params.format }, rank }
  }
  if (tell.key === 'vent' && value === 'lines') return { code: 'vent-lines', values: { n: params.ventLines }, rank }
  if (Object.hasOwn(COUNTS, tell.key)) return { code: kebab(tell.key), values: { n: Number(value) }, rank }
  if ((SWITCHES as readonly string[]).includes(tell.key))
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
  const hidden = params.end === 'negative' && ENDS.includes(params.view)
  return TELLS.filter(
    tell => tell.views.includes(params.view) && !(hidden && POSITIVE_ONLY.includes(tell.key)) && printed(tell, params),
  ).flatMap(tell => {
    if (tell.key === 'legs' && params.contact === 'closed') return []
    const asked = tell.parts.includes(params.pointAt)
    // A question shows the usual cell and must not give the answer away: what is pointed at is told by its pointer.
    if (asked && !asking && params[tell.key] === USUAL[tell.key]) return []
    const differs = params[tell.key] !== USUAL[tell.key]
    return asked || differs || (tell.always === true && params.pointAt === 'none') ? [factOf(params, tell, asked)] : []
  })
}

/** From where it is seen; `close`: as `lookClose` draws it. */
function viewFact(params: CellParameters, close: boolean): AltFact {
  const negative = params.end === 'negative' && ENDS.includes(params.view) ? '-negative' : ''
  const code = close && isPeeled(params) ? 'view-close-up' : `view-${params.view}${negative}`
  return { code, rank: RANK.view }
}

/** What one cell picture tells, in reading order. */
export const describeCell = (params: CellParameters): AltFact[] => [
  viewFact(params, false),
  ...(params.pointAt === 'none' ? [] : [{ code: `point-${params.pointAt}`, rank: RANK.asked }]),
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
    if (own.length > 0) return { code: 'option', values, rank: RANK.asked, parts: own }
    const label = labels[i] ?? ''
    return label === ''
      ? { code: 'option-open', values, rank: RANK.asked }
      : { code: 'option-named', values: { ...values, label }, rank: RANK.asked }
  })
  return [{ code: 'options', values: { n: cells.length }, rank: RANK.view }, ...shared, ...options]
}

/** What a reference sheet tells: each view's facts, without repeating what an earlier view told; a view that adds none is left out. */
export function describeReference(cells: readonly CellParameters[]): AltFact[] {
  const told: AltFact[] = []
  for (const cell of cells) {
    const added = tells(cell, true).filter(fact => !told.some(one => same(one, fact)))
    if (added.length > 0 || told.length === 0) told.push(viewFact(cell, true), ...added)
  }
  return [{ code: 'reference', values: { n: cells.length }, rank: RANK.view }, ...told]
}
