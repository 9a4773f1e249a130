// A text field with suggestions below or above it, after the combobox pattern of the ARIA Authoring Practices.
import { el, freshId } from './dom.ts'

export type Suggestion = {
  readonly label: string
  readonly detail: string
  readonly value: string | number
}

export type ComboboxOptions = {
  readonly label: string
  /** Suggestions for what is typed; an empty list closes them. */
  readonly find: (typed: string) => readonly Suggestion[] | Promise<readonly Suggestion[]>
  readonly pick: (suggestion: Suggestion) => void
  /** Enter without a suggestion chosen. */
  readonly enter?: (typed: string) => void
  /** Wait this long after a key before asking, in milliseconds; at once when left out. */
  readonly pause?: number
}

/** Adds suggestions to the input and returns the list to put beside it. */
export function combobox(input: HTMLInputElement, options: ComboboxOptions): HTMLElement {
  const list = el('ul', {
    class: 'suggestions',
    role: 'listbox',
    id: freshId('suggestions'),
    'aria-label': options.label,
    hidden: true,
  })
  for (const [name, value] of Object.entries({
    role: 'combobox',
    'aria-autocomplete': 'list',
    'aria-expanded': 'false',
    'aria-controls': list.id,
  })) {
    input.setAttribute(name, value)
  }
  let found: readonly Suggestion[] = []
  let active = -1
  let timer: ReturnType<typeof setTimeout> | undefined
  let asked = 0

  const close = () => {
    found = []
    active = -1
    list.hidden = true
    list.replaceChildren()
    input.setAttribute('aria-expanded', 'false')
    input.removeAttribute('aria-activedescendant')
  }
  const mark = (at: number) => {
    active = at
    for (const [index, node] of [...list.children].entries()) node.setAttribute('aria-selected', String(index === at))
    const node = list.children[at]
    if (node === undefined) input.removeAttribute('aria-activedescendant')
    else {
      input.setAttribute('aria-activedescendant', node.id)
      node.scrollIntoView({ block: 'nearest' })
    }
  }
  const choose = (suggestion: Suggestion) => {
    close()
    options.pick(suggestion)
  }
  const show = (suggestions: readonly Suggestion[]) => {
    found = suggestions
    list.replaceChildren(
      ...suggestions.map(one => {
        const detail = one.detail === '' ? null : el('span', { class: 'choice-detail' }, one.detail)
        const line = el(
          'li',
          { role: 'option', id: freshId('option'), 'data-value': one.value },
          el('span', { class: 'choice-label' }, one.label),
          detail,
        )
        // The press must not take the focus from the input.
        line.addEventListener('mousedown', event => event.preventDefault())
        line.addEventListener('click', () => choose(one))
        return line
      }),
    )
    list.hidden = suggestions.length === 0
    input.setAttribute('aria-expanded', String(suggestions.length > 0))
    mark(-1)
  }
  const ask = async () => {
    asked += 1
    const mine = asked
    const suggestions = await options.find(input.value)
    // A slower answer to an older question is dropped.
    if (mine === asked && document.activeElement === input) show(suggestions)
  }

  input.addEventListener('input', () => {
    clearTimeout(timer)
    if (options.pause === undefined) void ask()
    else timer = setTimeout(() => void ask(), options.pause)
  })
  input.addEventListener('focus', () => void ask())
  input.addEventListener('blur', () => {
    asked += 1
    clearTimeout(timer)
    close()
  })
  input.addEventListener('keydown', event => {
    if ((event.key === 'ArrowDown' || event.key === 'ArrowUp') && found.length > 0) {
      event.preventDefault()
      const step = event.key === 'ArrowDown' ? 1 : -1
      mark(active === -1 ? (step > 0 ? 0 : found.length - 1) : (active + step + found.length) % found.length)
    } else if (event.key === 'Escape' && !list.hidden) {
      event.stopPropagation()
      close()
    } else if (event.key === 'Enter') {
      const suggestion = found[active]
      if (suggestion !== undefined) {
        event.preventDefault()
        choose(suggestion)
      } else if (options.enter !== undefined) {
        event.preventDefault()
        close()
        options.enter(input.value)
      }
    }
  })
  return list
}
