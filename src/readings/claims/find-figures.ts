// Finds figures with a unit in a claim: capacities, currents, masses, energies, voltages, resistances.
import { readNumber } from '../typed/read-number.ts'
import { capacityGrade, currentSort } from './claim-words.ts'
import { type CurrentSort, type Fact, mostFacts, type Span } from './facts.ts'
import type { Stretches } from './stretches.ts'
import { type ClaimedKind, unitBehind } from './unit-behind.ts'

interface Figure extends Span {
  readonly kind: ClaimedKind
  readonly values: readonly [number, ...number[]]
  readonly milli: boolean
  /** One past the unit: what stands between it and a temperature or a time behind it are words of the figure, too. */
  readonly unitTo: number
  /** No unit is written: a bare figure beside a size code, or one of the parts of "2x 3400". */
  readonly assumed: boolean
  /** Seconds named right behind a current: "45A (10 s)". */
  readonly seconds: number | null
  /** Temperature named right behind it: "30A (80 °C)". */
  readonly limit_C: number | null
}

// What a claim can be at all, however untrue; and what claims usually are, which decides between two readings of a mark:
// "12.000 mAh" is twelve thousand wherever it is written.
const sane: Record<ClaimedKind, readonly [number, number]> = {
  capacity: [10, 1e6],
  current: [0.05, 1000],
  mass: [2, 5000],
  energy: [0.05, 5000],
  voltage: [0.5, 100],
  resistance: [0.5, 5000],
  rate: [0.1, 200],
}
const usual: Partial<Record<ClaimedKind, readonly [number, number]>> = {
  capacity: [100, 200_000],
  current: [0.2, 300],
  mass: [5, 2000],
}

