// Outcomes grow coarser: figures, "can't tell", size and number of cells go, and of the answers those that tell more of whom than of what.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

/** Questions of the shipped packs whose answers stood in outcomes until 0.2.0 and do not any more. Never changed again. */
export const noLongerKept = [
  ...['arrived-how', 'asked-seller', 'batch', 'batch-masses', 'charger-kind', 'chemistry', 'colour-change', 'dent'],
  ...['got-hot', 'hot-now', 'how-many', 'label-listing', 'leaking', 'load-test', 'meter-sign', 'past-damage', 'price'],
  ...[
    'reference-at-hand',
    'reference-code',
    'reference-lettering',
    'reference-top',
    'resistance-meter',
    'ring',
    'rust',
  ],
  ...['same-serial', 'smell', 'swollen', 'top-damage', 'voltage-drop', 'voltage-rest', 'weld-marks', 'wet'],
  ...['where-bought', 'wrap-colour', 'wrap-torn'],
] as const

const gone = noLongerKept.map(id => `'${id}'`).join(', ')

/** Answers that fewer than five outcomes of a server gave go, too; how often each was given, up to five, is kept in a table of its own. */
export const coarserOutcomesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    const counts = db.schema
      .createTable('answer_counts')
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('question', 'text', column => column.notNull())
      .addColumn('option', 'text', column => column.notNull())
      .addColumn('given', 'integer', column => column.notNull())
      .addPrimaryKeyConstraint('answer_counts_once', ['server', 'question', 'option'])
    // Without a row id they lie in the order of their names, not in the order in which they were first given.
    await (sqlite ? counts.modifyEnd(sql`without rowid`) : counts).execute()
    for (const statement of sqlite ? onSqlite : onPostgres) await sql.raw(statement).execute(db)
  },
}

/** A map that is damaged becomes an empty one. */
const soundOnSqlite = `case when not json_valid(options) then '{}' when json_type(options) = 'object' then options else '{}' end`

const onSqlite = [
  `update outcomes set options = (select json_group_object(key, value) from json_each(${soundOnSqlite})
    where type = 'text' and key not in (${gone}))`,
  `insert into answer_counts select server, key, value, min(count(*), 5) from outcomes, json_each(outcomes.options)
    group by server, key, value`,
  `update outcomes set options = (select json_group_object(key, value) from json_each(outcomes.options)
    where exists (select 1 from answer_counts as c
      where c.server = outcomes.server and c.question = key and c.option = value and c.given >= 5))`,
  'alter table outcomes drop column rest',
]

/** The rows are written anew, in the order of their pseudonyms: an update would leave what it found on the disk, and an order of its own. */
const onPostgres = [
  `create temporary table outcomes_coarse on commit drop as
    select o.server, o.epoch, o.family, o.reporter, o.pooled, o.week, o.verdict, o.bought, o.fired, o.packs, m.key, m.value
    from outcomes as o left join lateral (select key, value from json_each_text(
      case when o.options ~ '^\\{("[a-z0-9-]+":"[a-z0-9-]+"(,"[a-z0-9-]+":"[a-z0-9-]+")*)?\\}$' then o.options::json else '{}'::json end)
      where key not in (${gone})) as m on true`,
  `insert into answer_counts select server, key, value, least(count(*), 5) from outcomes_coarse where key is not null
    group by server, key, value order by server, key, value`,
  'truncate outcomes',
  'alter table outcomes drop column rest',
  `insert into outcomes (server, epoch, family, reporter, pooled, week, verdict, bought, fired, options, packs)
    select o.server, epoch, family, reporter, pooled, week, verdict, bought, fired,
      '{' || coalesce(string_agg(to_json(key)::text || ':' || to_json(value)::text, ',' order by key) filter (where c.given >= 5), '') || '}',
      packs
    from outcomes_coarse as o left join answer_counts as c on c.server = o.server and c.question = o.key and c.option = o.value
    group by o.server, epoch, family, reporter, pooled, week, verdict, bought, fired, packs
    order by epoch, reporter, family, o.server`,
]
