// The frozen releases of a server up to a week, for a chart of what each of them told.

import { readRelease } from '../../trends/release/freeze-week.ts'
import type { Release } from '../../trends/release/release.ts'
import { type Week, weeksUpTo } from '../../trends/week.ts'
import type { Services } from '../services.ts'

/** Half a year: as many columns as stay apart on a phone. */
const mostWeeks = 26

/** A week without a release, or with a damaged one, has none. */
export type ReleasedWeek = { readonly week: Week; readonly release: Release | undefined }

/** Oldest first, from the server's first release on. */
export async function recentReleases(services: Services, server: string, upTo: Week): Promise<ReleasedWeek[]> {
  const scope = { kind: 'server', server } as const
  const { releases } = services.trends
  const [first] = await releases.weeks(scope)
  const weeks = weeksUpTo(upTo, mostWeeks).filter(week => first !== undefined && week >= first)
  return Promise.all(
    weeks.map(async week => {
      const bytes = await releases.bytes(scope, week)
      const read = bytes === null ? undefined : readRelease(bytes)
      return { week, release: read?.ok ? read.release : undefined }
    }),
  )
}
