// Buttons and menus of a message, ready to be used by the person whose page this is.

import type { WireChoice, WirePart } from '../wire.ts'
import type { Desk } from './desk.ts'
import { el, freshId } from './dom.ts'

const buttonStyles: Record<number, string> = { 1: 'main', 2: 'plain', 3: 'good', 4: 'grave', 5: 'link' }

const emojiOf = (emoji: WirePart['emoji']) => (emoji?.id ? '◆' : (emoji?.name ?? ''))

/** A row of buttons, or one menu. */
export function rowNode(row: WirePart, messageId: string, desk: Desk): HTMLElement {
  const inside = (row.components ?? []).map(part =>
    part.type === 2 ? buttonNode(part, messageId, desk) : menuNode(part, messageId, desk),
  )
  return el('div', { class: 'row' }, ...inside)
}

/** A button; a link button is a link. */
export function buttonNode(part: WirePart, messageId: string, desk: Desk): HTMLElement {
  const words = [emojiOf(part.emoji), part.label ?? ''].filter(one => one !== '').join(' ')
  const style = buttonStyles[part.style ?? 2] ?? 'plain'
  if (part.url !== undefined) {
    return el(
      'a',
      { class: 'action', 'data-style': style, href: part.url, target: '_blank', rel: 'noreferrer noopener' },
      words,
    )
  }
  const customId = part.custom_id ?? ''
  const button = el(
    'button',
    {
      type: 'button',
      class: 'action',
      'data-style': style,
      'data-custom-id': customId,
      disabled: part.disabled ?? false,
    },
    words,
  )
  button.addEventListener('click', () => {
    void whileBusy(button, () => desk.perform({ do: 'click', you: desk.frame().you, message: messageId, customId }))
  })
  return button
}

/** Marks something as being at work, and lets it be used once at a time. */
export async function whileBusy(node: HTMLElement, work: () => Promise<unknown>): Promise<void> {
  if (node.getAttribute('aria-busy') === 'true') return
  node.setAttribute('aria-busy', 'true')
  try {
    await work()
  } finally {
    node.removeAttribute('aria-busy')
  }
}

/** The choices of a menu: its own, or the people, roles or places of the server. */
export function choicesOf(
  part: Pick<WirePart, 'type' | 'options' | 'channel_types' | 'default_values'>,
  desk: Desk,
): readonly WireChoice[] {
  const chosen = (part.default_values ?? []).map(one => one.id)
  return listed(part, desk).map(one => (chosen.includes(one.value) ? { ...one, default: true } : one))
}

/** Discord's numbers for the kinds of places. */
const channelTypes = { text: 0, direct: 1, thread: 11, forum: 15 } as const

function listed(part: Pick<WirePart, 'type' | 'options' | 'channel_types'>, desk: Desk): readonly WireChoice[] {
  const frame = desk.frame()
  const people = frame.people
    .filter(one => one.here)
    .map(one => ({ label: one.name, value: one.id, description: one.about }))
  const roles = frame.roles.map(one => ({ label: one.name, value: one.id, description: 'a role' }))
  if (part.type === 5) return people
  if (part.type === 6) return roles
  if (part.type === 7) return [...people, ...roles]
  const kinds = part.channel_types ?? []
  if (part.type === 8)
    return frame.places
      .filter(one => one.kind !== 'direct' && (kinds.length === 0 || kinds.includes(channelTypes[one.kind])))
      .map(one => ({ label: one.name, value: one.id }))
  return part.options ?? []
}

function menuNode(part: WirePart, messageId: string, desk: Desk): HTMLElement {
  const customId = part.custom_id ?? ''
  const choices = choicesOf(part, desk)
  const chosen = choices
    .filter(one => one.default)
    .map(one => one.label)
    .join(', ')
  const title = chosen || part.placeholder || 'Choose'
  if (part.disabled)
    return el('button', { type: 'button', class: 'action menu-off', disabled: true, 'data-custom-id': customId }, title)
  const send = (values: readonly string[]): Promise<void> =>
    whileBusy(box, () => desk.perform({ do: 'choose', you: desk.frame().you, message: messageId, customId, values }))
  const min = part.min_values ?? 1
  const many = (part.max_values ?? 1) > 1 || min === 0
  const panel: HTMLElement = many ? manyPanel(choices, min, part.max_values ?? 1, send) : onePanel(choices, send)
  const box: HTMLElement = el('details', { class: 'menu', 'data-custom-id': customId }, el('summary', {}, title), panel)
  return box
}

function choiceWords(choice: WireChoice): (Node | null)[] {
  return [
    el('span', { class: 'choice-label' }, [emojiOf(choice.emoji), choice.label].filter(one => one !== '').join(' ')),
    choice.description ? el('span', { class: 'choice-detail' }, choice.description) : null,
  ]
}

function onePanel(choices: readonly WireChoice[], send: (values: readonly string[]) => Promise<void>): HTMLElement {
  return el(
    'div',
    { class: 'choices' },
    ...choices.map(choice => {
      const button = el(
        'button',
        { type: 'button', class: 'choice', 'data-value': choice.value, 'aria-pressed': choice.default ? 'true' : null },
        ...choiceWords(choice),
      )
      button.addEventListener('click', () => void send([choice.value]))
      return button
    }),
  )
}

function manyPanel(
  choices: readonly WireChoice[],
  min: number,
  max: number,
  send: (values: readonly string[]) => Promise<void>,
): HTMLElement {
  const boxes = choices.map(choice =>
    el('input', { type: 'checkbox', value: choice.value, id: freshId('choice'), checked: choice.default ?? false }),
  )
  const hint = el(
    'p',
    { class: 'hint', role: 'status' },
    max > 1 ? `Choose ${min === max ? min : `${min} to ${max}`}.` : 'Choose one, or none.',
  )
  const go = el('button', { type: 'button', class: 'action', 'data-style': 'main' }, 'Send this choice')
  go.addEventListener('click', () => {
    const values = boxes.filter(one => one.checked).map(one => one.value)
    if (values.length < min || values.length > max) {
      hint.textContent = `Choose ${min} to ${max}; you have chosen ${values.length}.`
      return
    }
    void send(values)
  })
  const lines = choices.map((choice, at) =>
    el('label', { class: 'choice', 'data-value': choice.value }, boxes[at], ...choiceWords(choice)),
  )
  return el('div', { class: 'choices' }, ...lines, hint, go)
}
