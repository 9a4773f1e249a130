// Every kind of button, menu and form there is: each handler knows its own custom ids and leaves the others alone.

import { askClick } from './answers/ask-click.ts'
import { buyingClick } from './buying/buying-click.ts'
import { linksClick } from './buying/links-click.ts'
import { checkClick } from './check/check-click.ts'
import { factsClick } from './check/facts/facts-click.ts'
import { handClick } from './check/hand-over/hand-over-click.ts'
import { letterClick } from './check/letter/letter-click.ts'
import type { ClickHandler } from './interaction/click-handler.ts'
import { logClick } from './logs/log-click.ts'
import { privacyClick } from './privacy/privacy-click.ts'
import { setupClick } from './setup/setup-click.ts'
import { countingClick } from './trends/counting-click.ts'
import { findingClick } from './trends/finding-click.ts'
import { findingsClick } from './trends/findings-click.ts'
import { trendsClick } from './trends/trends-click.ts'

/** The first that takes a click has it; the busiest comes first. */
export const clickHandlers: readonly ClickHandler[] = [
  checkClick,
  handClick,
  factsClick,
  askClick,
  logClick,
  countingClick,
  trendsClick,
  findingClick,
  findingsClick,
  privacyClick,
  buyingClick,
  linksClick,
  setupClick,
  letterClick,
]
