// A modal of the bot as a dialog: labelled fields, what is missing said in words, nothing sent until "Send".

import type { WireField, WireFieldValue, WireForm, WireOutcome } from '../wire.ts'
import { choicesOf, whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { byId, el, freshId } from './dom.ts'
import { markdown } from './markdown-view.ts'
import { act, readUpload } from './talk.ts'

type FormField = {
  readonly customId: string
  readonly node: HTMLElement
  value(): Promise<WireFieldValue>
}

/** Opens the dialog; `after` gets what came of sending it. */
export function openForm(modal: WireForm, desk: Desk, after: (outcome: WireOutcome) => void): void {
  const dialog = byId<HTMLDialogElement>('form-dialog')
  const before = document.activeElement
  const from = before?.closest('[data-message-id]')?.getAttribute('data-message-id') ?? ''
  const fields = modal.fields.map(field => formField(field, desk))
  const error = el('p', { class: 'error', role: 'alert' })
  const send = el('button', { type: 'submit', class: 'action', 'data-style': 'main' }, 'Send')
  const leave = el('button', { type: 'button', class: 'action', 'data-style': 'plain' }, 'Close without sending')
  let next = 0
  const body = modal.components.map(part =>
    part.type === 10 ? markdown(part.content ?? '', desk.frame()) : (fields[next++]?.node ?? null),
  )
  const form = el(
    'form',
    { novalidate: true },
    el('h2', { id: 'form-title' }, modal.title),
    ...body,
    error,
    el('div', { class: 'row' }, send, leave),
  )
  form.addEventListener('submit', event => {
    event.preventDefault()
    void whileBusy(send, async () => {
      const values: Record<string, WireFieldValue> = {}
      for (const field of fields) values[field.customId] = await field.value()
      const outcome = await act({ do: 'submit', you: desk.frame().you, modal: modal.id, fields: values })
      error.textContent = outcome.kind === 'trouble' ? outcome.words : ''
      if (outcome.kind === 'trouble') return
      sent = true
      dialog.close()
      // Closing gives the focus back to where it was before.
      if (document.activeElement?.id === 'entry') newestCard()?.focus({ preventScroll: true })
      after(outcome)
    })
  })
  leave.addEventListener('click', () => dialog.close())
  let sent = false
  dialog.onclose = () => {
    dialog.replaceChildren()
    // The answer has the focus, or will have: a text field would open a phone's keyboard over it.
    if (sent) return
    // The answer may have redrawn the card the form was opened from.
    const card = document.querySelector<HTMLElement>(`[data-message-id="${CSS.escape(from)}"]`)
    if (before instanceof HTMLElement && before.isConnected) before.focus()
    else (card ?? document.getElementById('entry'))?.focus({ preventScroll: card !== null })
  }
  dialog.dataset['kind'] = 'form'
  dialog.replaceChildren(form)
  if (!dialog.open) dialog.showModal()
  form.querySelector<HTMLElement>('input, select, textarea')?.focus()
}

const newestCard = () => document.querySelector<HTMLElement>('#sheet > :last-child')

const menuTypeOf: Record<string, number> = { choice: 3, person: 5, role: 6, mentionable: 7, channel: 8 }

function formField(field: WireField, desk: Desk): FormField {
  if (field.kind === 'text') return textField(field)
  if (field.kind === 'files') return filesField(field)
  if (field.kind === 'check') return checkField(field)
  const choices =
    field.kind === 'radio' || field.kind === 'checks'
      ? field.options
      : choicesOf(
          { type: menuTypeOf[field.kind] ?? 3, options: field.options, channel_types: field.channelTypes },
          desk,
        )
  const many = field.kind === 'checks' || field.max > 1
  const name = freshId('group')
  const before = Array.isArray(field.value) ? field.value : [field.value]
  const inputs = choices.map(choice =>
    el('input', {
      type: many ? 'checkbox' : 'radio',
      name,
      value: choice.value,
      id: freshId('choice'),
      checked: before.includes(choice.value),
    }),
  )
  const lines = choices.map((choice, at) =>
    el(
      'label',
      { class: 'choice', 'data-value': choice.value },
      inputs[at],
      el('span', { class: 'choice-label' }, choice.label),
      choice.description ? el('span', { class: 'choice-detail' }, choice.description) : null,
    ),
  )
  const range =
    many && field.max > 1 ? `Choose ${field.min === field.max ? field.max : `${field.min} to ${field.max}`}.` : ''
  const node = el(
    'fieldset',
    { class: 'field', 'data-custom-id': field.customId },
    el('legend', {}, field.label, optional(field)),
    ...hints([field.description, range]),
    ...lines,
  )
  const chosen = () => inputs.filter(one => one.checked).map(one => one.value)
  return {
    customId: field.customId,
    node,
    value: async () => (field.kind === 'radio' ? (chosen()[0] ?? '') : chosen()),
  }
}

function optional(field: WireField): HTMLElement | null {
  return field.required || field.kind === 'check' ? null : el('span', { class: 'hint' }, ' (may stay empty)')
}

function hints(words: readonly string[]): HTMLElement[] {
  return words.filter(one => one !== '').map(one => el('span', { class: 'hint' }, one))
}

function labelled(field: WireField, control: HTMLElement, more = ''): HTMLElement {
  const hint = el(
    'span',
    { class: 'hint', id: freshId('hint') },
    [field.description, more].filter(one => one !== '').join(' '),
  )
  control.setAttribute('aria-describedby', hint.id)
  if (field.required) control.setAttribute('aria-required', 'true')
  control.dataset['customId'] = field.customId
  return el('div', { class: 'field' }, el('label', { for: control.id }, field.label, optional(field)), control, hint)
}

function textField(field: WireField): FormField {
  const common = {
    id: freshId('field'),
    placeholder: field.placeholder || null,
    maxlength: field.max,
    minlength: field.min || null,
  }
  const control = field.long ? el('textarea', { ...common, rows: 5 }) : el('input', { ...common, type: 'text' })
  control.value = typeof field.value === 'string' ? field.value : ''
  return { customId: field.customId, node: labelled(field, control), value: async () => control.value }
}

function filesField(field: WireField): FormField {
  const accept = field.fileTypes.map(one => `.${one.replace(/^\./, '')}`).join(',')
  const control = el('input', { id: freshId('field'), type: 'file', multiple: field.max > 1, accept: accept || null })
  const more = field.max > 1 ? `Up to ${field.max} files.` : ''
  return {
    customId: field.customId,
    node: labelled(field, control, more),
    value: async () => await Promise.all([...(control.files ?? [])].map(readUpload)),
  }
}

function checkField(field: WireField): FormField {
  const control = el('input', {
    type: 'checkbox',
    id: freshId('field'),
    checked: field.value === true,
    'data-custom-id': field.customId,
  })
  const node = el(
    'div',
    { class: 'field' },
    el('label', { class: 'choice', for: control.id }, control, el('span', { class: 'choice-label' }, field.label)),
    ...hints([field.description]),
  )
  return { customId: field.customId, node, value: async () => control.checked }
}
