// Which column holds time, voltage, current, temperature and mode: from headers, or from how the values behave.
import { excerpt, type LogAnswers, type LogQuestion, type LogRefusal, type NeededRole, type Role } from './answers.ts'
import { cellNumber, type DecimalMark } from './number-cell.ts'
import { type Column, choiceOf, firstRows, type TableShape } from './table-shape.ts'
import { clockSeconds, stampSeconds, type TimeKind } from './time-cell.ts'

export type Assigned = Record<NeededRole, number> & Partial<Record<'temperature' | 'mode', number>>

export type AssignResult =
  | { readonly ok: true; readonly columns: Assigned }
  | { readonly ok: false; readonly question: LogQuestion }
  | { readonly ok: false; readonly refusal: LogRefusal }

const needed: readonly NeededRole[] = ['time', 'voltage', 'current']

/** Settles every needed role or asks for the first that is open. Without a header, values decide only if nothing else fits. */
export function assignColumns(shape: TableShape, mark: DecimalMark, answers: LogAnswers): AssignResult {
  const said = answers.columns ?? {}
  const taken = new Set(Object.values(said))
  const found: Partial<Record<Role, number>> = { ...said }
  const roles: readonly Role[] = [...needed, 'temperature', 'mode']
  const open = (column: number) => !taken.has(column) && shape.columns[column]!.cells.some(cell => cell !== '')
  const behaving = shape.hasHeader ? null : behaviour(shape, mark)
  for (const role of roles) {
    if (found[role] !== undefined && shape.columns[found[role]]) continue
    delete found[role]
    const candidates = shape.columns.flatMap((column, at) => (open(at) && fits(column, role, mark) ? [at] : []))
    const fewest = Math.min(...candidates.map(at => shape.columns[at]!.header.doubts))
    const likeliest = candidates.filter(at => shape.columns[at]!.header.doubts === fewest)
    const choice = likeliest.length > 1 && role === 'time' ? bestTime(shape, likeliest, mark) : likeliest
    const pick = choice.length === 1 ? choice[0] : behaving?.[role]
    // Two temperatures or modes: the first will do, they only add notes.
    const settled = pick ?? (role === 'temperature' || role === 'mode' ? likeliest[0] : undefined)
    if (settled !== undefined) {
      found[role] = settled
      taken.add(settled)
    } else if (role === 'time' || role === 'voltage' || role === 'current') {
      const refusal = unreadable(shape, role, mark)
      if (refusal) return { ok: false, refusal }
      const all = shape.columns.flatMap((column, at) => (open(at) && isUsable(column, mark, role) ? [at] : []))
      const choices = (choice.length > 1 ? choice : all).slice(0, 25).map(at => choiceOf(shape, at))
      return { ok: false, question: { code: 'which-column', role, choices, rows: firstRows(shape) } }
    }
  }
  return { ok: true, columns: found as Assigned }
}

/** A column that its header makes the one for a role, but most of whose cells hold no number. */
function unreadable({ columns, firstRowNumber }: TableShape, role: Role, mark: DecimalMark): LogRefusal | null {
  const named = columns.filter(({ header, cells }) => header.role === role && cells.some(cell => cell !== ''))
  const [column, another] = named
  if (!column || another) return null
  const isBroken = (cell: string) => cellNumber(cell, mark) === null
  const first = column.cells.findIndex(isBroken)
  return {
    code: 'broken-rows',
    broken: column.cells.filter(isBroken).length,
    rows: column.cells.length,
    first: { row: firstRowNumber + first, label: excerpt(column.label, 40), text: excerpt(column.cells[first] ?? '') },
  }
}

/** How most cells of a column write time. */
export function timeKindOf(cells: readonly string[], mark: DecimalMark): TimeKind | null {
  const filled = cells.filter(cell => cell !== '')
  const most = (test: (cell: string) => boolean) => filled.filter(test).length > filled.length / 2
  if (most(cell => cellNumber(cell, mark) !== null)) return 'number'
  if (most(cell => clockSeconds(cell, 'h:mm') !== null)) return 'clock'
  return most(cell => stampSeconds(cell) !== null) ? 'stamp' : null
}

function fits(column: Column, role: Role, mark: DecimalMark): boolean {
  return column.header.role === role && isUsable(column, mark, role)
}

function isUsable(column: Column, mark: DecimalMark, role: Role): boolean {
  if (role === 'mode') return true
  if (role === 'time') return timeKindOf(column.cells, mark) !== null
  const filled = column.cells.filter(cell => cell !== '')
  return filled.filter(cell => cellNumber(cell, mark) !== null).length > filled.length / 2
}

/** Of several equally likely time columns: one that counts from the start rather than a date; then one that moves. */
function bestTime(shape: TableShape, candidates: readonly number[], mark: DecimalMark): readonly number[] {
  const order: readonly TimeKind[] = ['number', 'clock', 'stamp']
  const kinds = candidates.map(at => timeKindOf(shape.columns[at]!.cells, mark))
  const moving = (at: number) => new Set(shape.columns[at]!.cells).size > 1
  for (const kind of order) {
    const these = candidates.filter((at, index) => kinds[index] === kind && moving(at))
    if (these.length > 0) return these.length === 1 || kind === 'number' ? these : these.slice(0, 1)
  }
  return candidates
}

/** Without a header: roles by behaviour, each only if exactly one column behaves like it. */
function behaviour(shape: TableShape, mark: DecimalMark): Partial<Record<Role, number>> {
  const numbers = shape.columns.map(column => column.cells.map(cell => cellNumber(cell, mark)?.value ?? Number.NaN))
  // Time moves on with every row; a temperature that only rises pauses now and then.
  const rising = shape.columns.flatMap((column, at) => {
    const kind = timeKindOf(column.cells, mark)
    if (kind === 'clock' || kind === 'stamp') return [at]
    const steps = numbers[at]!.slice(1).map((value, n) => value - numbers[at]![n]!)
    return kind === 'number' && steps.length >= 2 && steps.every(step => step > 0) ? [at] : []
  })
  const only = (columns: readonly number[]) => (columns.length === 1 ? columns[0] : undefined)
  const time = only(rising)
  const rest = shape.columns
    .map((_, at) => at)
    .filter(at => at !== time && isUsable(shape.columns[at]!, mark, 'current'))
  const like = (low: number, high: number) => (at: number) =>
    numbers[at]!.every(value => Number.isNaN(value) || (Math.abs(value) >= low && Math.abs(value) <= high))
  const voltage = only(rest.filter(at => like(2, 4.5)(at) || like(2000, 4500)(at)))
  const current = only(rest.filter(at => at !== voltage && !like(8, 60)(at)))
  return {
    ...(time === undefined ? {} : { time }),
    ...(voltage === undefined ? {} : { voltage }),
    ...(current === undefined ? {} : { current }),
  }
}
