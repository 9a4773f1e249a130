// Which question comes next: the one that tells most for its effort, after what is safer to do has been done.
//
// First what may mean "get away from it". Then every question waits until the hazards that take less care have been asked
// about: no hands before the looks, no meter before the wrap is known to be whole. Lifting a wrap and putting a load on come
// last: whatever an easier step can settle needs no risky one.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { weigh } from '../engine/conditions.ts'
import { judge } from '../engine/judge.ts'
import type { Care, Question } from '../engine/pack/pack.ts'
import type { Check, Consent } from './check.ts'

export type Next =
  | { readonly is: 'ask'; readonly question: QuestionId; readonly left: number }
  | { readonly is: 'consent'; readonly to: Consent; readonly left: number }
  /** Nothing may be asked any more; `settled` says whether that is because no answer can change the verdict. */
  | { readonly is: 'done'; readonly settled: boolean }

/** What a question asks of a person, in the order in which it is asked of them. */
const levels: readonly Care[] = ['look', 'handle', 'meter']

export function nextOf(program: Program, check: Check): Next {
  const outlook = program.outlook(check.answers)
  if (outlook.reachable.length <= 1) return { is: 'done', settled: true }
  const open = outlook.prospects.flatMap(prospect => program.questions.get(prospect.question) ?? [])
  const wanted = open.filter(question => (check.mode === 'full' || question.quick) && hasTools(check, question))
  const left = wanted.filter(question => isLevel(question.care) || check.consents[question.care] !== false).length
  const { hazards } = program
  const urgent = wanted.find(question => question.care === 'look' && hazards.get(question.id) === 'get-away')
  if (urgent) return { is: 'ask', question: urgent.id, left }
  const unsafe = wanted.filter(({ id }) => hazards.has(id) && canEndanger(program, check, wanted, id))
  const cares = new Set(unsafe.map(question => question.care))
  const reach = levels.findIndex(level => cares.has(level))
  const within = reach < 0 ? levels : levels.slice(0, reach + 1)
  const easy = wanted.find(question => within.includes(question.care))
  if (easy) return { is: 'ask', question: easy.id, left }
  for (const to of ['unwrap', 'bench'] as const) {
    const risky = wanted.find(question => question.care === to)
    if (!risky || check.consents[to] === false || !mayRisk(program, check, to)) continue
    return check.consents[to] ? { is: 'ask', question: risky.id, left } : { is: 'consent', to, left }
  }
  return { is: 'done', settled: false }
}

/** Whether an answer to a question can still bring a danger: all else that the hazard reads is answered, or will be asked. */
function canEndanger(program: Program, check: Check, wanted: readonly Question[], id: QuestionId): boolean {
  const open = new Set(wanted.map(question => question.id))
  return program.rules.some(rule => {
    const read = rule.kind === 'hazard' ? (program.reads.get(rule.id) ?? []) : []
    return read.includes(id) && read.every(one => open.has(one) || check.answers[one] !== undefined)
  })
}

/**
 * Whether a person has what a question needs. Where nobody said what tools there are, a full check asks all the same, since "can't
 * tell" is always an answer, and a quick one does not.
 */
function hasTools({ mode, tools }: Check, { needs = [] }: Question): boolean {
  if (tools === undefined) return mode === 'full' || needs.length === 0
  return needs.every(tool => tools.includes(tool))
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
