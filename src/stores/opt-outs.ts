// The list of people who leave no outcomes. It holds hashes, so that no id stands in it to be read or searched for.
import { createHash } from 'node:crypto'
import type { Kysely } from 'kysely'
import type { OptOuts } from '../trends/opt-outs.ts'
import type { Tables } from './tables.ts'
import { withValues } from './with-values.ts'

/**
 * Whoever can guess an id can ask the list for it, as they could ask the bot. With a key outside the database the list would be
 * lost with the key, and people who said no would be counted.
 */
const hashOf = (user: string): string => createHash('sha256').update(`leaves no outcomes\0${user}`).digest('hex')

export function openOptOuts(db: Kysely<Tables>): OptOuts {
  const looking = db.selectFrom('opt_outs').select('person').where('person', '=', '').compile()
  return {
    async has(user) {
      const { rows } = await db.executeQuery(withValues(looking, [hashOf(user)]))
      return rows.length > 0
    },
    async add(user) {
      await db
        .insertInto('opt_outs')
        .values({ person: hashOf(user) })
        .onConflict(conflict => conflict.doNothing())
        .execute()
    },
    async remove(user) {
      await db.deleteFrom('opt_outs').where('person', '=', hashOf(user)).execute()
    },
  }
}
