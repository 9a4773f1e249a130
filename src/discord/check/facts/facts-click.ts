// The buttons that start a check with what is known already: found out from a claim or a log, or of the check that was just closed.

import { anewIds, anyFamily, factsIds } from '../../../custom-ids/facts-codec.ts'
import type { Answers } from '../../../engine/answers.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import { type Clicked, refuse, replyPrivately } from '../../interaction/reply.ts'
import type { Services } from '../../services.ts'
import { beginCheck, type Wanted } from '../begin-check.ts'
import { showScreen } from '../show/screen.ts'

export const factsClick = onClick(factsIds, (services, interaction, { facts }) =>
  begin(services, interaction, { family: null, cells: 1, known: facts as Answers }),
)

export const anewClick = onClick(anewIds, (services, interaction, { cells, family, facts }) =>
  begin(services, interaction, { family: family === anyFamily ? null : family, cells, known: facts as Answers }),
)

async function begin(services: Services, interaction: Clicked, wanted: Wanted): Promise<void> {
  if (!interaction.isMessageComponent()) return
  const say = sayIn(interaction.locale)
  const begun = await beginCheck(services, interaction, wanted)
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  await replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, services))
}
