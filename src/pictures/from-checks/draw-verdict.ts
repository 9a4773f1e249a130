// The verdict card of a check: the cell as it was answered, with what does not fit numbered.
import type { Answer, Answers, QuestionId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { answersRead, type Finding, type Judgement } from '../../engine/judge.ts'
import type { Option } from '../../engine/pack/pack.ts'
import { sayAnswer } from '../../words/describe.ts'
import type { Say } from '../../words/say.ts'
import { drawVerdictCard, type VerdictCard, type VerdictView } from '../cell/draw-verdict-card.ts'
import type { CellParameters } from '../cell/parameters.ts'
import type { Drawing } from '../drawing.ts'
import { isShown, readPicture } from '../from-packs/draw-question.ts'

/** More marks than this are not taken in at a glance. */
const mostViews = 4
/** In a message no more than it has reasons for: each mark's number stands before its reason. */
const mostBrief = 2
const mostFigures = 2

/** The card of a message, which gives the reasons itself: what does not fit is marked, or the cell as it was answered is shown. */
export function drawVerdict(say: Say, program: Program, judgement: Judgement, answers: Answers): Drawing {
  const marked = markedViews(program, judgement, answers).slice(0, mostBrief)
  const plain: VerdictView = { show: { view: 'side', ...sizeOf(program, { ...program.given, ...answers }) }, marks: [] }
  const views = marked.length === 0 ? [plain] : marked
  return drawVerdictCard({
    ...cardOf(say, judgement, views),
    brief: true,
    figures: figuresOf(say, program, judgement, answers),
  })
}

/** The figures that what carries the verdict has read, as the person gave them. */
function figuresOf(say: Say, program: Program, judgement: Judgement, answers: Answers): string[] {
  const all = { ...program.given, ...answers }
  const said = judgement.findings
    .filter(one => one.carries)
    .flatMap(finding => Object.entries(answersRead(program, all, finding)))
    .flatMap(([id, answer]) => {
      const question = program.questions.get(id)
      return answer.kind === 'reading' && question ? [sayAnswer(say, question, answer)] : []
    })
  return [...new Set(said)].slice(0, mostFigures)
}

/** The same for the command line, where a card without a marked place holds the reasons. */
export function drawVerdictAlone(say: Say, program: Program, judgement: Judgement, answers: Answers): Drawing {
  const views = markedViews(program, judgement, answers)
  const marked = views.flatMap(view => view.marks.map(mark => mark.text))
  const reasons = judgement.findings.filter(one => one.carries).map(one => one.rule.says)
  return drawVerdictCard({
    ...cardOf(say, judgement, views),
    reasons: reasons.filter(reason => !marked.includes(reason)),
  })
}

const cardOf = (say: Say, { verdict }: Judgement, views: readonly VerdictView[]): VerdictCard => ({
  tone: verdict,
  word: say(`verdict.${verdict}`),
  views,
  caution: say('caution.line'),
})

/** The findings that the card of a message marks on the cell, in the order of their numbers. */
export const markedFindings = (program: Program, judgement: Judgement, answers: Answers): Finding[] =>
  [...marksOf(program, judgement, answers).values()].slice(0, mostBrief).map(mark => mark.finding)

function markedViews(program: Program, judgement: Judgement, answers: Answers): VerdictView[] {
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
function sizeOf(program: Program, answers: Answers): Partial<CellParameters> {
  for (const [id, answer] of Object.entries(answers)) {
    const shown = isSize(program, id, answer) ? shownBy(program, id, answer) : undefined
    if (shown) return { format: shown.format }
  }
  return {}
}
