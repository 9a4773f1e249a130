// Every id and pseudonym that stands in a database, wherever it stands: what a list of digests is held against.
import { type Kysely, sql } from 'kysely'
import type { Erased } from './erasures.ts'
import type { FamilyCodes } from './family-codes.ts'
import { atOnce } from './in-batches.ts'
import { isSealed, type Seal } from './seal.ts'
import type { Tables } from './tables.ts'
import { allWaiting, namesOf } from './waiting-outcomes.ts'

/** Ids as Discord has them. */
const ids = /\d{15,20}/g

type Table = keyof Tables
type Read<T extends Table> = readonly (keyof Tables[T] & string)[]

/** In which columns of a table ids may stand, and what it is read in order by; `false`: no id as Discord has it stands there. */
const columns: { readonly [T in Table]: { readonly order: Read<T>; readonly read: Read<T> } | false } = {
  checks: { order: ['id'], read: ['holder', 'server', 'starter', 'body'] },
  kept: { order: ['key'], read: ['key', 'value'] },
  servers: { order: ['id'], read: ['id', 'body', 'history'] },
  findings: { order: ['id'], read: ['server', 'body'] },
  families: { order: ['server', 'id'], read: ['server', 'body'] },
  family_versions: { order: ['server', 'family', 'number'], read: ['server', 'by', 'agreed_by', 'body'] },
  family_references: { order: ['server', 'family', 'id'], read: ['server', 'body'] },
  family_photos: { order: ['server', 'id'], read: ['server', 'body'] },
  family_trials: { order: ['server', 'week'], read: ['server'] },
  helped: { order: ['server', 'person', 'week'], read: ['server', 'person'] },
  answer_counts: { order: ['server', 'question', 'option'], read: ['server'] },
  offers: { order: ['post'], read: ['server'] },
  releases: { order: ['scope', 'week'], read: ['scope'] },
  waiting_outcomes: { order: ['id'], read: ['server'] },
  // Pseudonyms stand here beside the server, and are read below.
  outcomes: false,
  // Digests under a key beside the database.
  allowances: false,
  // Hashes, messages of checks that are gone with them, and what nobody is named by.
  opt_outs: false,
  notices: false,
  leases: false,
}

/** Each id once, as a person's and as a server's: a number tells not which; pseudonyms may come more than once. */
export async function* namedIn(db: Kysely<Tables>, seal: Seal, codes: FamilyCodes): AsyncGenerator<Erased> {
  const seen = new Set<string>()
  for (const [table, named] of Object.entries(columns)) {
    if (!named) continue
    for await (const row of rowsOf(db, table, named.order, named.read))
      for (const value of Object.values(row)) {
        const text = value !== null && isSealed(value) ? await seal.open(value) : value
        yield* idsIn(text ?? '', seen)
      }
  }
  const key = ['server', 'epoch', 'family', 'reporter']
  for await (const { server, reporter, pooled } of rowsOf(db, 'outcomes', key, ['server', 'reporter', 'pooled'])) {
    yield* idsIn(server ?? '', seen)
    for (const word of [reporter, pooled]) if (word) yield { is: 'pseudonym', word }
  }
  // What waits here may have been counted, under its codes, when it was erased.
  for await (const one of allWaiting(db, seal))
    for (const word of await namesOf(one, codes)) yield { is: 'pseudonym', word }
}

/** A table in pieces. Nobody writes meanwhile: the bot has not begun yet. */
async function* rowsOf(
  db: Kysely<Tables>,
  table: string,
  order: readonly string[],
  read: readonly string[],
): AsyncGenerator<Readonly<Record<string, string | null>>> {
  const [wanted, by] = [read, order].map(names => sql.join(names.map(name => sql.ref(name))))
  for (let from = 0; ; from += atOnce) {
    const piece = sql<Record<string, string | null>>`select ${wanted} from ${sql.table(table)} order by ${by}
      limit ${sql.lit(atOnce)} offset ${sql.lit(from)}`
    const { rows } = await piece.execute(db)
    yield* rows
    if (rows.length < atOnce) return
  }
}

function* idsIn(text: string, seen: Set<string>): Generator<Erased> {
  for (const [word] of text.matchAll(ids)) {
    if (seen.has(word)) continue
    seen.add(word)
    yield { is: 'person', word }
    yield { is: 'server', word }
  }
}
