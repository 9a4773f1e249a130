// Shows markdown as DOM nodes: names for mentions, the reader's language for times, spoilers that open on demand.

import type { WireFrame } from '../wire.ts'
import { el } from './dom.ts'
import { type Block, readBlocks, type Span } from './markdown.ts'

/** The nodes of a text, for the person whose frame this is. */
export function markdown(text: string, frame: WireFrame): HTMLElement {
  return el('div', { class: 'words' }, ...readBlocks(text).map(block => blockNode(block, frame)))
}

function blockNode(block: Block, frame: WireFrame): HTMLElement {
  if (block.kind === 'code') return el('pre', {}, el('code', {}, block.text))
  if (block.kind === 'list') return listNode(block, frame)
  const inside = block.inside.map(span => spanNode(span, frame))
  // The page's own headings are h1 and h2; a message's begin below them.
  if (block.kind === 'heading') return el((['h3', 'h4', 'h5'] as const)[block.level - 1] ?? 'h5', {}, ...inside)
  if (block.kind === 'small') return el('p', { class: 'small' }, ...inside)
  return el(block.kind === 'quote' ? 'blockquote' : 'p', {}, ...inside)
}

function listNode(block: Extract<Block, { kind: 'list' }>, frame: WireFrame): HTMLElement {
  const list = el(block.ordered ? 'ol' : 'ul', block.ordered ? { start: block.start } : {})
  for (const item of block.items) {
    list.append(el('li', { class: `depth-${item.depth}` }, ...item.inside.map(span => spanNode(span, frame))))
  }
  return list
}

const tagNames = { bold: 'strong', italic: 'em', underline: 'u', struck: 's' } as const

function spanNode(span: Span, frame: WireFrame): Node {
  switch (span.kind) {
    case 'text':
      return document.createTextNode(span.text)
    case 'break':
      return el('br')
    case 'code':
      return el('code', {}, span.text)
    case 'link':
      return el(
        'a',
        { href: span.url, rel: 'noreferrer noopener', target: '_blank' },
        ...span.inside.map(one => spanNode(one, frame)),
      )
    case 'time':
      return timeNode(span.seconds, span.style, frame)
    case 'person':
      return mention(nameOf(span.id, [...frame.people, frame.bot]) ?? 'someone')
    case 'role':
      return mention(nameOf(span.id, frame.roles) ?? 'a role')
    case 'channel':
      return mention(nameOf(span.id, frame.places) ?? 'a place')
    case 'command':
      return mention(`/${span.name}`)
    case 'everyone':
      return mention(span.text)
    case 'spoiler':
      return spoiler(span.inside.map(one => spanNode(one, frame)))
    default:
      return el(tagNames[span.kind], {}, ...span.inside.map(one => spanNode(one, frame)))
  }
}

function nameOf(id: string, among: readonly { readonly id: string; readonly name: string }[]): string | undefined {
  return among.find(one => one.id === id)?.name
}

function mention(text: string): HTMLElement {
  return el('span', { class: 'mention' }, text)
}

/** Something hidden until it is asked for. */
export function spoiler(inside: readonly Node[]): HTMLElement {
  const hidden = el('span', { class: 'spoiler-inside', hidden: true }, ...inside)
  const open = el('button', { type: 'button', class: 'spoiler', 'aria-expanded': 'false' }, 'Hidden: show')
  open.addEventListener('click', () => {
    hidden.hidden = false
    open.replaceWith(hidden)
  })
  return el('span', {}, open, hidden)
}

const timeStyles: Record<string, Intl.DateTimeFormatOptions> = {
  t: { timeStyle: 'short' },
  T: { timeStyle: 'medium' },
  d: { dateStyle: 'short' },
  D: { dateStyle: 'long' },
  f: { dateStyle: 'long', timeStyle: 'short' },
  F: { dateStyle: 'full', timeStyle: 'short' },
  s: { dateStyle: 'short', timeStyle: 'short' },
  S: { dateStyle: 'short', timeStyle: 'medium' },
}

function timeNode(seconds: number, style: string, frame: WireFrame): HTMLElement {
  const date = new Date(seconds * 1000)
  if (Number.isNaN(date.getTime())) return el('span', {}, `<t:${seconds}>`)
  const locale = localeOf(frame)
  const exact = new Intl.DateTimeFormat(locale, timeStyles['F']).format(date)
  const shown =
    style === 'R'
      ? relative(seconds, locale)
      : new Intl.DateTimeFormat(locale, timeStyles[style] ?? timeStyles['f']).format(date)
  return el('time', { datetime: date.toISOString(), title: exact }, shown)
}

function relative(seconds: number, locale: string): string {
  const away = seconds - Date.now() / 1000
  const units = [
    ['year', 31_536_000],
    ['month', 2_592_000],
    ['day', 86_400],
    ['hour', 3600],
    ['minute', 60],
  ] as const
  const words = new Intl.RelativeTimeFormat(locale, { numeric: 'auto' })
  for (const [unit, size] of units) if (Math.abs(away) >= size) return words.format(Math.round(away / size), unit)
  return words.format(Math.round(away), 'second')
}

/** The language of the person whose page this is. */
export function localeOf(frame: WireFrame): string {
  return frame.people.find(person => person.id === frame.you)?.locale ?? 'en'
}
