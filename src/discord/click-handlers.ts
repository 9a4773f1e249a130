// Every kind of button, menu and form there is, by the first word of its custom ids; one that is not listed here does not exist.
import { askIds } from '../custom-ids/ask-id.ts'
import { buyingIds } from '../custom-ids/buying-id.ts'
import { familyIds, familyStartIds } from '../custom-ids/family-id.ts'
import { linksIds } from '../custom-ids/links-id.ts'
import { logLabelIds } from '../custom-ids/log-label-id.ts'
import { logQuestionIds } from '../custom-ids/log-question-id.ts'
import { privacyIds } from '../custom-ids/privacy-id.ts'
import { setupIds } from '../custom-ids/setup-id.ts'
import { trendsIds } from '../custom-ids/trends-id.ts'
import { waitingIds } from '../custom-ids/waiting-id.ts'
import { offerIds, walkIds } from '../custom-ids/walk-id.ts'
import { checkClick } from './check/check-click.ts'
import { anewClick, factsClick } from './check/facts/facts-click.ts'
import { handClick } from './check/hand-over/hand-over-click.ts'
import { letterClick } from './check/letter/letter-click.ts'
import { shareClick } from './check/share/share-click.ts'
import type { ClickHandler } from './interaction/click-handler.ts'

type Listed = { readonly mark: string; load(): ClickHandler | Promise<ClickHandler> }

/** What a check needs is there before the first click is taken. */
const atOnce = [checkClick, handClick, factsClick, anewClick, letterClick, shareClick].map(
  (handler): Listed => ({ mark: handler.mark, load: () => handler }),
)

/** The rest is loaded behind a running bot, or by whoever clicks first. */
const later = ({ mark }: { readonly mark: string }, load: () => Promise<ClickHandler>): Listed => ({ mark, load })

const handlers: readonly Listed[] = [
  ...atOnce,
  later(waitingIds, async () => (await import('./check/waiting/waiting-click.ts')).waitingClick),
  later(askIds, async () => (await import('./answers/ask-click.ts')).askClick),
  later(logQuestionIds, async () => (await import('./logs/log-click.ts')).logClick),
  later(logLabelIds, async () => (await import('./logs/label-click.ts')).labelClick),
  later(trendsIds, async () => (await import('./trends/trends-click.ts')).trendsClick),
  later(privacyIds, async () => (await import('./privacy/privacy-click.ts')).privacyClick),
  later(buyingIds, async () => (await import('./buying/buying-click.ts')).buyingClick),
  later(linksIds, async () => (await import('./buying/links-click.ts')).linksClick),
  later(setupIds, async () => (await import('./setup/setup-click.ts')).setupClick),
  later(familyIds, async () => (await import('./families/family-click.ts')).familyClick),
  later(familyStartIds, async () => (await import('./families/start-family.ts')).familyStartClick),
  later(walkIds, async () => (await import('./families/walk-cell.ts')).walkClick),
  later(offerIds, async () => (await import('./families/offer-checked.ts')).offerClick),
]

export const clickHandlers: ReadonlyMap<string, Listed> = new Map(handlers.map(one => [one.mark, one]))
if (clickHandlers.size < handlers.length) throw new Error('two kinds of custom ids begin with the same word')
