// The tables of the trends room, and how a check's outcome comes into them.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

export const outcomesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    const table = db.schema
      .createTable('outcomes')
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('epoch', 'text', column => column.notNull())
      .addColumn('family', 'text', column => column.notNull())
      .addColumn('reporter', 'text', column => column.notNull())
      .addColumn('pooled', 'text')
      .addColumn('week', 'text', column => column.notNull())
      .addColumn('verdict', 'text', column => column.notNull())
      .addColumn('bought', 'text', column => column.notNull())
      .addColumn('fired', 'text', column => column.notNull())
      .addColumn('options', 'text', column => column.notNull())
      .addColumn('packs', 'text', column => column.notNull())
      .addColumn('rest', 'text', column => column.notNull())
      .addPrimaryKeyConstraint('outcomes_once', ['server', 'epoch', 'family', 'reporter'])
    // Without a row id the rows lie in the order of their pseudonyms, not in the order in which people came.
    await (sqlite ? table.modifyEnd(sql`without rowid`) : table).execute()
    await db.schema
      .createIndex('outcomes_pooled_once')
      .on('outcomes')
      .columns(['epoch', 'family', 'pooled'])
      .unique()
      .where(sql.ref('pooled'), 'is not', null)
      .execute()
    await db.schema
      .createTable('releases')
      .addColumn('scope', 'text', column => column.notNull())
      .addColumn('week', 'text', column => column.notNull())
      .addColumn('bytes', 'text', column => column.notNull())
      .addColumn('state', 'text')
      .addPrimaryKeyConstraint('releases_once', ['scope', 'week'])
      .execute()
    await db.schema
      .createTable('leases')
      .addColumn('name', 'text', column => column.primaryKey())
      .addColumn('holder', 'text', column => column.notNull())
      .addColumn('until', 'bigint', column => column.notNull())
      .execute()
    await db.schema
      .createTable('opt_outs')
      .addColumn('person', 'text', column => column.primaryKey())
      .execute()
    await db.schema.alterTable('checks').addColumn('outcome', 'text').execute()
    await db.schema
      .alterTable('checks')
      .addColumn('settled', 'integer', column => column.notNull().defaultTo(0))
      .execute()
    await db.schema.createIndex('checks_finished').on('checks').columns(['phase', 'settled', 'expires_at']).execute()
  },
}

/**
 * Outcomes wait, sealed, in the row of their check until their week is over. Before, a trigger copied them out of it at once: then the two
 * bore the same transaction's number on PostgreSQL, and the outcomes lay in the order in which people came.
 */
export const waitingOutcomesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    for (const statement of sqlite ? onSqlite : onPostgres) await sql.raw(statement).execute(db)
    await sql`create index checks_waiting on checks (server, id) where outcome is not null`.execute(db)
  },
}

const onSqlite = ['drop trigger if exists checks_leave_outcome']

const onPostgres = [
  'drop trigger if exists checks_leave_outcome on checks',
  'drop function if exists checks_leave_outcome()',
  'create temporary table outcomes_until_now on commit drop as select * from outcomes',
  'truncate outcomes',
  'insert into outcomes select * from outcomes_until_now order by epoch, reporter, family, server',
]

/** Of a server with few checks outcomes wait, sealed, until five people have left one: not in their checks, which are gone by then. */
export const fewOutcomesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    const table = db.schema
      .createTable('waiting_outcomes')
      // Drawn by chance.
      .addColumn('id', 'text', column => column.primaryKey())
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('epoch', 'text', column => column.notNull())
      .addColumn('sealed_under', 'text', column => column.notNull())
      .addColumn('sealed', 'text', column => column.notNull())
    await (sqlite ? table.modifyEnd(sql`without rowid`) : table).execute()
    await sql`create index waiting_outcomes_by_server on waiting_outcomes (server)`.execute(db)
    await sql`create index waiting_outcomes_by_seal on waiting_outcomes (sealed_under)`.execute(db)
  },
}

/**
 * What the pool has told before it counted its servers may be of one alone, and was found by its week: of those weeks nothing is told any
 * more. Nor does a row say under which rule it was frozen, so all go that tell of a family. The weeks stay closed, and the next goes on
 * from where the last one stood.
 */
export const poolAnewMigration: Migration = {
  async up(db: Kysely<unknown>) {
    await sql`update releases set bytes = '' where scope = 'pool' and bytes not like '%"families":[]%'`.execute(db)
  },
}

/**
 * The state that the pool goes on from still held what had been withdrawn, so the next release told it again. Where anything was withdrawn
 * all of it is, the state shows nothing of any family, and a family is told of again once enough have come since it last was.
 */
export const poolStateAnewMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const { rows } = await sql<{ week: string; state: string }>`select week, state from releases
      where scope = 'pool' and state is not null and exists (select 1 from releases where scope = 'pool' and bytes = '')`.execute(
      db,
    )
    for (const { week, state } of rows)
      await sql`update releases set state = ${withoutCells(state)} where scope = 'pool' and week = ${week}`.execute(db)
    await sql`update releases set bytes = '' where scope = 'pool' and bytes not like '%"families":[]%'
      and exists (select 1 from releases where scope = 'pool' and bytes = '')`.execute(db)
  },
}

/** As it was where it cannot be read: then nothing goes on from it. */
function withoutCells(text: string): string {
  try {
    const { families, ...rest } = JSON.parse(text)
    const emptied = Object.entries(families as Record<string, object>).map(([id, one]) => [id, { ...one, cells: {} }])
    return JSON.stringify({ ...rest, families: Object.fromEntries(emptied), series: {}, rises: [] })
  } catch {
    return text
  }
}

/** A release is unread until its findings are taken down: of those there are, the latest of each server is read once more. */
export const unreadReleasesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    for (const statement of [
      'alter table releases add column unread integer not null default 0',
      "update releases set unread = 1 where state is not null and scope <> 'pool'",
      'create index releases_unread on releases (scope, week) where unread = 1',
    ])
      await sql.raw(statement).execute(db)
  },
}
