// Which findings of a verdict are marked on the drawing of the cell, and the view that shows each.
import type { Answer, Answers, QuestionId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { answersRead, type Finding, type Judgement } from '../../engine/judge.ts'
import type { Option } from '../../engine/pack/pack.ts'
import type { VerdictView } from '../cell/draw-verdict-card.ts'
import type { CellParameters } from '../cell/parameters.ts'
import { isShown, readPicture } from '../from-packs/read-picture.ts'

/** More marks than this are not taken in at a glance. */
const mostViews = 4
/** In a message no more than it has reasons for: each mark's number stands before its reason. */
export const mostBrief = 2

/** The findings that the card of a message marks on the cell, in the order of their numbers. */
export const markedFindings = (program: Program, judgement: Judgement, answers: Answers): Finding[] =>
  [...marksOf(program, judgement, answers).values()].slice(0, mostBrief).map(mark => mark.finding)

export function markedViews(program: Program, judgement: Judgement, answers: Answers): VerdictView[] {
  const size = sizeOf(program, { ...program.given, ...answers })
  const views = [...marksOf(program, judgement, answers).values()].slice(0, mostViews)
  return views.map(({ view }) => ({ ...view, show: { ...view.show, ...size } }))
}

type Marked = { readonly finding: Finding; readonly view: VerdictView }

function marksOf(program: Program, judgement: Judgement, answers: Answers): Map<QuestionId, Marked> {
  const all = { ...program.given, ...answers }
  const views = new Map<QuestionId, Marked>()
  for (const finding of judgement.findings.filter(one => one.carries)) {
    // The first of a finding's answers that shows on a cell, once: two numbers on one place hide each other.
    const seen = Object.entries(answersRead(program, all, finding)).flatMap(([id, answer]) => {
      const show = isSize(program, id, answer) ? undefined : shownBy(program, id, answer)
      return show && show.pointAt !== 'none' ? [{ id, show, part: show.pointAt }] : []
    })
    const [first] = seen
    if (first && !views.has(first.id))
      views.set(first.id, {
        finding,
        view: { show: first.show, marks: [{ part: first.part, text: finding.rule.says }] },
      })
  }
  return views
}

function optionOf(program: Program, id: QuestionId, answer: Answer): Option | undefined {
  const question = program.questions.get(id)
  if (answer.kind !== 'option' || question?.answer.kind !== 'options') return undefined
  return question.answer.options.find(one => one.id === answer.option)
}

function shownBy(program: Program, id: QuestionId, answer: Answer): CellParameters | undefined {
  const picture = program.questions.get(id)?.picture
  if (picture?.kind !== 'cell' || answer.kind === 'cant-tell') return undefined
  const option = optionOf(program, id, answer)
  if (answer.kind === 'option' && (!option || !isShown(option))) return undefined
  const read = readPicture(picture, option)
  return read.ok ? read.params : undefined
}

/** Whether an answer only says which size the cell has: rules read it beside what they are about. */
const isSize = (program: Program, id: QuestionId, answer: Answer): boolean =>
  optionOf(program, id, answer)?.show['format'] !== undefined

/** The size that was answered, so that every view is of the same cell. */
export function sizeOf(program: Program, answers: Answers): Partial<CellParameters> {
  for (const [id, answer] of Object.entries(answers)) {
    const shown = isSize(program, id, answer) ? shownBy(program, id, answer) : undefined
    if (shown) return { format: shown.format }
  }
  return {}
}
