// Draws what families and constructions look like; loaded only where a picture is wanted.
import type { Construction, Facts } from '../../families/facts/facts-schema.ts'
import type { Say } from '../../words/say.ts'
import { type Columns, drawWays } from '../cell/draw-ways.ts'
import type { CellParameters } from '../cell/parameters.ts'
import type { Drawing } from '../drawing.ts'
import { drawFamily } from './draw-family.ts'

/** `show`: what is drawn of it. */
export const drawFacts = (say: Say, { id, name, maker }: Facts['identity'], show: Facts['show']): Drawing | undefined =>
  drawFamily(say, { id, pack: id, name, maker, given: {}, enough: [], show })

/** `heads`: the words over the columns. */
export const drawBuilt = (built: readonly { show: Construction['show']; label: string }[], heads: Columns): Drawing =>
  drawWays(
    built.map(({ show, label }) => ({ show: show as Partial<CellParameters>, label })),
    heads,
  )
