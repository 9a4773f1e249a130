// The tables, as kysely sees them; the same on SQLite and on PostgreSQL.
import type { Generated } from 'kysely'

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
  /** Who started it, once it was handed over; null before. */
  starter: string | null
  /** The interaction that opened it, and the one that changed it last: neither counts twice. */
  opened_by: string
  changed_by: string
  /** The outcome it has left, sealed until its week is over: then it leaves, and this is null again. */
  outcome: string | null
  /** 1 once its outcome is settled, left or not: a check leaves no second one, and its body is sealed. */
  settled: Generated<number>
}

/** What may expire or be made again: cool-downs, drafts, rendered pictures. `expires_at` null: never. */
export type KeptRow = { key: string; value: string; expires_at: number | null }

/** What a server's moderators decided, as JSON; the history of it, and when its oldest change was made. */
export type ServerRow = {
  id: string
  revision: number
  body: string
  history: string | null
  history_from: number | null
}

/** One outcome: what is counted by in columns of its own, lists and maps as JSON. Its key holds no order in time. */
export type OutcomeRow = {
  server: string
  epoch: string
  /** 'unknown' where the family is not known. */
  family: string
  reporter: string
  pooled: string | null
  week: string
  verdict: string
  bought: string
  fired: string
  options: string
  packs: string
}

/** An outcome for which its server had too few yet when its week was over; `sealed_under`: the week whose key seals it. */
export type WaitingOutcomeRow = { id: string; server: string; epoch: string; sealed_under: string; sealed: string }

/** By how many an answer was given on a server, counted up to five: outcomes keep it from then on. */
export type AnswerCountRow = { server: string; question: string; option: string; given: number }

/** A frozen release of 'server:…' or 'pool'; the state behind it is kept with the latest only. `unread`: 1 until its findings are taken down. */
export type ReleaseRow = { scope: string; week: string; bytes: string; state: string | null; unread: number }

/** Who does a piece of work alone, and until when (ms since 1970) unless it is given back before. */
export type LeaseRow = { name: string; holder: string; until: number }

/** When a bucket of fair use is full again (ms since 1970), under a digest of whose it is; only used on PostgreSQL. */
export type AllowanceRow = { key: string; full_at: number }

/** People who leave no outcomes, each as a hash. */
export type OptOutRow = { person: string }

/**
 * Something moderators are told of; the whole of it as JSON. `unposted`: 1 while a warning waits to be posted; `due`: 1 while their
 * channel is behind; `again`: the week until which it is watched.
 */
export type FindingRow = {
  id: string
  server: string
  key: string
  week: string
  revision: number
  state: string
  again: string | null
  unposted: number
  due: number
  body: string
}

/** A message in a channel that shows a check to others; one of each kind for a check. */
export type NoticeRow = { check_id: string; kind: string; channel: string; message: string; until: number }

/** A forum post under which an offer was made, or was about to be; or the week of which a server has its note. */
export type OfferRow = { post: string; server: string; claimed_at: number }

/** A server's family: what is searched for in columns of its own. `putting`: a version on its way; a trigger carries it over. */
export type FamilyRow = {
  id: string
  server: string
  state: string
  head: number
  revision: number
  name_key: string
  named: string
  body: string
  opened_by: string
  changed_by: string
  putting: string | null
}
export type FamilyVersionRow = {
  family: string
  server: string
  number: number
  digest: string
  body: string
  by: string
  agreed_by: string | null
}
export type FamilyReferenceRow = { id: string; server: string; family: string; body: string }
export type FamilyPhotoRow = { id: string; server: string; family: string; body: string; size: number; bytes: Buffer }
export type FamilyTrialRow = { server: string; week: string; made: number }

/** How many questions a person has handled for others in a week. */
export type HelpedRow = { server: string; person: string; week: string; count: number }

export type Tables = {
  allowances: AllowanceRow
  helped: HelpedRow
  checks: CheckRow
  notices: NoticeRow
  kept: KeptRow
  servers: ServerRow
  findings: FindingRow
  outcomes: OutcomeRow
  waiting_outcomes: WaitingOutcomeRow
  answer_counts: AnswerCountRow
  releases: ReleaseRow
  leases: LeaseRow
  opt_outs: OptOutRow
  offers: OfferRow
  families: FamilyRow
  family_versions: FamilyVersionRow
  family_references: FamilyReferenceRow
  family_photos: FamilyPhotoRow
  family_trials: FamilyTrialRow
}
