// The facts of a drawing, for an alt text in any language.
import type { Drawing } from '../drawing.ts'
import type { AltFact } from './alt-fact.ts'

/** What there is to tell about a drawing, in reading order. */
export const describe = (drawing: Drawing): readonly AltFact[] => drawing.about
