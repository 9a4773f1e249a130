// /log as it runs: what was said of the test is read at once, the file in the background.
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { defer, editReply, replyPrivately } from '../interaction/reply.ts'
import { message, small, text } from '../message/parts.ts'
import { readTest, type SaidOfTest } from './log-request.ts'
import { answerLog } from './read-log.ts'

const asked = ['label', 'cutoff', 'current', 'room', 'instrument', 'wires', 'chemistry'] as const

export const runLog: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const { url, size } = interaction.options.getAttachment('file', true)
    const said = Object.fromEntries(asked.map(name => [name, interaction.options.getString(name)])) as SaidOfTest
    const read = readTest(say, said, interaction.locale)
    if (!read.ok)
      return replyPrivately(interaction, message([text(read.sentences.join('\n')), small(say('caution.line'))]))
    await defer(interaction)
    await editReply(
      interaction,
      await answerLog(services, say, interaction.user.id, { ...read.test, file: { url, size } }),
    )
  },
}
