// Deciding about a finding, and taking a decision back: one event in, the finding after it out, or nothing where it does not go.
import type { Week } from '../week.ts'
import {
  type Decision,
  type Deed,
  type Finding,
  isPending,
  type KnownFakeOf,
  type PostPlace,
  type Standing,
} from './finding.ts'

export type Deciding =
  /** `post`: where; null where it could not be learnt. */
  | { readonly is: 'told'; readonly post: PostPlace | null }
  /** The post shows it as it stands; `post`: where it was met, if it was not known. */
  | { readonly is: 'shown'; readonly post: PostPlace | null }
  | { readonly is: 'post-gone' }
  /** The week until which it was watched has come. */
  | { readonly is: 'watch-over' }
  | { readonly is: 'warn'; readonly by: string; readonly channel: string; readonly text: string }
  | { readonly is: 'edit-warning'; readonly by: string; readonly text: string }
  | { readonly is: 'warning-posted'; readonly message: string | null }
  /** The warning could not be posted or changed: it stands as before the decision. */
  | { readonly is: 'warning-failed' }
  | { readonly is: 'withdrawal-posted' }
  | { readonly is: 'dismiss'; readonly by: string; readonly why: string }
  | { readonly is: 'put-off'; readonly by: string; readonly until: Week }
  | { readonly is: 'known-fake'; readonly by: string; readonly fake: KnownFakeOf }
  /** `of`: how many decisions there were when it was pressed; `why`: the word that stands under a warning that is withdrawn. */
  | { readonly is: 'undo'; readonly by: string; readonly of: number; readonly why: string }

/** Why nothing can be taken back. */
export type NoUndo = 'nothing-decided' | 'watch-over' | 'found-again' | 'on-its-way' | 'decided-since'

/** The finding after an event at `now`; undefined if it does not go in its state (somebody else was first). */
export function decide(finding: Finding, event: Deciding, now: number): Finding | undefined {
  const { state, warning, withdrawal } = finding
  const moved = (change: Partial<Finding>): Finding => ({ ...finding, ...change, revision: finding.revision + 1 })
  const decided = (by: string, did: Deed, why: string, change: Partial<Standing>): Finding =>
    moved({
      ...change,
      stale: true,
      decisions: [...finding.decisions, { by, at: now, did, why, before: standingOf(finding), undone: null }],
    })
  const waits = state === 'open' || state === 'watching'
  const quiet = !isPending(finding)
  switch (event.is) {
    case 'told':
      return moved({ told: true, post: event.post ?? finding.post, stale: false })
    case 'shown':
      return finding.stale || (event.post && !finding.post)
        ? moved({ stale: false, post: finding.post ?? event.post })
        : undefined
    case 'post-gone':
      return finding.post || finding.stale ? moved({ post: null, stale: false }) : undefined
    case 'watch-over':
      // Whoever put it off asked to be told again.
      return state === 'watching' ? moved({ state: 'open', until: null, told: false }) : undefined
    case 'warn': {
      const { by, channel, text } = event
      if (!waits || !quiet) return undefined
      return decided(by, 'warned', text, {
        state: 'warned',
        until: null,
        warning: { channel, text, posted: false, message: null },
      })
    }
    case 'edit-warning':
      return warning && quiet
        ? decided(event.by, 'edited', event.text, { warning: { ...warning, text: event.text, posted: false } })
        : undefined
    case 'warning-posted':
      return warning?.posted === false
        ? moved({ warning: { ...warning, posted: true, message: event.message ?? warning.message } })
        : undefined
    case 'warning-failed': {
      const last = finding.decisions.at(-1)
      if (warning?.posted !== false || !last) return undefined
      // An undo that could not change the message stands; a decision that could not be carried out never was.
      return last.undone === null && (last.did === 'warned' || last.did === 'edited')
        ? moved({ ...last.before, stale: true, decisions: finding.decisions.slice(0, -1) })
        : moved({ warning: { ...warning, posted: true }, stale: true })
    }
    case 'withdrawal-posted':
      return withdrawal?.posted === false ? moved({ withdrawal: { ...withdrawal, posted: true } }) : undefined
    case 'dismiss':
      return waits ? decided(event.by, 'dismissed', event.why, { state: 'dismissed', until: null }) : undefined
    case 'put-off':
      return waits ? decided(event.by, 'put-off', event.until, { state: 'watching', until: event.until }) : undefined
    case 'known-fake':
      return (waits || state === 'warned') && quiet
        ? decided(event.by, 'known-fake', event.fake.fake, { state: 'known-fake', until: null, knownFake: event.fake })
        : undefined
    case 'undo': {
      const found = lastUndoable(finding, event.of)
      if (typeof found === 'string') return undefined
      return undone(moved, finding, found, { by: event.by, at: now, why: event.why })
    }
  }
}

/** The decision that an undo would take back, or why there is none. `of`: how many decisions whoever asks has seen. */
export function lastUndoable(finding: Finding, of: number = finding.decisions.length): Decision | NoUndo {
  if (of !== finding.decisions.length) return 'decided-since'
  if (isPending(finding)) return 'on-its-way'
  const last = finding.decisions.findLast(one => one.undone === null)
  if (!last) return 'nothing-decided'
  // What has come to its end by itself is not there to be taken back.
  if (last.did === 'put-off' && finding.until !== last.why) return 'watch-over'
  if (last.did === 'dismissed' && finding.state !== 'dismissed') return 'found-again'
  return last
}

/** Puts back what the decision changed, exactly, and says in the channel what becomes of a warning. */
function undone(
  moved: (change: Partial<Finding>) => Finding,
  finding: Finding,
  decision: Decision,
  by: NonNullable<Decision['undone']>,
): Finding {
  const { warning } = finding
  const before = decision.before
  const decisions = finding.decisions.map(one => (one === decision ? { ...one, undone: by } : one))
  const change = { ...before, stale: true, decisions }
  if (decision.did === 'edited' && warning && before.warning)
    // The message has to say again what it said.
    return moved({ ...change, warning: { ...before.warning, message: warning.message, posted: false } })
  if (decision.did === 'warned' && warning)
    return moved({ ...change, withdrawal: { ...warning, posted: false, why: by.why } })
  return moved(change)
}

export const standingOf = ({ state, until, warning, knownFake }: Standing): Standing => ({
  state,
  until,
  warning,
  knownFake,
})
