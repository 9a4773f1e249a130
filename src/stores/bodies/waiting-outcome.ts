// The form of an outcome while it waits in its check; once it is counted it stands in columns.
import { type Outcome, outcomeShape } from '../../trends/outcome.ts'
import { noLongerKept } from '../coarser-outcomes-migration.ts'
import { type Body, bodyOf, type UpCast } from './body.ts'

/** From version 1: figures, "can't tell", size, number of cells and some answers are kept no longer. */
const coarser: UpCast = ({ format, readings, claims, cantTell, cells, options, ...kept }) => ({
  ...kept,
  options: Object.fromEntries(
    Object.entries((options ?? {}) as Record<string, unknown>).filter(
      ([question]) => !(noLongerKept as readonly string[]).includes(question),
    ),
  ),
})

export const waitingBody: Body<Outcome> = bodyOf('An outcome', outcomeShape, [coarser])
