// Which connections of a bot this process makes, and the wait until one of them may introduce itself to Discord.
import type { Client } from 'discord.js'

/** Some of `count` connections, by their numbers. */
export type ShardRange = { readonly ids: readonly number[]; readonly count: number }

/** `turn` resolves when a connection of this group may introduce itself: one of all processes at a time. */
export type Sharding = ShardRange & { turn(group: number, signal: AbortSignal): Promise<void> }

type Throttling = NonNullable<NonNullable<ConstructorParameters<typeof Client>[0]['ws']>['buildIdentifyThrottler']>

/** Discord lets as many introduce themselves at once as it has groups (its documentation, "Max Concurrency"). */
export const inTurn =
  ({ turn }: Sharding): Throttling =>
  async manager => {
    const { session_start_limit: limit } = await manager.fetchGatewayInformation()
    return { waitForIdentify: (shard, signal) => turn(shard % limit.max_concurrency, signal) }
  }
