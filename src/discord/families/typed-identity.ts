// What the form of a model says: name, maker, size and kind, and its figures; or the sentence that says what to change.
import type { ModalSubmitInteraction } from 'discord.js'
import type { Pack } from '../../engine/pack/pack.ts'
import type { Figures, Identity } from '../../families/facts/facts-schema.ts'
import { nameProblems, tidyName } from '../../families/names.ts'
import { readFigures } from '../../families/read-figures.ts'
import { sayFactProblem } from '../../words/family-words.ts'
import { plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { fields, sizeOf } from './show/menus.ts'
import { chosenIn, typedIn } from './typed-fields.ts'

export type TypedIdentity =
  | { readonly identity: Pick<Identity, 'name' | 'maker' | 'format' | 'kind'>; readonly figures: Figures }
  | { readonly note: string }

/** `before`: figures that the form does not ask for. */
export function identityIn(say: Say, base: Pack, interaction: ModalSubmitInteraction, before?: Figures): TypedIdentity {
  const [name = '', maker = ''] = [fields.name, fields.maker].map(one => tidyName(typedIn(interaction, one)))
  const [problem] = [name, maker].flatMap(nameProblems)
  if (problem) return { note: sayFactProblem(say, base, problem) }
  const size = sizeOf(chosenIn(interaction, fields.size)[0])
  if (!name || !maker || !size) return { note: say('families.refused.identity-empty') }
  const read = readFigures(typedIn(interaction, fields.figures), before)
  if (!read.ok) return { note: say('families.refused.figures', { what: plain(read.what) }) }
  return { identity: { name, maker, format: size.format, kind: size.kind }, figures: read.figures }
}
