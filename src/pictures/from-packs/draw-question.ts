// Draws a question of a pack: where to look, what each answer looks like lettered as the buttons are, or how to measure.
import type { Option, Picture, Question } from '../../engine/pack/pack.ts'
import { drawCell } from '../cell/draw-cell.ts'
import { drawOptions } from '../cell/draw-options.ts'
import type { CellParameters } from '../cell/parameters.ts'
import { type ReadCell, readCellParameters } from '../cell/read-cell-parameters.ts'
import type { Drawing } from '../drawing.ts'
import { drawMeasuring, type MeasuringKind, measuringKinds } from '../measuring/draw-measuring.ts'

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

/** Whether an option has a drawing of its own. */
export const isShown = (option: Option): boolean => Object.keys(option.show).length > 0

export const isMeasuring = (name: string): name is MeasuringKind => (measuringKinds as readonly string[]).includes(name)

/** What a question's picture shows, of an option if one is given; a refusal where the pack names what cannot be drawn. */
export const readPicture = (picture: CellPicture, option?: Option): ReadCell =>
  readCellParameters({
    view: picture.view,
    ...(picture.pointAt && { pointAt: picture.pointAt }),
    ...picture.show,
    ...option?.show,
  })

export type CellPicture = Extract<Picture, { kind: 'cell' }>

function cellOf(picture: CellPicture, option?: Option): CellParameters | undefined {
  const read = readPicture(picture, option)
  return read.ok ? read.params : undefined
}
