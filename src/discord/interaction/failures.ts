// What went wrong and was not the member's doing: told kindly with a reference, in full only in the log.
import { DiscordAPIError, HTTPError, type Interaction, RateLimitError, RESTJSONErrorCodes } from 'discord.js'
import { sayIn } from '../../words/say.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { followUpPrivately, replyPrivately } from './reply.ts'
import { typedBack } from './typed-back.ts'

/**
 * Discord's ways of saying that an answer came too late or twice. The change is stored, and the next click shows it, so these
 * are ordinary: 10062 unknown interaction, 40060 already acknowledged, 50027 token no longer valid, 10008 message gone.
 */
const ordinary: readonly (string | number)[] = [
  RESTJSONErrorCodes.UnknownInteraction,
  RESTJSONErrorCodes.InteractionHasAlreadyBeenAcknowledged,
  RESTJSONErrorCodes.InvalidWebhookToken,
  RESTJSONErrorCodes.UnknownMessage,
]

/** How long Discord waits for a first answer, in ms: whoever takes longer is told "unknown interaction", and nothing of why. */
const inTimeMs = 3000

export type Failing = 'ordinary' | 'trouble' | 'fault'

/** `trouble` is the world's (store, network, Discord) and may pass; `fault` is ours. */
export function failingOf(error: unknown): Failing {
  if (error instanceof DiscordAPIError)
    return ordinary.includes(error.code) ? 'ordinary' : error.status >= 500 ? 'trouble' : 'fault'
  if (error instanceof HTTPError || error instanceof RateLimitError) return 'trouble'
  // Stores and sockets name their failures by a string code (SQLITE_BUSY, ECONNRESET, 57P01); slips of ours have none.
  const code = codeOf(error)
  if (code === 'unreadable-body') return 'fault'
  const named = typeof code === 'string' && !code.startsWith('ERR_INVALID')
  return named || (error instanceof Error && error.name === 'AbortError') ? 'trouble' : 'fault'
}

const codeOf = (error: unknown): unknown => (error instanceof Error && 'code' in error ? error.code : undefined)

/** Logs a failure and tells the person, where there is still a way to reach them. */
export async function answerFailure(services: Services, interaction: Interaction, error: unknown): Promise<void> {
  const failing = failingOf(error)
  const reference = services.newId().slice(0, 8)
  const record = { err: error, reference, kind: interaction.type }
  if (failing === 'ordinary') {
    const after = services.now() - interaction.createdTimestamp
    return services.log[after > inTimeMs ? 'warn' : 'debug']({ ...record, after }, 'answered too late or twice')
  }
  services.log[failing === 'fault' ? 'error' : 'warn'](record, failing)
  if (interaction.isAutocomplete()) return
  if (!interaction.isRepliable() || interaction.isUserContextMenuCommand() || interaction.isPrimaryEntryPointCommand())
    return
  if (interaction.replied) return
  const say = sayIn(interaction.locale)
  const words = codeOf(error) === 'unreadable-body' ? 'trouble.unreadable' : 'trouble.try-again'
  const shown = message([text(say(words, { reference })), ...typedBack(say, interaction), small(say('caution.line'))])
  const tell = interaction.deferred ? followUpPrivately : replyPrivately
  await tell(interaction, shown).catch(second => services.log.debug({ err: second, reference }, 'could not be told'))
}
