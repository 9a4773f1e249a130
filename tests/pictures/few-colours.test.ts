// PNGs of 256 colours: nothing is lost where a picture has no more, and in drawings nothing that an eye could see.
import { deflateSync } from 'node:zlib'
import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fewColours } from '../../src/pictures/pixels/few-colours.ts'
import { indexedPng, scanlines } from '../../src/pictures/pixels/indexed-png.ts'
import { renderOptions, toPng } from '../../src/pictures/png.ts'
import { goldens } from './goldens.ts'
import { decodePng } from './pixels.ts'

const written = (rgba: Uint8Array, width: number): Buffer => {
  const indexed = fewColours(rgba)
  return indexedPng(indexed, width, deflateSync(scanlines(indexed, width)))
}
const opaque = fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255), fc.constant(255))

describe('few colours', () => {
  it('come back as they were, in their places, by a decoder of someone else', () => {
    const image = fc
      .tuple(fc.array(opaque, { minLength: 1, maxLength: 256 }), fc.integer({ min: 1, max: 40 }), fc.nat())
      .map(([colours, width, seed]) => ({
        width,
        pixels: Array.from({ length: width * 9 }, (_, i) => colours[(i * 7 + seed) % colours.length]!),
      }))
    fc.assert(
      fc.property(image, ({ width, pixels }) => {
        const decoded = decodePng(written(Uint8Array.from(pixels.flat()), width))
        expect([decoded.width, decoded.height]).toEqual([width, 9])
        pixels.forEach((pixel, i) => {
          expect(decoded.at(i % width, Math.floor(i / width))).toEqual(pixel)
        })
      }),
    )
  })

  it('keep a rare colour that is like no other', () => {
    const greys = Array.from({ length: 4000 }, (_, i) => [i % 250, i % 250, (i * 7) % 250, 255]).flat()
    const decoded = decodePng(written(Uint8Array.from([...greys, 255, 0, 0, 255, 0, 0, 0, 255]), 2))
    expect(decoded.at(0, decoded.height - 1)).toEqual([255, 0, 0, 255])
  })

  it('hold plain colours where the renderer multiplied them by their opacity', () => {
    const half = decodePng(written(Uint8Array.of(100, 50, 0, 128, 0, 0, 0, 0), 2))
    expect(half.at(0, 0)).toEqual([199, 100, 0, 128])
    expect(half.at(1, 0)[3]).toBe(0)
  })
})

/** One channel of a pixel as it shows on a page of that grey. */
const onPage = (page: number, [...pixel]: readonly number[], channel: number): number => {
  const opacity = (pixel[3] ?? 0) / 255
  return (pixel[channel] ?? 0) * opacity + page * (1 - opacity)
}

describe.each(Object.entries(goldens))('%s', (_, draw) => {
  it('differs from the renderer’s own PNG by less than 4 % of a channel in every pixel, on a dark and on a light page', async () => {
    const drawing = draw()
    const width = drawing.width * 2
    const whole = decodePng(new Resvg(drawing.svg, renderOptions(drawing.svg, width)).render().asPng())
    const few = decodePng(await toPng(drawing, { width }))
    let worst = 0
    for (let x = 0; x < width; x++)
      for (let y = 0; y < whole.height; y++)
        for (const page of [49, 255])
          for (let channel = 0; channel < 3; channel++)
            worst = Math.max(
              worst,
              Math.abs(onPage(page, whole.at(x, y), channel) - onPage(page, few.at(x, y), channel)),
            )
    expect(worst).toBeLessThan(10)
  })

  it('is smaller than the renderer’s own PNG', async () => {
    const drawing = draw()
    const whole = new Resvg(drawing.svg, renderOptions(drawing.svg, drawing.width * 2)).render().asPng()
    expect((await toPng(drawing)).length).toBeLessThan(whole.length * 0.6)
  })
})
