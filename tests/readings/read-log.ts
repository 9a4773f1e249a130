// Reads a whole log at once or in pieces, for the tests.
import { type LogOptions, type LogReading, openLog } from '../../src/readings/open-log.ts'

/** Pushes the bytes in pieces of `piece` and ends the log. */
export function readLog(bytes: Uint8Array, options: Partial<LogOptions> = {}, piece = 65_536): LogReading {
  const log = openLog({ instrument: { kind: 'lab-load' }, ...options })
  for (let at = 0; at < bytes.length; at += piece) {
    if (log.push(bytes.subarray(at, at + piece)) === 'enough') break
  }
  return log.end()
}

/** The same of a text. */
export function readText(text: string, options: Partial<LogOptions> = {}): LogReading {
  return readLog(new TextEncoder().encode(text), options)
}

/** The code a reading ended in, or "read". */
export function outcome(reading: LogReading): string {
  if (reading.ok) return 'read'
  return 'refusal' in reading ? reading.refusal.code : reading.question.code
}
