// The form for a new post in a forum: a title, what it says, and the forum's tags.

import type { WirePlace } from '../wire.ts'
import { whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { el, freshId } from './dom.ts'
import { notice } from './notices.ts'
import { act } from './talk.ts'

/** The nodes of the form; once it is sent, one goes to the post. */
export function postForm(place: WirePlace, desk: Desk): HTMLElement[] {
  const { you, people } = desk.frame()
  const name = people.find(one => one.id === you)?.name ?? ''
  const title = el('input', { id: freshId('post'), type: 'text', maxlength: 100, 'data-option': 'title' })
  const text = el('input', { id: freshId('post'), type: 'text', maxlength: 2000, 'data-option': 'text' })
  const tags = place.tags.map(tag => ({
    tag,
    box: el('input', { id: freshId('post'), type: 'checkbox', value: tag.id }),
  }))
  const send = el('button', { type: 'submit', class: 'action', 'data-style': 'main' }, 'Post')
  send.addEventListener('click', () => {
    void whileBusy(send, async () => {
      const chosen = tags.filter(({ box }) => box.checked).map(({ tag }) => tag.id)
      const words = { title: title.value, text: text.value, tags: chosen }
      const outcome = await act({ do: 'post', you, place: place.id, ...words })
      if (outcome.kind === 'trouble') return notice(outcome.words)
      if (outcome.kind === 'done' && outcome.messageId !== null) desk.visit(outcome.messageId)
    })
  })
  const field = (label: string, control: HTMLElement) =>
    el('div', { class: 'field' }, el('label', { for: control.id }, label), control)
  return [
    el('p', { class: 'command-name' }, el('strong', {}, `A new post by ${name}`), ` in ${place.name}`),
    el(
      'div',
      { class: 'fields' },
      field('Title', title),
      field('What it says', text),
      ...tags.map(({ tag, box }) =>
        el('label', { class: 'choice' }, box, el('span', { class: 'choice-label' }, tag.name)),
      ),
    ),
    el('div', { class: 'row' }, send),
  ]
}
