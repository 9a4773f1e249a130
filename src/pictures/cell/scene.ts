// A part of a picture that knows where its nameable parts landed, so that marks can be set on them.

export type Box = { x: number; y: number; width: number; height: number }

/** An ellipse on paper around a part, px. */
export type Place = { x: number; y: number; rx: number; ry: number }

export type Scene = { svg: string; places: Readonly<Record<string, Place>> }
