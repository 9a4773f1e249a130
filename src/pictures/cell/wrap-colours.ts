// What colour a wrap, what lies under it and the print on it have.
import { inks, metals, wraps } from '../ink.ts'
import type { CellParameters } from './parameters.ts'

/** The colour of what the side shows: wrap, or the bare can. */
export const groundOf = (params: CellParameters): string =>
  params.wrap === 'missing' || params.wrapColour === 'clear' ? metals.light : wraps[params.wrapColour]

/** The colour of a second wrap below the outer one: white where it is clear, else one that the outer wrap never has. */
export const underWrap = (params: CellParameters): string =>
  params.secondWrap === 'clear' ? '#ffffff' : wraps[params.wrapColour === 'pink' ? 'blue' : 'pink']

/** Whether print on this wrap should be light to be read. */
export const printOn = (params: CellParameters): string =>
  ['black', 'brown', 'purple'].includes(params.wrapColour) && params.wrap !== 'missing' ? '#ffffff' : inks.line
