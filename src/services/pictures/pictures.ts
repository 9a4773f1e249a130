// The pictures that messages show, as the handlers ask for them.
import type { Answers } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import type { Judgement } from '../../engine/judge.ts'
import type { Question } from '../../engine/pack/pack.ts'
import type { Drawing } from '../../pictures/drawing.ts'
import type { Say } from '../../words/say.ts'
import type { ShownPicture } from './shown-picture.ts'

export type Pictures = {
  /** Where to look and what each option looks like; undefined where there is nothing to draw. */
  forQuestion(question: Question, say: Say): Promise<ShownPicture | undefined>
  /** The verdict card with what does not fit marked on it. */
  forVerdict(program: Program, judgement: Judgement, answers: Answers, say: Say): Promise<ShownPicture[]>
  /** What the known family looks like, to compare; none for a cell to stay away from, or where there is nothing to draw. */
  forDetails(program: Program, judgement: Judgement, say: Say): Promise<ShownPicture[]>
  /** What a safe bench looks like, for whoever is asked whether they have one. */
  forBench(say: Say): Promise<ShownPicture | undefined>
  /**
   * A drawing of any kind, under a file name that ends in .png; undefined where pictures are off or it cannot be rendered.
   * It is kept nowhere: it may be of one person's cell.
   */
  ofDrawing(name: string, drawing: Drawing, say: Say): Promise<ShownPicture | undefined>
}
