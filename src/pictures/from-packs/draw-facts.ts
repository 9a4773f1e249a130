// Draws what families and constructions look like; loaded only where a picture is wanted.
import type { Construction, Facts } from '../../families/facts/facts-schema.ts'
import type { Say } from '../../words/say.ts'
import { type Columns, drawWays } from '../cell/draw-ways.ts'
import type { CellParameters } from '../cell/parameters.ts'
import type { Drawing } from '../drawing.ts'
import { drawFamily } from './draw-family.ts'

/** `show`: what is drawn of it; `row`: small, beside each other. */
export const drawFacts = (
  say: Say,
  { id, name, maker }: Facts['identity'],
  show: Facts['show'],
  row = false,
): Drawing | undefined => drawFamily(say, { id, pack: id, name, maker, given: {}, enough: [], show }, row)

type Built = { readonly show: Construction['show']; readonly label: string; readonly or: Columns }

/** `heads`: the words over the columns. */
export const drawBuilt = (built: readonly Built[], heads: Columns): Drawing =>
  drawWays(
    built.map(({ show, ...one }) => ({ ...one, show: show as Partial<CellParameters> })),
    heads,
  )
