// Reads attached logs: only from hosts that serve attachments, only so big, only so long, each in a process of its own.
import type { ChildProcess } from 'node:child_process'
import { isAllowedOrigin } from '../allowed-origin.ts'
import { runApart } from '../run-apart.ts'
import type { FileRefusal, LogOutcome, LogReader } from './log-reader.ts'
import type { LogWork } from './read-log.ts'

export type LogBounds = {
  readonly mostBytes: number
  /** For the file to arrive, and for everything, in ms. */
  readonly fetchFor_ms: number
  readonly readFor_ms: number
  /** Heap of the process, in MB; the columns of a log lie outside it and are bounded by its rows. */
  readonly heap_MB: number
  /** The program of the process. */
  readonly program: URL
}

/** Discord takes files of 10 MiB from everybody and 25 MiB and more from some; a log of a million rows has about 25. */
const usual: LogBounds = {
  mostBytes: 25 * 1024 ** 2,
  fetchFor_ms: 20_000,
  readFor_ms: 30_000,
  heap_MB: 256,
  program: new URL('./read-log.ts', import.meta.url),
}

/** `origins`: scheme, host and port that attachments may come from, compared exactly. `changed`: other bounds than the usual. */
export function openLogReader(origins: readonly string[], changed: Partial<LogBounds> = {}): LogReader {
  const { mostBytes, fetchFor_ms, readFor_ms, heap_MB, program } = { ...usual, ...changed }
  return {
    async read(file, options) {
      if (!isAllowedOrigin(origins, file.url)) return refused({ code: 'file-foreign' })
      if (file.size > mostBytes) return refused({ code: 'file-large', megabytes: mostBytes / 1024 ** 2 })
      const work: LogWork = { url: file.url, options, mostBytes, fetchFor_ms }
      return runApart(program, work, process => outcomeFrom(process, readFor_ms), { heap_MB })
    },
  }
}

/** What the process says of the file. One that runs out of heap aborts itself; any other end is a fault of ours, or of Node. */
function outcomeFrom(process: ChildProcess, within_ms: number): Promise<LogOutcome> {
  const { promise, resolve, reject } = Promise.withResolvers<LogOutcome>()
  const timer = setTimeout(() => resolve(refused({ code: 'file-slow' })), within_ms)
  process.once('message', (outcome: LogOutcome) => resolve(outcome))
  process.once('error', reject)
  process.once('exit', (code, signal) =>
    signal === 'SIGABRT' || code === 134
      ? resolve(refused({ code: 'file-slow' }))
      : reject(new Error(`The process that reads a log ended by ${signal ?? `exit code ${code}`}.`)),
  )
  return promise.finally(() => clearTimeout(timer))
}

const refused = (file: FileRefusal): LogOutcome => ({ ok: false, file })