// Groups of three after a space count as one number; "18650 3000" does not, for want of a free start.
const number = /\d{1,3}(?:[ \u00a0\u202f'’]\d{3})+(?!\d)(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d{1,2}(?!\d)/gu
/** No figure of a claim has more characters than this. */
const longestNumber = 20
const secondsBehind =
  /[ ,/(@]{0,3}(?:for |f[uü]r |durante |pendant )?(\d{1,3}(?:[.,]\d)?) ?(?:s|sec|secs|seconds?|sek\.?|sekunden|seg|segundos|secondes)\b\)?/iuy
const degreesBehind =
  /[ /(@]{0,3}(?:[\p{L}-]{1,16}[ :(]{1,2}){0,3}(\d{2,3}) ?(?:° ?c|℃|º ?c|deg(?:rees)? c|grad|grados)(?!\p{L})\)?/iuy
const letter = /\p{L}/u

/** Figures in the order of the text, with what the words beside them say; each is taken out of what is left to be searched. */
export function findFigures(text: string, locale: string, taken: Stretches, counts: readonly Span[]): Fact[] {
  const figures: Figure[] = []
  const behindCount = new Set(counts.map(({ to }) => to))
  // What is taken is blotted out, so that the 2 of "19/66-2 680 mAh" is no part of a number.
  const free = text.split('').map((unit, at) => (taken.isTaken(at) ? '|' : unit))
  for (const match of free.join('').matchAll(number)) {
    if (figures.length >= mostFacts) break
    const from = match.index
    if (from < (figures.at(-1)?.to ?? 0) || match[0].length > longestNumber) continue
    if (!mayBegin(text, from, taken)) continue
    const digits = match[0].replace(/\u00a0|\u202f/g, ' ')
    const found = figureAt(text, from, digits, locale) ?? bareFigure(text, from, digits, taken, behindCount)
    if (!found) continue
    taken.take(found)
    figures.push(found)
  }
  const written = figures.some(({ kind, assumed }) => kind === 'capacity' && !assumed)
  const beside = (figure: Figure) => figure.assumed && !isPart(text, figure, behindCount)
  return withWords(
    text,
    figures.filter(figure => !(written && beside(figure))),
    taken,
  )
}

/** Whether a number may begin here: glued to a letter only where that letter belongs to something already read. */
function mayBegin(text: string, at: number, taken: Stretches): boolean {
  const before = text[at - 1] ?? ' '
  if (taken.isTaken(at - 1)) return true
  if (/[/.,]/.test(before)) return !/\d/.test(text[at - 2] ?? '') || taken.isTaken(at - 2)
  return !letter.test(before) && !/\d/.test(before)
}

function figureAt(text: string, from: number, digits: string, locale: string): Figure | null {
  const behind = unitBehind(text, from + digits.length)
  if (!behind) return null
  const read = readNumber(digits, locale)
  if (!read.ok) return null
  const { kind, factor, milli, to } = behind
  const within = (limits: readonly [number, number]) => (value: number) => value >= limits[0] && value <= limits[1]
  const all = read.values.map(value => Number((value * factor).toPrecision(12))).filter(within(sane[kind]))
  const likely = all.filter(within(usual[kind] ?? sane[kind]))
  const [first, ...others] = likely.length > 0 ? likely : all
  if (first === undefined) return null
  const plain: Figure = {
    kind,
    from,
    to,
    unitTo: to,
    values: [first, ...others],
    milli,
    assumed: false,
    seconds: null,
    limit_C: null,
  }
  if (kind !== 'current') return plain
  const degrees = matchAt(degreesBehind, text, to)
  if (degrees) return { ...plain, to: to + degrees[0].length, limit_C: Number(degrees[1]) }
  const seconds = matchAt(secondsBehind, text, to)
  if (seconds) return { ...plain, to: to + seconds[0].length, seconds: Number(seconds[1]!.replace(',', '.')) }
  return plain
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at
  return pattern.exec(text)
}

/** Nouns that a bare figure counts, so that it is no capacity. */
const counted =
  /[ -]?(?:cycles?|zyklen|ciclos|pcs|pieces|st(?:u|ü)ck|uds|reviews?|sold|verkauft|times|mal|hours?|stunden|horas|lumens?|lux|lm|days?|tage)\b/iuy

/** A figure without a unit where only a capacity makes sense: right beside a size code, or behind "2x". */
function bareFigure(
  text: string,
  from: number,
  digits: string,
  taken: Stretches,
  behindCount: ReadonlySet<number>,
): Figure | null {
  const to = from + digits.length
  const value = Number(digits.replace(/[.,' ](?=\d{3}(?!\d))/g, ''))
  const isYear = value > 2000 && value < 2040
  if (!(value >= 300 && value <= 99_999) || value % 5 !== 0 || isYear) return null
  if (letter.test(text[to] ?? '') || matchAt(counted, text, to)) return null
  const gap = (step: 1 | -1, start: number) => {
    let at = start
    for (let most = 3; most > 0 && /[ \-–/,:|]/.test(text[at] ?? ''); most--) at += step
    return at
  }
  const figure: Figure = {
    kind: 'capacity',
    from,
    to,
    unitTo: to,
    values: [value],
    milli: false,
    assumed: true,
    seconds: null,
    limit_C: null,
  }
  if (isPart(text, figure, behindCount)) return figure
  return taken.isTaken(gap(-1, from - 1)) || taken.isTaken(gap(1, to)) ? figure : null
}

/** Whether the figure stands right behind a number of cells: "2x 3400". */
const isPart = (text: string, { from }: Span, behindCount: ReadonlySet<number>): boolean =>
  behindCount.has(text[from - 1] === ' ' ? from - 1 : from)

/** Gives each figure the words next to it: those behind it, unless those before it are still nobody's. */
function withWords(text: string, figures: readonly Figure[], taken: Stretches): Fact[] {
  const facts: Fact[] = []
  let used = 0
  for (const figure of figures) {
    const before = wordsBefore(text, figure.from, used, taken)
    const within = text.slice(figure.unitTo, figure.to)
    const behind = wordsBehind(text, figure.to, taken)
    const read = factOf(figure, before, within + behind)
    if (read.fromBehind) used = figure.to + behind.length
    facts.push(read.fact)
  }
  return facts
}

/** How far from a figure a word is still looked for. */
const reach = 24
const ends = /[,;|\n]/

function wordsBefore(text: string, from: number, used: number, taken: Stretches): string {
  let start = from
  while (start > used && from - start < reach && !taken.isTaken(start - 1) && !ends.test(text[start - 1]!)) start--
  return text.slice(start, from)
}

function wordsBehind(text: string, to: number, taken: Stretches): string {
  let end = to
  while (end < text.length && end - to < reach && !taken.isTaken(end) && !ends.test(text[end]!)) end++
  return text.slice(to, end)
}

type ReadFigure = {
  readonly fact: Fact
  /** The words behind the figure told its sort, so they are not the next one's. */
  readonly fromBehind: boolean
}

function factOf(figure: Figure, before: string, behind: string): ReadFigure {
  const { kind, values, seconds, limit_C, milli, assumed } = figure
  const [value] = values
  const span = { from: figure.from, to: figure.to }
  if (values.length > 1 && kind !== 'rate') {
    return { fact: { kind: 'unclear', of: kind, readings: values, span }, fromBehind: false }
  }
  const { sort, fromBehind } = sortOf(before, behind)
  switch (kind) {
    case 'rate':
      return { fact: { kind, C: value, sort, span }, fromBehind }
    case 'current':
      return { fact: { kind, A: value, ...limited(sort, seconds, limit_C), span }, fromBehind }
    case 'capacity': {
      const [first, second] = [capacityGrade(before), capacityGrade(behind)]
      const grade = first ?? second ?? 'unsaid'
      return {
        fact: { kind, mAh: value, grade, ...(assumed && { assumed }), span },
        fromBehind: !first && second !== null,
      }
    }
    case 'mass':
      return { fact: { kind, g: value, span }, fromBehind: false }
    case 'energy':
      return { fact: { kind, Wh: value, ...(milli && { milli }), span }, fromBehind: false }
    case 'voltage':
      return { fact: { kind, V: value, span }, fromBehind: false }
    case 'resistance':
      return { fact: { kind, mΩ: value, span }, fromBehind: false }
  }
}

/** Seconds behind a current make it a pulse; a temperature makes it a continuous one up to there, unless the words say otherwise. */
function limited(sort: CurrentSort, seconds: number | null, limit_C: number | null) {
  const plain = sort === 'unsaid' || sort === 'max'
  if (limit_C !== null) return { sort: plain ? 'continuous' : sort, seconds, limit_C } as const
  return { sort: sort === 'unsaid' && seconds !== null ? 'pulse' : sort, seconds } as const
}

function sortOf(before: string, behind: string): { sort: CurrentSort; fromBehind: boolean } {
  const [first, second] = [currentSort(before), currentSort(behind)]
  // "max 30 A continuous": the more telling word wins, wherever it stands.
  if (first && first !== 'max') return { sort: first, fromBehind: false }
  if (second) return { sort: second, fromBehind: true }
  return { sort: first ?? 'unsaid', fromBehind: false }
}
