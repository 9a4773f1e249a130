// The drawer about the person one is: which language they read, and which servers they are on.
import { whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { byId, el, freshId } from './dom.ts'
import { reveal } from './in-view.ts'
import { notice } from './notices.ts'

/** Fills the drawer as it opens and whenever something changes, and lets its button open it. */
export function personDrawer(desk: Desk): { refresh(): void } {
  const opener = byId('person-open')
  const drawer = byId('person')
  let drawn = ''
  const refresh = () => {
    const { you, people, server, otherServers, locales } = desk.frame()
    const person = people.find(one => one.id === you)
    const now = JSON.stringify([person, server, otherServers])
    if (person === undefined || now === drawn) return
    drawn = now
    opener.textContent = `About ${person.name}`
    const language = el(
      'select',
      { id: freshId('language') },
      ...[...new Set([person.locale, ...locales])].map(locale => el('option', { value: locale }, languageName(locale))),
    )
    language.value = person.locale
    language.addEventListener('change', () => {
      const locale = locales.find(one => one === language.value)
      if (locale !== undefined) void desk.perform({ do: 'read-in', you, locale })
    })
    const move = (what: 'leave' | 'join', place: { readonly id: string; readonly name: string }, said: string) => {
      const label = what === 'leave' ? `Leave ${place.name}` : `Join ${place.name}`
      const button = el('button', { type: 'button', class: 'action', 'data-style': 'plain', 'data-move': what }, label)
      button.addEventListener('click', () => {
        void whileBusy(button, async () => {
          if (await desk.perform({ do: what, you, server: place.id })) notice(said, 'note')
        })
      })
      return button
    }
    const shown = server !== null && !otherServers.some(one => one.id === server.id)
    drawer.replaceChildren(
      el(
        'div',
        { class: 'field' },
        el('label', { for: language.id }, `Language that ${person.name} reads`),
        language,
        el('span', { class: 'hint' }, 'What the bot says to them next is in this language, or in English.'),
      ),
      el(
        'div',
        { class: 'row' },
        shown && move('leave', server, `${person.name} has left ${server.name}. What they said there stays.`),
        ...otherServers.map(one =>
          move('join', one, `${person.name} is on ${one.name} now. Its places are in the list.`),
        ),
      ),
    )
  }
  opener.addEventListener('click', () => {
    drawer.hidden = !drawer.hidden
    opener.setAttribute('aria-expanded', String(!drawer.hidden))
    if (!drawer.hidden) reveal(drawer)
  })
  return { refresh }
}

/** A language by its own name; its code where it has none. */
export function languageName(locale: string): string {
  try {
    return new Intl.DisplayNames([locale], { type: 'language' }).of(locale) ?? locale
  } catch {
    return locale
  }
}
