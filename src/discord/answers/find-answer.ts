// What is shown for a question, to the person who asked alone: the entry that answers it, or what comes near.
import type { BaseInteraction } from 'discord.js'
import type { AnswerBook } from '../../answers/book.ts'
import { type Entry, languageOf } from '../../answers/entry.ts'
import { sayIn } from '../../words/say.ts'
import { mayWriteHere, serverOf } from '../interaction/rights.ts'
import type { ShownMessage } from '../message/parts.ts'
import { sayInPublic } from '../posts/say-in-public.ts'
import type { Services } from '../services.ts'
import { type Asked, showAnswer, showNoAnswer } from './show-answer.ts'

/** Where no answer is sure, so many questions are offered. */
const mostNear = 5

/** Looks the question up in the language that it is in, and answers whoever typed it in that, whatever they have set. */
export async function findAnswer(
  services: Services,
  interaction: BaseInteraction,
  book: AnswerBook,
  asked: Asked,
): Promise<ShownMessage> {
  const say = sayIn(interaction.locale)
  const spoken = await sayInPublic(services, serverOf(interaction), interaction.guildLocale)
  const found = book.lookUp(asked.question ?? '', [languageOf(say.locale), languageOf(spoken.locale)])
  // A helper who looks up somebody else's message reads it in their own language.
  const own = asked.to !== null || found.language === languageOf(say.locale)
  const asking = own ? say : sayIn(found.language)
  if (!found.answer) return showNoAnswer(asking, asked, found.near.slice(0, mostNear))
  const near = [...new Set([...relatedTo(book, found.answer), ...found.near])]
  return showAnswer(asking, { ...asked, entry: found.answer, near, mayPost: mayWriteHere(interaction) })
}

export const relatedTo = (book: AnswerBook, entry: Entry): readonly Entry[] =>
  entry.related.flatMap(id => book.entry(id) ?? [])
