// Every kind of button, menu and form there is, by the first word of its custom ids; one that is not listed here does not exist.
import { askClick } from './answers/ask-click.ts'
import { buyingClick } from './buying/buying-click.ts'
import { linksClick } from './buying/links-click.ts'
import { checkClick } from './check/check-click.ts'
import { anewClick, factsClick } from './check/facts/facts-click.ts'
import { handClick } from './check/hand-over/hand-over-click.ts'
import { letterClick } from './check/letter/letter-click.ts'
import { shareClick } from './check/share/share-click.ts'
import { waitingClick } from './check/waiting/waiting-click.ts'
import { familyClick } from './families/family-click.ts'
import { offerClick } from './families/offer-checked.ts'
import { familyStartClick } from './families/start-family.ts'
import { walkClick } from './families/walk-cell.ts'
import type { ClickHandler } from './interaction/click-handler.ts'
import { labelClick } from './logs/label-click.ts'
import { logClick } from './logs/log-click.ts'
import { privacyClick } from './privacy/privacy-click.ts'
import { setupClick } from './setup/setup-click.ts'
import { trendsClick } from './trends/trends-click.ts'

const handlers = [
  checkClick,
  handClick,
  waitingClick,
  factsClick,
  anewClick,
  askClick,
  logClick,
  labelClick,
  trendsClick,
  privacyClick,
  buyingClick,
  linksClick,
  setupClick,
  letterClick,
  shareClick,
  familyClick,
  familyStartClick,
  walkClick,
  offerClick,
]

export const clickHandlers: ReadonlyMap<string, ClickHandler> = new Map(handlers.map(one => [one.mark, one]))
if (clickHandlers.size < handlers.length) throw new Error('two kinds of custom ids begin with the same word')
