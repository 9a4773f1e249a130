// The commands as a list to press, so that nobody has to know or type a name.

import type { WireCommand } from '../wire.ts'
import { el } from './dom.ts'

/** A command's name as it is typed or, for one about a person, as it is called. */
export function commandName(command: WireCommand): string {
  return command.kind === 'slash' ? `/${command.shownPath}` : `${command.shownPath} (about a person)`
}

/** What pressing a command does: run it, or show it ready to be filled in where it has to be, or may be and that is wanted. */
export type Pick = (command: WireCommand, fillIn?: boolean) => void

/** Whether it runs as it stands, although there is something that could be filled in. */
const isOptional = ({ kind, options }: WireCommand): boolean =>
  kind === 'slash' && options.length > 0 && options.every(one => !one.required)

/** One button for each command, with what it is for; a second one beside it fills in what may stay empty. */
export function commandButtons(commands: readonly WireCommand[], pick: Pick): HTMLElement {
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
      const row = el('div', { class: 'command', 'data-group': groupOf(command) }, button)
      if (isOptional(command)) {
        const label = `${commandName(command)} with options`
        const fill = el(
          'button',
          { type: 'button', class: 'fill', 'data-fill': command.path, 'aria-label': label },
          'Options',
        )
        fill.addEventListener('click', () => pick(command, true))
        row.append(fill)
      }
      return row
    }),
  )
}

/** What a command is about: its first word. */
const groupOf = ({ path }: WireCommand): string => path.split(' ')[0] ?? path

/** A button for each group of several commands, which leaves only these in `list`; pressed once more, all are there again. */
function groupButtons(commands: readonly WireCommand[], list: HTMLElement): HTMLElement | null {
  const groups = [...Map.groupBy(commands, groupOf)].filter(([, those]) => those.length > 1).map(([group]) => group)
  if (groups.length < 2) return null
  const row = el('div', { class: 'groups', role: 'group', 'aria-label': 'Only commands about' })
  const buttons = groups.map(group => {
    const button = el('button', { type: 'button', class: 'group', 'aria-pressed': 'false', 'data-group': group }, group)
    button.addEventListener('click', () => {
      const chosen = button.getAttribute('aria-pressed') !== 'true'
      for (const one of buttons) one.setAttribute('aria-pressed', String(chosen && one === button))
      for (const one of list.querySelectorAll<HTMLElement>('.command'))
        one.hidden = chosen && one.dataset['group'] !== group
    })
    return button
  })
  row.append(...buttons)
  return row
}

/** A drawer above the command line that lists the commands; it is filled afresh as it opens. */
export function commandDrawer(list: () => readonly WireCommand[], pick: Pick): HTMLElement {
  const summary = el('summary', {}, 'Commands')
  const inside = el('div', { class: 'drawer' })
  const drawer = el('details', { class: 'commands' }, summary, inside)
  summary.addEventListener('click', () => {
    const commands = list()
    if (commands.length === 0)
      return inside.replaceChildren(el('p', { class: 'hint' }, 'The bot offers no commands in this place.'))
    const all = commandButtons(commands, pick)
    const groups = groupButtons(commands, all)
    // Below the list, next to the thumb that opened it, and after it for whoever goes by keys.
    inside.replaceChildren(all, ...(groups === null ? [] : [groups]))
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
