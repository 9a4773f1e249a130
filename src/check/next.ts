// Which question comes next: an expert's order, and within it the one that tells most for its effort.
//
// First what may mean "get away from it", then what accuses and needs a second look, then label and looks, the hands, and tools.
// Within that, every question waits until the hazards that take less care have been asked about: no hands before the looks, no meter before
// the wrap is known to be whole. Before the first that needs hands it is asked once whether the cell may be touched at all. Lifting a wrap and
// putting a load on come last: whatever an easier step can settle needs no risky one.
import type { Answer, QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { weigh } from '../engine/conditions.ts'
import { judge, placesOf, verdictAt } from '../engine/judge.ts'
import type { Care, Question } from '../engine/pack/pack.ts'
import type { Urgency } from '../ground/urgencies.ts'
import { isFailing } from '../ground/verdicts.ts'
import type { Check, Consent } from './check.ts'
import { partsOf } from './known/known-figures.ts'
import { type Left, mayStillAsk, mostBeside, mostQuick } from './left.ts'
import { firstInOrder, isLevel, tellsOfFamily } from './order.ts'
import { stageOf } from './stage.ts'
import { hasTool, isAtHand, isToldByTool } from './tools.ts'

export type Next =
  | { readonly is: 'ask'; readonly question: QuestionId; readonly left: Left }
  /** Found out elsewhere, and asked about once before it counts. */
  | { readonly is: 'confirm'; readonly question: QuestionId; readonly answer: Answer; readonly left: Left }
  | { readonly is: 'consent'; readonly to: Consent; readonly left: Left }
  /** Nothing may be asked any more; `settled` says whether that is because no answer can change the verdict. */
  | { readonly is: 'done'; readonly settled: boolean }

export function nextOf(program: Program, check: Check): Next {
  const outlook = program.outlook(check.answers)
  if (outlook.reachable.length <= 1) return { is: 'done', settled: true }
  const open = outlook.prospects.flatMap(prospect => program.questions.get(prospect.question) ?? [])
  const offHands = mustKeepOff(program, check)
  const isOver = isOverForQuick(program, check)
  const wanted = open.filter(
    question =>
      isInDepth(program, check, question) &&
      !(isOver && asksNoMore(program.hazards.get(question.id))) &&
      hasTool(check, question) &&
      !(offHands && question.care !== 'look') &&
      // Nothing can be worked out of what cannot be told.
      !partsOf(program, question).some(part => check.answers[part]?.kind === 'cant-tell'),
  )
  const pending = Object.entries(check.pending ?? {}).filter(([id]) => check.answers[id] === undefined)
  const beside = besideOf(program, check)
  const mayBeAsked = wanted.filter(({ care }) => isLevel(care) || check.consents[care] !== false)
  // A figure that another one is worked out of is asked for first, though it may decide nothing by itself.
  const parts = mayBeAsked.flatMap(one => partsOf(program, one)).filter(id => check.answers[id] === undefined)
  const left = mayStillAsk(program, check, mayBeAsked, [...beside, ...parts, ...pending.map(([id]) => id)])
  /** The question, or before the first that needs hands, whether there may be any. */
  const unlessHands = (question: QuestionId, next: Next): Next =>
    check.consents.touch === undefined && needsHands(program, question) ? { is: 'consent', to: 'touch', left } : next
  const ask = (question: QuestionId): Next => unlessHands(question, { is: 'ask', question, left })
  const urgent = wanted.find(question => stageOf(program, question) === 'safety')
  if (urgent) return ask(urgent.id)
  const [known] = pending
  if (known) return unlessHands(known[0], { is: 'confirm', question: known[0], answer: known[1], left })
  // What decides whether other answers count is asked before them.
  const first = wanted.find(question => program.family?.first?.includes(question.id))
  if (first) return ask(first.id)
  // Worked out only where it is asked for: that costs more than all else here.
  const lookBeside = () => (beside.length > 0 ? program.beside?.next(check.answers) : undefined)
  const early = isTimeForLooks(program, check, wanted) ? lookBeside() : undefined
  if (early !== undefined) return ask(early)
  const easy = firstInOrder(program, check, wanted)
  // What it is worked out of is asked before it, each figure once.
  const part = easy && partsOf(program, easy).find(one => check.answers[one] === undefined)
  if (easy) return ask(part ?? easy.id)
  const look = lookBeside()
  if (look !== undefined) return ask(look)
  for (const to of ['unwrap', 'bench'] as const) {
    const risky = wanted.find(question => question.care === to)
    if (!risky || check.consents[to] === false || !mayRisk(program, check, to)) continue
    return check.consents[to] ? { is: 'ask', question: risky.id, left } : { is: 'consent', to, left }
  }
  return { is: 'done', settled: false }
}

/** Whether a quick check has come to its end before its ten questions: it is ruled out, and only danger can still be found. */
const isOverForQuick = (program: Program, { mode, answers }: Check): boolean =>
  mode === 'quick' &&
  judge(program, answers).verdict === 'ruled-out' &&
  verdictAt(program, placesOf(program, answers)) === 'ruled-out'

/** Whether a danger of this urgency asks for nothing that is not asked of whoever has a cell that is ruled out. */
const asksNoMore = (urgency: Urgency | undefined): boolean => urgency === undefined || urgency === 'isolate'

/** Whether a question belongs into a check as thorough as this one: a tool that is there is used even when the other questions are over. */
function isInDepth(program: Program, check: Check, question: Question): boolean {
  if (check.mode === 'full') return true
  const looks = question.care === 'look' || question.care === 'handle'
  const told = isToldByTool(check, question)
  return (
    (question.quick || told || (looks && tellsOfFamily(program, question.id))) &&
    (check.trail.length < mostQuick || told || isAtHand(check, question))
  )
}

/** Whether a person has to take the cell into their hands for it. */
function needsHands(program: Program, id: QuestionId): boolean {
  const care = program.questions.get(id)?.care
  return care === 'handle' || care === 'meter'
}

/** Whether a danger to get away from, or to leave where it is, could not be told, or the cell may not be touched: then nothing is asked that needs hands. */
export const mustKeepOff = (program: Program, check: Check): boolean =>
  check.consents.touch === false ||
  Object.entries(check.answers).some(
    ([id, answer]) => answer.kind === 'cant-tell' && (program.hazards.get(id) ?? 'isolate') !== 'isolate',
  )

/** What may still be looked at for another purpose than the verdict: while nothing is decided, and within the ten of a quick check. */
function besideOf(program: Program, { answers, mode, trail }: Check): readonly QuestionId[] {
  const among = program.beside?.among ?? []
  const asked = among.filter(id => trail.includes(id)).length
  if (mode === 'quick' && (asked >= mostBeside || trail.length >= mostQuick)) return []
  const open = among.filter(id => program.questions.has(id) && answers[id] === undefined)
  return open.length > 0 && isFailing(judge(program, answers).verdict) ? [] : open
}

/** The last places of a quick check belong to these looks: once the dangers that one sees are known, and while nothing speaks against the cell. */
function isTimeForLooks(program: Program, check: Check, wanted: readonly Question[]): boolean {
  const { mode, trail, answers } = check
  const asked = trail.filter(id => program.beside?.among.includes(id)).length
  if (mode === 'full' || trail.length - asked < mostQuick - mostBeside) return false
  // A tool that is there tells more.
  if (wanted.some(question => isAtHand(check, question))) return false
  return (
    judge(program, answers).score === 0 && !wanted.some(({ id, care }) => care === 'look' && program.hazards.has(id))
  )
}

/**
 * Whether a risky step may be offered at all: never while a danger sign that an easier step shows is unknown, never for a cell
 * that something speaks against. A load also waits for what a meter shows, and for a cell without a single sign.
 */
function mayRisk(program: Program, check: Check, to: 'unwrap' | 'bench'): boolean {
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
