// The tables of families, and the trigger that adds a version in the very statement that puts it in force.
import { type Kysely, SqliteAdapter, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

const columns = ['family', 'server', 'number', 'digest', 'body', 'by', 'agreed_by']

/**
 * A save that puts a version in force writes it, as one JSON object, into the family's own row. The trigger copies it into
 * `family_versions` and takes it out of the row again, so head and version are both there or neither, whenever a process dies.
 */
export const familiesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    const sqlite = db.getExecutor().adapter instanceof SqliteAdapter
    await db.schema
      .createTable('families')
      .addColumn('id', 'text', column => column.notNull())
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('state', 'text', column => column.notNull())
      .addColumn('head', 'integer', column => column.notNull())
      .addColumn('revision', 'integer', column => column.notNull())
      .addColumn('name_key', 'text', column => column.notNull())
      .addColumn('named', 'text', column => column.notNull())
      .addColumn('body', 'text', column => column.notNull())
      .addColumn('opened_by', 'text', column => column.notNull())
      .addColumn('changed_by', 'text', column => column.notNull())
      .addColumn('putting', 'text')
      .addPrimaryKeyConstraint('families_once', ['server', 'id'])
      .execute()
    await db.schema.createIndex('families_by_name').on('families').columns(['server', 'name_key']).unique().execute()
    await db.schema.createIndex('families_opened').on('families').columns(['server', 'opened_by']).unique().execute()
    await db.schema
      .createTable('family_versions')
      .addColumn('family', 'text', column => column.notNull())
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('number', 'integer', column => column.notNull())
      .addColumn('digest', 'text', column => column.notNull())
      .addColumn('body', 'text', column => column.notNull())
      .addColumn('by', 'text', column => column.notNull())
      .addColumn('agreed_by', 'text')
      .addPrimaryKeyConstraint('family_versions_once', ['server', 'family', 'number'])
      .execute()
    await db.schema
      .createIndex('family_versions_by_digest')
      .on('family_versions')
      .columns(['server', 'family', 'digest'])
      .execute()
    await db.schema
      .createTable('family_references')
      .addColumn('id', 'text', column => column.notNull())
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('family', 'text', column => column.notNull())
      .addColumn('body', 'text', column => column.notNull())
      .addPrimaryKeyConstraint('family_references_once', ['server', 'family', 'id'])
      .execute()
    await db.schema
      .createTable('family_photos')
      .addColumn('id', 'text', column => column.notNull())
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('family', 'text', column => column.notNull())
      .addColumn('body', 'text', column => column.notNull())
      .addColumn('size', 'integer', column => column.notNull())
      .addColumn('bytes', sqlite ? 'blob' : 'bytea', column => column.notNull())
      .addPrimaryKeyConstraint('family_photos_once', ['server', 'id'])
      .execute()
    await db.schema
      .createTable('family_trials')
      .addColumn('server', 'text', column => column.notNull())
      .addColumn('week', 'text', column => column.notNull())
      .addColumn('made', 'integer', column => column.notNull())
      .addPrimaryKeyConstraint('family_trials_once', ['server', 'week'])
      .execute()
    for (const statement of sqlite ? onSqlite : onPostgres) await sql.raw(statement).execute(db)
  },
}

const list = columns.map(one => `"${one}"`).join(', ')
const values = (json: string): string =>
  columns
    .map(column =>
      column === 'number'
        ? `cast(${json} ->> 'number' as integer)`
        : column === 'body'
          ? `${json} ->> 'body'`
          : `${json} ->> '${column}'`,
    )
    .join(', ')

const onSqlite = [
  `create trigger families_put_in_force after update of putting on families when new.putting is not null begin
    insert into family_versions (${list}) select ${values('new.putting')};
    update families set putting = null where server = new.server and id = new.id;
  end`,
]

const onPostgres = [
  `create function families_put_in_force() returns trigger language plpgsql as $$
  declare version json := new.putting::json;
  begin
    insert into family_versions (${list}) values (${values('version')});
    new.putting := null;
    return new;
  end $$`,
  `create trigger families_put_in_force before update of putting on families for each row when (new.putting is not null)
    execute function families_put_in_force()`,
]
