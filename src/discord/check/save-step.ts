// Saves a step of a check. With a verdict it is decided whether the check will be counted; when it closes, its outcome goes with it.
import type { BaseInteraction } from 'discord.js'
import type { Check } from '../../check/check.ts'
import type { Screen } from '../../check/screen.ts'
import type { Stepping } from '../../check/step.ts'
import type { Saving } from '../../check/store.ts'
import type { Program } from '../../engine/compile.ts'
import type { Services } from '../services.ts'
import { leavesOf, outcomeAtClosing } from './leave-outcome.ts'

type Stepped = Extract<Stepping, { ok: true }>
export type SavedStep = { readonly saving: Saving | 'full'; readonly check: Check; readonly screen: Screen }

export async function saveStep(
  services: Services,
  interaction: BaseInteraction,
  program: Program,
  before: Check,
  { check, screen }: Stepped,
  /** The most open checks somebody may have whom it comes to. */
  most?: number,
): Promise<SavedStep> {
  const save = (next: Check): Promise<Saving | 'full'> =>
    most === undefined
      ? services.checks.save(next, before.revision, interaction.id)
      : services.checks.pass(next, before.revision, interaction.id, services.now(), most)
  if (check.phase.is === 'done') {
    const counted = { ...check, leaves: await leavesOf(services, interaction, check) }
    const saving = await save(counted)
    return { saving, check: counted, screen: { ...screen, check: counted } }
  }
  if (most !== undefined) return { saving: await save(check), check, screen }
  // A check that is closed before it came to a verdict has none to count.
  const outcome =
    check.phase.is === 'closed' && before.phase.is === 'done'
      ? await outcomeAtClosing(services, interaction, program, before)
      : undefined
  return { saving: await services.checks.save(check, before.revision, interaction.id, outcome), check, screen }
}
