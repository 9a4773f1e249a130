// Reads an SVG with an XML parser of someone else and finds the parts in it.
import { XMLParser } from 'fast-xml-parser'

export type Node = { name: string; attributes: Record<string, string>; children: Node[]; text: string }

type Raw = Record<string, unknown> & { ':@'?: Record<string, string> }

function toNode(raw: Raw): Node {
  const name = Object.keys(raw).find(key => key !== ':@') ?? ''
  const inside = raw[name]
  const children = Array.isArray(inside) ? (inside as Raw[]) : []
  return {
    name,
    attributes: raw[':@'] ?? {},
    children: children.filter(one => !('#text' in one)).map(toNode),
    text: children.flatMap(one => ('#text' in one ? [String(one['#text'])] : [])).join(''),
  }
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: '',
  trimValues: false,
  parseTagValue: false,
})

/** The root element. */
export const parseSvg = (svg: string): Node => toNode((parser.parse(svg) as Raw[])[0] as Raw)

/** The node and everything in it. */
export const walk = (node: Node): Node[] => [node, ...node.children.flatMap(walk)]

/** All parts of that name. */
export const partsNamed = (root: Node, name: string): Node[] =>
  walk(root).filter(node => node.attributes['data-part'] === name)

/** How many paths, circles or other shapes lie in the parts of that name. */
export const shapesIn = (root: Node, name: string): number =>
  partsNamed(root, name).reduce((sum, node) => sum + walk(node).filter(one => one.name !== 'g').length, 0)

/** Every part's own SVG by name (parts that hold other parts are told without them). */
export function partTexts(root: Node): Map<string, string> {
  const texts = new Map<string, string>()
  for (const node of walk(root)) {
    const name = node.attributes['data-part']
    if (name === undefined) continue
    const own = JSON.stringify({
      ...node,
      children: node.children.filter(child => child.attributes['data-part'] === undefined),
    })
    texts.set(name, `${texts.get(name) ?? ''}${own}`)
  }
  return texts
}
