// A check with all that is needed to go on with it: the program it is judged by, in the reader's language, fitted to today's packs.
import type { Check } from '../../check/check.ts'
import type { CheckId } from '../../check/ids.ts'
import { refit } from '../../check/refit.ts'
import type { Program } from '../../engine/compile.ts'
import { inLanguage } from '../../engine/in-language.ts'
import type { Say } from '../../words/say.ts'
import type { Services } from '../services.ts'

export type LoadedCheck = {
  /** As it stands, fitted to `program`. */
  readonly check: Check
  /** In the language of the reader. */
  readonly program: Program
  /** The same in the packs' own language. */
  readonly judging: Program
}

/** As loaded, and the interaction that changed it last: one that is delivered twice meets its own change. */
export type FoundCheck = LoadedCheck & { readonly changedBy: string }

/** Undefined where there is no such check any more, or its packs are gone. `expected`: the revision that is good enough. */
export async function loadCheck(
  services: Services,
  say: Say,
  id: CheckId,
  expected?: number,
): Promise<FoundCheck | undefined> {
  const found = await services.checks.load(id, expected)
  const loaded = found && (await fitCheck(services, say, found.check))
  return loaded && { ...loaded, changedBy: found.changedBy }
}

/** The check again, where somebody was faster; or why it is not shown: it may have gone into other hands meanwhile. */
export async function loadStillHeld(
  services: Services,
  say: Say,
  { id, holder }: Pick<Check, 'id' | 'holder'>,
): Promise<LoadedCheck | 'gone' | 'not-yours'> {
  const latest = await loadCheck(services, say, id)
  if (!latest) return 'gone'
  return latest.check.holder === holder ? latest : 'not-yours'
}

/** The same for a check that was found otherwise. Undefined where its packs are gone. */
export async function fitCheck(
  services: Pick<Services, 'families'>,
  say: Say,
  stored: Check,
): Promise<LoadedCheck | undefined> {
  const judging = await services.families.programOf(stored)
  return judging && { check: refit(judging, stored), program: inLanguage(judging, say.locale), judging }
}
