// The verdict card of a check: the cell as it was answered, with what does not fit numbered.
import type { Answers } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { answersRead, type Judgement } from '../../engine/judge.ts'
import { sayAnswer } from '../../words/describe.ts'
import type { Say } from '../../words/say.ts'
import { drawVerdictCard, type VerdictCard, type VerdictView } from '../cell/draw-verdict-card.ts'
import type { Drawing } from '../drawing.ts'
import { markedViews, mostBrief, sizeOf } from './marked-views.ts'

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
