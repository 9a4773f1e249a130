// A statement that was compiled once, with the values of one call: building the text again costs more than running it.
import type { CompiledQuery } from 'kysely'

/** `parameters` in the order in which the statement was built. */
export const withValues = <Row>(query: CompiledQuery<Row>, parameters: readonly unknown[]): CompiledQuery<Row> => ({
  ...query,
  parameters,
})
