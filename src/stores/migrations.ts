// The steps that bring a database up to date, in order; kysely runs each once, under a lock, on SQLite and PostgreSQL alike.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'
import { coarserOutcomesMigration } from './coarser-outcomes-migration.ts'
import { familiesMigration } from './families-migration.ts'
import { keepVersion, newerThan, stepsTaken } from './newer-database.ts'
import {
  fewOutcomesMigration,
  outcomesMigration,
  poolAnewMigration,
  poolStateAnewMigration,
  unreadReleasesMigration,
  waitingOutcomesMigration,
} from './outcomes-migration.ts'
import { storiesMigration } from './stories-migration.ts'
import type { Tables } from './tables.ts'

type Any = Kysely<unknown>

const migrations: Record<string, Migration> = {
  '0001-checks': {
    async up(db: Any) {
      await db.schema
        .createTable('checks')
        .addColumn('id', 'text', column => column.primaryKey())
        .addColumn('revision', 'integer', column => column.notNull())
        .addColumn('holder', 'text', column => column.notNull())
        .addColumn('server', 'text')
        .addColumn('phase', 'text', column => column.notNull())
        .addColumn('expires_at', 'bigint', column => column.notNull())
        .addColumn('started_at', 'bigint', column => column.notNull())
        .addColumn('body', 'text', column => column.notNull())
        .addColumn('opened_by', 'text', column => column.notNull().unique())
        .addColumn('changed_by', 'text', column => column.notNull())
        .execute()
      await db.schema.createIndex('checks_by_holder').on('checks').columns(['holder', 'started_at']).execute()
      await db.schema.createIndex('checks_by_expiry').on('checks').column('expires_at').execute()
    },
  },
  '0002-kept': {
    async up(db: Any) {
      await db.schema
        .createTable('kept')
        .addColumn('key', 'text', column => column.primaryKey())
        .addColumn('value', 'text', column => column.notNull())
        .addColumn('expires_at', 'bigint')
        .execute()
      await db.schema.createIndex('kept_by_expiry').on('kept').column('expires_at').execute()
    },
  },
  '0003-servers': {
    async up(db: Any) {
      await db.schema
        .createTable('servers')
        .addColumn('id', 'text', column => column.primaryKey())
        .addColumn('revision', 'integer', column => column.notNull())
        .addColumn('body', 'text', column => column.notNull())
        .execute()
    },
  },
  '0004-outcomes': outcomesMigration,
  '0005-findings': {
    async up(db: Any) {
      await db.schema
        .createTable('findings')
        .addColumn('id', 'text', column => column.primaryKey())
        .addColumn('server', 'text', column => column.notNull())
        .addColumn('key', 'text', column => column.notNull())
        .addColumn('week', 'text', column => column.notNull())
        .addColumn('revision', 'integer', column => column.notNull())
        .addColumn('state', 'text', column => column.notNull())
        .addColumn('again', 'text')
        .addColumn('unposted', 'integer', column => column.notNull())
        .addColumn('body', 'text', column => column.notNull())
        .execute()
      await db.schema.createIndex('findings_once').on('findings').columns(['server', 'key']).unique().execute()
    },
  },
  '0006-hand-over': {
    async up(db: Any) {
      await db.schema.alterTable('checks').addColumn('starter', 'text').execute()
      // Most checks are never handed over, and cost these indexes nothing.
      await sql`create index checks_by_starter on checks (starter) where starter is not null`.execute(db)
      await sql`create index checks_handed on checks (server) where starter is not null`.execute(db)
      await db.schema
        .createTable('notices')
        .addColumn('check_id', 'text', column => column.notNull())
        .addColumn('kind', 'text', column => column.notNull())
        .addColumn('channel', 'text', column => column.notNull())
        .addColumn('message', 'text', column => column.notNull())
        .addColumn('until', 'bigint', column => column.notNull())
        .addPrimaryKeyConstraint('notices_once', ['check_id', 'kind'])
        .execute()
      await db.schema.createIndex('notices_by_expiry').on('notices').column('until').execute()
    },
  },
  // A release counts a year of one server, or of the pool, along these and reads no row of the table itself.
  '0007-trends': {
    async up(db: Any) {
      const counted = ['week', 'family', 'verdict', 'bought', 'fired']
      await db.schema
        .createIndex('outcomes_counted')
        .on('outcomes')
        .columns(['server', ...counted])
        .execute()
      await db.schema
        .createIndex('outcomes_pool_counted')
        .on('outcomes')
        .columns(counted)
        .where(sql.ref('pooled'), 'is not', null)
        .execute()
    },
  },
  '0009-offers': {
    async up(db: Any) {
      await db.schema
        .createTable('offers')
        .addColumn('post', 'text', column => column.primaryKey())
        .addColumn('server', 'text', column => column.notNull())
        .addColumn('claimed_at', 'bigint', column => column.notNull())
        .execute()
      await db.schema.createIndex('offers_by_age').on('offers').column('claimed_at').execute()
    },
  },
  // It changed a trigger that the next step takes away.
  '0010-outcomes-once': { async up() {} },
  '0011-waiting-outcomes': waitingOutcomesMigration,
  '0012-unread-releases': unreadReleasesMigration,
  '0013-help-requests': {
    async up(db: Any) {
      await sql`update notices set kind = 'help-request' where kind = 'plea'`.execute(db)
      await sql`update notices set kind = 'note' where kind = 'word'`.execute(db)
    },
  },
  '0020-families': familiesMigration,
  '0023-stories': storiesMigration,
  // A server that leaves has its checks found in pieces.
  '0021-checks-by-server': {
    async up(db: Any) {
      await sql`create index checks_by_server on checks (server)`.execute(db)
    },
  },
  '0024-helped': {
    async up(db: Any) {
      await db.schema
        .createTable('helped')
        .addColumn('server', 'text', column => column.notNull())
        .addColumn('person', 'text', column => column.notNull())
        .addColumn('week', 'text', column => column.notNull())
        .addColumn('count', 'integer', column => column.notNull())
        .addPrimaryKeyConstraint('helped_once', ['server', 'person', 'week'])
        .execute()
      await db.schema.createIndex('helped_by_person').on('helped').column('person').execute()
    },
  },
  '0031-settings-history': {
    async up(db: Any) {
      await sql`alter table servers add column history text`.execute(db)
      await sql`alter table servers add column history_from bigint`.execute(db)
    },
  },
  // Before the pool shows a family, it is counted on how many servers it has been checked.
  '0022-pool-servers': {
    async up(db: Any) {
      await sql`create index outcomes_pool_servers on outcomes (week, family, server) where pooled is not null`.execute(
        db,
      )
    },
  },
  '0033-few-outcomes': fewOutcomesMigration,
  '0034-pool-anew': poolAnewMigration,
  '0035-pool-state-anew': poolStateAnewMigration,
  // Whoever wants theirs gone is looked for under a code for each family of each server.
  '0036-outcomes-by-code': {
    async up(db: Any) {
      await sql`create index outcomes_by_reporter on outcomes (reporter)`.execute(db)
      await sql`create index outcomes_by_pooled on outcomes (pooled) where pooled is not null`.execute(db)
    },
  },
  '0024-coarser-outcomes': coarserOutcomesMigration,
  // Not logged: after a crash everybody has their full share, and no back-up of the log tells who asked for what.
  '0032-allowances': {
    async up(db: Any) {
      const unlogged = db.getExecutor().adapter instanceof SqliteAdapter ? sql`` : sql`unlogged`
      await sql`create ${unlogged} table allowances (key text primary key, full_at bigint not null)`.execute(db)
    },
  },
}

/** What keeps this version from a database that a newer one has changed; undefined where nothing does. Changes nothing. */
export const newerDatabase = (db: Kysely<Tables>) => newerThan(db, Object.keys(migrations))

/** How many steps this version takes that the database has not taken yet. */
export async function stepsAhead(db: Kysely<Tables>): Promise<number> {
  const taken = await stepsTaken(db)
  return Object.keys(migrations).filter(name => !taken.includes(name)).length
}

/**
 * Brings the database up to date, or throws what stopped it: `NewerDatabase` where a newer version was here. `schema`: the one its
 * tables stand in; without it kysely takes the migration tables of any other schema of the same database for its own.
 */
export async function migrate(db: Kysely<Tables>, schema?: string): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => migrations },
    ...(schema !== undefined && { migrationTableSchema: schema }),
  })
  const { error, results = [] } = await migrator.migrateToLatest()
  if (error) throw (await newerDatabase(db).catch(() => undefined)) ?? error
  if (results.length > 0) await keepVersion(db)
}
