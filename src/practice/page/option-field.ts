// One option of a command as a labelled field.

import type { WireOption, WireValue } from '../wire.ts'
import { combobox } from './combobox.ts'
import type { Desk } from './desk.ts'
import { el, freshId } from './dom.ts'
import { readUpload } from './talk.ts'

export type OptionField = {
  readonly option: WireOption
  readonly node: HTMLElement
  /** What is filled in, or undefined when nothing is. */
  value(): Promise<WireValue | undefined>
}

type Suggest = (name: string, typed: string) => Promise<readonly { name: string; value: string | number }[]>

/** A field for the option; `suggest` asks the bot for autocomplete. */
export function optionField(option: WireOption, desk: Desk, suggest: Suggest): OptionField {
  const id = freshId('option')
  const hint = el('span', { class: 'hint', id: `${id}-hint` }, option.description)
  const { control, extra, value } = controlFor(option, id, desk, suggest)
  control.setAttribute('aria-describedby', hint.id)
  if (option.required) control.setAttribute('aria-required', 'true')
  control.dataset['option'] = option.name
  const title = el(
    'label',
    { for: id },
    option.shownName,
    el('span', { class: 'hint' }, option.required ? '' : ' (may stay empty)'),
  )
  return { option, value, node: el('div', { class: 'field' }, title, control, extra ?? null, hint) }
}

type Control = {
  readonly control: HTMLElement
  readonly extra?: HTMLElement
  value(): Promise<WireValue | undefined>
}

function controlFor(option: WireOption, id: string, desk: Desk, suggest: Suggest): Control {
  const frame = desk.frame()
  const people = frame.people.filter(one => one.here).map(one => ({ name: one.name, value: one.id }))
  const roles = frame.roles.map(one => ({ name: `${one.name} (a role)`, value: one.id }))
  if (option.choices.length > 0) return pickOne(id, option, option.choices)
  if (option.type === 5) {
    const yesNo = pickOne(id, option, [
      { name: 'Yes', value: 'yes' },
      { name: 'No', value: 'no' },
    ])
    return {
      ...yesNo,
      value: async () => {
        const chosen = await yesNo.value()
        return chosen === undefined ? undefined : chosen === 'yes'
      },
    }
  }
  if (option.type === 6) return pickOne(id, option, people)
  if (option.type === 7)
    return pickOne(
      id,
      option,
      frame.places.filter(one => one.kind !== 'direct').map(one => ({ name: one.name, value: one.id })),
    )
  if (option.type === 8) return pickOne(id, option, roles)
  if (option.type === 9) return pickOne(id, option, [...people, ...roles])
  if (option.type === 11) return filePicker(id, option)
  return typed(id, option, suggest)
}

function pickOne(
  id: string,
  option: WireOption,
  choices: readonly { name: string; value: string | number }[],
): Control {
  const control = el(
    'select',
    { id },
    el('option', { value: '' }, option.required ? 'Choose…' : 'Not said'),
    ...choices.map((one, at) => el('option', { value: String(at), 'data-value': one.value }, one.name)),
  )
  return { control, value: async () => (control.value === '' ? undefined : choices[Number(control.value)]?.value) }
}

function filePicker(id: string, option: WireOption): Control {
  const accept = option.fileTypes.map(one => `.${one.replace(/^\./, '')}`).join(',')
  const control = el('input', { id, type: 'file', accept: accept || null })
  return {
    control,
    value: async () => {
      const file = control.files?.[0]
      return file === undefined ? undefined : await readUpload(file)
    },
  }
}

function typed(id: string, option: WireOption, suggest: Suggest): Control {
  const number = option.type === 4 || option.type === 10
  const limits = number ? {} : { maxlength: option.max, minlength: option.min }
  const control = el('input', { id, type: 'text', inputmode: number ? 'decimal' : null, ...limits })
  // A picked suggestion may stand for another value than the words shown.
  let picked: { shown: string; value: string | number } | null = null
  const value = async (): Promise<WireValue | undefined> => {
    const text = control.value.trim()
    if (text === '') return undefined
    if (picked !== null && picked.shown === control.value) return picked.value
    return number ? Number(text.replace(',', '.')) : control.value
  }
  if (!option.autocomplete) return { control, value }
  const extra = combobox(control, {
    label: `Suggestions for ${option.shownName}`,
    pause: 150,
    find: async text =>
      (await suggest(option.name, text)).map(one => ({ label: one.name, detail: '', value: one.value })),
    pick(suggestion) {
      picked = { shown: suggestion.label, value: suggestion.value }
      control.value = suggestion.label
    },
  })
  return { control, extra, value }
}
