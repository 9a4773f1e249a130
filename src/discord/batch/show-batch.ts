// Shows what the figures of a batch say and what they do not, with a way on to check one of the cells; or what was wrong with them.
import { ButtonStyle } from 'discord.js'
import { factsOfBatch } from '../../check/known/facts-of-batch.ts'
import { startWithFacts } from '../../custom-ids/facts-codec.ts'
import type { ReadBatch } from '../../readings/batch/read-batch.ts'
import type { BatchFinding } from '../../readings/batch/weigh-batch.ts'
import { sayBatch, sayBatchRefusal } from '../../words/batch-words.ts'
import { plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'

/** `values` in g or mAh, as they were typed. */
export function showBatch(say: Say, finding: BatchFinding, values: readonly number[]): ShownMessage {
  const [found, ...more] = sayBatch(say, finding, values)
  const facts = factsOfBatch(finding)
  const start =
    Object.keys(facts).length === 0 ? [] : [pressButton(startWithFacts(facts), say('batch.start'), ButtonStyle.Primary)]
  return message([
    text(`### ${say('batch.title', { count: values.length, quantity: finding.quantity })}\n**${found}**`),
    text(more.join('\n\n')),
    ...rows(start, 1),
    small(say('caution.line')),
  ])
}

/** What was typed stands above the sentence, so that it can be copied and mended. */
export function showUnreadBatch(say: Say, typed: string, read: ReadBatch): ShownMessage {
  const sentence = read.ok ? say('batch.problem.not-positive') : sayBatchRefusal(say, read.refusal)
  return message([
    text(`> ${plain(typed.replace(/\s+/g, ' ').slice(0, 300))}\n${sentence}`),
    small(say('caution.line')),
  ])
}
