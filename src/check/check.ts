// One guided pass over one cell, or one batch bought together: what is kept of it between two clicks.
import type { Answer, Answers, FamilyId, QuestionId } from '../engine/answers.ts'
import type { PackRef } from '../engine/compile.ts'
import type { Tool } from '../ground/tools.ts'
import type { Custody } from './custody.ts'
import type { CheckId, PersonId } from './ids.ts'

/** Quick asks the few questions that tell most; full goes on until nothing can change the verdict. */
export type Mode = 'quick' | 'full'

/** What is asked for before it is offered: touching the cell at all, what lies under the ring, and putting a load on it. */
export type Consent = 'touch' | 'unwrap' | 'bench'

export type Phase =
  /** Nothing was asked yet: how thorough it is to be, which family and which tools are chosen first. */
  | { readonly is: 'beginning' }
  /** `changing`: it was answered before, and stays so until another answer is given. */
  | { readonly is: 'asking'; readonly question: QuestionId; readonly changing?: true }
  /** `answer` is among those that accuse the cell: the same question once more before it counts. */
  | { readonly is: 'second-look'; readonly question: QuestionId; readonly answer: Answer }
  | { readonly is: 'consent'; readonly to: Consent }
  | { readonly is: 'paused' }
  | { readonly is: 'done' }
  | { readonly is: 'closed' }

/** What a finished check leaves for the counts. `declined`: its person said that this one leaves nothing, which stays so. */
export type Leaves = 'outcome' | 'nothing' | 'declined'

export type Check = {
  readonly id: CheckId
  /** Grows by one with every change; a click names the revision it was made on. */
  readonly revision: number
  /** The server it was started in; null in a private conversation. */
  readonly server: string | null
  /** The only person who can answer it. */
  readonly holder: PersonId
  readonly mode: Mode
  /** How many cells were bought together; the answers are for the worst-looking one. */
  readonly cells: number
  readonly family: FamilyId | null
  readonly packs: readonly PackRef[]
  /** The day (YYYY-MM-DD) that decides which figures are still valid. */
  readonly day: string
  readonly answers: Answers
  /** Answered questions in the order in which they were answered. */
  readonly trail: readonly QuestionId[]
  /** Answers that accuse and were looked at twice. */
  readonly confirmed?: readonly QuestionId[]
  /** Answers that a moderator gave in the holder's place, and who it was. */
  readonly saidBy?: Readonly<Record<QuestionId, PersonId>>
  /** Answers that accuse the cell and were given or found out once only: each is asked about again before it counts. */
  readonly pending?: Answers
  /** The tools that are there; absent where nobody was asked, as in checks begun before there was a choice. */
  readonly tools?: readonly Tool[]
  readonly consents: Readonly<Partial<Record<Consent, boolean>>>
  readonly phase: Phase
  /** Decided each time it comes to a verdict; absent before. */
  readonly leaves?: Leaves
  /** Its outcome is settled, left or not: it leaves no second one. The store says so. */
  readonly settled?: true
  /** How it came to its holder; absent while it was never handed over. */
  readonly custody?: Custody
  /** Milliseconds since 1970. */
  readonly startedAt: number
  readonly expiresAt: number
}

/** A check that nobody touches is closed after two weeks. */
export const lifetime = 14 * 24 * 3600_000

/** A verdict that nobody touches for two days is counted as it stands; its check stays open to its person. */
export const settlesAfter = 2 * 24 * 3600_000

/** When a check touched at `now` expires: in whole hours, so that most clicks leave the stored figure as it is. */
export const expiryFrom = (now: number): number => Math.ceil((now + lifetime) / 3600_000) * 3600_000
