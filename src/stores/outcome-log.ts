// The log of outcomes over SQL: every write is one statement, the database itself counts what a release is made of.
import { setImmediate as turn } from 'node:timers/promises'
import {
  type DeleteResult,
  type Expression,
  type ExpressionBuilder,
  expressionBuilder,
  type Kysely,
  type SqlBool,
  sql,
} from 'kysely'
import type { WeekCount } from '../trends/counts.ts'
import { type Epoch, epochOf } from '../trends/epoch.ts'
import { isName } from '../trends/names.ts'
import { answerItem, type Item, ruleItems } from '../trends/outcome.ts'
import type { OutcomeLog, PatternRow, Scope } from '../trends/outcome-log.ts'
import type { PoolContribution } from '../trends/release/pool.ts'
import { isWeek, type Week, weeksFrom, weeksUpTo } from '../trends/week.ts'
import { admitWaiting } from './admit-waiting.ts'
import { countOutcomes, piecesOf } from './count-outcomes.ts'
import type { FamilyCodes } from './family-codes.ts'
import { atOnce, inBatches } from './in-batches.ts'
import { once } from './memoize.ts'
import { firedIn, handleOf, outcomeOf, parsed, rowOf } from './outcome-row.ts'
import { openPersonsOutcomes } from './persons-outcomes.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'
import { dropSealed } from './waiting-outcomes.ts'

/**
 * `damaged` is told how many rows had to be left out of an answer, `lost` how many of those that wait cannot be opened or counted, because
 * the key of their week, or that of their epoch, is not here.
 */
export function openOutcomeLog(
  db: Kysely<Tables>,
  seal: Seal,
  codes: FamilyCodes,
  damaged: (rows: number) => void = () => undefined,
  lost: (rows: number) => void = () => undefined,
): OutcomeLog {
  const keepAsIs = async (within: Kysely<Tables>, row: OutcomeRow): Promise<boolean> => {
    const done = await within
      .insertInto('outcomes')
      .values(row)
      .onConflict(conflict => conflict.doNothing())
      .executeTakeFirst()
    return done.numInsertedOrUpdatedRows === 1n
  }

  /** Either the server has this person already, or only the pool has. */
  const keep = async (within: Kysely<Tables>, row: OutcomeRow): Promise<boolean> =>
    (await keepAsIs(within, row)) || (row.pooled !== null && (await keepAsIs(within, { ...row, pooled: null })))

  /** How many went; gone from the file too, not only from the table. */
  const letGoOf = async ({ numDeletedRows }: DeleteResult): Promise<number> => {
    if (numDeletedRows > 0n) await scrub(db)
    return Number(numDeletedRows)
  }

  /** The next week that has any outcome, whatever stands where a week should. */
  const weekAfter = async (scope: Scope, week: string): Promise<string | undefined> => {
    const row = await db
      .selectFrom('outcomes')
      .select(({ fn }) => fn.min('week').as('week'))
      .where(where([within(scope), is => is('week', '>', week)]))
      .executeTakeFirst()
    return row?.week ?? undefined
  }

  return {
    admit: upTo => admitWaiting(db, seal, codes, upTo, keep, lost),

    async record(outcome) {
      return (await keep(db, rowOf(outcome))) ? 'recorded' : 'already-contributed'
    },

    async firstWeek(scope) {
      const row = await db
        .selectFrom('outcomes')
        .select(({ fn }) => fn.min('week').as('week'))
        .where(where([within(scope)]))
        .executeTakeFirst()
      return row?.week ?? null
    },

    async weekCounts(scope, from, to) {
      const counts: WeekCount[] = []
      let lost = 0
      // A week at a time, and a big one in pieces: nobody waits for a year's.
      for (let week: string | undefined = from; week !== undefined; week = await weekAfter(scope, week)) {
        if (week > to) break
        const cells = new Map<string, WeekCount>()
        for (const piece of await piecesOf(db, where([within(scope), is => is('week', '=', week as Week)]))) {
          const found = await countOutcomes(db, piece)
          for (const one of found.counts) {
            const key = `${one.family} ${one.facet} ${one.value}`
            cells.set(key, { ...one, reporters: one.reporters + (cells.get(key)?.reporters ?? 0) })
          }
          lost += found.damaged
          await turn()
        }
        for (const one of cells.values()) counts.push(one)
      }
      if (lost > 0) damaged(lost)
      return counts
    },

    async poolContributions(from, to) {
      const found: PoolContribution[] = []
      const pool = { kind: 'pool' } as const
      for (let week: string | undefined = from; week !== undefined && week <= to; week = await weekAfter(pool, week)) {
        const rows = await db
          .selectFrom('outcomes')
          .select(({ fn }) => ['week', 'family', 'server', fn.countAll<number>().as('reporters')])
          .where(where([within(pool), is => is('week', '=', week as Week)]))
          .groupBy(['week', 'family', 'server'])
          .execute()
        for (const one of rows) found.push(one)
        await turn()
      }
      return found
    },

    async failedChecks(scope, family, from, to) {
      const itemsIn = openItems()
      const found: PatternRow[] = []
      let lost = 0
      // By epochs and not by weeks, so that the rows are read where they lie: a family's of an epoch in one stretch, in pieces.
      const bearer = scope.kind === 'pool' ? 'pooled' : 'reporter'
      for (const epoch of epochsOf(from, to)) {
        let after = ''
        await inBatches(async () => {
          const rows = await db
            .selectFrom('outcomes')
            .select(['week', 'bought', 'fired', 'options', bearer])
            .where(where([within(scope), is => is('family', '=', family)]))
            .where('epoch', '=', epoch)
            .where(bearer, '>', after)
            .orderBy(bearer)
            .limit(atOnce)
            .execute()
          for (const row of rows) {
            after = row[bearer] ?? after
            if (row.week < from || row.week > to || row.fired === '[]') continue
            const items = itemsIn(row)
            if (items === undefined) lost++
            else found.push({ week: row.week, items })
          }
          return rows.length
        })
      }
      if (lost > 0) damaged(lost)
      return found
    },

    async judgedOtherwise(pack, version, limit, after = '') {
      const [server = '', epoch = '', family = '', reporter = ''] = after.split(' ')
      const rows = await db
        .selectFrom('outcomes')
        .selectAll()
        .where('packs', 'like', `%{"id":"${pack}",%`)
        .where('packs', 'not like', `%{"id":"${pack}","version":"${version}",%`)
        .where(sql<boolean>`(server, epoch, family, reporter) > (${server}, ${epoch}, ${family}, ${reporter})`)
        .orderBy('server')
        .orderBy('epoch')
        .orderBy('family')
        .orderBy('reporter')
        .limit(limit)
        .execute()
      const found = rows.map(row => ({ id: handleOf(row), outcome: outcomeOf(row) }))
      const whole = found.flatMap(({ id, outcome }) => (outcome === undefined ? [] : [{ id, outcome }]))
      if (whole.length < found.length) damaged(found.length - whole.length)
      return whole
    },

    async rejudge(id, outcome) {
      const [server = '', epoch = '', family = '', reporter = ''] = id.split(' ')
      const { verdict, fired, packs } = rowOf(outcome)
      await db
        .updateTable('outcomes')
        .set({ verdict, fired, packs })
        .where('server', '=', server)
        .where('epoch', '=', epoch)
        .where('family', '=', family)
        .where('reporter', '=', reporter)
        .execute()
    },

    ...openPersonsOutcomes(db, seal, codes),

    async dropWaiting(epoch) {
      return letGoOf(await db.deleteFrom('waiting_outcomes').where('epoch', '<', epoch).executeTakeFirst())
    },

    async dropSealedBefore(week) {
      const gone = await dropSealed(db, week)
      if (gone > 0) await scrub(db)
      return gone
    },

    async purgeBefore(week, server) {
      let gone = 0
      // A server at a time, along the index that begins with it.
      for await (const one of server === undefined ? serversIn(db) : [server]) {
        const old = db
          .selectFrom('outcomes')
          .select(place)
          .where('server', '=', one)
          .where('week', '<', week)
          .limit(atOnce)
        gone += await inBatches(async () => {
          const done = await sql`delete from outcomes where (server, epoch, family, reporter) in (${old})`.execute(db)
          return done.numAffectedRows ?? 0
        })
      }
      if (gone > 0) await scrub(db)
      return gone
    },
  }
}

