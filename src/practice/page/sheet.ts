// The sheet of cards: keeps them in order, changes only what changed, and keeps the reader's place and focus.

import type { WireCommand, WireMessage } from '../wire.ts'
import { cardNode } from './card.ts'
import { commandButtons, type Pick } from './command-list.ts'
import type { Desk } from './desk.ts'
import { byId, el } from './dom.ts'
import { beginningOf, fitPicture, freeAbove } from './in-view.ts'

/** What an empty sheet offers to begin with. */
export type Beginnings = {
  runnable(): readonly WireCommand[]
  readonly open: Pick
}

export type Sheet = {
  replaceAll(messages: readonly WireMessage[]): void
  put(message: WireMessage, fresh: boolean): void
  remove(id: string): void
  /** Draws every card again, for instance when the commands have changed. */
  redraw(): void
  newest(): string | null
  /** Puts the focus on this card, now or as soon as it is there, unless the focus is inside it already, and shows its beginning. */
  attend(id: string): void
}

/** The sheet in `#sheet`; while it is empty it offers the beginnings. */
export function openSheet(desk: Desk, beginnings: Beginnings): Sheet {
  const sheet = byId('sheet')
  const frame = byId('sheet-frame')
  const empty = byId('empty')
  const messages = new Map<string, WireMessage>()

  const cardOf = (id: string) => sheet.querySelector<HTMLElement>(`[data-message-id="${CSS.escape(id)}"]`)
  const nearEnd = () => frame.scrollHeight - frame.scrollTop - frame.clientHeight < 160
  const newestCard = () => sheet.querySelector<HTMLElement>(':scope > :last-child')
  const scrollTo = (card: HTMLElement) => {
    const begin = beginningOf(card)
    frame.scrollTop += begin.getBoundingClientRect().top - frame.getBoundingClientRect().top - freeAbove(begin, card)
  }
  /** Shows the newest card: its end, or its beginning when it is higher than the view. */
  const toNewest = () => {
    const last = newestCard()
    const high = last !== null && last.clientHeight > frame.clientHeight
    // Before anything is there, one begins at the top.
    if (messages.size === 0) frame.scrollTop = 0
    else if (high) scrollTo(last)
    else frame.scrollTop = frame.scrollHeight
    following = frame.scrollTop
  }
  let awaited: string | null = null
  const attend = (id: string) => {
    const card = cardOf(id)
    awaited = card === null ? id : null
    if (card === null) return
    if (!card.contains(document.activeElement)) card.focus({ preventScroll: true })
    show(card)
  }
  /** What one's own press has brought is read from its beginning, wherever the last button stood. */
  const show = (card: HTMLElement) => {
    if (card === newestCard()) return toNewest()
    const top = card.getBoundingClientRect().top - frame.getBoundingClientRect().top
    if (top < 0 || top > frame.clientHeight / 2) scrollTo(card)
  }
  // Pictures arrive later and push the end away; whoever has not scrolled since is taken along.
  let following = -1
  new ResizeObserver(() => {
    if (frame.scrollTop === following) toNewest()
  }).observe(sheet)
  // A phone is turned, a keyboard comes up: what fitted has to fit again.
  new ResizeObserver(() => {
    const card = newestCard()
    if (card !== null) fitPicture(card)
  }).observe(frame)
  const sayEmpty = () => {
    const you = desk.frame().people.find(one => one.id === desk.frame().you)?.name ?? 'you'
    empty.hidden = messages.size > 0
    if (empty.hidden) return empty.replaceChildren()
    const commands = beginnings.runnable()
    const rest = commands.slice(1)
    const words =
      commands.length > 0
        ? `Nothing here yet for ${you}. Press to begin:`
        : `Nothing here yet for ${you}, and the bot offers no commands here.`
    empty.replaceChildren(
      el('p', {}, words),
      ...(commands.length > 0 ? [commandButtons(commands.slice(0, 1), beginnings.open)] : []),
      ...(rest.length > 0
        ? [
            el(
              'details',
              {},
              el('summary', {}, `More commands (${rest.length})`),
              commandButtons(rest, beginnings.open),
            ),
          ]
        : []),
    )
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
    fitPicture(fresh)
    if (focused === null) return
    const id = focused.closest('[data-custom-id]')?.getAttribute('data-custom-id')
    const same = id ? fresh.querySelector<HTMLElement>(`[data-custom-id="${CSS.escape(id)}"]`) : null
    const target = same?.querySelector<HTMLElement>('summary') ?? same ?? fresh
    target.focus({ preventScroll: true })
  }

  return {
    replaceAll(list) {
      // What was read out to one person is not for the next.
      byId('announce').textContent = ''
      messages.clear()
      for (const message of list) messages.set(message.id, message)
      const cards = list.map(message => cardNode(message, desk))
      sheet.replaceChildren(...cards)
      for (const card of cards) fitPicture(card)
      sayEmpty()
      toNewest()
    },
    put(message, fresh) {
      const end = nearEnd()
      const old = cardOf(message.id)
      messages.set(message.id, message)
      if (old !== null) swap(old, message)
      else {
        const card = cardNode(message, desk)
        sheet.append(card)
        fitPicture(card)
      }
      sayEmpty()
      if (end || message.author.id === desk.frame().you) toNewest()
      announce(message, fresh)
      if (message.id === awaited) attend(message.id)
    },
    remove(id) {
      messages.delete(id)
      cardOf(id)?.remove()
      sayEmpty()
    },
    redraw() {
      sayEmpty()
      for (const message of messages.values()) {
        const old = cardOf(message.id)
        if (old !== null) swap(old, message)
      }
    },
    newest: () => [...messages.keys()].at(-1) ?? null,
    attend,
  }
}
