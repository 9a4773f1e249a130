// Copies every table of one database into an empty one of the same version, in one transaction: all of it is there then, or nothing.
import { type Kysely, sql } from 'kysely'
import { versionKey } from './newer-database.ts'
import type { Tables } from './tables.ts'

type Table = keyof Tables

/**
 * What a table's rows are put in order by, so that where they lie tells nothing of who came when; outcomes as they join their table.
 * `false`: a table that stays behind. Whoever holds a lease has been stopped; what was asked for lately has been answered.
 */
const orders: { readonly [T in Table]: readonly (keyof Tables[T] & string)[] | false } = {
  checks: ['id'],
  notices: ['check_id', 'kind'],
  kept: ['key'],
  servers: ['id'],
  findings: ['id'],
  answer_counts: ['server', 'question', 'option'],
  waiting_outcomes: ['id'],
  outcomes: ['epoch', 'reporter', 'family', 'server'],
  releases: ['scope', 'week'],
  leases: false,
  allowances: false,
  opt_outs: ['person'],
  offers: ['post'],
  families: ['server', 'id'],
  family_versions: ['server', 'family', 'number'],
  family_references: ['server', 'family', 'id'],
  family_photos: ['server', 'id'],
  family_trials: ['server', 'week'],
  helped: ['server', 'person', 'week'],
}
const moved = (Object.keys(orders) as Table[]).filter(table => orders[table] !== false)

/** Rows of one statement; a photograph is up to some hundred kilobytes. */
const atOnce = (table: Table): number => (table === 'family_photos' ? 10 : 200)

type Row = Record<string, unknown>

/** How many rows of each table were copied, or the table in which something stands already. */
export type Moved =
  | { readonly ok: true; readonly rows: Readonly<Record<string, number>> }
  | { readonly ok: false; readonly held: string }

/** `into`: PostgreSQL. Throws where a row cannot be written, or is not there afterwards; then nothing is. */
export async function moveTables(from: Kysely<Tables>, into: Kysely<Tables>): Promise<Moved> {
  return into.transaction().execute(async copy => {
    const rows: Record<string, number> = {}
    // A bot that starts there meanwhile waits until all is there.
    await sql`lock table ${sql.join(moved.map(table => sql.table(table)))} in share row exclusive mode`.execute(copy)
    const held = await firstHeld(copy)
    if (held !== undefined) return { ok: false, held }
    // What making the tables has left there stands in the copy as well.
    await copy.deleteFrom('kept').execute()
    for (const table of moved) {
      rows[table] = await moveTable(from, copy, table)
      const there = await countOf(copy, table)
      if (there !== rows[table]) throw new Error(`${table}: ${rows[table]} rows were copied, and ${there} are there`)
    }
    return { ok: true, rows }
  })
}

async function moveTable(from: Kysely<Tables>, into: Kysely<Tables>, table: Table): Promise<number> {
  let reading = from.selectFrom(table as 'kept').selectAll()
  for (const column of orders[table] as readonly string[]) reading = reading.orderBy(sql.ref(column))
  const write = async (batch: readonly Row[]) => {
    if (batch.length > 0)
      await into
        .insertInto(table as 'kept')
        .values(batch as never)
        .execute()
  }
  let batch: Row[] = []
  let rows = 0
  for await (const row of reading.stream()) {
    batch.push(withBuffers(row))
    rows++
    if (batch.length < atOnce(table)) continue
    await write(batch)
    batch = []
  }
  await write(batch)
  return rows
}

/** SQLite gives bytes as the platform has them, PostgreSQL's driver takes Node's. */
const withBuffers = (row: object): Row =>
  Object.fromEntries(
    Object.entries(row).map(([key, value]) => [key, value instanceof Uint8Array ? Buffer.from(value) : value]),
  )

async function countOf(db: Kysely<Tables>, table: Table): Promise<number> {
  const { rows } = await sql<{ n: number | bigint }>`select count(*) as n from ${sql.table(table)}`.execute(db)
  return Number(rows[0]?.n)
}

/** The first table in which something stands that a start does not make; undefined where there is none. */
export async function firstHeld(db: Kysely<Tables>): Promise<string | undefined> {
  for (const table of moved) {
    const found = await db
      .selectFrom(table as 'kept')
      .select(sql<number>`1`.as('one'))
      .$if(table === 'kept', query => query.where('key', '!=', versionKey))
      .limit(1)
      .execute()
    if (found.length > 0) return table
  }
  return undefined
}
