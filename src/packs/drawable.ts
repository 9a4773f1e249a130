// Finds what of a pack's pictures cannot be drawn, so that a mistyped parameter does not leave a question without its picture.

import type { Pack, Question } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { type CellRefusal, readCellParameters } from '../pictures/cell/read-cell-parameters.ts'
import { isMeasuring } from '../pictures/from-packs/draw-question.ts'
import { readPicture } from '../pictures/from-packs/read-picture.ts'
import { measuringKinds } from '../pictures/measuring/draw-measuring.ts'

export const undrawable = (pack: Pack): PackProblem[] => [
  ...pack.questions.flatMap(ofQuestion),
  ...pack.families.flatMap(({ id, show }) => {
    const read = readCellParameters(show)
    return read.ok ? [] : [problem(`families.${id}.show`, read.refusal)]
  }),
]

function ofQuestion({ id, picture, answer }: Question): PackProblem[] {
  if (!picture) return []
  const at = `questions.${id}.picture`
  if (picture.kind === 'measuring')
    return isMeasuring(picture.measuring)
      ? []
      : [{ code: 'cannot-be-drawn', at, name: 'measuring', value: picture.measuring, allowed: measuringKinds }]
  const whole = readPicture(picture)
  if (!whole.ok) return [problem(at, whole.refusal)]
  const options = answer.kind === 'options' ? answer.options : []
  return options.flatMap(option => {
    const read = readPicture(picture, option)
    return read.ok ? [] : [problem(`questions.${id}.options.${option.id}.show`, read.refusal)]
  })
}

const problem = (at: string, { key, value, allowed }: CellRefusal): PackProblem => ({
  code: 'cannot-be-drawn',
  at,
  name: key,
  value: String(value),
  allowed,
})
