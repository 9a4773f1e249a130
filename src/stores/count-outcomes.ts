// Counts outcomes by week and cell in the database itself, a row with all its cells in one statement.
import { type Expression, type Kysely, type RawBuilder, type SqlBool, SqliteAdapter, sql } from 'kysely'
import { verdicts } from '../ground/verdicts.ts'
import type { Facet, WeekCount } from '../trends/counts.ts'
import { isName } from '../trends/names.ts'
import { isWeek } from '../trends/week.ts'
import { once } from './memoize.ts'
import type { Tables } from './tables.ts'

type Counted = {
  week: string
  family: string
  facet: Exclude<Facet, 'all'> | 'damaged'
  value: string
  reporters: number
}

/** SQLite counts in this process: about so many rows in a statement, which are some milliseconds. */
const mostAtATime = 2000

type Group = { readonly family: string; readonly verdict: string; readonly bought: string; readonly rows: number }
const groupOf = ({ family, verdict, bought }: Group) => sql`(${family}, ${verdict}, ${bought})`

/**
 * Conditions that part the outcomes which `where` picks into pieces, none without an end: whatever is deleted meanwhile, each row is
 * counted whole or not at all.
 */
export async function piecesOf(db: Kysely<Tables>, where: Expression<SqlBool>): Promise<Expression<SqlBool>[]> {
  if (!(db.getExecutor().adapter instanceof SqliteAdapter)) return [where]
  const { rows: groups } =
    await sql<Group>`select family, verdict, bought, count(*) as rows from outcomes where ${where}
    group by family, verdict, bought order by family, verdict, bought`.execute(db)
  const pieces: Expression<SqlBool>[] = []
  let [first, rows] = [undefined as Group | undefined, 0]
  for (const [i, group] of groups.entries()) {
    first ??= group
    rows += Number(group.rows)
    if (rows < mostAtATime && i < groups.length - 1) continue
    pieces.push(sql<SqlBool>`(${where}) and (family, verdict, bought) >= ${groupOf(first)}
      and (family, verdict, bought) <= ${groupOf(group)}`)
    first = undefined
    rows = 0
  }
  return pieces
}

/**
 * The counts of the outcomes that `where` picks. A row that is damaged counts nowhere, and of a list nothing that is no name of a rule;
 * `damaged` says how often that was so.
 */
export async function countOutcomes(
  db: Kysely<Tables>,
  where: Expression<SqlBool>,
): Promise<{ counts: WeekCount[]; damaged: number }> {
  const { sound, rules } = db.getExecutor().adapter instanceof SqliteAdapter ? onSqlite : onPostgres
  const sum = sql`cast(sum(reporters) as bigint) as reporters`
  const { rows } = await sql<Counted>`
    with alike as materialized (
      select week, family, verdict, bought, fired, count(*) as reporters
      from outcomes where ${where} group by week, family, verdict, bought, fired)
    select week, family, 'verdict' as facet, verdict as value, ${sum} from alike where ${sound} group by week, family, verdict
    union all
    select week, family, 'bought', bought, ${sum} from alike where ${sound} group by week, family, bought
    union all
    select week, family, 'rule', rules.value, ${sum} from alike cross join ${rules} where ${sound} and fired <> '[]'
      group by week, family, rules.value
    union all
    select week, family, 'damaged', '', ${sum} from alike where not ${sound} group by week, family`.execute(db)

  const counts: WeekCount[] = []
  const whole = new Map<string, { -readonly [key in keyof WeekCount]: WeekCount[key] }>()
  const [weekHolds, nameHolds] = [once(isWeek), once(isName)]
  let damaged = 0
  for (const { week, family, facet, value, reporters } of rows) {
    if (facet === 'damaged' || !nameHolds(value) || !nameHolds(family) || !weekHolds(week)) {
      damaged += reporters
      continue
    }
    counts.push({ week, family, facet, value, reporters })
    if (facet !== 'verdict') continue
    const all = whole.get(`${week} ${family}`)
    if (all === undefined) whole.set(`${week} ${family}`, { week, family, facet: 'all', value: '', reporters })
    else all.reporters += reporters
  }
  return { counts: [...counts, ...whole.values()], damaged }
}

/** What a row must be to count, and the rules in its list: none where it does not count, so that no damage stops a count. */
type Dialect = { readonly sound: RawBuilder<SqlBool>; readonly rules: RawBuilder<unknown> }

const isVerdict = sql<SqlBool>`verdict in (${sql.join(verdicts.map(verdict => sql.lit(verdict)))})`
const onSqlite = dialect(
  sql<SqlBool>`(${isVerdict} and json_valid(fired))`,
  sound => sql`json_each(case when ${sound} then fired else '[]' end) as rules`,
)
const onPostgres = dialect(
  sql<SqlBool>`(${isVerdict} and fired ~ '^\\[("[a-z0-9-]+"(,"[a-z0-9-]+")*)?\\]$')`,
  sound =>
    sql`lateral json_array_elements_text(case when ${sound} then fired::json else '[]'::json end) as rules (value)`,
)

function dialect(sound: RawBuilder<SqlBool>, rules: (sound: RawBuilder<SqlBool>) => RawBuilder<unknown>): Dialect {
  return { sound, rules: rules(sound) }
}
