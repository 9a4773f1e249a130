// What handles the clicks of one feature: it knows its own custom ids and leaves the others alone.
import type { Services } from '../services.ts'
import type { Clicked } from './reply.ts'

/** Handles a click whose custom id is of its kind; undefined, without having done anything, for any other. */
export type ClickHandler = (services: Services, interaction: Clicked) => Promise<void> | undefined
