// Findings that are one story: which of them their channel is behind with, and states that say what was decided.
import { type Kysely, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

export const storiesMigration: Migration = {
  async up(db: Kysely<unknown>) {
    for (const statement of statements) await sql.raw(statement).execute(db)
  },
}

/** `again` is the week a finding is watched until; what stands in `body` is brought up to date by whoever reads it. */
const statements = [
  'alter table findings add column due integer not null default 0',
  `update findings set due = 1 where state = 'new'`,
  `update findings set state = 'watching' where state = 'told' and again is not null`,
  `update findings set state = 'open' where state in ('new', 'told')`,
  `update findings set state = 'warned' where state = 'settled' and body like '%"did":"warned"%'`,
  `update findings set state = 'dismissed' where state = 'settled'`,
]
