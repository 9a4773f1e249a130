// Reads Discord's markdown into a tree of blocks and spans; no HTML is ever made of it.
// Source of the syntax: Discord's documentation, Reference, "Message Formatting", and its help page on markdown.

export type Span =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'bold' | 'italic' | 'underline' | 'struck' | 'spoiler'; readonly inside: readonly Span[] }
  | { readonly kind: 'code'; readonly text: string }
  | { readonly kind: 'link'; readonly url: string; readonly inside: readonly Span[] }
  | { readonly kind: 'time'; readonly seconds: number; readonly style: string }
  | { readonly kind: 'person' | 'role' | 'channel'; readonly id: string }
  | { readonly kind: 'command'; readonly name: string }
  | { readonly kind: 'everyone'; readonly text: string }
  | { readonly kind: 'break' }

export type Block =
  | { readonly kind: 'paragraph' | 'small' | 'quote'; readonly inside: readonly Span[] }
  | { readonly kind: 'heading'; readonly level: number; readonly inside: readonly Span[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly start: number; readonly items: readonly ListItem[] }
  | { readonly kind: 'code'; readonly text: string }

export type ListItem = {
  readonly depth: number
  readonly inside: readonly Span[]
}

/** The blocks of a text. */
export function readBlocks(text: string): Block[] {
  const blocks: Block[] = []
  // Fenced code first: nothing inside it is markdown.
  for (const [index, piece] of text.split(/```(?:[a-z0-9+#-]*\n)?([\s\S]*?)```/i).entries()) {
    if (index % 2 === 1) blocks.push({ kind: 'code', text: piece.replace(/^\n|\n$/g, '') })
    else if (piece.trim() !== '') blocks.push(...readLines(piece.replace(/^\n|\n$/g, '').split('\n')))
  }
  return blocks
}

function readLines(lines: readonly string[]): Block[] {
  const blocks: Block[] = []
  let plain: string[] = []
  const flush = () => {
    if (plain.length > 0) blocks.push({ kind: 'paragraph', inside: spansOfLines(plain) })
    plain = []
  }
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at] ?? ''
    const heading = /^(#{1,3}) +(\S.*)$/.exec(line)
    const small = /^-# +(\S.*)$/.exec(line)
    const item = listItem(line)
    if (heading !== null) {
      flush()
      blocks.push({ kind: 'heading', level: heading[1]?.length ?? 1, inside: readSpans(heading[2] ?? '') })
    } else if (small !== null) {
      flush()
      blocks.push({ kind: 'small', inside: readSpans(small[1] ?? '') })
    } else if (line.startsWith('>>> ')) {
      flush()
      blocks.push({ kind: 'quote', inside: spansOfLines([line.slice(4), ...lines.slice(at + 1)]) })
      break
    } else if (line.startsWith('> ')) {
      flush()
      const quoted: string[] = []
      while (lines[at]?.startsWith('> ')) quoted.push((lines[at++] ?? '').slice(2))
      at -= 1
      blocks.push({ kind: 'quote', inside: spansOfLines(quoted) })
    } else if (item !== null) {
      flush()
      const items: ListItem[] = []
      for (let next = listItem(lines[at] ?? ''); next !== null; next = listItem(lines[++at] ?? '')) {
        items.push({ depth: next.depth, inside: readSpans(next.text) })
      }
      at -= 1
      blocks.push({ kind: 'list', ordered: item.number !== null, start: item.number ?? 1, items })
    } else if (line.trim() === '') flush()
    else plain.push(line)
  }
  flush()
  return blocks
}

function listItem(line: string): { depth: number; number: number | null; text: string } | null {
  const match = /^( *)(?:[-*]|(\d{1,3})\.) +(\S.*)$/.exec(line)
  if (match === null) return null
  const depth = Math.min(3, Math.floor((match[1]?.length ?? 0) / 2))
  return { depth, number: match[2] === undefined ? null : Number(match[2]), text: match[3] ?? '' }
}

function spansOfLines(lines: readonly string[]): Span[] {
  return lines.flatMap((line, at) => (at === 0 ? readSpans(line) : [{ kind: 'break' } as const, ...readSpans(line)]))
}

type Rule = readonly [RegExp, (match: RegExpExecArray) => Span]

