// A Keyv adapter over the same database, for what may expire or be made again: cool-downs, drafts, rendered pictures.
import { EventEmitter } from 'node:events'
import { type KeyvStorageAdapter, type KeyvStorageEntry, keyvStorageCapability } from 'keyv'
import { type Expression, type Kysely, sql } from 'kysely'
import { atOnce, inBatches } from './in-batches.ts'
import { scrub } from './scrub.ts'
import type { Tables } from './tables.ts'

/** The separator Keyv itself puts between a namespace and a key. */
const separator = ':'
/** Where what a person goes on with later is kept; `person` in each value says whose it is. */
export const draftsNamespace = 'drafts'

/**
 * Values under `namespace`; expiry is absolute (ms since 1970) and enforced on every read. `now` is handed in for tests; the
 * database is not closed by `disconnect`, since others share it.
 */
export class KeptValues extends EventEmitter implements KeyvStorageAdapter {
  readonly capabilities
  namespace: string | undefined
  readonly #db: Kysely<Tables>
  readonly #now: () => number

  constructor(db: Kysely<Tables>, namespace?: string, now: () => number = Date.now) {
    super()
    this.#db = db
    this.namespace = namespace
    this.#now = now
    this.capabilities = { ...keyvStorageCapability(this), expires: true }
  }

  /** EventEmitter's own types for listeners are too loose for Keyv's. */
  override listeners(event: string | symbol): ((...values: unknown[]) => void)[] {
    return super.listeners(event) as ((...values: unknown[]) => void)[]
  }

  override rawListeners(event: string | symbol): ((...values: unknown[]) => void)[] {
    return super.rawListeners(event) as ((...values: unknown[]) => void)[]
  }

  async get<Value>(key: string): Promise<Value | undefined> {
    return (await this.getMany<Value>([key]))[0]
  }

  async getMany<Value>(keys: string[]): Promise<(Value | undefined)[]> {
    if (keys.length === 0) return []
    const rows = await this.#alive().where('key', 'in', keys.map(this.#full)).execute()
    const found = new Map(rows.map(row => [row.key, row.value]))
    return keys.map(key => found.get(this.#full(key)) as Value | undefined)
  }

  async set(key: string, value: unknown, expires?: number): Promise<boolean> {
    const row = { key: this.#full(key), value: String(value), expires_at: expires ?? null }
    await this.#db
      .insertInto('kept')
      .values(row)
      .onConflict(conflict => conflict.column('key').doUpdateSet({ value: row.value, expires_at: row.expires_at }))
      .execute()
    return true
  }

  async setMany<Value>(entries: KeyvStorageEntry<Value>[]): Promise<boolean[]> {
    return Promise.all(entries.map(entry => this.set(entry.key, entry.value, entry.expires)))
  }

  async delete(key: string): Promise<boolean> {
    return (await this.deleteMany([key]))[0] ?? false
  }

  async deleteMany(keys: string[]): Promise<boolean[]> {
    if (keys.length === 0) return []
    const gone = await this.#db.deleteFrom('kept').where('key', 'in', keys.map(this.#full)).returning('key').execute()
    const names = new Set(gone.map(row => row.key))
    return keys.map(key => names.has(this.#full(key)))
  }

  async has(key: string): Promise<boolean> {
    return (await this.get(key)) !== undefined
  }

  async hasMany(keys: string[]): Promise<boolean[]> {
    return (await this.getMany(keys)).map(value => value !== undefined)
  }

  async clear(): Promise<void> {
    await this.#db.deleteFrom('kept').where(this.#mine()).execute()
  }

  async *iterator<Value>(): AsyncGenerator<(string | Awaited<Value> | undefined)[], void> {
    const rows = await this.#alive().where(this.#mine()).execute()
    for (const row of rows) yield [row.key.slice(this.#full('').length), row.value as Awaited<Value>]
  }

  /** Deletes what has expired, under whatever namespace; returns how many went. */
  purge(): Promise<number> {
    return this.#purge(sql<boolean>`1 = 1`)
  }

  /** Deletes drafts that have expired; returns how many went. */
  purgeDrafts(): Promise<number> {
    return this.#purge(startsWith(`${draftsNamespace}${separator}`))
  }

  async #purge(which: Expression<boolean>): Promise<number> {
    const expired = this.#db
      .selectFrom('kept')
      .select('key')
      .where('expires_at', '<=', this.#now())
      .where(which)
      .limit(atOnce)
    const gone = await inBatches(async () => {
      const { numDeletedRows } = await this.#db.deleteFrom('kept').where('key', 'in', expired).executeTakeFirstOrThrow()
      return numDeletedRows
    })
    if (gone > 0) await scrub(this.#db)
    return gone
  }

  async disconnect(): Promise<void> {}

  readonly #full = (key: string): string => (this.namespace ? `${this.namespace}${separator}${key}` : key)

  #alive() {
    return this.#db
      .selectFrom('kept')
      .select(['key', 'value'])
      .where(where => where.or([where('expires_at', 'is', null), where('expires_at', '>', this.#now())]))
  }

  /** Keys of this namespace. */
  #mine() {
    return startsWith(this.#full(''))
  }
}

/** `substr` rather than `like`, so that no character of a namespace is a wildcard. */
const startsWith = (prefix: string) => sql<boolean>`substr(key, 1, ${prefix.length}) = ${prefix}`
