// The drawn square codes: no reader gets anything out of them, whatever the print.

import { Resvg } from '@resvg/resvg-js'
import {
  BarcodeFormat,
  BinaryBitmap,
  DataMatrixReader,
  DataMatrixWriter,
  DecodeHintType,
  HybridBinarizer,
  QRCodeReader,
  QRCodeWriter,
  RGBLuminanceSource,
} from '@zxing/library'
import decodeQr from 'jsqr'
import { describe, expect, it } from 'vitest'
import { cornerGrid, dotCode, dotRows } from '../../src/pictures/cell/dot-code.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { choices } from '../../src/pictures/cell/parameters.ts'
import type { Drawing } from '../../src/pictures/drawing.ts'

const jsQR = decodeQr as unknown as typeof decodeQr.default

const readers = [new DataMatrixReader(), new QRCodeReader()]

/** What two independent readers make of an image; undefined: nothing. */
function readCode(svg: string, width: number): string | undefined {
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { loadSystemFonts: false },
    background: '#ffffff',
  }).render()
  const pixels = new Uint8ClampedArray(image.pixels)
  const grey = new Uint8ClampedArray(image.width * image.height)
  for (let i = 0; i < grey.length; i++)
    grey[i] = ((pixels[4 * i] ?? 0) + 2 * (pixels[4 * i + 1] ?? 0) + (pixels[4 * i + 2] ?? 0)) / 4
  const found = jsQR(pixels, image.width, image.height)
  if (found) return found.data
  const hints = new Map<DecodeHintType, unknown>([[DecodeHintType.TRY_HARDER, true]])
  for (const reader of readers) {
    try {
      return reader
        .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(grey, image.width, image.height))), hints)
        .getText()
    } catch {
      // Not this symbology.
    }
  }
  return undefined
}

const sheet = (inner: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="300" height="300"><rect width="300" height="300" fill="#fff"/>${inner}</svg>`

/** A real code of the same size on paper, to show that the readers do read. */
function realCode(format: BarcodeFormat, size: number): string {
  const matrix = (format === BarcodeFormat.QR_CODE ? new QRCodeWriter() : new DataMatrixWriter()).encode(
    'CELL-0001',
    format,
    size,
    size,
    new Map(),
  )
  let modules = ''
  for (let y = 0; y < matrix.getHeight(); y++)
    for (let x = 0; x < matrix.getWidth(); x++)
      if (matrix.get(x, y)) modules += `<rect x="${x}" y="${y}" width="1.02" height="1.02"/>`
  const scale = 200 / matrix.getWidth()
  return sheet(`<g transform="translate(50 50) scale(${scale})">${modules}</g>`)
}

describe('the drawn square code', () => {
  it('is held against readers that do read a real code', () => {
    expect(readCode(realCode(BarcodeFormat.QR_CODE, 21), 600)).toBe('CELL-0001')
    expect(readCode(realCode(BarcodeFormat.DATA_MATRIX, 14), 600)).toBe('CELL-0001')
  })

  for (const kind of choices.codeKind) {
    for (const print of choices.codePrint) {
      it(`decodes to nothing as ${kind}, ${print}`, () => {
        for (const side of [90, 160, 220]) {
          for (const width of [300, 600, 900])
            expect(readCode(sheet(dotCode(150, 150, side, { kind, print }, '#000000')), width)).toBeUndefined()
        }
      })
    }
  }

  it('decodes to nothing on a whole sheet either', () => {
    const drawing: Drawing = drawOptions(
      choices.codePrint.map(codePrint => ({
        show: { pointAt: 'code-print', code: 'wrap', codePrint, wrapColour: 'white' },
      })),
    )
    expect(readCode(drawing.svg, 1080)).toBeUndefined()
  })

  it('has no size that a square symbology has', () => {
    // Sizes from memory: Data Matrix ECC 200 10–144 even, ECC 000–140 9–49 odd (ISO/IEC 16022); QR 21–177 in steps of 4,
    // Micro QR 11–17 odd (ISO/IEC 18004); Aztec 15–151 and runes 11 (ISO/IEC 24778).
    expect(dotRows).toHaveLength(8)
    for (const row of dotRows) expect(row).toMatch(/^[01]{8}$/)
    expect((cornerGrid - 21) % 4 === 0 || cornerGrid % 2 === 1).toBe(false)
  })

  it('has no solid and no alternating edge, and no finder run', () => {
    const column = (i: number): string => dotRows.map(row => row[i]).join('')
    const edges = [dotRows[0] ?? '', dotRows[7] ?? '', column(0), column(7)]
    for (const edge of edges) {
      expect([...edge].filter(bit => bit === '0').length).toBeGreaterThanOrEqual(2)
      expect(edge).not.toMatch(/^(01){4}$|^(10){4}$/)
    }
    for (let i = 0; i < 8; i++) for (const run of [dotRows[i] ?? '', column(i)]) expect(run).not.toContain('1011101')
  })
})
