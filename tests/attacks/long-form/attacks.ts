// Every attack by its name, how much of it a size asks for, and whether it may be done in parts.
import { clocksBack } from './clock-back.ts'
import { costs } from './cost.ts'
import { fullDisks, readOnlyFile } from './disk.ts'
import { farRaid } from './far-raid.ts'
import { tenHostile } from './hostile-ten.ts'
import { hostileInteractions } from './interactions.ts'
import { kills } from './kills.ts'
import { memoryOver } from './memory.ts'
import { raid } from './raid.ts'
import { databaseRestarts, postgresMissing } from './restarts.ts'
import type { Result } from './result.ts'
import { ownPostgresMissing, serverRestarts } from './server-restarts.ts'
import type { Size } from './sizes.ts'

export type Attack = {
  readonly name: string
  /** How often the size has it done; undefined for what is done whole or not at all. */
  times?(size: Size): number
  /** `times`: how often of these it is done now; `seed`: another for each part, for what is drawn by chance. */
  run(size: Size, times: number, seed: number): Promise<Result>
}

const onPostgres: readonly Attack[] = [
  {
    name: 'kills-postgresql',
    times: size => size.kills,
    run: (_, times, seed) => kills(times, 'PostgreSQL', seed),
  },
  { name: 'restarts', times: size => size.restarts, run: (_, times) => databaseRestarts(times) },
  { name: 'far-raid', run: size => farRaid(size.raid, size.processes, size.servers, size.quietS) },
  { name: 'ten-hostile', run: size => tenHostile(size.quietS) },
  { name: 'memory', run: size => memoryOver(size.memory) },
  { name: 'cost', run: size => costs(size.checks) },
]

export const attacks: readonly Attack[] = [
  { name: 'hostile', times: size => size.hostile, run: (_, times, seed) => hostileInteractions(times, seed) },
  { name: 'kills-sqlite', times: size => size.kills, run: (_, times, seed) => kills(times, 'SQLite', seed) },
  { name: 'full-disk', times: size => size.disks, run: (_, times) => fullDisks(times) },
  { name: 'read-only', run: () => readOnlyFile() },
  { name: 'clock', times: size => size.clocks, run: (_, times) => clocksBack(times) },
  { name: 'raid', run: size => raid(size.raid) },
  ...(ownPostgresMissing
    ? []
    : [
        {
          name: 'crashes-postgresql',
          times: (size: Size) => size.crashes,
          run: (_: Size, times: number, seed: number) => serverRestarts(times, seed),
        },
      ]),
  ...(postgresMissing ? [] : onPostgres),
]

/** What cannot be run here, and why. */
export const leftOut = postgresMissing ? `${onPostgres.length} lines are left out: ${postgresMissing}` : undefined
