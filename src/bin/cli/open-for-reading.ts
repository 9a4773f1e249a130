// Opens a database that is there already, as it is: nothing is made, migrated or, unless asked for, written.
import { access } from 'node:fs/promises'
import type { Kysely } from 'kysely'
import { openAsIs } from '../../stores/open-sqlite.ts'
import type { Tables } from '../../stores/tables.ts'

export type ForReading =
  | { readonly ok: true; readonly db: Kysely<Tables> }
  | { readonly ok: false; readonly why: 'no-database' | 'not-ours'; readonly says: string; readonly error?: unknown }

/** `named`: a file, or postgres://…; it must hold the tables of this version. */
export async function openForReading(named: string, writing = false): Promise<ForReading> {
  const postgres = /^postgres(ql)?:\/\//.test(named)
  if (!postgres && !(await there(named))) return { ok: false, why: 'no-database', says: '' }
  let db: Kysely<Tables> | undefined
  try {
    db = postgres ? (await import('../../stores/open-postgres.ts')).openPostgresAsIs(named) : openAsIs(named, writing)
    await db.selectFrom('releases').select('week').limit(1).execute()
    return { ok: true, db }
  } catch (error) {
    await db?.destroy().catch(() => undefined)
    const says = error instanceof Error ? error.message || String(('code' in error && error.code) || '') : ''
    return { ok: false, why: 'not-ours', says, error }
  }
}

const there = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  )
