// Which question comes next: an expert's order, and within it the one that tells most for its effort.
//
// First what may mean "get away from it", then what accuses and needs a second look, then label and looks, the hands, and tools.
// Within that, every question waits until the hazards that take less care have been asked about: no hands before the looks, no meter before
// the wrap is known to be whole. Lifting a wrap and putting a load on come last: whatever an easier step can settle needs no risky one.
import type { Answer, QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { weigh } from '../engine/conditions.ts'
import { judge } from '../engine/judge.ts'
import type { Care, Question } from '../engine/pack/pack.ts'
import { isFailing } from '../ground/verdicts.ts'
import type { Check, Consent } from './check.ts'
import { partsOf } from './known/known-figures.ts'
import { stageOf } from './stage.ts'
import { hasTool, toolsFor } from './tools.ts'

export type Next =
  | { readonly is: 'ask'; readonly question: QuestionId; readonly left: number }
  /** Found out elsewhere, and asked about once before it counts. */
  | { readonly is: 'confirm'; readonly question: QuestionId; readonly answer: Answer; readonly left: number }
  | { readonly is: 'consent'; readonly to: Consent; readonly left: number }
  /** Nothing may be asked any more; `settled` says whether that is because no answer can change the verdict. */
  | { readonly is: 'done'; readonly settled: boolean }

/** What a question asks of a person, in the order in which it is asked of them. */
const levels: readonly Care[] = ['look', 'handle', 'meter']

export function nextOf(program: Program, check: Check): Next {
  const outlook = program.outlook(check.answers)
  if (outlook.reachable.length <= 1) return { is: 'done', settled: true }
  const open = outlook.prospects.flatMap(prospect => program.questions.get(prospect.question) ?? [])
  const offHands = mustKeepOff(program, check)
  const wanted = open.filter(
    question =>
      isInDepth(program, check, question) &&
      hasTool(check, question) &&
      !(offHands && question.care !== 'look') &&
      // Nothing can be worked out of what cannot be told.
      !partsOf(program, question).some(part => check.answers[part]?.kind === 'cant-tell'),
  )
  const pending = Object.entries(check.pending ?? {}).filter(([id]) => check.answers[id] === undefined)
  const beside = besideOf(program, check)
  const left =
    mayStillAsk(
      check,
      wanted.filter(({ care }) => isLevel(care) || check.consents[care] !== false),
      beside,
    ) + pending.filter(([id]) => !wanted.some(question => question.id === id)).length
  const urgent = wanted.find(question => stageOf(program, question) === 'safety')
  if (urgent) return { is: 'ask', question: urgent.id, left }
  const [known] = pending
  if (known) return { is: 'confirm', question: known[0], answer: known[1], left }
  // What decides whether other answers count is asked before them.
  const first = wanted.find(question => program.family?.first?.includes(question.id))
  if (first) return { is: 'ask', question: first.id, left }
  // Worked out only where it is asked for: that costs more than all else here.
  const lookBeside = () => (beside.length > 0 ? program.beside?.next(check.answers) : undefined)
  const early = isTimeForLooks(program, check, wanted) ? lookBeside() : undefined
  if (early !== undefined) return { is: 'ask', question: early, left }
  const easy = firstInOrder(program, check, wanted)
  // What it is worked out of is asked before it, each figure once.
  const part = easy && partsOf(program, easy).find(one => check.answers[one] === undefined)
  if (easy) return { is: 'ask', question: part ?? easy.id, left: part ? left + 1 : left }
  const look = lookBeside()
  if (look !== undefined) return { is: 'ask', question: look, left }
  for (const to of ['unwrap', 'bench'] as const) {
    const risky = wanted.find(question => question.care === to)
    if (!risky || check.consents[to] === false || !mayRisk(program, check, to)) continue
    return check.consents[to] ? { is: 'ask', question: risky.id, left } : { is: 'consent', to, left }
  }
  return { is: 'done', settled: false }
}

/** Whether an answer to a question can still bring a danger: all else that the hazard reads is answered, or will be asked. */
function canEndanger(program: Program, check: Check, open: ReadonlySet<QuestionId>, id: QuestionId): boolean {
  return program.rules.some(rule => {
    const read = rule.kind === 'hazard' ? (program.reads.get(rule.id) ?? []) : []
    return read.includes(id) && read.every(one => open.has(one) || check.answers[one] !== undefined)
  })
}

/** The first by what it asks of a person, among those that ask for no more than the mildest hazard still open; `wanted` is by gain. */
function firstInOrder(program: Program, check: Check, wanted: readonly Question[]): Question | undefined {
  const open = new Set(wanted.map(question => question.id))
  const unsafe = wanted.filter(({ id }) => program.hazards.has(id) && canEndanger(program, check, open, id))
  const cares = new Set(unsafe.map(question => question.care))
  const reach = levels.findIndex(level => cares.has(level))
  const within = reach < 0 ? levels : levels.slice(0, reach + 1)
  const asked = check.trail.filter(id => tellsOfFamily(program, id)).length
  const telling = check.mode === 'quick' && asked < mostTelling
  return within.flatMap(level => {
    const here = wanted.filter(question => question.care === level)
    return (telling ? here.find(question => tellsOfFamily(program, question.id)) : undefined) ?? here[0] ?? []
  })[0]
}

/** So many of a known family's own telling looks go before everything else that a quick check asks after danger. */
const mostTelling = 5

/** Whether the family's own pack rules out by this look alone, or comes near to it: what a cell under another wrap is told by. */
function tellsOfFamily({ family, rules, reads, questions }: Program, id: QuestionId): boolean {
  if (!family || questions.get(id)?.topic === 'label') return false
  const isLook = (one: QuestionId) => questions.get(one)?.topic !== 'label'
  return rules.some(rule => {
    if (rule.pack !== family.pack || !(rule.kind === 'must' || (rule.kind === 'sign' && rule.strength === 'strong')))
      return false
    const looks = (reads.get(rule.id) ?? []).filter(isLook)
    return looks.length === 1 && looks[0] === id
  })
}

/**
 * A quick check asks so many questions and no more, whatever is still open: of people who are asked ten, one in fourteen leaves, of
 * those who are asked thirty, one in three (MacElroy 2000, second-hand).
 */
export const mostQuick = 10

/** Whether a question belongs into a check as thorough as this one: a tool that is there is used even when the other questions are over. */
function isInDepth(program: Program, { mode, trail, tools }: Check, question: Question): boolean {
  if (mode === 'full') return true
  const looks = question.care === 'look' || question.care === 'handle'
  return (
    (question.quick || (looks && tellsOfFamily(program, question.id))) &&
    (trail.length < mostQuick || (tools !== undefined && toolsFor(question).length > 0))
  )
}

/** How many of these, and of the looks beside the verdict, can be asked at most. */
function mayStillAsk(
  { mode, trail, tools }: Check,
  questions: readonly Question[],
  beside: readonly QuestionId[],
): number {
  const looks = beside.filter(id => !questions.some(question => question.id === id)).length
  if (mode === 'full') return questions.length + looks
  const withTools = tools ? questions.filter(question => toolsFor(question).length > 0).length : 0
  const without = questions.length - withTools + Math.min(looks, mostBeside)
  return Math.min(without, Math.max(0, mostQuick - trail.length)) + withTools
}

/** Whether a danger to get away from could not be told: then nothing is asked that needs hands. */
export const mustKeepOff = (program: Program, check: Check): boolean =>
  Object.entries(check.answers).some(
    ([id, answer]) => answer.kind === 'cant-tell' && program.hazards.get(id) === 'get-away',
  )

/** In a quick check so many questions at most are asked for another purpose than the verdict. */
const mostBeside = 3

/** What may still be looked at for another purpose than the verdict: while nothing is decided, and within the ten of a quick check. */
function besideOf(program: Program, { answers, mode, trail }: Check): readonly QuestionId[] {
  const among = program.beside?.among ?? []
  const asked = among.filter(id => trail.includes(id)).length
  if (mode === 'quick' && (asked >= mostBeside || trail.length >= mostQuick)) return []
  const open = among.filter(id => program.questions.has(id) && answers[id] === undefined)
  return open.length > 0 && isFailing(judge(program, answers).verdict) ? [] : open
}

/** The last places of a quick check belong to these looks: once the dangers that one sees are known, and while nothing speaks against the cell. */
function isTimeForLooks(program: Program, { mode, trail, answers }: Check, wanted: readonly Question[]): boolean {
  const asked = trail.filter(id => program.beside?.among.includes(id)).length
  if (mode === 'full' || trail.length - asked < mostQuick - mostBeside) return false
  return (
    judge(program, answers).score === 0 && !wanted.some(({ id, care }) => care === 'look' && program.hazards.has(id))
  )
}

const isLevel = (care: Care): care is Exclude<Care, Consent> => levels.includes(care)

/**
 * Whether a risky step may be offered at all: never while a danger sign that an easier step shows is unknown, never for a cell
 * that something speaks against. A load also waits for what a meter shows, and for a cell without a single sign.
 */
function mayRisk(program: Program, check: Check, to: Consent): boolean {
  const easier: readonly Care[] = to === 'bench' ? ['look', 'handle', 'meter'] : ['look', 'handle']
  const hazards = program.rules.filter(
    rule =>
      rule.kind === 'hazard' &&
      (program.reads.get(rule.id) ?? []).every(id => easier.includes(program.questions.get(id)?.care ?? 'bench')),
  )
  if (!hazards.every(rule => weigh(rule.when, check.answers) === 'false')) return false
  const { verdict, score } = judge(program, check.answers)
  return (verdict === 'open' || verdict === 'nothing-found') && (to === 'unwrap' || score === 0)
}
