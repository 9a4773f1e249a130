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
import { pressedIn, typedIn } from './typed-fields.ts'

export type TypedIdentity =
  | { readonly identity: Pick<Identity, 'name' | 'maker' | 'format' | 'kind'>; readonly figures: Figures }
  | { readonly note: string }

/** From 500 to 9999: no current or weight of a cylindrical cell is so large. */
const bareCapacity = /^(?:[5-9]\d{2}|[1-9]\d{3})$/

/** `before`: figures that the form does not ask for. */
export function identityIn(say: Say, base: Pack, interaction: ModalSubmitInteraction, before?: Figures): TypedIdentity {
  const [name = '', maker = ''] = [fields.name, fields.maker].map(one => tidyName(typedIn(interaction, one)))
  const [problem] = [name, maker].flatMap(nameProblems)
  if (problem) return { note: sayFactProblem(say, base, problem) }
  const size = sizeOf(pressedIn(interaction, fields.size))
  if (!name || !maker || !size) return { note: say('families.refused.identity-empty') }
  const read = readFigures(typedIn(interaction, fields.figures), before)
  if (!read.ok) {
    // A number alone that can be a capacity is asked about; which it is, is never guessed.
    const asks = bareCapacity.test(read.what) ? [say('families.refused.figures.bare', { number: read.what })] : []
    return { note: [say('families.refused.figures', { what: plain(read.what) }), ...asks].join(' ') }
  }
  return { identity: { name, maker, format: size.format, kind: size.kind }, figures: read.figures }
}
