// The weather drawer: faults on order, and what Discord would have refused so far.

import type { WireWeather } from '../wire.ts'
import { whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { byId, el } from './dom.ts'
import { reveal } from './in-view.ts'
import { notice } from './notices.ts'

const weatherOrders: readonly { readonly what: WireWeather; readonly label: string; readonly said: string }[] = [
  { what: 'twice', label: 'Deliver every click twice', said: 'From now on every click reaches the bot twice.' },
  { what: 'once', label: 'Deliver once again', said: 'Every click reaches the bot once again.' },
  { what: 'drop', label: 'Drop the line', said: 'The line was dropped; the bot should pick up where it was.' },
  { what: 'reconnect', label: 'Ask the bot to reconnect', said: 'The bot was asked to reconnect.' },
  { what: 'end-session', label: 'End its session', said: 'The session was ended; the bot should start a fresh one.' },
  {
    what: 'busy',
    label: 'Next answer: too many (429)',
    said: 'The next thing the bot sends is turned away for a second.',
  },
  { what: 'broken', label: 'Next answer: broken (502)', said: 'The next thing the bot sends meets a server error.' },
  {
    what: 'lose',
    label: 'Lose the next answer',
    said: 'The next thing the bot sends takes effect, but it will not hear so.',
  },
  {
    what: 'slow',
    label: 'Slow road for the next answer',
    said: 'The next thing the bot sends takes two and a half seconds longer.',
  },
  { what: 'fair', label: 'Fair weather', said: 'All ordered faults are off.' },
]

/** Fills the drawer and lets its button open it; returns where complaints go. */
export function weatherDrawer(desk: Desk): { complain(words: string): void } {
  const opener = byId('weather-open')
  const drawer = byId('weather')
  const heard = el('ul', { id: 'complaints' })
  const none = el('p', { class: 'hint' }, 'Nothing so far.')
  drawer.replaceChildren(
    el(
      'p',
      { class: 'hint' },
      'For testers: each of these makes Discord behave badly on purpose, to see what the bot makes of it. To try the bot, nobody needs them.',
    ),
    el(
      'div',
      { class: 'row' },
      ...weatherOrders.map(({ what, label, said }) => {
        const button = el(
          'button',
          { type: 'button', class: 'action', 'data-style': 'plain', 'data-weather': what },
          label,
        )
        button.addEventListener('click', () => {
          void whileBusy(button, async () => {
            if (await desk.perform({ do: 'weather', what })) notice(said, 'note')
          })
        })
        return button
      }),
    ),
    el('h2', {}, 'What Discord would have refused'),
    none,
    heard,
  )
  opener.addEventListener('click', () => {
    drawer.hidden = !drawer.hidden
    opener.setAttribute('aria-expanded', String(!drawer.hidden))
    if (!drawer.hidden) reveal(drawer)
  })
  return {
    complain(words) {
      none.hidden = true
      heard.prepend(el('li', {}, words))
      while (heard.children.length > 20) heard.lastElementChild?.remove()
    },
  }
}
