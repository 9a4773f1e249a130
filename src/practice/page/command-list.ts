// The commands as a list to press, so that nobody has to know or type a name.

import type { WireCommand } from '../wire.ts'
import { el } from './dom.ts'

/** A command's name as it is typed or, for one about a person, as it is called. */
export function commandName(command: WireCommand): string {
  return command.kind === 'slash' ? `/${command.shownPath}` : `${command.shownPath} (about a person)`
}

/** One button for each command, with what it is for. */
export function commandButtons(commands: readonly WireCommand[], pick: (command: WireCommand) => void): HTMLElement {
  return el(
    'div',
    { class: 'choices' },
    ...commands.map(command => {
      const button = el(
        'button',
        { type: 'button', class: 'choice', 'data-command': command.path },
        el('span', { class: 'choice-label command-label' }, commandName(command)),
        el('span', { class: 'choice-detail' }, command.description),
      )
      button.addEventListener('click', () => pick(command))
      return button
    }),
  )
}

/** A drawer above the command line that lists the commands; it is filled afresh as it opens. */
export function commandDrawer(list: () => readonly WireCommand[], pick: (command: WireCommand) => void): HTMLElement {
  const summary = el('summary', {}, 'Commands')
  const inside = el('div', { class: 'drawer' })
  const drawer = el('details', { class: 'commands' }, summary, inside)
  summary.addEventListener('click', () => {
    const commands = list()
    inside.replaceChildren(
      commands.length > 0
        ? commandButtons(commands, pick)
        : el('p', { class: 'hint' }, 'The bot offers no commands in this place.'),
    )
  })
  drawer.addEventListener('keydown', event => {
    if (event.key !== 'Escape' || !drawer.open) return
    drawer.open = false
    summary.focus()
  })
  drawer.addEventListener('focusout', event => {
    const to = event.relatedTarget
    if (to instanceof Node && !drawer.contains(to)) drawer.open = false
  })
  return drawer
}
