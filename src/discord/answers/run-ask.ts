// /ask as it runs, and the same in the menu of a message.
import { languageOf } from '../../answers/entry.ts'
import { sayIn } from '../../words/say.ts'
import type { Runs, RunsOnMessage } from '../interaction/command.ts'
import { replyWith } from '../interaction/reply.ts'
import { cut } from '../message/parts.ts'
import { findAnswer } from './find-answer.ts'
import { titleFor } from './show-answer.ts'

const mostSuggested = 25
/** Suggestions read no more of what is being typed: a title is no longer. */
const longestTyped = 80

export const runAsk: Runs = {
  /** Titles that hold what was typed, then those the search finds. */
  async suggest(services, interaction) {
    const say = sayIn(interaction.locale)
    const book = await services.answers()
    const typed = interaction.options.getFocused().trim().slice(0, longestTyped)
    const low = typed.toLocaleLowerCase(say.locale)
    const titled = book.entries.map(entry => ({ entry, title: titleFor(say, entry) }))
    const holding = titled.filter(one => one.title.toLocaleLowerCase(say.locale).includes(low)).map(one => one.entry)
    const { answer, near } = book.lookUp(typed, [languageOf(say.locale)])
    const offered = [...new Set([...(answer ? [answer] : []), ...holding, ...near])]
    await interaction.respond(
      offered.slice(0, mostSuggested).map(entry => ({ value: entry.id, name: cut(titleFor(say, entry), 100) })),
    )
  },

  async run(services, interaction) {
    const question = interaction.options.getString('question', true)
    await replyWith(interaction, services.answers(), book =>
      findAnswer(services, interaction, book, { question, to: null }),
    )
  },
}

export const runFindAnswer: RunsOnMessage = {
  async run(services, interaction) {
    const { content, id } = interaction.targetMessage
    await replyWith(interaction, services.answers(), book =>
      findAnswer(services, interaction, book, { question: content.trim(), to: id }),
    )
  },
}
