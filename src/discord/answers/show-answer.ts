// Shows the answer to a question with its sources and caution, or that there is none and what comes near.
import { type APIStringSelectComponent, ButtonStyle, ComponentType } from 'discord.js'
import { type Entry, type EntrySource, languageOf, longestQuery, textFor } from '../../answers/entry.ts'
import { encodeAsk, type ReplyTo } from '../../custom-ids/ask-id.ts'
import { startWithFacts } from '../../custom-ids/facts-codec.ts'
import { plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'

/** The question as somebody typed it, and the message it is to be answered under, if any. */
export type Asked = { readonly question?: string; readonly to: ReplyTo }

export type PrivateAnswer = Asked & {
  readonly entry: Entry
  /** Questions to go on with. */
  readonly near: readonly Entry[]
  readonly mayPost: boolean
  readonly note?: string
}

const quoted = 200
const mostOffered = 10

/** What the person who asked sees. */
export function showAnswer(say: Say, { entry, near, mayPost, note, question, to }: PrivateAnswer): ShownMessage {
  const post = pressButton(encodeAsk({ is: 'post', entry: entry.id, to }), say(to ? 'ask.reply' : 'ask.post'))
  return message([
    ...(note ? [text(`**${note}**`)] : []),
    ...quote(say, question),
    ...emergency(say, [entry]),
    ...checkFirst(say, entry),
    ...body(say, entry),
    ...related(say, near, to),
    ...rows([...checkAfter(say, entry), ...(mayPost ? [post] : [])]),
    ...caution(say, entry),
  ])
}

/** What everybody in a channel sees; `by` is the id of the person who posted it. */
export function showPublicAnswer(say: Say, entry: Entry, near: readonly Entry[], by: string): ShownMessage {
  return message([
    ...emergency(say, [entry]),
    ...checkFirst(say, entry),
    ...body(say, entry),
    ...related(say, near, null),
    ...rows(checkAfter(say, entry)),
    ...caution(say, entry),
    small(say('ask.posted-by', { who: `<@${by}>` })),
  ])
}

/** No entry answers for sure: said so, with what comes nearest as choices and no answer. */
export function showNoAnswer(say: Say, { question, to }: Asked, near: readonly Entry[]): ShownMessage {
  const none = question === '' ? say('ask.no-text') : say('ask.none')
  return message([
    ...quote(say, question),
    ...emergency(say, near.slice(0, 1)),
    ...(near[0] ? checkFirst(say, near[0]) : []),
    text([none, ...(near.length > 0 ? [say('ask.nearest')] : [])].join('\n')),
    ...rows(
      [
        ...near.map(entry => pressButton(encodeAsk({ is: 'show', entry: entry.id, to }), titleFor(say, entry))),
        ...checkAfter(say, near[0]),
      ],
      1,
    ),
    small(say('caution.line')),
  ])
}

/** A title where nothing but titles stands: one that is not in the reader's language says so. */
export function titleFor(say: Say, entry: Entry): string {
  const { title, language } = textFor(entry, languageOf(say.locale))
  return language === languageOf(say.locale) ? title : say('ask.in-english', { title })
}

function quote(say: Say, question: string | undefined) {
  const line = question?.replace(/\s+/g, ' ').trim()
  const rest = (question ?? '').length > longestQuery ? [small(say('ask.cut', { most: longestQuery }))] : []
  return line ? [text(`> ${plain(cut(line, quoted))}`), ...rest] : []
}

function body(say: Say, entry: Entry) {
  const own = textFor(entry, languageOf(say.locale))
  const sources = entry.sources.map(source => saySource(say, source)).join(' · ')
  return [
    text(`### ${own.title}\n${own.body}`),
    small(
      [
        ...(own.language === languageOf(say.locale) ? [] : [say('ask.untranslated')]),
        say('ask.sources', { sources }),
      ].join('\n'),
    ),
  ]
}

const checkButton = (say: Say) => pressButton(startWithFacts({}), say('ask.check'), ButtonStyle.Primary)

/** Whoever asks about a cell before them is better served by looking at that cell than by reading on. */
const checkFirst = (say: Say, entry: Entry) =>
  entry.inHand ? [text(say('ask.in-hand')), ...rows([checkButton(say)])] : []

/** Offered below where it was not offered first. Nobody is sent to look closer at a cell that may burn. */
const checkAfter = (say: Say, entry: Entry | undefined) =>
  entry?.inHand || entry?.caution === 'emergency' ? [] : [checkButton(say)]

/** Whoever may have a burning cell before them, or on them, reads first that one gets away, and how to be rid of it. */
const emergency = (say: Say, entries: readonly Entry[]) =>
  entries.some(entry => entry.caution === 'emergency')
    ? [text(`${say('safety.now.ask')} **${say('safety.now')}** ${say('safety.now.worn')} ${say('ask.read-after')}`)]
    : []

const saySource = (say: Say, source: EntrySource): string =>
  'text' in source
    ? say(`ask.source.${source.kind}`, { text: source.told[languageOf(say.locale)] ?? source.text })
    : say(`ask.source.${source.kind}`)

function caution(say: Say, entry: Entry) {
  return [...(entry.caution === 'line' ? [] : [text(`> ${say('caution.full')}`)]), text(`**${say('caution.line')}**`)]
}

function related(say: Say, entries: readonly Entry[], to: ReplyTo) {
  if (entries.length === 0) return []
  const menu: APIStringSelectComponent = {
    type: ComponentType.StringSelect,
    custom_id: encodeAsk({ is: 'choose', to }),
    placeholder: say('ask.related'),
    options: entries.slice(0, mostOffered).map(entry => ({ value: entry.id, label: cut(titleFor(say, entry), 100) })),
  }
  return rows([menu], 1)
}
