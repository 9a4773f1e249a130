// What the Discord room needs of whoever fetches and reads a discharge log.
import type { LogOptions, LogReading } from '../../readings/open-log.ts'

/** An attachment as Discord resolved it. */
export type LogFile = { readonly url: string; readonly size: number }

/** Why a file could not be had; nothing in it was looked at. */
export type FileRefusal =
  | { readonly code: 'file-foreign' | 'file-gone' | 'file-slow' | 'file-failed' }
  | { readonly code: 'file-large'; readonly megabytes: number }

export type LogOutcome = LogReading | { readonly ok: false; readonly file: FileRefusal }

export type LogReader = {
  /** Fetches the file and reads it, away from the event loop, within bounds of time, size and memory. Never rejects for the file's sake. */
  read(file: LogFile, options: LogOptions): Promise<LogOutcome>
}
