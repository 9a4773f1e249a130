// A verdict as everybody in a channel may see it: the word, what was seen and measured, the caution; nothing about whoever sold the cell.
import { ButtonStyle } from 'discord.js'
import type { VerdictScreen } from '../../../check/screen.ts'
import { encodeShare } from '../../../custom-ids/share-id.ts'
import type { Program } from '../../../engine/compile.ts'
import { sayWhat } from '../../../words/describe.ts'
import { letterFacts } from '../../../words/letter/letter-facts.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { stepsFor } from '../show/steps.ts'

/** More facts than these are not read in a channel. */
const mostFacts = 4

/** The body of the card, in the language of `say` and `program`. */
function card(say: Say, program: Program, screen: VerdictScreen): string {
  const { judgement } = screen
  const facts = letterFacts(say, program, screen).slice(0, mostFacts)
  const steps = judgement.verdict === 'danger' ? stepsFor(program, screen, say).slice(0, 1) : []
  return [
    `### ${say(`verdict.${judgement.verdict}`)}`,
    say('check.title', { what: sayWhat(say, program.family) }),
    ...facts.map(({ line }) => `- ${plain(line)}`),
    ...(facts.length === 0 ? [say(`verdict.${judgement.verdict}.means`)] : []),
    ...steps.map(step => `**${step}**`),
    `-# ${say('share.one-cell')}`,
  ].join('\n')
}

/** What everybody in the channel sees; `by` is the id of the person who posted it. */
export const showShared = (say: Say, program: Program, screen: VerdictScreen, by: string): ShownMessage =>
  message([
    text(card(say, program, screen)),
    ...rows([pressButton(encodeShare({ is: 'remove', check: screen.check.id }), say('share.remove'))]),
    small([say('caution.full'), say('share.by', { who: `<@${by}>` })].join('\n')),
  ])

/** The same, to its person alone, before it is posted; `inPublic` and `program` in the server's language. */
export const showBeforehand = (say: Say, inPublic: Say, program: Program, screen: VerdictScreen): ShownMessage =>
  message([
    text(`**${say('share.beforehand')}**`),
    text(card(inPublic, program, screen)),
    ...rows([pressButton(encodeShare({ is: 'post', check: screen.check.id }), say('share.post'), ButtonStyle.Primary)]),
    small(say('caution.line')),
  ])
