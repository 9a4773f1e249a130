// The command line: write a message, or pick a command and fill in its options.

import type { WireCommand, WireValue } from '../wire.ts'
import { combobox, type Suggestion } from './combobox.ts'
import { commandDrawer, commandName, type Pick } from './command-list.ts'
import { whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { byId, el } from './dom.ts'
import { memory, remember } from './memory.ts'
import { notice } from './notices.ts'
import { type OptionField, optionField } from './option-field.ts'
import { postForm } from './post-form.ts'
import { act } from './talk.ts'

/** Options above this number are folded away unless they must be filled in. */
const mostShown = 4

export type CommandLine = {
  refresh(): void
  /** The commands that can be run here. */
  runnable(): readonly WireCommand[]
  /** Runs what needs nothing, and shows anything else ready to be filled in. */
  readonly open: Pick
}

/** Keeps the command line in `#entry-form`. */
export function commandLine(desk: Desk): CommandLine {
  const form = byId<HTMLFormElement>('entry-form')
  let open: WireCommand | null = null
  let drawn = ''
  form.addEventListener('submit', event => event.preventDefault())

  const showLine = (focus: boolean) => {
    open = null
    const frame = desk.frame()
    const place = frame.places.find(one => one.id === frame.place)
    if (place?.kind === 'forum' && place.mayWrite) return form.replaceChildren(...postForm(place, desk))
    const name = frame.people.find(one => one.id === frame.you)?.name ?? ''
    const label = `${name}’s command line: write here, or type / for a command`
    const placeholder = place?.mayWrite ? `Write as ${name}` : 'Type / here'
    const input = el('input', { id: 'entry', type: 'text', maxlength: 2000, enterkeyhint: 'send', placeholder })
    input.value = memory.drafts[frame.you] ?? ''
    input.addEventListener('input', () => {
      memory.drafts[frame.you] = input.value
      remember()
    })
    const send = el('button', { type: 'button', class: 'action send', 'data-style': 'main' }, 'Send')
    const enter = (typed: string) => {
      const text = typed.trim()
      if (text === '') return
      // What begins with a slash is never sent as a message by a slip of the hand.
      if (text.startsWith('/')) {
        const wanted = text.slice(1)
        const exact = runnable().find(one => one.path === wanted || one.shownPath === wanted)
        const command = exact ?? runnable().find(one => one.path === suggestions(text)[0]?.value)
        if (command !== undefined) return pick(command, exact === undefined)
        const said = withWords(runnable(), wanted)
        if (said === undefined) return notice(`There is no command like “${text}” here.`)
        return showCommand(said.command, said.words)
      }
      void whileBusy(send, async () => {
        if (await desk.perform({ do: 'say', you: frame.you, place: frame.place, text })) {
          memory.drafts[frame.you] = ''
          remember()
          input.value = ''
        }
      })
    }
    send.addEventListener('click', () => enter(input.value))
    const list = combobox(input, {
      label: 'Commands',
      find: suggestions,
      pick(suggestion) {
        const command = runnable().find(one => one.path === suggestion.value)
        // What is picked while typing is filled in first, as in Discord, if there is anything to fill in.
        if (command !== undefined) pick(command, true)
      },
      enter,
    })
    list.classList.add('upwards')
    const drawer = commandDrawer(runnable, pick)
    const line = el('div', { class: 'line' }, drawer, list, input, send)
    form.replaceChildren(el('label', { for: 'entry', class: 'unseen' }, label), line)
    if (focus) input.focus()
  }

  const runnable = () => desk.frame().commands.filter(one => one.kind !== 'message')
  const suggestions = (typed: string): Suggestion[] => {
    if (!typed.startsWith('/')) return []
    const wanted = typed.slice(1).trim().toLowerCase()
    return runnable()
      .filter(one => `${one.path} ${one.shownPath}`.toLowerCase().includes(wanted))
      .map(one => ({
        label: commandName(one),
        detail: one.description,
        value: one.path,
      }))
  }

  /** What need not be filled in runs at once, unless somebody wants to fill in what may be; everything else is shown, ready for it. */
  const pick: Pick = (command, fillIn = false) => {
    const asks = command.options.some(one => one.required) || (fillIn && command.options.length > 0)
    if (command.kind !== 'slash' || asks) return showCommand(command)
    const { you, place } = desk.frame()
    memory.drafts[you] = ''
    remember()
    showLine(false)
    void whileBusy(form, () => desk.perform({ do: 'run', you, place, path: command.path, options: {} }))
  }

  /** Words typed behind a command stand in the first of its options that takes words. */
  const showCommand = (command: WireCommand, words = '') => {
    open = command
    const frame = desk.frame()
    memory.drafts[frame.you] = ''
    remember()
    const options = command.kind === 'person' ? [personOption] : command.options
    const fields: OptionField[] = []
    const suggest = async (name: string, typed: string) => {
      const options = await filled(fields.filter(one => one.option.name !== name && one.option.type !== 11))
      const outcome = await act({
        do: 'suggest',
        you: frame.you,
        place: frame.place,
        path: command.path,
        options,
        focused: { name, value: typed },
      })
      return outcome.kind === 'choices' ? outcome.choices : []
    }
    fields.push(...options.map(option => optionField(option, desk, suggest)))
    const first = fields.filter(one => one.option.required || options.length <= mostShown)
    const rest = fields.filter(one => !first.includes(one))
    const run = el('button', { type: 'submit', class: 'action', 'data-style': 'main' }, 'Run')
    const back = el('button', { type: 'button', class: 'action', 'data-style': 'plain' }, 'Back')
    const error = el('p', { class: 'error', role: 'alert' })
    back.addEventListener('click', () => showLine(true))
    run.addEventListener('click', () => {
      void whileBusy(run, async () => {
        const missing = await firstMissing(fields)
        error.textContent = missing === null ? '' : `“${missing.option.shownName}” must be filled in.`
        if (missing !== null) return missing.node.querySelector<HTMLElement>('[data-option]')?.focus()
        const values = await filled(fields)
        const common = { you: frame.you, place: frame.place }
        const person = String(values['person'] ?? '')
        const worked = await desk.perform(
          command.kind === 'person'
            ? { do: 'use-on-person', ...common, person, command: command.path }
            : { do: 'run', ...common, path: command.path, options: values },
        )
        if (worked && open === command) showLine(false)
      })
    })
    const name = command.kind === 'slash' ? `/${command.shownPath}` : command.shownPath
    form.replaceChildren(
      el('p', { class: 'command-name' }, el('strong', {}, name), ` ${command.description}`),
      el(
        'div',
        { class: 'fields' },
        ...first.map(one => one.node),
        rest.length > 0 &&
          el('details', {}, el('summary', {}, `More options (${rest.length})`), ...rest.map(one => one.node)),
      ),
      error,
      el('div', { class: 'row' }, run, back),
    )
    const written = form.querySelector<HTMLInputElement>('input[data-option][type=text]')
    if (words !== '' && written !== null) written.value = words
    // With nothing that must be filled in, one more press runs it; no list of suggestions jumps into the way.
    const target = form.querySelector<HTMLElement>('[data-option][aria-required]') ?? run
    target.focus()
  }

  form.addEventListener('keydown', event => {
    if (event.key === 'Escape' && open !== null) showLine(true)
  })

  return {
    refresh() {
      const frame = desk.frame()
      const place = frame.places.find(one => one.id === frame.place)
      const now = `${frame.you} ${frame.place} ${place?.mayWrite}`
      // Being in the middle of filling in a command is not disturbed by news.
      if (now === drawn) return
      drawn = now
      showLine(false)
    },
    runnable,
    open: pick,
  }
}

/** The command that these words begin with, the longest if several do, and what is left of them. */
function withWords(
  commands: readonly WireCommand[],
  typed: string,
): { readonly command: WireCommand; readonly words: string } | undefined {
  const begun = commands.flatMap(command =>
    [command.path, command.shownPath]
      .filter(path => command.kind === 'slash' && typed.startsWith(`${path} `))
      .map(path => ({ command, words: typed.slice(path.length).trim() })),
  )
  return begun.sort((a, b) => a.words.length - b.words.length)[0]
}

const personOption = {
  name: 'person',
  shownName: 'Person',
  description: 'Whom it is about',
  type: 6,
  required: true,
  autocomplete: false,
  choices: [],
  min: null,
  max: null,
  fileTypes: [],
}

async function filled(fields: readonly OptionField[]): Promise<Record<string, WireValue>> {
  const values: Record<string, WireValue> = {}
  for (const field of fields) {
    const value = await field.value()
    if (value !== undefined) values[field.option.name] = value
  }
  return values
}

async function firstMissing(fields: readonly OptionField[]): Promise<OptionField | null> {
  for (const field of fields) if (field.option.required && (await field.value()) === undefined) return field
  return null
}
