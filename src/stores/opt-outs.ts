// The lists of people who leave no outcomes, or want no help of theirs counted. It holds hashes, so that no id stands in it to be read or searched for.
import { createHash } from 'node:crypto'
import type { Kysely } from 'kysely'
import type { OptOuts } from '../trends/opt-outs.ts'
import type { Tables } from './tables.ts'
import { withValues } from './with-values.ts'

/**
 * Whoever can guess an id can ask the list for it, as they could ask the bot. With a key outside the database the list would be
 * lost with the key, and people who said no would be counted.
 */
const hashIn = (list: OptOutList, user: string): string => createHash('sha256').update(`${list}\0${user}`).digest('hex')

type OptOutList = 'leaves no outcomes' | 'counts no help'

export function openOptOuts(db: Kysely<Tables>, list: OptOutList = 'leaves no outcomes'): OptOuts {
  const hashOf = (user: string) => hashIn(list, user)
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
