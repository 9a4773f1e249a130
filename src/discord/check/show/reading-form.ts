// The form for a reading: one field per figure, and what it was measured with.
import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { encodeClick } from '../../../custom-ids/check-id.ts'
import type { Question } from '../../../engine/pack/pack.ts'
import type { MeasuredQuantity } from '../../../ground/quantities.ts'
import { type FormField, fieldsLeft, instrumentsOf, type KnownFigures } from '../../../readings/form.ts'
import type { Say } from '../../../words/say.ts'
import { form, lineField, menuField } from '../../message/form.ts'
import { cut } from '../../message/parts.ts'

export const instrumentField = 'instrument'
/** Not one of the menu: the value is then taken with the widest uncertainty of the menu. */
export const otherInstrument = 'other' as const

/** What a person might type, per quantity; units are written as the trade writes them in every language. */
const examples: Record<MeasuredQuantity, string> = {
  mass: '44.7 g',
  diameter: '18.3 mm',
  length: '65.1 mm',
  voltage: '3.65 V',
  'ac-resistance': '18 mΩ',
  'dc-resistance': '45 mΩ',
  capacity: '3000 mAh',
  current: '10 A',
  temperature: '22 °C',
  'rest-time': '2 h',
  'energy-per-volume': '650 Wh/L',
  'energy-per-mass': '240 Wh/kg',
  'voltage-lost': '0.3 V',
  'voltage-lost-under-load': '0.5 V',
}

export function showReadingForm(
  say: Say,
  check: Check,
  question: Question,
  opening: string,
  known: KnownFigures,
): APIModalInteractionResponseCallbackData {
  const quantity = question.answer.kind === 'reading' ? question.answer.quantity : 'mass'
  const instruments = instrumentsOf(quantity, known)
  const id = encodeClick({ check: check.id, revision: check.revision, act: { is: 'measured', opening } })
  const options = [...instruments, otherInstrument].map(kind => ({
    value: kind,
    label: cut(say(`instrument.${kind}`), 100),
  }))
  return form(id, say('form.title'), [
    ...fieldsLeft(quantity, known).map(field =>
      lineField(
        field.id,
        { label: say(`form.${field.id}`), hint: hintOf(say, field) },
        { most: 60, required: field.otherwise === undefined },
      ),
    ),
    ...(instruments.length === 0
      ? []
      : [menuField(instrumentField, { label: say('form.instrument') }, { required: true, options })]),
  ])
}

function hintOf(say: Say, field: FormField): string {
  if (field.id === 'nominal-voltage') return say('form.nominal-voltage.hint')
  return say('form.hint', { example: examples[field.quantity] })
}
