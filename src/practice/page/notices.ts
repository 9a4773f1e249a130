// Short plain notices: what did not work, said once and dismissable; they are read out by the alert role.
import { byId, el } from './dom.ts'

const mostNotices = 3

/** Shows a notice; `kind` decides its mark and how it looks. */
export function notice(words: string, kind: 'trouble' | 'complaint' | 'note' = 'trouble'): void {
  const box = byId('notices')
  const same = [...box.children].find(one => one.getAttribute('data-words') === words)
  same?.remove()
  const close = el('button', { type: 'button', class: 'quiet', 'aria-label': 'Close this notice' }, 'Close')
  const node = el('div', { class: 'notice', 'data-kind': kind, 'data-words': words }, el('p', {}, words), close)
  close.addEventListener('click', () => node.remove())
  box.append(node)
  while (box.children.length > mostNotices) box.firstElementChild?.remove()
}

/** Takes all notices away. */
export function clearNotices(): void {
  byId('notices').replaceChildren()
}
