// Custom ids of the menu with the answers to a question about a file.
import { idKind } from './id-kind.ts'
import { ownId } from './id-parts.ts'

export const logQuestionIds = idKind('cl1', { draft: ownId })
