// The tables of the trends room, and the trigger that keeps a check's outcome in the very statement that closes the check.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

const columns = [
  'server',
  'epoch',
  'family',
  'reporter',
  'pooled',
  'week',
  'verdict',
  'bought',
  'fired',
  'options',
  'packs',
  'rest',
] as const

/**
 * A closing save writes the outcome, as one JSON object, into the check's own row. The trigger copies it into `outcomes` and takes it
 * out of the row again, so nothing ever joins the two. If the pool has this person for the family and epoch already, the row is
 * kept without its pooled pseudonym; if the server has, nothing is kept.
 */
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
    for (const statement of sqlite ? onSqlite : onPostgres) await sql.raw(statement).execute(db)
  },
}

const list = columns.join(', ')
const values = (json: string, pooled: string): string =>
  columns.map(column => (column === 'pooled' ? pooled : `${json} ->> '${column}'`)).join(', ')

const onSqlite = [
  `create trigger checks_leave_outcome after update of outcome on checks when new.outcome is not null begin
    insert into outcomes (${list}) select ${values('new.outcome', `new.outcome ->> 'pooled'`)}
      where old.settled = 0 on conflict do nothing;
    insert into outcomes (${list}) select ${values('new.outcome', 'null')}
      where old.settled = 0 on conflict do nothing;
    update checks set outcome = null where id = new.id;
  end`,
]

const onPostgres = [
  `create function checks_leave_outcome() returns trigger language plpgsql as $$
  declare left_behind json := new.outcome::json;
  begin
    if old.settled = 0 then
      insert into outcomes (${list}) values (${values('left_behind', `left_behind ->> 'pooled'`)}) on conflict do nothing;
      insert into outcomes (${list}) values (${values('left_behind', 'null')}) on conflict do nothing;
    end if;
    new.outcome := null;
    return new;
  end $$`,
  `create trigger checks_leave_outcome before update of outcome on checks for each row when (new.outcome is not null)
    execute function checks_leave_outcome()`,
]

/** The same, without making the second row where the first was kept: reading the JSON again costs as much as keeping it. */
export const outcomesOnceMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    for (const statement of sqlite ? onceOnSqlite : onceOnPostgres) await sql.raw(statement).execute(db)
  },
}

const onceOnSqlite = [
  'drop trigger checks_leave_outcome',
  `create trigger checks_leave_outcome after update of outcome on checks when new.outcome is not null begin
    insert into outcomes (${list}) select ${values('new.outcome', `new.outcome ->> 'pooled'`)}
      where old.settled = 0 on conflict do nothing;
    insert into outcomes (${list}) select ${values('new.outcome', 'null')}
      where old.settled = 0 and changes() = 0 on conflict do nothing;
    update checks set outcome = null where id = new.id;
  end`,
]

const onceOnPostgres = [
  `create or replace function checks_leave_outcome() returns trigger language plpgsql as $$
  declare left_behind json := new.outcome::json;
  begin
    if old.settled = 0 then
      insert into outcomes (${list}) values (${values('left_behind', `left_behind ->> 'pooled'`)}) on conflict do nothing;
      if not found then
        insert into outcomes (${list}) values (${values('left_behind', 'null')}) on conflict do nothing;
      end if;
    end if;
    new.outcome := null;
    return new;
  end $$`,
]
