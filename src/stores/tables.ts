// The tables, as kysely sees them; the same on SQLite and on PostgreSQL.

/** One check: what is searched for in columns of its own, the whole of it as JSON. */
export type CheckRow = {
  id: string
  revision: number
  holder: string
  server: string | null
  phase: string
  /** Milliseconds since 1970. */
  expires_at: number
  started_at: number
  body: string
  /** The interaction that opened it, and the one that changed it last: neither counts twice. */
  opened_by: string
  changed_by: string
}

/** What may expire or be made again: cool-downs, drafts, rendered pictures. `expires_at` null: never. */
export type KeptRow = { key: string; value: string; expires_at: number | null }

/** What a server's moderators decided, as JSON. */
export type ServerRow = { id: string; revision: number; body: string }

export type Tables = { checks: CheckRow; kept: KeptRow; servers: ServerRow }
