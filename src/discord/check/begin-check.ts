// Opens a check for the person who asks: within their number of open checks, once for each interaction.
import type { ChatInputCommandInteraction, MessageComponentInteraction } from 'discord.js'
import { act } from '../../check/act.ts'
import type { Mode } from '../../check/check.ts'
import type { Taker } from '../../check/custody.ts'
import type { Screen } from '../../check/screen.ts'
import { start } from '../../check/step.ts'
import type { Answers } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { dayOf } from '../../engine/day-of.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { sayIn } from '../../words/say.ts'
import type { Refusal } from '../interaction/refusal.ts'
import { serverOf } from '../interaction/rights.ts'
import { cut } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { holderOf } from './hand-over/turn.ts'

/** More open checks than this are a slip, or a nuisance. */
export const mostOpen = 10

/** Started and closed in a loop, checks would fill the disk: a closed one is kept for a day. */
export const mostPerDay = 40
const day = 24 * 3600_000

export type Wanted = {
  readonly family: string | null
  /** Where it is left out, the first screen asks. */
  readonly mode?: Mode
  readonly cells: number
  readonly known?: Answers
  /** Who it is offered to at once; its starter holds it until somebody takes it. */
  readonly offer?: Taker
}

export type Beginning =
  | { readonly is: 'begun'; readonly program: Program; readonly screen: Screen }
  /** This very interaction has opened a check before: there is nothing left to do. */
  | { readonly is: 'seen' }
  | { readonly is: 'refused'; readonly refusal: Refusal }

/** One after the other for each person, so that many commands at once open no more than one after the other would. */
export const beginCheck = (services: Services, interaction: Starting, wanted: Wanted): Promise<Beginning> =>
  services.queue.inOrder(`begins ${interaction.user.id}`, () => begin(services, interaction, wanted))

type Starting = ChatInputCommandInteraction | MessageComponentInteraction

async function begin(services: Services, interaction: Starting, wanted: Wanted): Promise<Beginning> {
  const now = services.now()
  const judging = await services.families.programToStart(serverOf(interaction), wanted.family, dayOf(now))
  if (!judging) return refused({ code: 'unknown-family', name: cut(wanted.family ?? '', 60) })
  const program = inLanguage(judging, sayIn(interaction.locale).locale)
  const open = await services.checks.heldBy(interaction.user.id, now)
  // Asked after the person's checks were read, as in `countedAlready`.
  if (await services.checks.counted(interaction.user.id, interaction.id)) return { is: 'seen' }
  if (open.length >= mostOpen) return refused({ code: 'too-many-open', count: open.length })
  if ((await services.checks.startedSince(interaction.user.id, now - day)) >= mostPerDay)
    return refused({ code: 'too-many-today', most: mostPerDay })
  const who = { id: services.newId(), holder: interaction.user.id, server: serverOf(interaction) }
  const { offer, ...asked } = wanted
  const started = start(program, { ...who, ...asked }, now)
  if (!started.ok) return refused(started.refusal)
  const begun = offer
    ? act(
        program,
        started.check,
        holderOf(started.check, started.check.server !== null),
        { is: 'offer', to: offer, why: '' },
        now,
      )
    : started
  if (!begun.ok) return refused(begun.refusal)
  const created = await services.checks.create(begun.check, interaction.id, mostOpen)
  if (created === 'full') return refused({ code: 'too-many-open', count: mostOpen })
  return created === 'seen' ? { is: 'seen' } : { is: 'begun', program, screen: begun.screen }
}

const refused = (refusal: Refusal): Beginning => ({ is: 'refused', refusal })
