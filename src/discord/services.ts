// What every handler is given: the programs, the store, the clock and the rest, wired together by the process.
import type { Logger } from 'pino'
import type { AnswerBook } from '../answers/book.ts'
import type { NoticeStore } from '../check/notice-store.ts'
import type { CheckStore } from '../check/store.ts'
import type { Answers } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import type { Judgement } from '../engine/judge.ts'
import type { Question } from '../engine/pack/pack.ts'
import type { Programs } from '../engine/programs.ts'
import type { Drawing } from '../pictures/drawing.ts'
import type { LogReader } from '../readers/log/log-reader.ts'
import type { PhotoReader } from '../readers/photo/photo-reader.ts'
import type { OfferClaims } from '../server/offer-claims.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import type { Traces } from '../server/traces.ts'
import type { Outcome } from '../trends/outcome.ts'
import type { Say } from '../words/say.ts'
import type { FairUse } from './fair-use/open-fair-use.ts'
import type { Lanes } from './interaction/lanes.ts'
import type { Posts } from './posts/post.ts'
import type { TrendsServices } from './trends/trends-services.ts'

/** A picture for a message, with the words for those who cannot see it. */
export type ShownPicture = { readonly name: string; readonly bytes: Uint8Array; readonly alt: string }

export type Pictures = {
  /** Where to look and what each option looks like; undefined where there is nothing to draw. */
  forQuestion(question: Question, say: Say): Promise<ShownPicture | undefined>
  /** The verdict card with what does not fit marked on it, and what a known family looks like; none where there is nothing to draw. */
  forVerdict(program: Program, judgement: Judgement, answers: Answers, say: Say): Promise<ShownPicture[]>
  /** What a safe bench looks like, for whoever is asked whether they have one. */
  forBench(say: Say): Promise<ShownPicture | undefined>
  /**
   * A drawing of any kind, under a file name that ends in .png; undefined where pictures are off or it cannot be rendered.
   * It is kept nowhere: it may be of one person's cell.
   */
  ofDrawing(name: string, drawing: Drawing, say: Say): Promise<ShownPicture | undefined>
}

/** Small things a person goes on with in a later click: kept for a while, and forgotten by themselves. */
export type Drafts = {
  /** Keeps `value` (JSON) under a new key for `ms` milliseconds; `person` is whose it is, so that they can see and delete it. */
  keep(value: { readonly person: string }, ms: number): Promise<string>
  /** What was kept; undefined once it is forgotten. The caller checks whose it is and what is in it. */
  find(key: string): Promise<unknown>
}

export type Services = {
  readonly programs: Programs
  readonly checks: CheckStore<Outcome>
  /** Where checks are shown to others. */
  readonly notices: NoticeStore
  readonly servers: SettingsStore
  readonly offers: OfferClaims
  readonly pictures: Pictures
  readonly drafts: Drafts
  readonly logs: LogReader
  /** The answers to common questions: read when the first is asked. */
  answers(): Promise<AnswerBook>
  /** What channels see. */
  readonly posts: Posts
  readonly photos: PhotoReader
  readonly trends: TrendsServices
  readonly traces: Traces
  readonly lanes: Lanes
  readonly fairUse: FairUse
  /** Milliseconds since 1970. */
  now(): number
  /** A new id: lower-case letters and digits, not guessable. */
  newId(): string
  readonly log: Logger
}
