// What every handler is given: the programs, the store, the clock and the rest, wired together by the process.
import type { Logger } from 'pino'
import type { AnswerBook } from '../answers/book.ts'
import type { NoticeStore } from '../check/notice-store.ts'
import type { CheckStore } from '../check/store.ts'
import type { Programs } from '../engine/programs.ts'
import type { LogReader } from '../readers/log/log-reader.ts'
import type { PhotoReader } from '../readers/photo/photo-reader.ts'
import type { TextReader } from '../readers/text-file.ts'
import type { HelperLog } from '../server/helper-log.ts'
import type { OfferClaims } from '../server/offer-claims.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import type { Traces } from '../server/traces.ts'
import type { FairUse } from '../services/fair-use/open-fair-use.ts'
import type { ServerLanes } from '../services/fair-use/server-lanes.ts'
import type { FamilyDesk } from '../services/family-desk.ts'
import type { FamilyFiles } from '../services/family-files.ts'
import type { KeyedQueue } from '../services/keyed-queue.ts'
import type { Pictures } from '../services/pictures/pictures.ts'
import type { TrendsServices } from '../services/trends-services.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Posts } from './posts/post.ts'

/** Small things a person goes on with in a later click: kept for a while, and forgotten by themselves. */
export type Drafts = {
  /** Keeps `value` (JSON) under a new key for `ms` milliseconds; `person` is whose it is, so that they can see and delete it. */
  keep(value: { readonly person: string }, ms: number): Promise<string>
  /** What was kept; undefined once it is forgotten. The caller checks whose it is and what is in it. */
  find(key: string): Promise<unknown>
}

export type Services = {
  readonly programs: Programs
  /** What servers describe themselves. */
  readonly families: FamilyDesk
  readonly checks: CheckStore<Outcome>
  /** Where checks are shown to others. */
  readonly notices: NoticeStore
  readonly servers: SettingsStore
  readonly offers: OfferClaims
  /** Who has helped how often. */
  readonly helpers: HelperLog
  readonly pictures: Pictures
  readonly drafts: Drafts
  readonly logs: LogReader
  /** The answers to common questions: read when the first is asked. */
  answers(): Promise<AnswerBook>
  /** What channels see. */
  readonly posts: Posts
  readonly photos: PhotoReader
  readonly files: FamilyFiles
  /** Small text files that people send in. */
  readonly texts: TextReader
  readonly trends: TrendsServices
  readonly traces: Traces
  readonly queue: KeyedQueue
  readonly fairUse: FairUse
  /** Whose turn it is among what a server's people want at once. */
  readonly lanes: ServerLanes
  /** Milliseconds since 1970. */
  now(): number
  /** A new id: lower-case letters and digits, not guessable. */
  newId(): string
  readonly log: Logger
}
