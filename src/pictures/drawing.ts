// A finished drawing: plain data, from which a PNG and an alt text can be made.
import type { AltFact } from './alt/alt-fact.ts'

/** SVG text, its size in px, and what there is to say about it (most telling facts have the lowest rank). */
export type Drawing = { svg: string; width: number; height: number; about: readonly AltFact[] }
