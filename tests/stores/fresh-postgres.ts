// A schema of PostgreSQL of its own, named by a URL as an operator would name a database.
import { randomUUID } from 'node:crypto'
import pg from 'pg'
import { databases, postgresUrl } from './databases.ts'

export const noPostgres = databases.find(kind => kind.name === 'PostgreSQL')?.missing

export type FreshPostgres = {
  readonly url: string
  query(sql: string): Promise<readonly Record<string, unknown>[]>
  close(): Promise<void>
}

export async function freshPostgres(): Promise<FreshPostgres> {
  const schema = `cellwary_${randomUUID().replaceAll('-', '')}`
  const client = new pg.Client({ connectionString: postgresUrl })
  await client.connect()
  await client.query(`create schema ${schema}`)
  await client.query(`set search_path to ${schema}`)
  const url = new URL(postgresUrl)
  url.searchParams.set('options', `-c search_path=${schema}`)
  return {
    url: url.href.replaceAll('+', '%20'),
    query: async sql => (await client.query(sql)).rows,
    async close() {
      await client.query(`drop schema ${schema} cascade`)
      await client.end()
    },
  }
}
