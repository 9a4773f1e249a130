// Why the bot cannot start or go on, in sentences for whoever hosts it, and the exit code that says whether starting again helps.
import { DiscordLost, type Loss, sayLoss } from '../discord/gateway/discord-loss.ts'
import { UnusablePacks } from '../packs/unusable-packs.ts'
import type { Config } from './config.ts'

/** What a process ends with: all is well; something failed that may pass; only the operator can mend it, and no restart will. */
export const exitCodes = { fine: 0, trouble: 1, operator: 2 } as const
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes]

/** What to tell, and what to end with. Without sentences it is a fault of ours, for the log. */
export type Ending = { readonly sentences: readonly string[]; readonly code: ExitCode }

/** Thrown where it is known what is wrong. */
export class CannotStart extends Error {
  readonly ending: Ending

  constructor(sentence: string, code: ExitCode, options?: ErrorOptions) {
    super(sentence, options)
    this.ending = { sentences: [sentence], code }
  }
}

export function endingOf(error: unknown, config: Config): Ending {
  const code = codeOf(error)
  if (error instanceof CannotStart) return error.ending
  if (error instanceof DiscordLost) return { sentences: [sayLoss(error.loss)], code: codes[error.loss.is] }
  if (error instanceof UnusablePacks) return operator(...error.sentences)
  if (error instanceof Error && code === 'newer-database') return operator(error.message)
  if (code === 'EADDRINUSE') return operator(sayTaken((error as { port?: number }).port, config))
  if ((code === 'ENOENT' || code === 'ENOTDIR' || code === 'EACCES') && config.rules !== undefined)
    return operator(
      `CELLWARY_RULES: ${config.rules} cannot be read (${code}). Correct the path or its rights, or leave it out.`,
    )
  return { sentences: [], code: exitCodes.trouble }
}

function sayTaken(taken: number | undefined, { figures, http, port }: Config): string {
  const stop = (which: number) => `Port ${which} is taken. Stop what uses it, or set`
  if (figures && taken === figures.port) return `${stop(figures.port)} CELLWARY_FIGURES_PORT to another one.`
  if (http && taken === http.port) return `${stop(http.port)} CELLWARY_HTTP to another one.`
  return `${stop(port)} CELLWARY_PORT to another one (0 takes any).`
}

const operator = (...sentences: readonly string[]): Ending => ({ sentences, code: exitCodes.operator })

const codes: Readonly<Record<Loss['is'], ExitCode>> = {
  token: exitCodes.operator,
  intents: exitCodes.operator,
  shards: exitCodes.operator,
  version: exitCodes.operator,
  sessions: exitCodes.trouble,
  unreachable: exitCodes.trouble,
}

/** The code of a failure: of the system, the database or Discord; that of what caused it where it has none itself. */
export function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined
  const code = 'code' in error ? error.code : undefined
  return typeof code === 'string' && code !== '' ? code : codeOf(error.cause)
}
