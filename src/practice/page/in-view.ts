// What a small screen shows of a message: it is read from its heading, and its picture leaves room for the answers.
import { byId } from './dom.ts'

/** As in small.css. */
const small = window.matchMedia('(max-width: 480px), (max-height: 700px)')

/** No picture becomes smaller than can be told apart. */
const leastHigh = 76
const margin = 8
/** Kept free above what a message is read from: twice as much above a whole card. */
export const freeAbove = (one: Element, card: Element): number => (one === card ? 2 * margin : margin)

const topOf = (node: Element) => node.getBoundingClientRect().top
const bottomOf = (node: Element) => node.getBoundingClientRect().bottom

/** The words that hold the heading; a message without one is read from its first line. */
const headingOf = (card: Element) => card.querySelector(':scope > .words:has(h3, h4, h5)')

/** What is to be seen together with the heading: the answers, and the words right below them. */
const endOf = (card: Element) => card.querySelector(':scope > .row ~ .words')

/** Lets the one picture below the heading of a question give way as far as the answers need; where that would not be enough, it stays as it is. */
export function fitPicture(card: HTMLElement): void {
  card.style.removeProperty('--most-high')
  const [heading, end, picture] = [
    headingOf(card),
    endOf(card),
    card.querySelector(':scope > .words:has(h3, h4, h5) ~ [data-count="1"] [data-shape="broad"] img'),
  ]
  if (!small.matches || heading === null || end === null || picture === null) return
  const over = bottomOf(end) - topOf(heading) + margin - byId('sheet-frame').clientHeight
  const high = picture.getBoundingClientRect().height
  if (over > 0 && high - over >= leastHigh) card.style.setProperty('--most-high', `${high - over}px`)
}

/** Where a message too high for the view is read from: so far down that its answers are in view, but never below anything that is more than small print. */
export function beginningOf(card: HTMLElement): Element {
  const [heading, end] = [headingOf(card), endOf(card)]
  if (!small.matches || heading === null || end === null) return card
  const parts = [...card.querySelectorAll(':scope > :not(header)')]
  const above = parts.slice(0, parts.indexOf(heading))
  const loud = above.findIndex(one => !one.matches('.words:not(:has(> :not(.small)))'))
  const from = [card, ...(loud < 0 ? [...above, heading] : above.slice(0, loud + 1))]
  const fits = (one: Element) => bottomOf(end) - topOf(one) + freeAbove(one, card) <= byId('sheet-frame').clientHeight
  return from.find(fits) ?? from.at(-1) ?? card
}

/** Puts the hand on the first thing in what has just been opened, and all of it into view. */
export function reveal(opened: Element): void {
  const inside = 'a[href], button, input, select, textarea'
  const chosen = opened.querySelector<HTMLElement>('[aria-pressed="true"], input:checked')
  const first = chosen ?? opened.querySelector<HTMLElement>(`:is(${inside}):not(:disabled)`)
  first?.focus({ preventScroll: true })
  opened.scrollIntoView({ block: 'nearest' })
}

/** Whatever unfolds on the page is revealed, and folded again with Escape. */
export function revealWhatOpens(): void {
  // At once, not when the browser tells of it: whoever presses again quickly must not hit what has moved there meanwhile.
  document.addEventListener('click', event => {
    const summary = event.target instanceof Element ? event.target.closest('summary') : null
    const folded = summary?.parentElement
    if (!(folded instanceof HTMLDetailsElement) || folded.open) return
    event.preventDefault()
    folded.open = true
    reveal(folded)
  })
  document.addEventListener('keydown', event => {
    const opened = document.activeElement?.closest<HTMLDetailsElement>('details.menu[open]')
    if (event.key !== 'Escape' || !opened) return
    opened.open = false
    opened.querySelector('summary')?.focus()
  })
}
