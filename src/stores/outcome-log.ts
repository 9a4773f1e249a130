// The log of outcomes over SQL: every write is one statement, the database itself counts what a release is made of.
import {
  type DeleteResult,
  type Expression,
  type ExpressionBuilder,
  expressionBuilder,
  type Kysely,
  type SqlBool,
  sql,
} from 'kysely'
import { type Epoch, epochOf } from '../trends/epoch.ts'
import { isName } from '../trends/names.ts'
import { answerItem, type Item, type Outcome, ruleItems } from '../trends/outcome.ts'
import type { OutcomeLog, PatternRow, Scope } from '../trends/outcome-log.ts'
import { isWeek, type Week, weeksFrom, weeksUpTo } from '../trends/week.ts'
import { countOutcomes } from './count-outcomes.ts'
import { once } from './memoize.ts'
import { firedIn, outcomeOf, parsed, rowOf } from './outcome-row.ts'
import { scrub } from './scrub.ts'
import type { Seal } from './seal.ts'
import type { OutcomeRow, Tables } from './tables.ts'
import { admitWaiting, noLonger, waitingOf } from './waiting-outcomes.ts'

/**
 * `damaged` is told how many rows had to be left out of an answer, `lost` how many of those that wait cannot be opened, because the key
 * of their week is not here.
 */
export function openOutcomeLog(
  db: Kysely<Tables>,
  seal: Seal,
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

  /** Of several that wait for one family, or wait and are counted already, one is counted: so they are one. */
  const outcomesBy = async (pseudonyms: readonly string[]): Promise<Outcome[]> => {
    if (pseudonyms.length === 0) return []
    const counted = await db
      .selectFrom('outcomes')
      .selectAll()
      .where(where([borneBy(pseudonyms)]))
      .execute()
    const rows = [...(await waitingOf(db, seal, pseudonyms)).map(one => one.row), ...counted]
    return [...new Map(rows.map(row => [handleOf(row), row])).values()].flatMap(row => outcomeOf(row) ?? [])
  }

  return {
    admit: upTo => admitWaiting(db, seal, upTo, keep, lost),

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
      const { counts, damaged: lost } = await countOutcomes(db, where([within(scope), between(from, to)]))
      if (lost > 0) damaged(lost)
      return counts
    },

    async failedChecks(scope, family, from, to) {
      // By epochs and not by weeks, so that the rows are read where they lie: a family's of an epoch in one stretch.
      const rows = await db
        .selectFrom('outcomes')
        .select(['week', 'bought', 'fired', 'options'])
        .where(where([within(scope), is => is('family', '=', family)]))
        .where('epoch', 'in', epochsOf(from, to))
        .where('fired', '!=', '[]')
        .execute()
      const itemsIn = openItems()
      const found: PatternRow[] = []
      let lost = 0
      for (const row of rows) {
        if (row.week < from || row.week > to) continue
        const items = itemsIn(row)
        if (items === undefined) lost++
        else found.push({ week: row.week, items })
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

    of: outcomesBy,

    async forget(pseudonyms) {
      const theirs = await outcomesBy(pseudonyms)
      if (theirs.length === 0) return 0
      // First those that wait: once they have joined the others, they are found there.
      await noLonger(db, await waitingOf(db, seal, pseudonyms))
      const gone = db.deleteFrom('outcomes').where(where([borneBy(pseudonyms)]))
      await letGoOf(await gone.executeTakeFirst())
      return theirs.length
    },

    async purgeBefore(week, server) {
      const all = db.deleteFrom('outcomes').where('week', '<', week)
      const gone = await (server === undefined ? all : all.where('server', '=', server)).executeTakeFirst()
      return letGoOf(gone)
    },
  }
}

type Condition = (is: ExpressionBuilder<Tables, 'outcomes'>) => Expression<SqlBool>

const where = (conditions: readonly Condition[]): Expression<SqlBool> => {
  const is = expressionBuilder<Tables, 'outcomes'>()
  return is.and(conditions.map(condition => condition(is)))
}

const borneBy =
  (pseudonyms: readonly string[]): Condition =>
  is =>
    is.or([is('reporter', 'in', pseudonyms), is('pooled', 'in', pseudonyms)])

const within =
  (scope: Scope): Condition =>
  is =>
    scope.kind === 'pool' ? is('pooled', 'is not', null) : is('server', '=', scope.server)

const between =
  (from: string, to: string): Condition =>
  is =>
    is.and([is('week', '>=', from), is('week', '<=', to)])

const epochsOf = (from: Week, to: Week): Epoch[] => [...new Set(weeksUpTo(to, weeksFrom(from, to) + 1).map(epochOf))]

/** The key of the table, so that going on after an outcome finds its place at once. */
const handleOf = ({ server, epoch, family, reporter }: OutcomeRow): string =>
  [server, epoch, family, reporter].join(' ')

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
