// What the gateway tells whoever counts: interactions, how long their answers took, posts that were refused. Never who or what.
import { type Client, Events, type Interaction, RESTEvents } from 'discord.js'
import { clickHandlers } from '../click-handlers.ts'
import { commands, messageCommands } from '../commands.ts'
import type { Failing } from '../interaction/failures.ts'

/** How an interaction ended: `too-much` was asked to wait; the others as `failingOf` has them. */
export type Ended = 'fine' | 'too-much' | Failing

export type Figures = {
  /** `kind`: a command, the first word of a custom id, or `unknown`. */
  ended(kind: string, how: Ended): void
  /** The first answer of an interaction, in seconds from its arrival; Discord waits three. */
  answered(seconds: number): void
  /** A message to a channel that Discord refused. */
  postRefused(status: number): void
  rateLimited(): void
}

export const noFigures: Figures = {
  ended: () => undefined,
  answered: () => undefined,
  postRefused: () => undefined,
  rateLimited: () => undefined,
}

/** Of a set that is known beforehand, whatever anybody sends. */
export function kindOf(interaction: Interaction): string {
  if (interaction.isAutocomplete()) return 'suggestions'
  if (interaction.isCommand()) {
    const known = [...commands, ...messageCommands].find(one => one.name === interaction.commandName)
    return known ? `/${known.name}` : 'unknown'
  }
  if (!interaction.isMessageComponent() && !interaction.isModalSubmit()) return 'unknown'
  const [mark = ''] = interaction.customId.split('.', 1)
  return clickHandlers.has(mark) ? mark : 'unknown'
}

/** Interactions whose first answer is waited for; those that never get one are let go of in time. */
const mostWaiting = 10_000

/** Hears of answers and refusals where they pass: at the requests themselves. `now` in ms. */
export function watchAnswers(client: Client, figures: Figures, now: () => number): void {
  const arrived = new Map<string, number>()
  client.on(Events.InteractionCreate, ({ id }) => {
    if (arrived.size >= mostWaiting) arrived.clear()
    arrived.set(id, now())
  })
  client.rest.on(RESTEvents.Response, ({ method, path }, { status }) => {
    const id = /^\/interactions\/(\d+)\//.exec(path)?.[1]
    const at = id === undefined ? undefined : arrived.get(id)
    if (id !== undefined && at !== undefined) {
      arrived.delete(id)
      figures.answered((now() - at) / 1000)
    }
    if (status >= 400 && method === 'POST' && /^\/channels\/\d+\/messages/.test(path)) figures.postRefused(status)
  })
  client.rest.on(RESTEvents.RateLimited, () => figures.rateLimited())
}
