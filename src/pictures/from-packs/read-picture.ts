// What a question's picture shows of a cell, as a pack says it.
import type { Option, Picture } from '../../engine/pack/pack.ts'
import { type ReadCell, readCellParameters } from '../cell/read-cell-parameters.ts'

/** Whether an option has a drawing of its own. */
export const isShown = (option: Option): boolean => Object.keys(option.show).length > 0

/** What a question's picture shows, of an option if one is given; a refusal where the pack names what cannot be drawn. */
export const readPicture = (picture: CellPicture, option?: Option): ReadCell =>
  readCellParameters({
    view: picture.view,
    ...(picture.pointAt && { pointAt: picture.pointAt }),
    ...picture.show,
    ...option?.show,
  })

export type CellPicture = Extract<Picture, { kind: 'cell' }>
