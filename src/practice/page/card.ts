// One message as a card on the sheet.

import type { WireMessage } from '../wire.ts'
import { whileBusy } from './controls.ts'
import type { Desk } from './desk.ts'
import { el } from './dom.ts'
import { localeOf, markdown } from './markdown-view.ts'
import { attachmentNode, partNodes, pictureNode } from './parts.ts'

const v2Flag = 1 << 15

/** The card of a message. */
export function cardNode(message: WireMessage, desk: Desk): HTMLElement {
  const frame = desk.frame()
  const you = frame.people.find(one => one.id === frame.you)?.name ?? ''
  const kind = message.private ? 'private' : message.author.bot ? 'bot' : 'person'
  const time = new Intl.DateTimeFormat(localeOf(frame), { timeStyle: 'short' }).format(message.at)
  const privately = message.private ? `only ${you} sees this` : ''
  const marks = [privately, message.editedAt === null ? '' : 'changed', message.pinned ? 'pinned' : ''].filter(
    one => one !== '',
  )
  return el(
    'article',
    {
      class: 'card',
      'data-message-id': message.id,
      'data-kind': kind,
      tabindex: -1,
      'aria-label': [`${message.author.name}, ${time}`, ...marks].join(', '),
    },
    el(
      'header',
      {},
      el('strong', {}, message.author.name),
      el('time', { datetime: new Date(message.at).toISOString() }, time),
      ...marks.map(words => el('span', { class: 'mark' }, words)),
      actionsNode(message, desk),
    ),
    message.replyTo !== null && el('p', { class: 'small' }, 'In answer to an earlier message'),
    message.loading && el('p', { class: 'waiting' }, `${message.author.name} is working on it…`),
    ...bodyNodes(message, desk),
    threadNode(message, desk),
  )
}

function bodyNodes(message: WireMessage, desk: Desk): HTMLElement[] {
  const frame = desk.frame()
  const v2 = (message.flags & v2Flag) !== 0
  const nodes: HTMLElement[] = []
  if (message.content !== '') nodes.push(markdown(message.content, frame))
  for (const embed of message.embeds) nodes.push(embedNode(embed, desk))
  if (!v2) nodes.push(...message.attachments.map(attachmentNode))
  nodes.push(...partNodes(message.components, message.id, desk))
  if (message.reactions.length > 0) {
    const words = message.reactions.map(one => `${one.emoji} ${one.by.length}`).join('  ')
    nodes.push(el('p', { class: 'small', 'aria-label': `Reactions: ${words}` }, words))
  }
  return nodes
}

function embedNode(embed: WireMessage['embeds'][number], desk: Desk): HTMLElement {
  const frame = desk.frame()
  const words = (value: unknown) => (typeof value === 'string' && value !== '' ? value : null)
  const inner = (key: string, name: string) => words((embed[key] as Record<string, unknown> | undefined)?.[name])
  const fields = (embed['fields'] ?? []) as { name: string; value: string }[]
  const title = words(embed['title'])
  const description = words(embed['description'])
  const author = inner('author', 'name')
  const footer = inner('footer', 'text')
  const picture = inner('image', 'url') ?? inner('thumbnail', 'url')
  const box = el(
    'section',
    { class: 'container' },
    author && el('p', { class: 'small' }, author),
    title && el('h3', {}, title),
    description && markdown(description, frame),
    fields.length > 0 &&
      el(
        'dl',
        {},
        ...fields.flatMap(field => [
          el('dt', {}, markdown(field.name, frame)),
          el('dd', {}, markdown(field.value, frame)),
        ]),
      ),
    picture && pictureNode(picture.replace(/^https?:\/\/[^/]+(?=\/cdn\/)/, ''), '', false),
    footer && el('p', { class: 'small' }, footer),
  )
  if (typeof embed['color'] === 'number') {
    box.style.setProperty('--accent', `#${embed['color'].toString(16).padStart(6, '0')}`)
    box.dataset['accent'] = 'set'
  }
  return box
}

/** What can be done with the message itself: the bot's message commands, and putting a private reply away. */
function actionsNode(message: WireMessage, desk: Desk): HTMLElement | null {
  const frame = desk.frame()
  const nodes: HTMLElement[] = frame.commands
    .filter(one => one.kind === 'message')
    .map(command => {
      const button = el('button', { type: 'button', class: 'quiet', 'data-command': command.path }, command.shownPath)
      button.addEventListener('click', () => {
        const act = { do: 'use-on-message', you: frame.you, message: message.id, command: command.path } as const
        void whileBusy(button, () => desk.perform(act))
      })
      return button
    })
  if (message.private) {
    const away = el('button', { type: 'button', class: 'quiet', 'data-command': 'put-away' }, 'Put away')
    away.addEventListener('click', () => void desk.perform({ do: 'dismiss', you: frame.you, message: message.id }))
    nodes.push(away)
  }
  return nodes.length === 0
    ? null
    : el(
        'details',
        { class: 'actions' },
        el('summary', { 'aria-label': 'What to do with this message' }, 'Do…'),
        el('div', {}, ...nodes),
      )
}

function threadNode(message: WireMessage, desk: Desk): HTMLElement | null {
  const thread = desk.frame().places.find(one => one.id === message.threadId)
  if (thread === undefined) return null
  const button = el('button', { type: 'button', class: 'quiet' }, `Go to the thread “${thread.name}”`)
  button.addEventListener('click', () => desk.visit(thread.id))
  return button
}