const inner = (match: RegExpExecArray) => readSpans(match[1] ?? '')

/** Tried in this order at every place of a line. */
const inlineRules: readonly Rule[] = [
  [/^\\([^\sA-Za-z0-9])/, match => ({ kind: 'text', text: match[1] ?? '' })],
  [/^``([\s\S]+?)``(?!`)/, match => ({ kind: 'code', text: (match[1] ?? '').trim() })],
  [/^`([^`]+)`/, match => ({ kind: 'code', text: match[1] ?? '' })],
  [
    /^<t:(-?\d{1,13})(?::([tTdDfFsSR]))?>/,
    match => ({ kind: 'time', seconds: Number(match[1]), style: match[2] ?? 'f' }),
  ],
  [/^<@!?(\d{1,20})>/, match => ({ kind: 'person', id: match[1] ?? '' })],
  [/^<@&(\d{1,20})>/, match => ({ kind: 'role', id: match[1] ?? '' })],
  [/^<#(\d{1,20})>/, match => ({ kind: 'channel', id: match[1] ?? '' })],
  [/^<\/([^:>]{1,100}):\d{1,20}>/, match => ({ kind: 'command', name: match[1] ?? '' })],
  [/^<a?:(\w{2,32}):\d{1,20}>/, match => ({ kind: 'text', text: `:${match[1]}:` })],
  [/^@(everyone|here)\b/, match => ({ kind: 'everyone', text: match[0] })],
  [
    /^\[([^\]\n]+)\]\(<?(https?:\/\/[^\s)>]+)>?(?: "[^"\n]*")?\)/,
    match => ({ kind: 'link', url: match[2] ?? '', inside: inner(match) }),
  ],
  [/^<(https?:\/\/[^\s>]+)>/, match => plainLink(match[1] ?? '')],
  [/^https?:\/\/[^\s<]*[^\s<.,:;"')\]!?*_|~]/, match => plainLink(match[0])],
  [/^\|\|([\s\S]+?)\|\|/, match => ({ kind: 'spoiler', inside: inner(match) })],
  [/^\*\*\*([\s\S]+?)\*\*\*(?!\*)/, match => ({ kind: 'bold', inside: [{ kind: 'italic', inside: inner(match) }] })],
  [/^\*\*([\s\S]+?)\*\*(?!\*)/, match => ({ kind: 'bold', inside: inner(match) })],
  [/^__([\s\S]+?)__(?!_)/, match => ({ kind: 'underline', inside: inner(match) })],
  [/^~~([\s\S]+?)~~/, match => ({ kind: 'struck', inside: inner(match) })],
  [/^\*(?=\S)((?:\*\*[^*]+\*\*|[^*])+?)\*(?!\*)/, match => ({ kind: 'italic', inside: inner(match) })],
  [/^_(?=\S)((?:__[^_]+__|[^_])+?)_(?![A-Za-z0-9_])/, match => ({ kind: 'italic', inside: inner(match) })],
]

function plainLink(url: string): Span {
  return { kind: 'link', url, inside: [{ kind: 'text', text: url }] }
}

/** The spans of one line. */
export function readSpans(line: string): Span[] {
  const spans: Span[] = []
  let text = ''
  const flush = () => {
    if (text !== '') spans.push({ kind: 'text', text })
    text = ''
  }
  let rest = line
  while (rest !== '') {
    const hit = firstHit(rest, text.at(-1) ?? '')
    if (hit === null) {
      // Take whole letters, so that no character is torn.
      const letter = String.fromCodePoint(rest.codePointAt(0) ?? 0)
      text += letter
      rest = rest.slice(letter.length)
      continue
    }
    if (hit.span.kind === 'text') text += hit.span.text
    else {
      flush()
      spans.push(hit.span)
    }
    rest = rest.slice(hit.length)
  }
  flush()
  return spans
}

function firstHit(rest: string, before: string): { span: Span; length: number } | null {
  // snake_case is no emphasis.
  if (rest.startsWith('_') && /[A-Za-z0-9]/.test(before)) return null
  for (const [pattern, make] of inlineRules) {
    const match = pattern.exec(rest)
    if (match !== null) return { span: make(match), length: match[0].length }
  }
  return null
}
