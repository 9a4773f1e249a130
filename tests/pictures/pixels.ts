// Decodes PNGs with a decoder of someone else, and reads single pixels.
import { PNG } from 'pngjs'

export type Pixels = {
  width: number
  height: number
  at: (x: number, y: number) => readonly [number, number, number, number]
}

export function decodePng(bytes: Buffer): Pixels {
  const { width, height, data } = PNG.sync.read(bytes)
  return {
    width,
    height,
    at: (x, y) => {
      const i = (Math.floor(y) * width + Math.floor(x)) * 4
      return [data[i] ?? 0, data[i + 1] ?? 0, data[i + 2] ?? 0, data[i + 3] ?? 0]
    },
  }
}
