// Which tool a question needs, and whether a person who said what they have can answer it.
import type { Program } from '../engine/compile.ts'
import type { Question } from '../engine/pack/pack.ts'
import type { MeasuredQuantity } from '../ground/quantities.ts'
import type { Tool } from '../ground/tools.ts'
import type { Check } from './check.ts'

/** Any one of these is enough; a quantity that is missing here is known without a tool. */
const measuredBy: Partial<Record<MeasuredQuantity, readonly Tool[]>> = {
  mass: ['scale'],
  'energy-per-mass': ['scale'],
  diameter: ['calliper', 'ruler'],
  length: ['calliper', 'ruler'],
  'energy-per-volume': ['calliper', 'ruler'],
  voltage: ['meter'],
  'ac-resistance': ['meter'],
  'dc-resistance': ['meter'],
  'voltage-lost': ['meter'],
  capacity: ['load'],
}

/** The tools of which a question needs one; none where looking or knowing is enough. */
export function toolsFor({ answer, care, needs }: Question): readonly Tool[] {
  if (needs) return needs
  if (care === 'bench') return ['load']
  if (answer.kind !== 'reading') return care === 'meter' ? ['meter'] : []
  return measuredBy[answer.quantity as MeasuredQuantity] ?? []
}

/** Whether the person has what the question needs; a check whose tools were never asked for may ask everything. */
export function hasTool({ tools }: Check, question: Question): boolean {
  if (tools === undefined) return true
  const has = (tool: Tool) => tools.includes(tool)
  if (question.needs) return question.needs.every(has)
  const oneOf = toolsFor(question)
  return oneOf.length === 0 || oneOf.some(has)
}

/** Whether the person has said that a tool is there, and the question needs just that. */
export const isAtHand = (check: Check, question: Question): boolean =>
  check.tools !== undefined && toolsFor(question).length > 0 && hasTool(check, question)

/** Whether it asks for what a tool that is there may have told already. */
export const isToldByTool = ({ tools = [] }: Check, { toldBy = [] }: Question): boolean =>
  toldBy.some(tool => tools.includes(tool))

/** The tools that are not there and that an unanswered question of the check would need, each once, in the order they are offered. */
export function toolsMissing(program: Program, check: Check): Tool[] {
  const open = program
    .outlook(check.answers)
    .prospects.flatMap(({ question }) => program.questions.get(question) ?? [])
    .filter(question => !hasTool(check, question))
  return [...new Set(open.flatMap(question => toolsFor(question).slice(0, 1)))]
}
