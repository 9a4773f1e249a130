// Writes SVG text: escaped, rounded, nothing else.

export type Attributes = Readonly<Record<string, string | number | undefined>>

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

// XML 1.0 (section 2.2) allows no control characters but tab, line feed and carriage return, nor lone surrogates.
const allowed = (sign: string): boolean => {
  const point = sign.codePointAt(0) ?? 0
  if (point < 0x20) return point === 0x9 || point === 0xa || point === 0xd
  return point < 0xd800 || (point > 0xdfff && point !== 0xfffe && point !== 0xffff)
}

/** Text made harmless for an XML text node or attribute; characters XML forbids are left out. */
export const escapeXml = (text: string): string =>
  Array.from(text)
    .filter(allowed)
    .map(sign => escapes[sign] ?? sign)
    .join('')

/** A coordinate with at most two decimals, never an exponent. */
export const round = (value: number): string => String(Math.round(value * 100) / 100 || 0)

/** One element; attributes that are undefined are left out, numbers are rounded. */
export function tag(name: string, attributes: Attributes, ...children: readonly string[]): string {
  let open = `<${name}`
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) open += ` ${key}="${typeof value === 'number' ? round(value) : escapeXml(value)}"`
  }
  const inside = children.join('')
  return inside === '' ? `${open}/>` : `${open}>${inside}</${name}>`
}

/** A group that names the part it draws, so that a reader of the SVG (or a test) can find it. */
export const part = (name: string, ...children: readonly string[]): string =>
  children.join('') === '' ? '' : tag('g', { 'data-part': name }, ...children)

export type Point = { x: number; y: number }

/** Path data through the points in straight lines. */
export const line = (points: readonly Point[], closed = false): string =>
  points.map((p, i) => `${i === 0 ? 'M' : 'L'}${round(p.x)} ${round(p.y)}`).join('') + (closed ? 'Z' : '')

/** Path data of a whole ellipse, drawn as two arcs so that rings can be cut out with the even-odd rule. */
export const oval = (x: number, y: number, rx: number, ry: number): string =>
  `M${round(x - rx)} ${round(y)}A${round(rx)} ${round(ry)} 0 1 0 ${round(x + rx)} ${round(y)}` +
  `A${round(rx)} ${round(ry)} 0 1 0 ${round(x - rx)} ${round(y)}Z`
