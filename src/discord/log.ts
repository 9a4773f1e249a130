// The log: JSON lines, with interaction and webhook tokens blotted out wherever an error carries them.
import { type DestinationStream, type Logger, pino } from 'pino'

/** discord.js errors print the request's URL, and these URLs hold live tokens. */
export function blotTokens(line: string): string {
  return line
    .replace(/(\/(?:interactions|webhooks)\/\d+\/)[\w.%-]+/g, '$1[token]')
    .replace(/\b[\w-]{23,28}\.[\w-]{6,7}\.[\w-]{27,}\b/g, '[token]')
}

/** Opens the log at `level`; `to` gets whole lines (standard error by default). */
export function openLog(level: string, to: DestinationStream = process.stderr): Logger {
  return pino({ level, base: null }, { write: line => to.write(blotTokens(line)) })
}
