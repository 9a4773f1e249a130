// The answer to a question about a log: the file is read once more with it.
import type { StringSelectMenuInteraction } from 'discord.js'
import { fill, refuse, takeTime } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { type AskedLog, answerLog, logQuestionMark, withAnswer } from '../read-log.ts'
import { choicesOf } from '../show/log-question.ts'
import { sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const logClick: ClickHandler = (desk, interaction) =>
  interaction.customId.startsWith(logQuestionMark) && interaction.isStringSelectMenu()
    ? choose(desk, interaction)
    : undefined

async function choose(desk: Desk, interaction: StringSelectMenuInteraction): Promise<void> {
  const say = sayIn(interaction.locale)
  const asked = (await desk.drafts.find(interaction.customId.slice(logQuestionMark.length))) as AskedLog | undefined
  if (asked?.is !== 'log') return refuse(interaction, say, { code: 'log-forgotten' })
  if (asked.person !== interaction.user.id) return refuse(interaction, say, { code: 'not-yours' })
  const choice = choicesOf(say, asked.question).find(one => one.value === interaction.values[0])
  if (!choice) return refuse(interaction, say, { code: 'log-forgotten' })
  await takeTime(interaction)
  await fill(interaction, await answerLog(desk, say, asked.person, withAnswer(asked.request, choice.means)))
}
