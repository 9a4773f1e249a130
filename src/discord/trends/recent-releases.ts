// The frozen releases of a server up to a week, for charts and for what is usual.
import type { ReleasedWeek } from '../../trends/findings/past.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import { baselineGap, baselineWeeks } from '../../trends/rises/baseline.ts'
import { type Week, weeksUpTo } from '../../trends/week.ts'
import type { Services } from '../services.ts'

/** Half a year: as many columns as stay apart on a phone. */
export const weeksShown = 26

/** As many as what is usual, and what would be too much, rest on. */
export const weeksBehind = baselineGap + baselineWeeks

/** Oldest first, from the server's first release on, at most `most`. */
export async function recentReleases(
  { trends: { releases } }: Pick<Services, 'trends'>,
  server: string,
  upTo: Week,
  most: number = weeksShown,
): Promise<ReleasedWeek[]> {
  const scope = { kind: 'server', server } as const
  const [first] = await releases.weeks(scope)
  const weeks = weeksUpTo(upTo, most).filter(week => first !== undefined && week >= first)
  return Promise.all(
    weeks.map(async week => {
      const bytes = await releases.bytes(scope, week)
      const read = bytes === null ? undefined : readRelease(bytes)
      return { week, release: read?.ok ? read.release : undefined }
    }),
  )
}
