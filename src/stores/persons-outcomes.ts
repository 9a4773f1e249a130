// What is found and deleted of one person among the outcomes: what waits, and what is counted under a code of each family.
import { setImmediate as turn } from 'node:timers/promises'
import type { Expression, ExpressionBuilder, Kysely, SqlBool } from 'kysely'
import type { Outcome } from '../trends/outcome.ts'
import type { OutcomeLog } from '../trends/outcome-log.ts'
import { coded, type FamilyCodes } from './family-codes.ts'
import { atOnce, pieces } from './in-batches.ts'
import { handleOf, outcomeOf, rowOf } from './outcome-row.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'
import { noLonger, waitingOf } from './waiting-outcomes.ts'

/** Names in a statement, each looked up twice: some milliseconds, on SQLite during which nothing else runs. */
const namesAtOnce = 1000

export function openPersonsOutcomes(
  db: Kysely<Tables>,
  seal: Seal,
  codes: FamilyCodes,
): Pick<OutcomeLog, 'codesOf' | 'of' | 'forget'> {
  /** Of several that wait for one family, or wait and are counted already, one is counted: so they are one. */
  const of = async (names: readonly string[]): Promise<Outcome[]> => {
    if (names.length === 0) return []
    const waiting = (await waitingOf(db, seal, codes, names)).map(one => rowOf(one.outcome))
    const counted: OutcomeRow[] = []
    for (const some of pieces(names, namesAtOnce)) {
      const rows = db.selectFrom('outcomes').selectAll().where(borneBy(some))
      counted.push(...(await rows.execute()))
      await turn()
    }
    const found = new Map(counted.map(row => [handleOf(row), row]))
    for (const row of waiting) {
      const codeIn = await codes.in(row.epoch)
      const place = handleOf(codeIn ? coded(row, codeIn) : row)
      if (!found.has(place) && !found.has(handleOf(row))) found.set(place, row)
    }
    return [...found.values()].flatMap(row => outcomeOf(row) ?? [])
  }

  return {
    async codesOf(epoch, whose) {
      const codeIn = await codes.in(epoch)
      if (codeIn === undefined) return []
      const found = new Set<string>()
      const families = new Set<string>()
      for (const { server, reporter } of whose) {
        const counted = await db
          .selectFrom('outcomes')
          .select('family')
          .distinct()
          .where('server', '=', server)
          .where('epoch', '=', epoch)
          .execute()
        for (const { family } of counted) {
          found.add(codeIn(reporter, family))
          families.add(family)
        }
        await turn()
      }
      for (const pooled of new Set(whose.flatMap(one => one.pooled ?? [])))
        for (const some of pieces([...families], atOnce)) {
          for (const family of some) found.add(codeIn(pooled, family))
          await turn()
        }
      return [...found]
    },

    of,

    async forget(names) {
      const theirs = await of(names)
      if (theirs.length === 0) return 0
      // First those that wait: once they have joined the others, they are found there.
      await noLonger(db, await waitingOf(db, seal, codes, names))
      for (const some of pieces(names, namesAtOnce)) {
        await db.deleteFrom('outcomes').where(borneBy(some)).execute()
        await turn()
      }
      // Gone from the file too, not only from the table.
      await scrub(db)
      return theirs.length
    },
  }
}

const borneBy =
  (names: readonly string[]) =>
  (is: ExpressionBuilder<Tables, 'outcomes'>): Expression<SqlBool> =>
    is.or([is('reporter', 'in', names), is('pooled', 'in', names)])
