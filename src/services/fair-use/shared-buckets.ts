// Buckets that several processes take tokens from: what fair use needs of whoever keeps them.
import type { Rate } from './buckets.ts'

export type Wanted = {
  /** What the bucket is of, such as `act person 1234`; two with the same name are one bucket. */
  readonly of: string
  readonly rate: Rate
  readonly tokens: number
  /** Taken also where there are none, as far as the bucket goes: for what is only counted. */
  readonly always?: true
}

export type SharedBuckets = {
  /** From each bucket on its own: 0 where its tokens were there and have been taken, or else in how many ms they will be. */
  take(wanted: readonly Wanted[]): Promise<readonly number[]>
  /** Puts back what was taken in vain. */
  giveBack(wanted: readonly Wanted[]): Promise<void>
}
