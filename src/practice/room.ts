// Everything the parts of one practice room share.
import type { Access } from './access.ts'
import type { Clock } from './clock.ts'
import type { FaultBook } from './faults.ts'
import type { Gateway } from './gateway/gateway.ts'
import type { Endpoint } from './interactions/endpoint.ts'
import type { OpenModal } from './interactions/modal.ts'
import type { Opened } from './interactions/opened.ts'
import type { Journal } from './journal.ts'
import type { RateLimits } from './rest/rate-limits.ts'
import type { Rules } from './rules/rules.ts'
import type { World } from './world/world.ts'

export type Room = {
  readonly world: World
  readonly clock: Clock
  readonly gateway: Gateway
  readonly faults: FaultBook
  readonly journal: Journal
  readonly rules: Rules
  readonly access: Access
  readonly rateLimits: RateLimits
  readonly endpoint: Endpoint
  readonly interactions: Map<string, Opened>
  readonly modals: Map<string, OpenModal>
  /** How long the bot has for its first answer. */
  readonly firstAnswerMs: number
}
