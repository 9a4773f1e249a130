// Families as files, as the handlers ask for them: what a stranger's file holds, and the text of one to give away.
import type { Importing } from '../families/exchange/exchange.ts'
import type { Facts } from '../families/facts/facts-schema.ts'

export type ReadFile =
  | Importing
  | { readonly ok: false; readonly yaml: string }
  /** In kB. */
  | { readonly ok: false; readonly tooLarge: number }

export type FamilyFiles = {
  /** `link`: of an attachment; `id`: the new family's own. */
  read(link: string, id: string): Promise<ReadFile>
  write(facts: Facts): Promise<string>
}
