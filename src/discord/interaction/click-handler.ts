// What handles the clicks of one feature: the ids it has, and what a click on one of them does.

import type { IdKind } from '../../custom-ids/id-kind.ts'
import type { Services } from '../services.ts'
import type { Clicked } from './reply.ts'

export type ClickHandler = {
  /** The first word of the ids it handles. */
  readonly mark: string
  /** Handles a click; undefined, without having done anything, where the id is none of its ids. */
  handle(services: Services, interaction: Clicked): Promise<void> | undefined
}

export const onClick = <Value>(
  ids: IdKind<Value>,
  handle: (services: Services, interaction: Clicked, value: Value) => Promise<void> | undefined,
): ClickHandler => ({
  mark: ids.mark,
  handle(services, interaction) {
    const value = ids.read(interaction.customId)
    return value && handle(services, interaction, value)
  },
})
