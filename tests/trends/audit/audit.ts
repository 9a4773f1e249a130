// The audit: is any number of one to four people pinned by what was published?
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { weeksFrom } from '../../../src/trends/week.ts'
import { cellsOf } from './publish.ts'
import type { Kind, Stream } from './streams.ts'
import {
  extreme,
  type Found,
  type Group,
  isWhole,
  type Puzzle,
  type Statement,
  unknownsOf,
  type World,
} from './worlds.ts'

export type Pinned = { readonly name: string; readonly value: number }

export type Audit = {
  readonly quantities: number
  readonly pinned: readonly Pinned[]
  readonly programs: number
  /** Quantities neither shown to be free nor pinned: there must be none. */
  readonly undecided: number
  /** Whether any world agrees with the statements. */
  readonly possible: boolean
}

/** People of the kinds let in, from week `first` to week `last`. */
type Quantity = {
  readonly name: string
  readonly has: readonly boolean[]
  readonly first: number
  readonly last: number
}
type Way = 'maximize' | 'minimize'

/**
 * Looks for quantities that are the same number, one to four, in every world of whole people that agrees with the statements. `truth` is
 * such a world if the statements are true; without it one is looked for. Stops after `enough` finds. Quantities: each cell and each two cells' parts, in each
 * week and up to each week.
 */
export function audit(puzzle: Puzzle, truth: World | null, seed: number, enough = Number.POSITIVE_INFINITY): Audit {
  const random = xoroshiro128plus(seed)
  const index = new Map(puzzle.kinds.map((kind, k) => [kind, k]))
  const size = puzzle.kinds.length
  let programs = 0
  const look = (weight: (kind: number, week: number) => number, way: Way, whole: boolean): Found => {
    programs++
    return extreme(puzzle, (kind, week) => weight(index.get(kind)!, week), way, whole)
  }
  const anywhere = (whole: boolean): Found => {
    const weights = unknownsOf(puzzle).map(() => uniformInt(random, 1, 9))
    return look((kind, week) => weights[week * size + kind]!, 'minimize', whole)
  }

  const all = quantitiesOf(puzzle)
  const start = truth ?? worldOf(anywhere(true))
  if (start === null) return { quantities: all.length, pinned: [], programs, undecided: 0, possible: false }
  // What is zero, or five and more, in one world is no small number pinned.
  const valueAtStart = new Map(all.map(q => [q, sizeOf(start, q, size)]))
  let open = all.filter(q => valueAtStart.get(q)! >= 1 && valueAtStart.get(q)! < 5)
  const setFree = (world: World | null) => {
    if (world !== null) open = open.filter(q => sizeOf(world, q, size) === valueAtStart.get(q))
  }
  for (let i = 0; i < 4 && open.length > 0; i++) setFree(worldOf(anywhere(false)))

  /** Where neither end of its range could be reached: whether any world has another number of it, above or below. */
  const another = (q: Quantity): 'free' | 'pinned' | undefined => {
    const group: Group = (kind, week) => Boolean(q.has[index.get(kind)!]) && week >= q.first && week <= q.last
    const value = valueAtStart.get(q)!
    const found = [
      { group, least: value + 1, most: Number.POSITIVE_INFINITY },
      { group, least: 0, most: value - 1 },
    ].map(statement => {
      programs++
      const statements = [...puzzle.statements, statement]
      return extreme({ ...puzzle, statements }, () => 1, 'minimize', true, 100_000).status
    })
    if (found.includes('found')) return 'free'
    return found.every(status => status === 'none') ? 'pinned' : undefined
  }

  const pinned: Pinned[] = []
  let undecided = 0
  for (let q = open[0]; q !== undefined && pinned.length < enough; q = open[0]) {
    open = open.slice(1)
    const { has, first, last } = q
    const weight = (kind: number, week: number) => (has[kind] && week >= first && week <= last ? 1 : 0)
    const range = [false, true].map(whole => () => {
      const most = look(weight, 'maximize', whole)
      if (most.status === 'unbounded') return 'free'
      const least = look(weight, 'minimize', whole)
      setFree(worldOf(most))
      setFree(worldOf(least))
      if (most.status !== 'found' || least.status !== 'found') return undefined
      if (Math.floor(most.value + 1e-6) === Math.ceil(least.value - 1e-6)) return 'pinned'
      return worldOf(most) !== null && worldOf(least) !== null ? 'free' : undefined
    })
    const found = range[0]!() ?? range[1]!() ?? another(q)
    if (found === undefined) undecided++
    if (found === 'pinned') pinned.push({ name: q.name, value: valueAtStart.get(q)! })
  }
  return { quantities: all.length, pinned, programs, undecided, possible: true }
}

/** The true world of a family, which an attacker looks for. */
export function truthOf(stream: Stream, family: string): World {
  const nameOf = ({ verdict, bought, fired }: Kind) => `${verdict} ${bought} ${fired.join()}`
  const people = new Map<string, number>()
  for (const outcome of stream.outcomes) {
    if (outcome.family !== family) continue
    const name = `${weeksFrom(stream.first, outcome.week)} ${nameOf(outcome)}`
    people.set(name, (people.get(name) ?? 0) + 1)
  }
  const names = stream.kinds.map(nameOf)
  return unknownsOf(stream).map(one => people.get(`${one.week} ${names[one.kind]}`) ?? 0)
}

export const puzzleOf = (stream: Stream, statements: readonly Statement[]): Puzzle => ({
  kinds: stream.kinds,
  weeks: stream.weeks,
  statements,
})

/** A found world, if it is one of whole people. */
const worldOf = (found: Found): World | null =>
  found.status === 'found' && isWhole(found.world) ? found.world.map(Math.round) : null

function sizeOf(world: World, { has, first, last }: Quantity, kinds: number): number {
  let size = 0
  for (let week = first; week <= last; week++)
    for (let kind = 0; kind < kinds; kind++) if (has[kind]) size += world[week * kinds + kind]!
  return size
}

function quantitiesOf({ kinds, weeks }: Puzzle): Quantity[] {
  const cells = cellsOf(kinds).map(({ key, has }) => ({ name: key as string, has: kinds.map(has) }))
  const sides = [
    { name: 'family', has: kinds.map(() => true) },
    ...cells,
    ...cells.flatMap((a, i) =>
      cells.slice(i + 1).flatMap(b => [
        { name: `${a.name} and ${b.name}`, has: kinds.map((_, k) => a.has[k]! && b.has[k]!) },
        { name: `${a.name} not ${b.name}`, has: kinds.map((_, k) => a.has[k]! && !b.has[k]!) },
        { name: `${b.name} not ${a.name}`, has: kinds.map((_, k) => b.has[k]! && !a.has[k]!) },
      ]),
    ),
  ].filter(side => side.has.includes(true))
  return sides.flatMap(({ name, has }) =>
    Array.from({ length: weeks }, (_, week) => [
      { name: `${name} in week ${week}`, has, first: week, last: week },
      { name: `${name} up to week ${week}`, has, first: 0, last: week },
    ]).flat(),
  )
}
