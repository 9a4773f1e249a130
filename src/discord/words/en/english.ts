// The English catalogue: every word people see, put together from one file per topic.
import { problems } from './problems.ts'

export const english = { ...problems } as const
