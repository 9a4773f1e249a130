// Inserts a new check once for each interaction; within a number of open ones, whatever other processes open at the same moment.
import { type Insertable, type Kysely, SqliteAdapter, sql } from 'kysely'
import type { CheckRow, Tables } from './tables.ts'

type Row = Insertable<CheckRow>

export async function insert(db: Kysely<Tables>, row: Row): Promise<'saved' | 'seen'> {
  const done = await db
    .insertInto('checks')
    .values(row)
    .onConflict(conflict => conflict.column('opened_by').doNothing())
    .executeTakeFirst()
  return done.numInsertedOrUpdatedRows === 1n ? 'saved' : 'seen'
}

/** `full`: its holder has `most` open checks already. */
export const insertWithin = (db: Kysely<Tables>, row: Row, most: number): Promise<'saved' | 'seen' | 'full'> =>
  db.getExecutor().adapter instanceof SqliteAdapter ? inOneStatement(db, row, most) : underLock(db, row, most)

export const openOf = (db: Kysely<Tables>, { holder, started_at }: Pick<Row, 'holder' | 'started_at'>) =>
  db
    .selectFrom('checks')
    .select(({ fn }) => fn.countAll<number>().as('open'))
    .where('holder', '=', holder)
    .where('phase', '!=', 'closed')
    .where('expires_at', '>', started_at)

/** SQLite lets one statement write at a time: counting and inserting are one. */
async function inOneStatement(db: Kysely<Tables>, row: Row, most: number): Promise<'saved' | 'seen' | 'full'> {
  const names = Object.keys(row) as (keyof Row)[]
  const columns = sql.join(names.map(name => sql.ref(name)))
  const values = sql.join(names.map(name => sql.val(row[name])))
  const done = await sql`insert into checks (${columns}) select ${values}
    where (${openOf(db, row)}) < ${most} on conflict (opened_by) do nothing`.execute(db)
  if (done.numAffectedRows === 1n) return 'saved'
  const opened = await db.selectFrom('checks').select('id').where('opened_by', '=', row.opened_by).executeTakeFirst()
  return opened ? 'seen' : 'full'
}

/** PostgreSQL is asked to let one start of a person wait for the other; the lock ends with the transaction. */
const underLock = (db: Kysely<Tables>, row: Row, most: number): Promise<'saved' | 'seen' | 'full'> =>
  db.transaction().execute(async within => {
    await sql`select pg_advisory_xact_lock(hashtext(${row.holder}))`.execute(within)
    const opened = within.selectFrom('checks').select('id').where('opened_by', '=', row.opened_by)
    if (await opened.executeTakeFirst()) return 'seen'
    const { open } = await openOf(within, row).executeTakeFirstOrThrow()
    return Number(open) >= most ? 'full' : insert(within, row)
  })
