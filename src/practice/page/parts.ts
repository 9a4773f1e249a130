// Draws the components of a message: text, sections, pictures, files, separators, containers, rows.

import type { WireFile, WirePart } from '../wire.ts'
import { buttonNode, rowNode } from './controls.ts'
import type { Desk } from './desk.ts'
import { el, sizeInWords } from './dom.ts'
import { markdown, spoiler } from './markdown-view.ts'

/** The nodes of a list of components. */
export function partNodes(parts: readonly WirePart[], messageId: string, desk: Desk): HTMLElement[] {
  return parts.map(part => partNode(part, messageId, desk))
}

function partNode(part: WirePart, messageId: string, desk: Desk): HTMLElement {
  switch (part.type) {
    case 1:
      return rowNode(part, messageId, desk)
    case 9:
      return sectionNode(part, messageId, desk)
    case 10:
      return markdown(part.content ?? '', desk.frame())
    case 12:
      return el(
        'div',
        { class: 'gallery', 'data-count': (part.items ?? []).length },
        ...(part.items ?? []).map(item =>
          pictureNode(item.media.url, item.description ?? '', item.spoiler ?? false, item.media),
        ),
      )
    case 13:
      return fileNode(
        { url: part.file?.url ?? '', name: part.name ?? 'file', size: part.size ?? 0 },
        part.spoiler ?? false,
      )
    case 14:
      return el('hr', {
        class: `separator spacing-${part.spacing ?? 1}`,
        'data-line': part.divider === false ? 'none' : 'drawn',
      })
    case 17:
      return containerNode(part, messageId, desk)
    default:
      return el('p', { class: 'small' }, `(A part of kind ${part.type}, which this page cannot show.)`)
  }
}

function sectionNode(part: WirePart, messageId: string, desk: Desk): HTMLElement {
  const beside = part.accessory
  const accessory =
    beside === undefined
      ? null
      : beside.type === 2
        ? buttonNode(beside, messageId, desk)
        : pictureNode(beside.media?.url ?? '', beside.description ?? '', beside.spoiler ?? false)
  const kind = beside?.type === 2 ? 'button' : 'picture'
  return el(
    'div',
    { class: 'section', 'data-beside': kind },
    el('div', { class: 'section-words' }, ...partNodes(part.components ?? [], messageId, desk)),
    accessory && el('div', { class: 'section-beside' }, accessory),
  )
}

function containerNode(part: WirePart, messageId: string, desk: Desk): HTMLElement {
  const inside = partNodes(part.components ?? [], messageId, desk)
  const box = el('section', { class: 'container' }, ...(part.spoiler ? [spoiler(inside)] : inside))
  if (typeof part.accent_color === 'number') {
    box.style.setProperty('--accent', `#${part.accent_color.toString(16).padStart(6, '0')}`)
    box.dataset['accent'] = 'set'
  }
  return box
}

type Size = { readonly width?: number | null; readonly height?: number | null }

/** A picture of the stand-in's own; pictures from elsewhere are only linked, so that the page stays at home. */
export function pictureNode(url: string, alt: string, hidden: boolean, size: Size = {}): HTMLElement {
  if (!url.startsWith('/cdn/')) {
    return el(
      'p',
      { class: 'small' },
      'A picture from elsewhere: ',
      el('a', { href: url, target: '_blank', rel: 'noreferrer noopener' }, alt || url),
    )
  }
  const image = el('img', { src: url, alt, loading: 'lazy', decoding: 'async' })
  if (alt === '') image.setAttribute('data-without-alt', '')
  const link = el('a', { class: 'picture', href: url, target: '_blank', rel: 'noopener' }, image)
  // What is known to be so large has its place before it is there, and nothing jumps.
  if (size.width && size.height) {
    link.dataset['size'] = 'known'
    link.dataset['shape'] = size.width < size.height ? 'high' : 'broad'
    link.style.setProperty('--wide', `${size.width}px`)
    link.style.setProperty('--ratio', String(size.width / size.height))
  }
  return hidden ? spoiler([link]) : link
}

/** A file to take along. */
function fileNode(file: { url: string; name: string; size: number }, hidden: boolean): HTMLElement {
  const link = el(
    'a',
    { class: 'file', href: file.url, download: file.name },
    el('span', {}, file.name),
    el('span', { class: 'hint' }, sizeInWords(file.size)),
  )
  return hidden ? spoiler([link]) : link
}

/** An attachment of a message without displays. */
export function attachmentNode(file: WireFile): HTMLElement {
  const shown = /^image\/(png|jpeg|gif|webp|svg\+xml)/.test(file.contentType)
  const hidden = file.name.startsWith('SPOILER_')
  return shown ? pictureNode(file.url, file.description ?? '', hidden) : fileNode(file, hidden)
}
