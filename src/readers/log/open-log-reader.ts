// Reads attached logs: only from hosts that serve attachments, only so big, only so long, each in a thread of its own.
import { Worker } from 'node:worker_threads'
import { isAllowedOrigin } from '../allowed-origin.ts'
import type { FileRefusal, LogOutcome, LogReader } from './log-reader.ts'
import type { LogWork } from './worker.ts'

export type LogBounds = {
  readonly mostBytes: number
  /** For the file to arrive, and for everything, in ms. */
  readonly fetchFor_ms: number
  readonly readFor_ms: number
  /** Heap of the thread, in MB; the columns of a log lie outside it and are bounded by its rows. */
  readonly heap_MB: number
}

/** Discord takes files of 10 MiB from everybody and 25 MiB and more from some; a log of a million rows has about 25. */
const usual: LogBounds = { mostBytes: 25 * 1024 ** 2, fetchFor_ms: 20_000, readFor_ms: 30_000, heap_MB: 256 }

/** `origins`: scheme, host and port that attachments may come from, compared exactly. */
export function openLogReader(origins: readonly string[], bounds: LogBounds = usual): LogReader {
  const { mostBytes, fetchFor_ms, readFor_ms, heap_MB } = bounds
  return {
    async read(file, options) {
      if (!isAllowedOrigin(origins, file.url)) return refused({ code: 'file-foreign' })
      if (file.size > mostBytes) return refused({ code: 'file-large', megabytes: mostBytes / 1024 ** 2 })
      const work: LogWork = { url: file.url, options, mostBytes, fetchFor_ms }
      const worker = new Worker(new URL('./worker.ts', import.meta.url), {
        workerData: work,
        resourceLimits: { maxOldGenerationSizeMb: heap_MB },
      })
      const { promise, resolve, reject } = Promise.withResolvers<LogOutcome>()
      const timer = setTimeout(() => resolve(refused({ code: 'file-slow' })), readFor_ms)
      worker.once('message', resolve)
      worker.once('error', error => (outOfMemory(error) ? resolve(refused({ code: 'file-slow' })) : reject(error)))
      try {
        return await promise
      } finally {
        clearTimeout(timer)
        await worker.terminate()
      }
    },
  }
}

const outOfMemory = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY'

const refused = (file: FileRefusal): LogOutcome => ({ ok: false, file })
