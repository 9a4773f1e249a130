// The head of the page: who you are, where you are, and whether the bot is there.

import type { WireFrame, WirePlace } from '../wire.ts'
import { byId, el } from './dom.ts'
import { memory, remember } from './memory.ts'

/** Keeps the head up to date and tells when someone or somewhere else is chosen. */
export function pageHead(go: (you: string, place: string | null) => void): { refresh(frame: WireFrame): void } {
  const tabs = byId('people-tabs')
  const place = byId<HTMLSelectElement>('place')
  const phone = byId('phone')
  let frame: WireFrame | null = null

  const showPhone = () => {
    phone.setAttribute('aria-pressed', String(memory.phone))
    document.body.dataset['width'] = memory.phone ? 'phone' : 'wide'
  }
  phone.addEventListener('click', () => {
    memory.phone = !memory.phone
    remember()
    showPhone()
  })
  place.addEventListener('change', () => {
    if (frame !== null) go(frame.you, place.value)
  })
  showPhone()

  return {
    refresh(now) {
      frame = now
      byId('server-name').textContent = now.server
      document.title = `${now.server} · practice room`
      const state = byId('bot-state')
      state.textContent = now.bot.connected ? `${now.bot.name} is connected` : `${now.bot.name} is not connected`
      state.dataset['connected'] = String(now.bot.connected)
      drawPeople(tabs, now, go)
      drawPlaces(place, now)
      const here = now.places.find(one => one.id === now.place)
      const you = now.people.find(one => one.id === now.you)
      byId('sheet-title').textContent = `What ${you?.name ?? ''} sees in ${here === undefined ? '' : placeName(here)}`
      // Narrow tabs have no room for what a person is; it is said here then.
      const about = you?.about ? el('span', { class: 'who' }, `${you.name}: ${you.about}. `) : null
      byId('topic').replaceChildren(...(about ? [about] : []), here?.topic ?? '')
    },
  }
}

function drawPeople(tabs: HTMLElement, frame: WireFrame, go: (you: string, place: string | null) => void): void {
  const drawn = frame.people.map(one => one.id).join(' ')
  if (tabs.dataset['drawn'] !== drawn) {
    tabs.dataset['drawn'] = drawn
    tabs.replaceChildren(
      ...frame.people.map(person => {
        const input = el('input', { type: 'radio', name: 'you', value: person.id })
        input.addEventListener('change', () => go(person.id, memory.places[person.id] ?? null))
        return el(
          'label',
          { 'data-person': person.name },
          input,
          el('span', { class: 'name' }, person.name),
          el('span', { class: 'about' }, person.about),
        )
      }),
    )
  }
  for (const input of tabs.querySelectorAll('input')) input.checked = input.value === frame.you
}

/** A place in words: a channel, a thread under it, or the conversation with the bot. */
function placeName(place: WirePlace): string {
  if (place.kind === 'direct') return `the conversation with ${place.name}`
  return place.name
}

function drawPlaces(select: HTMLSelectElement, frame: WireFrame): void {
  const lines = frame.places.map(place => {
    const fresh = place.latest !== null && place.id !== frame.place && isNews(frame.you, place)
    const indent = place.kind === 'thread' ? '— ' : ''
    const name = place.kind === 'direct' ? `Directly with ${place.name}` : place.name
    const words = `${indent}${name}${place.archived ? ' (closed)' : ''}${fresh ? ' · new' : ''}`
    return { id: place.id, words, shut: place.kind === 'forum' && !place.mayWrite }
  })
  const drawn = JSON.stringify(lines)
  if (select.dataset['drawn'] !== drawn) {
    select.dataset['drawn'] = drawn
    select.replaceChildren(...lines.map(line => el('option', { value: line.id, disabled: line.shut }, line.words)))
  }
  select.value = frame.place
}

function isNews(you: string, place: WirePlace): boolean {
  const looked = memory.looked[`${you} ${place.id}`]
  return looked === undefined || BigInt(place.latest ?? '0') > BigInt(looked)
}
