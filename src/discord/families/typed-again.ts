// A form of a model that was not taken: why, what was typed, and a button that opens it again with all of that in it.
import { ButtonStyle, type ModalSubmitInteraction } from 'discord.js'
import { encodeFamily, familyStartIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import type { Say } from '../../words/say.ts'
import { type Clicked, refuse } from '../interaction/reply.ts'
import { typedBack } from '../interaction/typed-back.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { fields, type IdentityTyped, identityForm } from './show/menus.ts'
import { pressedIn, typedIn } from './typed-fields.ts'

/** Long enough to look at a label once more. */
const keptFor = 3600_000

type Kept = IdentityTyped & { readonly is: 'model'; readonly person: string }
/** The model whose form it is; none of a new one. */
type Of = { readonly family: string; readonly revision: number } | undefined

export async function showTypedAgain(
  services: Services,
  interaction: ModalSubmitInteraction,
  say: Say,
  why: string,
  of?: Of,
): Promise<ShownMessage> {
  const typed: Kept = {
    ...{ is: 'model', person: interaction.user.id },
    ...{ name: typedIn(interaction, fields.name), maker: typedIn(interaction, fields.maker) },
    ...{ size: pressedIn(interaction, fields.size) ?? '', figures: typedIn(interaction, fields.figures) },
  }
  const draft = await services.drafts.keep(typed, keptFor)
  const again = of
    ? encodeFamily({ ...of, act: { is: 'figures-again', draft } })
    : familyStartIds.write({ act: 'again', opening: draft })
  return message([
    text(why),
    ...typedBack(say, interaction),
    ...rows([
      pressButton(again, say('families.button.again'), ButtonStyle.Primary),
      ...(of ? [pressButton(encodeFamily({ ...of, act: { is: 'page' } }), say('families.button.page'))] : []),
    ]),
    small(say('caution.line')),
  ])
}

/** `id`: by which what is typed now comes back. */
export async function openTypedAgain(
  services: Services,
  interaction: Clicked,
  say: Say,
  draft: string,
  id: (opening: string) => string,
): Promise<void> {
  if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const typed = (await services.drafts.find(draft)) as Kept | undefined
  if (typed?.is !== 'model' || typed.person !== interaction.user.id)
    return refuse(interaction, say, { code: 'form-forgotten' })
  await interaction.showModal(identityForm(say, id(newOpening(services.newId)), typed))
}
