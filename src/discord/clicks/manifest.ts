// Every kind of button, menu and form there is: each handler knows its own custom ids and leaves the others alone.
import type { Clicked } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { askClick } from './ask-click.ts'
import { buyingClick } from './buying-click.ts'
import { checkClick } from './check-click.ts'
import { countingClick } from './counting-click.ts'
import { factsClick } from './facts-click.ts'
import { findingClick } from './finding-click.ts'
import { handClick } from './hand-click.ts'
import { letterClick } from './letter-click.ts'
import { linksClick } from './links-click.ts'
import { logClick } from './log-click.ts'
import { privacyClick } from './privacy-click.ts'
import { setupClick } from './setup-click.ts'
import { trendsClick } from './trends-click.ts'

/** Handles a click whose custom id is of its kind; undefined, without having done anything, for any other. */
export type ClickHandler = (desk: Desk, interaction: Clicked) => Promise<void> | undefined

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
  privacyClick,
  buyingClick,
  linksClick,
  setupClick,
  letterClick,
]
