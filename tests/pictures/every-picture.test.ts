// Laws that hold for every picture: well-formed, finite, inside its panel, text inside its box, readable, not blank.
import { Resvg } from '@resvg/resvg-js'
import { XMLValidator } from 'fast-xml-parser'
import { describe, expect, it } from 'vitest'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { renderOptions, toPng } from '../../src/pictures/png.ts'
import { contrast, hex, type Rgb } from './colour.ts'
import { gallery } from './gallery.ts'
import { labelsOf } from './labels.ts'
import { decodePng } from './pixels.ts'
import { shipped } from './shipped.ts'
import { type Node, parseSvg, walk } from './svg-tree.ts'

const all = gallery()
const texts = (svg: string): Node[] => walk(parseSvg(svg)).filter(node => node.name === 'text')
const number = (node: Node, name: string): number => Number(node.attributes[name])

/** Left and right edge of a level text by the renderer's own ink box. */
function inkOf(node: Node): { left: number; right: number } | undefined {
  const attributes = Object.entries(node.attributes)
    .map(([key, value]) => `${key}="${value}"`)
    .join(' ')
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="800" viewBox="-200 -200 800 800" font-family="Source Sans 3"><text ${attributes}>${node.text.replace(/&/g, '&amp;').replace(/</g, '&lt;')}</text></svg>`
  const box = new Resvg(svg, renderOptions(svg, 800)).innerBBox()
  return box && { left: box.x, right: box.x + box.width }
}

describe('every picture', () => {
  it('is there in number', () => {
    expect(all.length).toBeGreaterThan(90)
  })

  it.each(all)('$name is well-formed XML with finite numbers', ({ drawing }) => {
    expect(XMLValidator.validate(drawing.svg)).toBe(true)
    for (const node of walk(parseSvg(drawing.svg))) {
      for (const value of Object.values(node.attributes)) expect(value).not.toMatch(/NaN|undefined|Infinity|\de[-+]\d/)
    }
  })

  it.each(all)('$name keeps its ink inside the panel', ({ drawing }) => {
    // The renderer's box does not know that a lens is clipped: what lies under one is left out.
    const svg = drawing.svg.replace(/<svg x=[\s\S]*?<\/svg>/g, '')
    const box = new Resvg(svg, renderOptions(svg, drawing.width)).getBBox()
    expect(box).toBeDefined()
    expect(box!.x).toBeGreaterThanOrEqual(-0.5)
    expect(box!.y).toBeGreaterThanOrEqual(-0.5)
    expect(box!.x + box!.width).toBeLessThanOrEqual(drawing.width + 0.5)
    expect(box!.y + box!.height).toBeLessThanOrEqual(drawing.height + 0.5)
  })

  it('sets no text beyond the panel, by the ink the renderer draws', () => {
    for (const { name, drawing } of all) {
      for (const node of texts(drawing.svg).filter(one => one.attributes['transform'] === undefined)) {
        const ink = inkOf(node)
        if (ink === undefined) continue
        expect(ink.left, `${name}: ${node.text}`).toBeGreaterThanOrEqual(3)
        expect(ink.right, `${name}: ${node.text}`).toBeLessThanOrEqual(drawing.width - 3)
      }
    }
  })

  it('sets no words of an answer beyond the tile of that answer', () => {
    for (const { name, drawing } of all)
      for (const tile of walk(parseSvg(drawing.svg)).filter(one =>
        /^option-/.test(one.attributes['data-part'] ?? ''),
      )) {
        const inside = walk(tile)
        const frame = inside.find(one => one.name === 'rect')
        if (!frame) throw new Error(`${name}: a tile without its frame`)
        const right = number(frame, 'x') + number(frame, 'width')
        // The letter of the button hangs over the corner; words and figures do not.
        for (const node of inside.filter(one => one.name === 'text' && one.attributes['transform'] === undefined)) {
          const ink = inkOf(node)
          if (ink === undefined) continue
          expect(ink.left, `${name}: ${node.text}`).toBeGreaterThanOrEqual(number(frame, 'x') + 1)
          expect(ink.right, `${name}: ${node.text}`).toBeLessThanOrEqual(right - 1)
        }
      }
  })

  it('sets no label over another', () => {
    for (const { name, drawing } of all) {
      const labels = labelsOf(drawing)
      for (const [i, a] of labels.entries()) {
        for (const b of labels.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.base <= b.top || b.base <= a.top
          expect(apart, `${name}: “${a.text}” and “${b.text}”`).toBe(true)
        }
      }
    }
  })

  it('sets no label smaller than 10.5 px on a 360 px wide sheet', () => {
    for (const { name, drawing } of all) {
      for (const node of texts(drawing.svg))
        expect(number(node, 'font-size'), `${name}: ${node.text}`).toBeGreaterThanOrEqual(10.5)
    }
  })

  // The ground is what is really there: the picture is rendered without its text, and sampled where the text would stand.
  it.each(all)(
    '$name: every label has a contrast of at least 4.5 : 1 (WCAG 2.2 AA) on what is under it',
    async ({ drawing }) => {
      const bare = decodePng(
        await toPng({ ...drawing, svg: drawing.svg.replace(/<text[\s\S]*?<\/text>/g, '') }, { width: drawing.width }),
      )
      for (const label of labelsOf(drawing)) {
        const { text, left, right, top, base } = label
        const counts = new Map<string, number>()
        for (let x = left; x < right; x += 2) {
          for (let y = top; y <= base; y += 2) {
            const [r, g, b] = bare.at(x, y)
            counts.set(`${r},${g},${b}`, (counts.get(`${r},${g},${b}`) ?? 0) + 1)
          }
        }
        const samples = [...counts.values()].reduce((a, b) => a + b, 0)
        const grounds = [...counts]
          .filter(([, n]) => n > samples * 0.12)
          .map(([colour]) => colour.split(',').map(Number) as unknown as Rgb)
        expect(grounds.length, text).toBeGreaterThan(0)
        const worst = Math.min(...grounds.map(ground => contrast(hex(label.fill), ground)))
        expect(worst, `“${text}” on ${JSON.stringify(grounds)}`).toBeGreaterThanOrEqual(4.5)
      }
    },
  )

  it.each(all)('$name becomes a PNG of the right size that is not blank', async ({ drawing }) => {
    const image = decodePng(await toPng(drawing, { width: 720 }))
    expect(image.width).toBe(720)
    expect(Math.abs(image.height - 2 * drawing.height)).toBeLessThanOrEqual(1)
    const colours = new Set<string>()
    for (let x = 4; x < image.width; x += 6)
      for (let y = 4; y < image.height; y += 6) colours.add(image.at(x, y).join(','))
    expect(colours.size).toBeGreaterThan(5)
    // Outside the rounded corner the page shows through: the panel brings its own ground for dark and light pages.
    expect(image.at(0, 0)[3]).toBeLessThan(255)
    expect(image.at(30, 6)[3]).toBe(255)
  })
})

const asked = new Set(
  (await loadPacks(shippedRules, { cases: false })).packs.flatMap(({ pack }) => pack.questions.map(one => one.id)),
)
it.each(['en', 'de', 'es'])('a picture of a question is at most a third of a small phone’s height: %s', locale => {
  const drawn = shipped(locale).filter(({ name }) => asked.has(name))
  expect(drawn.length).toBeGreaterThan(40)
  for (const { name, drawing } of drawn) expect(drawing.height, name).toBeLessThanOrEqual(640 / 3)
})
