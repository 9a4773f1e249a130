// The order in which the questions that are still wanted are asked: by what they ask of a person, and within that by what they tell.
import type { QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Care, Question, Rule } from '../engine/pack/pack.ts'
import type { Check, Consent } from './check.ts'
import { isAtHand, isToldByTool } from './tools.ts'

/** What a question asks of a person, in the order in which it is asked of them. */
const levels: readonly Care[] = ['look', 'handle', 'meter']

export const isLevel = (care: Care): care is Exclude<Care, Consent> => levels.includes(care)

/**
 * The first by what it asks of a person, among those that ask for no more than the mildest hazard still open; `wanted` is by gain. A
 * tool that is at hand and can decide waits for the hazards that take less care, for what it is held against on the label, and for the
 * looks that tell more for their effort; what only adds up comes after it.
 */
export function firstInOrder(program: Program, check: Check, wanted: readonly Question[]): Question | undefined {
  const open = new Set(wanted.map(question => question.id))
  const unsafe = wanted.filter(({ id }) => program.hazards.has(id) && canEndanger(program, check, open, id))
  const cares = new Set(unsafe.map(question => question.care))
  const reach = levels.findIndex(level => cares.has(level))
  const within = reach < 0 ? levels : levels.slice(0, reach + 1)
  const asked = check.trail.filter(id => tellsOfFamily(program, id)).length
  const telling = check.mode === 'quick' && asked < mostTelling
  const tool = wanted.find(one => isLevel(one.care) && isAtHand(check, one) && canDecide(program, one.id))
  const tells = new Set(tool ? wanted.slice(0, wanted.indexOf(tool) + 1) : wanted)
  const among = wanted.filter(
    one =>
      tells.has(one) || unsafe.includes(one) || isToldByTool(check, one) || (tool && isLabelFor(program, one, tool)),
  )
  return within.flatMap(level => {
    const here = among.filter(question => question.care === level)
    return (telling ? here.find(question => tellsOfFamily(program, question.id)) : undefined) ?? here[0] ?? []
  })[0]
}

/** Whether an answer to a question can still bring a danger: all else that the hazard reads is answered, or will be asked. */
function canEndanger(program: Program, check: Check, open: ReadonlySet<QuestionId>, id: QuestionId): boolean {
  return program.rules.some(rule => {
    const read = rule.kind === 'hazard' ? (program.reads.get(rule.id) ?? []) : []
    return read.includes(id) && read.every(one => open.has(one) || check.answers[one] !== undefined)
  })
}

/** Whether it is read off the label, and what the tool shows is held against it. */
const isLabelFor = (program: Program, { id, topic }: Question, tool: Question): boolean =>
  topic === 'label' &&
  program.rules.some(rule => {
    const read = program.reads.get(rule.id) ?? []
    return read.includes(id) && read.includes(tool.id)
  })

/** Whether some rule that reads it can rule out or make doubtful without others. */
const canDecide = (program: Program, id: QuestionId): boolean =>
  program.rules.some(rule => isHeavy(rule) && program.reads.get(rule.id)?.includes(id))

const isHeavy = (rule: Rule): boolean => rule.kind === 'must' || (rule.kind === 'sign' && rule.strength === 'strong')

/** So many of a known family's own telling looks go before everything else that a quick check asks after danger. */
const mostTelling = 5

/** Whether the family's own pack rules out by this look alone, or comes near to it: what a cell under another wrap is told by. */
export function tellsOfFamily({ family, rules, reads, questions }: Program, id: QuestionId): boolean {
  if (!family || questions.get(id)?.topic === 'label') return false
  const isLook = (one: QuestionId) => questions.get(one)?.topic !== 'label'
  return rules.some(rule => {
    if (rule.pack !== family.pack || !isHeavy(rule)) return false
    const looks = (reads.get(rule.id) ?? []).filter(isLook)
    return looks.length === 1 && looks[0] === id
  })
}
