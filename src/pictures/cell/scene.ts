// A part of a picture that knows where its nameable parts landed, so that marks can be set on them.

export type Box = { x: number; y: number; width: number; height: number }

/** Room on paper around a part, px: an ellipse by its half axes, or a box with round corners. */
export type Place = { x: number; y: number; rx: number; ry: number; shape?: 'box' }

export type Scene = { svg: string; places: Readonly<Record<string, Place>> }
