// One interaction from its opening to the end of its token, and what happened to it so far.
import type { Issue } from '../rules/issue.ts'
import type { RawComponent } from '../wire.ts'
import type { Json } from '../world/raw.ts'
import type { Message } from '../world/world.ts'

/** Discord: three seconds for the first answer, fifteen minutes for the token. */
export const firstAnswerMs = 3_000
export const tokenMs = 15 * 60_000

/** Interaction types: 2 command, 3 component, 4 autocomplete, 5 modal submit. */
export type InteractionType = 2 | 3 | 4 | 5

export type Happening =
  | { readonly kind: 'message' | 'deferred' | 'updated' | 'edited' | 'follow-up'; readonly message: Message }
  | { readonly kind: 'acknowledged' }
  | { readonly kind: 'choices'; readonly choices: readonly Choice[] }
  | { readonly kind: 'modal'; readonly modal: { customId: string; title: string; components: RawComponent[] } }
  | { readonly kind: 'refused'; readonly issues: readonly Issue[] }

export type Choice = {
  readonly name: string
  readonly value: string | number
}

export type Opened = {
  readonly id: string
  readonly token: string
  readonly type: InteractionType
  readonly personId: string
  readonly channelId: string
  readonly at: number
  /** The message a click came from, or the one from which a submitted modal was opened. */
  readonly sourceId: string | null
  /** The option types by name for autocomplete: 3 text, 4 whole number, 10 number. */
  readonly focusedType: number | null
  /** What `interaction_metadata` of messages it makes will say. */
  readonly metadata: Json
  /** The message type its answers carry: 20 for slash commands, 23 for context menus, 0 otherwise. */
  readonly messageType: number
  /** The callback type it was answered with. */
  answered: number | null
  /** What `@original` is. */
  originalId: string | null
  /** Follow-ups made with its token, besides `@original`. */
  readonly followUps: Set<string>
  readonly refusals: Issue[]
  readonly watchers: Set<(happening: Happening) => void>
}

/** Tells whoever waits for this interaction. */
export function happen(opened: Opened, happening: Happening): void {
  for (const watcher of [...opened.watchers]) watcher(happening)
}

/** Whether the token still works at this time. */
export function alive(opened: Opened, now: number): boolean {
  return now - opened.at < tokenMs
}
