// The colours and strokes every picture shares: dark ink on a light panel, readable on a dark and on a light page.

/** Panel, text and marks. Contrasts are computed in the tests (WCAG 2.2). */
export const inks = {
  panel: '#f8f6f0',
  edge: '#c9c4b8',
  line: '#1b2430',
  text: '#1b2430',
  soft: '#4d5865',
  grid: '#d9d5ca',
  /** "look here" */
  point: '#0b4fb3',
  /** "this does not fit" */
  against: '#a8201a',
  casing: '#ffffff',
} as const

export const metals = { light: '#dfe3e6', mid: '#b9c0c7', dark: '#8b959e', deep: '#59636d', gap: '#2c3640' } as const

export const papers = { white: '#fffaf0', grey: '#c4c7c8', black: '#3d444b', green: '#a9d3b4' } as const

export const damageInks = {
  rust: '#a8541c',
  rustDark: '#6f3410',
  leak: '#d9b23c',
  crust: '#f7f0d0',
  water: '#7fb8e6',
} as const

/** Wrap colours by name; `sample` is the paper of a drawing, so that no drawing looks like one maker's cell; `clear` lets the can show. */
export const wraps = {
  sample: '#dccbaa',
  green: '#54ad72',
  blue: '#5b95d3',
  red: '#d65f56',
  yellow: '#ecc94e',
  orange: '#e7934a',
  pink: '#e79dba',
  purple: '#9a7cc2',
  turquoise: '#4fb9b6',
  brown: '#9b6d4d',
  grey: '#a3a9af',
  white: '#f4f4f1',
  black: '#454b52',
  clear: '#e9eef2',
} as const

export type WrapColour = keyof typeof wraps

/** Stroke widths in px of a picture shown 360 px wide: outlines, inner edges, fine detail. */
export const lineWidths = { outline: 2.4, inner: 1.6, fine: 1.1 } as const

export const fontFamily = 'Source Sans 3'
