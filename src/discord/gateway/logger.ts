// The log: JSON lines, without the tokens that errors carry, and without what was being said to whom.
import { type DestinationStream, type Logger, pino } from 'pino'

/** discord.js errors print the request's URL, and these URLs hold live tokens. */
function blotTokens(line: string): string {
  return line
    .replace(/(\/(?:interactions|webhooks)\/\d+\/)[\w.%-]+/g, '$1[token]')
    .replace(/\b[\w-]{23,28}\.[\w-]{6,7}\.[\w-]{27,}\b/g, '[token]')
}

/**
 * An error as the log holds it: discord.js adds the whole body of the request that failed, which is somebody's check and name. What
 * Discord found wrong with it stands in `rawError`, by field.
 */
function withoutBody(error: Error): object {
  const { requestBody: _, ...rest } = pino.stdSerializers.err(error) as unknown as Record<string, unknown>
  return rest
}

/** Opens the log at `level`; `to` gets whole lines (standard error by default). */
export function openLog(level: string, to: DestinationStream = process.stderr): Logger {
  return pino({ level, base: null, serializers: { err: withoutBody } }, { write: line => to.write(blotTokens(line)) })
}
