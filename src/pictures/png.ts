// Turns a drawing into a PNG of 256 colours; rendering and packing happen off the event loop. The one file here that is not pure.
import { createHash } from 'node:crypto'
import { createRequire } from 'node:module'
import { promisify } from 'node:util'
import { deflate } from 'node:zlib'
import { type ResvgRenderOptions, renderAsync } from '@resvg/resvg-js'
import type { Drawing } from './drawing.ts'
import { fontFamily } from './ink.ts'
import { fewColours } from './pixels/few-colours.ts'
import { indexedPng, scanlines } from './pixels/indexed-png.ts'

const require = createRequire(import.meta.url)

// Source Sans 3, SIL Open Font License 1.1, as shipped in the npm package.
const face = (name: string): string => require.resolve(`@expo-google-fonts/source-sans-3/${name}.ttf`)
const fontFaces = [face('500Medium/SourceSans3_500Medium'), face('700Bold/SourceSans3_700Bold')]

/** Renderer settings for an SVG of this room; `width` in px. Fonts are read only when there is text to set. */
export const renderOptions = (svg: string, width: number): ResvgRenderOptions => ({
  fitTo: { mode: 'width', value: width },
  font: { loadSystemFonts: false, fontFiles: svg.includes('<text') ? fontFaces : [], defaultFontFamily: fontFamily },
})

const pack = promisify(deflate)
// Level 9 takes eight times as long to save a twentieth.
const packing = { level: 5, memLevel: 9 }

/** The PNG bytes, `width` px wide (default: twice the drawing's, for sharp screens). Rejects if the renderer does. */
export async function toPng(drawing: Drawing, { width = drawing.width * 2 }: { width?: number } = {}): Promise<Buffer> {
  const image = await renderAsync(drawing.svg, renderOptions(drawing.svg, width))
  const indexed = fewColours(image.pixels)
  return indexedPng(indexed, image.width, await pack(scanlines(indexed, image.width), packing))
}

// Part of every key: raise it when the renderer, the font or their settings change, so that old pictures are not reused.
const lookVersion = 2

/** A digest under which a drawing's PNG may be kept: the same drawing and width give the same key, others another. */
export const pictureKey = (drawing: Drawing, { width = drawing.width * 2 }: { width?: number } = {}): string =>
  createHash('sha256').update(`${lookVersion}:${width}:`).update(drawing.svg).digest('base64url')
