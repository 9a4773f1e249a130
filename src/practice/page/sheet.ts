// The sheet of cards: keeps them in order, changes only what changed, and keeps the reader's place and focus.
import { cardNode } from './card.ts'
import type { Desk } from './desk.ts'
import { byId } from './dom.ts'
import type { WireMessage } from './wire.ts'

export interface Sheet {
  replaceAll(messages: readonly WireMessage[]): void
  put(message: WireMessage, fresh: boolean): void
  remove(id: string): void
  /** Draws every card again, for instance when the commands have changed. */
  redraw(): void
  newest(): string | null
}

/** The sheet in `#sheet`. */
export function openSheet(desk: Desk): Sheet {
  const sheet = byId('sheet')
  const frame = byId('sheet-frame')
  const empty = byId('empty')
  const messages = new Map<string, WireMessage>()

  const cardOf = (id: string) => sheet.querySelector<HTMLElement>(`[data-message-id="${CSS.escape(id)}"]`)
  const nearEnd = () => frame.scrollHeight - frame.scrollTop - frame.clientHeight < 160
  /** Shows the newest card: its end, or its beginning when it is higher than the view. */
  const toNewest = () => {
    const last = sheet.lastElementChild
    const high = last !== null && last.clientHeight > frame.clientHeight
    if (high) frame.scrollTop += last.getBoundingClientRect().top - frame.getBoundingClientRect().top - 8
    else frame.scrollTop = frame.scrollHeight
    following = frame.scrollTop
  }
  // Pictures arrive later and push the end away; whoever has not scrolled since is taken along.
  let following = -1
  new ResizeObserver(() => {
    if (frame.scrollTop === following) toNewest()
  }).observe(sheet)
  const sayEmpty = () => {
    const you = desk.frame().people.find(one => one.id === desk.frame().you)?.name ?? 'you'
    empty.hidden = messages.size > 0
    empty.textContent = `Nothing here yet for ${you}. Start below: type / to see what the bot can do.`
  }
  const announce = (message: WireMessage, fresh: boolean) => {
    if (message.author.id === desk.frame().you) return
    const words = cardOf(message.id)?.querySelector('.words')?.textContent ?? ''
    byId('announce').textContent = `${message.author.name}${fresh ? '' : ' changed a message'}: ${words.slice(0, 200)}`
  }
  const swap = (old: HTMLElement, message: WireMessage) => {
    const focused = old.contains(document.activeElement) ? document.activeElement : null
    const fresh = cardNode(message, desk)
    old.replaceWith(fresh)
    if (focused === null) return
    const id = focused.closest('[data-custom-id]')?.getAttribute('data-custom-id')
    const same = id ? fresh.querySelector<HTMLElement>(`[data-custom-id="${CSS.escape(id)}"]`) : null
    const target = same?.querySelector<HTMLElement>('summary') ?? same ?? fresh
    target.focus({ preventScroll: true })
  }

  return {
    replaceAll(list) {
      messages.clear()
      for (const message of list) messages.set(message.id, message)
      sheet.replaceChildren(...list.map(message => cardNode(message, desk)))
      sayEmpty()
      toNewest()
    },
    put(message, fresh) {
      const end = nearEnd()
      const old = cardOf(message.id)
      messages.set(message.id, message)
      if (old !== null) swap(old, message)
      else sheet.append(cardNode(message, desk))
      sayEmpty()
      if (end || message.author.id === desk.frame().you) toNewest()
      announce(message, fresh)
    },
    remove(id) {
      messages.delete(id)
      cardOf(id)?.remove()
      sayEmpty()
    },
    redraw() {
      for (const message of messages.values()) {
        const old = cardOf(message.id)
        if (old !== null) swap(old, message)
      }
    },
    newest: () => [...messages.keys()].at(-1) ?? null,
  }
}
