// Asks, at a second look, about the figure that would be ten times more or less than the one that was typed.
import type { Screen } from '../../../check/screen.ts'
import { isFormat } from '../../../ground/formats.ts'
import { unitOf } from '../../../ground/quantities.ts'
import { tenTimesOff } from '../../../readings/typed/ten-times.ts'
import type { Say } from '../../../words/say.ts'

/** One sentence where the other figure is an ordinary one for the format and the typed one is not; else none. */
export function askOfSlip(say: Say, { check, question, again }: Extract<Screen, { kind: 'question' }>): string[] {
  const named = check.answers['format']
  const format = named?.kind === 'option' && named.option === 'other' ? check.answers['other-format'] : named
  if (again?.kind !== 'reading' || question.answer.kind !== 'reading') return []
  if (format?.kind !== 'option' || !isFormat(format.option)) return []
  const { quantity } = question.answer
  const other = tenTimesOff(quantity, again.value, format.option)
  if (other === null) return []
  const of = (value: number) => say('answer.reading', { value, unit: unitOf[quantity] })
  return [say('again.ten-times', { value: of(again.value), other: of(other) })]
}
