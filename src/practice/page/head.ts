// The head of the page: who you are, where you are, and whether the bot is there.

import type { WireFrame, WirePlace } from '../wire.ts'
import { byId, el } from './dom.ts'
import { foldingHead } from './fold.ts'
import { memory, remember } from './memory.ts'
import { languageName } from './person-drawer.ts'

export type Head = {
  refresh(frame: WireFrame): void
  /** The room itself does not answer: nothing is known of the bot. */
  lost(): void
}

/** Keeps the head up to date and tells when someone or somewhere else is chosen. */
export function pageHead(go: (you: string, place: string | null) => void): Head {
  const tabs = byId('people-tabs')
  const place = byId<HTMLSelectElement>('place')
  const phone = byId('phone')
  const opener = byId('head-open')
  const { fold } = foldingHead()
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
    fold()
  })
  // Whoever goes from one to the next with the arrow keys has not chosen yet; such a click counts no press.
  tabs.addEventListener('click', event => {
    if (event.detail > 0 && event.target instanceof HTMLInputElement) fold()
  })
  showPhone()

  return {
    refresh(now) {
      frame = now
      const where = now.server?.name ?? 'a conversation'
      byId('server-name').textContent = `Rehearsal: ${where}`
      document.title = `${where} · practice room`
      const state = byId('bot-state')
      state.textContent = now.bot.connected ? `${now.bot.name} is connected` : `${now.bot.name} is not connected`
      state.dataset['connected'] = String(now.bot.connected)
      drawPeople(tabs, now, go)
      drawPlaces(place, now)
      const here = now.places.find(one => one.id === now.place)
      const you = now.people.find(one => one.id === now.you)
      const names = [you?.name, here?.name, now.bot.connected ? null : 'not connected'].filter(one => one)
      // Where somebody else can be chosen is said, and not left to a small arrow.
      opener.replaceChildren(
        el('span', { class: 'now' }, `You: ${names.join(' · ')}`),
        el('span', { class: 'change' }, 'Change'),
      )
      opener.dataset['connected'] = String(now.bot.connected)
      const on = here?.server ? ` on ${here.server}` : ''
      byId('sheet-title').textContent =
        `What ${you?.name ?? ''} sees in ${here === undefined ? '' : placeName(here)}${on}`
      const about = you?.about ? ` (${you.about})` : ''
      const who = you ? `You are ${you.name}${about}. You read ${languageName(you.locale)}.` : ''
      byId('who').textContent = who
      byId('topic').textContent = here?.topic ?? ''
    },
    lost() {
      const state = byId('bot-state')
      state.textContent = 'The practice room does not answer. Is it still running?'
      state.dataset['connected'] = 'false'
      opener.textContent = 'No answer from the room'
      opener.dataset['connected'] = 'false'
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

/** Places by server; conversations come last. */
function drawPlaces(select: HTMLSelectElement, frame: WireFrame): void {
  const lines = frame.places.map(place => {
    const fresh = place.latest !== null && place.id !== frame.place && isNews(frame.you, place)
    const indent = place.kind === 'thread' ? '— ' : ''
    const name = place.kind === 'direct' ? `Directly with ${place.name}` : place.name
    const words = `${indent}${name}${place.archived ? ' (closed)' : ''}${fresh ? ' · new' : ''}`
    return { id: place.id, words, shut: place.kind === 'forum' && !place.mayWrite, server: place.server }
  })
  const drawn = JSON.stringify(lines)
  if (select.dataset['drawn'] !== drawn) {
    select.dataset['drawn'] = drawn
    select.replaceChildren(
      ...[...Map.groupBy(lines, line => line.server ?? 'Privately')].map(([server, those]) =>
        el(
          'optgroup',
          { label: server },
          ...those.map(line => el('option', { value: line.id, disabled: line.shut }, line.words)),
        ),
      ),
    )
  }
  select.value = frame.place
}

function isNews(you: string, place: WirePlace): boolean {
  const looked = memory.looked[`${you} ${place.id}`]
  return looked === undefined || BigInt(place.latest ?? '0') > BigInt(looked)
}
