// The answer to a question about a log: the file is read once more with it.
import type { StringSelectMenuInteraction } from 'discord.js'
import { logQuestionIds } from '../../custom-ids/log-question-id.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { defer, editReply, refuse } from '../interaction/reply.ts'
import type { Services } from '../services.ts'
import { type AskedLog, answerLog, withAnswer } from './read-log.ts'
import { choicesOf } from './show-log-question.ts'

export const logClick = onClick(logQuestionIds, (services, interaction, { draft }) =>
  interaction.isStringSelectMenu() ? choose(services, interaction, draft) : undefined,
)

async function choose(services: Services, interaction: StringSelectMenuInteraction, draft: string): Promise<void> {
  const say = sayIn(interaction.locale)
  const asked = (await services.drafts.find(draft)) as AskedLog | undefined
  if (asked?.is !== 'log') return refuse(interaction, say, { code: 'log-forgotten' })
  if (asked.person !== interaction.user.id) return refuse(interaction, say, { code: 'not-yours' })
  const choice = choicesOf(say, asked.question).find(one => one.value === interaction.values[0])
  if (!choice) return refuse(interaction, say, { code: 'log-forgotten' })
  await defer(interaction)
  await editReply(interaction, await answerLog(services, say, asked.person, withAnswer(asked.request, choice.means)))
}
