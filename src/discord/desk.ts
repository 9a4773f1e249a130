// What every handler is given: the programs, the store, the clock and the rest, wired together by the process.
import type { Logger } from 'pino'
import type { CheckStore } from '../check/store.ts'
import type { Program } from '../engine/compile.ts'
import type { Question } from '../engine/pack/pack.ts'
import type { Programs } from '../engine/programs.ts'
import type { SettingsStore } from '../server/settings-store.ts'
import type { Lanes } from './lanes.ts'
import type { Say } from './words/say.ts'

/** A picture for a message, with the words for those who cannot see it. */
export type ShownPicture = { readonly name: string; readonly png: Uint8Array; readonly alt: string }

export type Pictures = {
  /** Where to look and what each option looks like; undefined where there is nothing to draw. */
  forQuestion(program: Program, question: Question, say: Say): Promise<ShownPicture | undefined>
}

export type Desk = {
  readonly programs: Programs
  readonly checks: CheckStore
  readonly servers: SettingsStore
  readonly pictures: Pictures
  readonly lanes: Lanes
  /** Milliseconds since 1970. */
  now(): number
  /** A new id: lower-case letters and digits, not guessable. */
  newId(): string
  readonly log: Logger
}
