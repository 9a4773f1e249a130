// Draws a question of a pack: where to look, what each answer looks like lettered as the buttons are, or how to measure.
import type { Option, Question } from '../../engine/pack/pack.ts'
import { drawCell } from '../cell/draw-cell.ts'
import { drawOptions } from '../cell/draw-options.ts'
import type { CellParameters } from '../cell/parameters.ts'
import type { Drawing } from '../drawing.ts'
import { drawMeasuring, type MeasuringKind, measuringKinds } from '../measuring/draw-measuring.ts'
import { type CellPicture, isShown, readPicture } from './read-picture.ts'

/**
 * Undefined where the pack gives no picture or one that cannot be drawn. What a family looks like is never merged in: it would
 * give the expected answer away.
 */
export function drawQuestion(question: Question): Drawing | undefined {
  const { picture, answer } = question
  if (!picture) return undefined
  if (picture.kind === 'measuring') return isMeasuring(picture.measuring) ? drawMeasuring(picture.measuring) : undefined
  const options = answer.kind === 'options' ? answer.options : []
  if (options.filter(isShown).length > 1)
    return drawOptions(
      options.map(option => {
        const show = isShown(option) ? cellOf(picture, option) : undefined
        return { label: option.label, ...(show && { show }) }
      }),
    )
  const whole = cellOf(picture)
  return whole && drawCell(whole)
}

/** One option alone, large; undefined where it has no drawing of its own. */
export function drawOption(question: Question, option: Option): Drawing | undefined {
  const { picture } = question
  const show = picture?.kind === 'cell' && isShown(option) ? cellOf(picture, option) : undefined
  return show && drawOptions([{ show, label: option.label }])
}

export const isMeasuring = (name: string): name is MeasuringKind => (measuringKinds as readonly string[]).includes(name)

function cellOf(picture: CellPicture, option?: Option): CellParameters | undefined {
  const read = readPicture(picture, option)
  return read.ok ? read.params : undefined
}
