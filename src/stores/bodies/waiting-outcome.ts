// The form of an outcome while it waits in its check; once it is counted it stands in columns.
import { type Outcome, outcomeShape } from '../../trends/outcome.ts'
import { type Body, bodyOf } from './body.ts'

export const waitingBody: Body<Outcome> = bodyOf('An outcome', outcomeShape)
