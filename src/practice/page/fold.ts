// On a small screen the head is one bar: it opens the rest of the head, and folds it again once somebody has chosen.
import { byId } from './dom.ts'

/** Lets the bar open and fold the rest of the head; on a wide screen the rest always stands there. */
export function foldingHead(): { fold(): void } {
  const head = byId('head')
  const opener = byId('head-open')
  const isOpen = () => opener.getAttribute('aria-expanded') === 'true'
  const set = (open: boolean) => opener.setAttribute('aria-expanded', String(open))
  const fold = () => {
    if (!isOpen()) return
    // What is folded away cannot keep the focus.
    if (byId('head-rest').contains(document.activeElement)) opener.focus()
    set(false)
  }
  opener.addEventListener('click', () => set(!isOpen()))
  document.addEventListener('keydown', event => {
    if (event.key === 'Escape') fold()
  })
  document.addEventListener('pointerdown', event => {
    if (event.target instanceof Node && !head.contains(event.target)) fold()
  })
  head.addEventListener('focusout', event => {
    if (event.relatedTarget instanceof Node && !head.contains(event.relatedTarget)) set(false)
  })
  return { fold }
}
