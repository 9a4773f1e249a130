// Colour arithmetic for the tests, from published definitions.

export type Rgb = readonly [number, number, number]

export const hex = (text: string): Rgb => {
  const value = Number.parseInt(text.slice(1), 16)
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255]
}

const linear = (byte: number): number => {
  const share = byte / 255
  // WCAG 2.2, "relative luminance": threshold 0.04045.
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

const encode = (share: number): number => {
  const clipped = Math.min(1, Math.max(0, share))
  return Math.round(255 * (clipped <= 0.0031308 ? clipped * 12.92 : 1.055 * clipped ** (1 / 2.4) - 0.055))
}

/** WCAG 2.2, "relative luminance": L = 0.2126 R + 0.7152 G + 0.0722 B of the linear channels. */
const luminance = ([r, g, b]: Rgb): number => 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b)

/** WCAG 2.2, "contrast ratio": (L1 + 0.05) / (L2 + 0.05), L1 the lighter. */
export function contrast(a: Rgb, b: Rgb): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

/**
 * Machado, Oliveira & Fernandes, "A physiologically-based model for simulation of color vision deficiency", IEEE TVCG
 * 15(6), 2009: the matrices of severity 1.0 for linear RGB. The paper's own table was not seen; several public programs that name it
 * carry these very figures. A test checks that white stays white.
 */
export const blindness = {
  protanopia: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deuteranopia: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritanopia: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
} as const

export type Blindness = keyof typeof blindness

/** A colour as such an eye sees it. */
export function seenWith(kind: Blindness, [r, g, b]: Rgb): Rgb {
  const m = blindness[kind]
  const [lr, lg, lb] = [linear(r), linear(g), linear(b)]
  const row = (i: number): number => encode((m[i] ?? 0) * lr + (m[i + 1] ?? 0) * lg + (m[i + 2] ?? 0) * lb)
  return [row(0), row(3), row(6)]
}

/** Greyscale by relative luminance. */
export const grey = (colour: Rgb): Rgb => {
  const level = encode(luminance(colour))
  return [level, level, level]
}
