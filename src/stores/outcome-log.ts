// The log of outcomes over SQL: every write is one statement, every count of a release comes from one pass over the rows.
import { type ExpressionBuilder, type Kysely, sql } from 'kysely'
import { epochOf } from '../trends/epoch.ts'
import type { Item } from '../trends/outcome.ts'
import { itemsOf } from '../trends/outcome.ts'
import type { OutcomeLog, PatternRow, Scope } from '../trends/outcome-log.ts'
import { isWeek } from '../trends/week.ts'
import { firedIn, outcomeOf, parsed, rowOf } from './outcome-row.ts'
import type { OutcomeRow, Tables } from './tables.ts'
import { tally } from './tally.ts'

/** `damaged` is told how many rows had to be left out of an answer. */
export function openOutcomeLog(db: Kysely<Tables>, damaged: (rows: number) => void = () => undefined): OutcomeLog {
  const keep = async (row: OutcomeRow): Promise<boolean> => {
    const done = await db
      .insertInto('outcomes')
      .values(row)
      .onConflict(conflict => conflict.doNothing())
      .executeTakeFirst()
    return done.numInsertedOrUpdatedRows === 1n
  }

  return {
    async record(outcome) {
      const row = rowOf(outcome)
      if (await keep(row)) return 'recorded'
      // Either the server has this person already, or only the pool has.
      return row.pooled !== null && (await keep({ ...row, pooled: null })) ? 'recorded' : 'already-contributed'
    },

    async firstWeek(scope) {
      const row = await db
        .selectFrom('outcomes')
        .select(({ fn }) => fn.min('week').as('week'))
        .where(within(scope))
        .executeTakeFirst()
      return row?.week ?? null
    },

    async weekCounts(scope, from, to) {
      const rows = await db
        .selectFrom('outcomes')
        .select(['week', 'family', 'verdict', 'bought', 'fired'])
        .select(({ fn }) => fn.countAll<number>().as('reporters'))
        .where(within(scope))
        .where(between(from, to))
        .groupBy(['week', 'family', 'verdict', 'bought', 'fired'])
        .execute()
      const { counts, damaged: lost } = tally(rows)
      if (lost > 0) damaged(lost)
      return counts
    },

    async patternRows(scope, family, from, to) {
      const rows = await db
        .selectFrom('outcomes')
        .select(['week', 'bought', 'fired', 'options'])
        .select(({ fn }) => fn.countAll<number>().as('alike'))
        .where(within(scope))
        .where('family', '=', family)
        .where(between(from, to))
        .groupBy(['week', 'bought', 'fired', 'options'])
        .execute()
      let lost = 0
      const found: PatternRow[] = []
      for (const { week, alike, ...row } of rows) {
        const items = isWeek(week) ? itemsIn(row) : undefined
        if (items === undefined) lost += alike
        else for (let i = 0; i < alike; i++) found.push({ week, items })
      }
      if (lost > 0) damaged(lost)
      return found
    },

    async judgedOtherwise(pack, version, limit, after = '') {
      const [week = '', server = '', family = '', reporter = ''] = after.split(' ')
      const rows = await db
        .selectFrom('outcomes')
        .selectAll()
        .where('packs', 'like', `%{"id":"${pack}",%`)
        .where('packs', 'not like', `%{"id":"${pack}","version":"${version}",%`)
        .where(sql<boolean>`(week, server, family, reporter) > (${week}, ${server}, ${family}, ${reporter})`)
        .orderBy('week')
        .orderBy('server')
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
      const [week = '', server = '', family = '', reporter = ''] = id.split(' ')
      const { verdict, fired, packs } = rowOf(outcome)
      await db
        .updateTable('outcomes')
        .set({ verdict, fired, packs })
        .where('server', '=', server)
        .where('epoch', '=', epochOf(week))
        .where('family', '=', family)
        .where('reporter', '=', reporter)
        .execute()
    },

    async of(pseudonyms) {
      if (pseudonyms.length === 0) return []
      const rows = await db.selectFrom('outcomes').selectAll().where(borneBy(pseudonyms)).execute()
      return rows.flatMap(row => outcomeOf(row) ?? [])
    },

    async forget(pseudonyms) {
      if (pseudonyms.length === 0) return 0
      const gone = await db.deleteFrom('outcomes').where(borneBy(pseudonyms)).executeTakeFirst()
      return Number(gone.numDeletedRows)
    },

    async purgeBefore(week, server) {
      const all = db.deleteFrom('outcomes').where('week', '<', week)
      const gone = await (server === undefined ? all : all.where('server', '=', server)).executeTakeFirst()
      return Number(gone.numDeletedRows)
    },
  }
}

type Where = ExpressionBuilder<Tables, 'outcomes'>

const within = (scope: Scope) => (where: Where) =>
  scope.kind === 'pool' ? where('pooled', 'is not', null) : where('server', '=', scope.server)

const borneBy = (pseudonyms: readonly string[]) => (where: Where) =>
  where.or([where('reporter', 'in', pseudonyms), where('pooled', 'in', pseudonyms)])

/** The epochs say no more than the weeks, but the rows lie in their order. */
const between = (from: string, to: string) => (where: Where) =>
  where.and([
    where('epoch', '>=', epochOf(from)),
    where('epoch', '<=', epochOf(to)),
    where('week', '>=', from),
    where('week', '<=', to),
  ])

const handleOf = ({ week, server, family, reporter }: OutcomeRow): string => [week, server, family, reporter].join(' ')

function itemsIn(row: Pick<OutcomeRow, 'bought' | 'fired' | 'options'>): readonly Item[] | undefined {
  const fired = firedIn(row.fired)
  const options = parsed(row.options)
  if (fired === undefined || typeof options !== 'object' || options === null) return undefined
  return itemsOf({ fired, options: options as Record<string, string>, bought: row.bought })
}
