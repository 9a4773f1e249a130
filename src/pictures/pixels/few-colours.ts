// Brings a rendered picture down to 256 colours: a line drawing has few, and the rest are shades of softened edges.

/** Pixels as indices into a palette, row by row, and the palette's colours as plain R, G, B, A bytes. */
export type Indexed = { indices: Uint8Array; palette: Uint8Array }

/** As many as an index of one byte can name; so many of them go to what most pixels have, the others to what is least like those. */
const mostColours = 256
const commonColours = 160

type Channels = readonly [number, number, number, number]

const channelsOf = (colour: number): Channels => [
  colour & 255,
  (colour >> 8) & 255,
  (colour >> 16) & 255,
  (colour >> 24) & 255,
]

/** Every colour there is, the most common first. */
function coloursOf(pixels: Int32Array): number[] {
  const counts = new Map<number, number>()
  let last = pixels[0] ?? 0
  let run = 0
  for (let i = 0; i < pixels.length; i++) {
    const colour = pixels[i] as number
    if (colour === last) run++
    else {
      counts.set(last, (counts.get(last) ?? 0) + run)
      last = colour
      run = 1
    }
  }
  counts.set(last, (counts.get(last) ?? 0) + run)
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([colour]) => colour)
}

/** Where each colour stands in the palette it is given: its own place, or that of the one most like it. */
function choose(colours: readonly number[]): { places: Map<number, number>; palette: Channels[] } {
  const palette = colours.slice(0, commonColours).map(channelsOf)
  const places = new Map(colours.slice(0, commonColours).map((colour, place) => [colour, place]))
  // Numbers in rows: this is most of the work of a picture.
  const rest = Uint32Array.from(colours.slice(commonColours))
  const bytes = new Uint8Array(rest.buffer)
  const place = new Uint8Array(rest.length)
  const away = new Int32Array(rest.length).fill(2 ** 30)
  /** Compares every colour that has no place of its own with this one; gives back which of them is least like any. */
  const compare = (at: number): number => {
    const [r, g, b, opacity] = palette[at] as Channels
    let farthest = 0
    for (let i = 0; i < rest.length; i++) {
      const byte = 4 * i
      const red = (bytes[byte] as number) - r
      const green = (bytes[byte + 1] as number) - g
      const blue = (bytes[byte + 2] as number) - b
      const alpha = (bytes[byte + 3] as number) - opacity
      const distance = red * red + green * green + blue * blue + alpha * alpha
      if (distance < (away[i] as number)) {
        away[i] = distance
        place[i] = at
      }
      if ((away[i] as number) > (away[farthest] as number)) farthest = i
    }
    return farthest
  }
  let farthest = 0
  for (let at = 0; at < palette.length; at++) farthest = compare(at)
  while (palette.length < mostColours && (away[farthest] ?? 0) > 0) {
    palette.push(channelsOf(rest[farthest] as number))
    farthest = compare(palette.length - 1)
  }
  for (let i = 0; i < rest.length; i++) places.set(colours[commonColours + i] as number, place[i] as number)
  return { places, palette }
}

/** A renderer multiplies its colours by their opacity; a PNG holds them plain. */
const plain = ([r, g, b, opacity]: Channels): number[] => [
  ...[r, g, b].map(channel => (opacity === 0 ? 0 : Math.min(255, Math.round((channel * 255) / opacity)))),
  opacity,
]

/** `rgba`: four bytes a pixel, colours multiplied by their opacity. The same pixels give the same result. */
export function fewColours(rgba: Uint8Array): Indexed {
  const pixels = new Int32Array(rgba.buffer, rgba.byteOffset, rgba.byteLength / 4)
  const { places, palette } = choose(coloursOf(pixels))
  const indices = new Uint8Array(pixels.length)
  let last = pixels[0] ?? 0
  let place = places.get(last) ?? 0
  for (let i = 0; i < pixels.length; i++) {
    const colour = pixels[i] as number
    if (colour !== last) {
      last = colour
      place = places.get(colour) as number
    }
    indices[i] = place
  }
  return { indices, palette: Uint8Array.from(palette.flatMap(plain)) }
}
