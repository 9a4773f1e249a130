// Why the bot cannot start or go on, in sentences for whoever hosts it, and the exit code that says whether starting again helps.
import { relative } from 'node:path'
import { DiscordLost, type Loss, sayLoss } from '../discord/gateway/discord-loss.ts'
import { UnusablePacks } from '../packs/unusable-packs.ts'
import type { Config } from './config.ts'
import { sayPort } from './say-port.ts'

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
  const port = sayPort(error, config)
  if (port !== undefined) return operator(port)
  if (config.rules !== undefined && isWithin(config.rules, error))
    return operator(
      `CELLWARY_RULES: ${config.rules} cannot be read (${code}). Correct the path or its rights, or leave it out.`,
    )
  return { sentences: [], code: exitCodes.trouble }
}

/** Whether it is a file or folder in there that the system did not give. */
const isWithin = (folder: string, error: unknown): boolean =>
  error instanceof Error &&
  'path' in error &&
  typeof error.path === 'string' &&
  !relative(folder, error.path).startsWith('..')

const operator = (...sentences: readonly string[]): Ending => ({ sentences, code: exitCodes.operator })

const codes: Readonly<Record<Loss['is'], ExitCode>> = {
  token: exitCodes.operator,
  intents: exitCodes.operator,
  shards: exitCodes.operator,
  version: exitCodes.operator,
  sessions: exitCodes.trouble,
  unreachable: exitCodes.trouble,
  strange: exitCodes.trouble,
}

/** The code of a failure: of the system, the database or Discord; that of what caused it where it has none itself. */
export function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined
  const code = 'code' in error ? error.code : undefined
  return typeof code === 'string' && code !== '' ? code : codeOf(error.cause)
}