/** The key of an outcome. */
const place = ['server', 'epoch', 'family', 'reporter'] as const

/** Every server with outcomes, each found along the index from the one before. */
async function* serversIn(db: Kysely<Tables>): AsyncGenerator<string> {
  for (let after = ''; ; ) {
    const next = await db
      .selectFrom('outcomes')
      .select(({ fn }) => fn.min('server').as('server'))
      .where('server', '>', after)
      .executeTakeFirst()
    if (!next?.server) return
    after = next.server
    yield after
  }
}

type Condition = (is: ExpressionBuilder<Tables, 'outcomes'>) => Expression<SqlBool>

const where = (conditions: readonly Condition[]): Expression<SqlBool> => {
  const is = expressionBuilder<Tables, 'outcomes'>()
  return is.and(conditions.map(condition => condition(is)))
}

const within =
  (scope: Scope): Condition =>
  is =>
    scope.kind === 'pool' ? is('pooled', 'is not', null) : is('server', '=', scope.server)

const epochsOf = (from: Week, to: Week): Epoch[] => [...new Set(weeksUpTo(to, weeksFrom(from, to) + 1).map(epochOf))]

/** Reads the items of rows, each distinct list, map and answer once; undefined where a row is damaged. */
function openItems(): (row: Pick<OutcomeRow, 'week' | 'bought' | 'fired' | 'options'>) => readonly Item[] | undefined {
  const [weekHolds, nameHolds] = [once(isWeek), once(isName)]
  const place = once((bought): Item => `bought:${bought}`)
  const failed = once(text => {
    const list = firedIn(text)
    return list && ruleItems(list)
  })
  const answer = once(question => once(option => answerItem(question, option)))
  const given = once(text => {
    const map = parsed(text)
    if (typeof map !== 'object' || map === null) return undefined
    const pairs = Object.entries(map)
    if (!pairs.flat().every(nameHolds)) return undefined
    return pairs.map(([question, option]) => answer(question)(option))
  })
  return ({ week, bought, fired, options }) => {
    const [rules, answers] = [failed(fired), given(options)]
    return rules && answers && weekHolds(week) && nameHolds(bought) ? [...rules, ...answers, place(bought)] : undefined
  }
}
