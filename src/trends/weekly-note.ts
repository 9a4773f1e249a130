// What a server's moderators are told once a week, if they want it: made of the frozen release and of where findings stand, nothing else.
import type { Finding } from './findings/finding.ts'
import type { Release } from './release/release.ts'

export type WeeklyNote = {
  /** Undefined where no release of the week can be read. */
  readonly counts: Pick<Release, 'week' | 'scope' | 'checks' | 'more' | 'verdicts'> | undefined
  readonly open: number
  readonly watching: number
}

export function noteOf(release: Release | undefined, findings: readonly Pick<Finding, 'state'>[]): WeeklyNote {
  const number = (state: Finding['state']) => findings.filter(one => one.state === state).length
  const shown = ({ week, scope, checks, more, verdicts }: Release) => ({ week, scope, checks, more, verdicts })
  return { counts: release && shown(release), open: number('open'), watching: number('watching') }
}
