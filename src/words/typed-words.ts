// Says what was wrong with a typed reading, naming the field, in one sentence that says what to type instead.
import type { FormField } from '../readings/form.ts'
import type { TypedRefusal } from '../readings/read-typed.ts'
import { listIn } from './formatters.ts'
import { plain } from './plain.ts'
import type { Say, Values } from './say.ts'

/** What was typed in: a field of a reading's form, or an option of a command. */
export type TypedField = FormField['id'] | 'claimed-current' | 'cutoff' | 'room' | { readonly named: string }

export function sayTypedRefusal(say: Say, { field, refusal }: { field: TypedField; refusal: TypedRefusal }): string {
  const values: Record<string, string | number> = {
    field: typeof field === 'object' ? field.named : say(`form.${field}`),
  }
  for (const [key, value] of Object.entries(refusal))
    if (typeof value === 'number') values[key] = value
    else if (typeof value === 'string') values[key] = key === 'unit' && 'value' in refusal ? value : plain(value)
  const list = listIn(say.locale, 'disjunction')
  if ('accepted' in refusal) values['accepted'] = list.format(refusal.accepted)
  if (refusal.code === 'ambiguous')
    values['readings'] = list.format(refusal.readings.map(({ value, unit }) => say('answer.reading', { value, unit })))
  if (refusal.code === 'out-of-range') {
    const { meant: value, unit } = refusal
    values['meant'] = value === null ? 'none' : say('answer.reading', { value, unit })
  }
  return say(`typed.${refusal.code}`, values as Values)
}
