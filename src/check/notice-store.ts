// Where a check is shown to others: messages in channels, to be redrawn when it changes and taken away when it ends.
import type { CheckId } from './ids.ts'

/**
 * `panel`: where it was offered. `help-request`: what moderators were asked, with photographs. `note`: its holder was told to go on.
 * `alarm`: somebody who does not hold it was told of danger, or that it is with somebody else now.
 * `reminder`: it was said that somebody waits; one without a message was about to be, and is not said twice.
 */
export type NoticeKind = 'panel' | 'help-request' | 'note' | 'alarm' | 'reminder'

export type Notice = {
  readonly check: CheckId
  readonly kind: NoticeKind
  readonly channel: string
  readonly message: string
  /** When it is taken away at the latest; ms since 1970. */
  readonly until: number
}

export type NoticeStore = {
  /** Keeps the one notice of its kind that a check has; gives back the one it takes the place of, if that was another message. */
  put(notice: Notice): Promise<Notice | undefined>
  of(check: CheckId): Promise<Notice[]>
  ofKind(kind: NoticeKind, limit: number): Promise<Notice[]>
  /** Those whose time has come, the first to expire first. */
  expired(now: number, limit: number): Promise<Notice[]>
  drop(notice: Notice): Promise<void>
}
