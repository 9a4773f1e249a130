// Ways of building side by side: what parts them is drawn in each row, and what nothing is said of is no drawing.
import { expect, test } from 'vitest'
import { drawWays } from '../../src/pictures/cell/draw-ways.ts'
import { parseSvg } from './svg-tree.ts'

const heads = ['Legs', 'Vent disc', 'Lettering', 'Code'] as const
const way = { format: '18650', legs: 3, dimples: 2, lettering: 'can', code: 'wrap' } as const
/** The tile of a row, as it is drawn. */
const tile = (svg: string, name: string): string => {
  const from = svg.indexOf(`"${name}"`)
  const next = svg.indexOf('"way-', from + name.length + 2)
  if (from < 0) throw new Error(`no ${name}`)
  return svg.slice(from, next < 0 ? undefined : next)
}

test('what is as normal as the drawing is said below it, in its own tile alone', () => {
  const or = ['', '', '(or none)', ''] as const
  const { svg } = drawWays(
    [way, way].map(show => ({ show, label: 'one', or })),
    heads,
  )
  const words = (name: string) =>
    tile(svg, name)
      .replaceAll(/<[^>]+>/g, ' ')
      .replaceAll(/\s+/g, ' ')
  expect(words('way-A-lettering')).toContain('Lettering (or none)')
  expect(words('way-B-lettering')).toContain('(or none)')
  for (const name of ['way-A-code', 'way-B-code', 'way-B-dimples']) expect(words(name)).not.toContain('or none')
})

test('lettering and square code are drawn where they are, and a vent disc only where something is said of it', () => {
  const drawn = drawWays(
    [
      { show: way, label: 'one' },
      { show: { ...way, legs: 4, code: 'can', vent: 'lines', ventLines: 4 }, label: 'other' },
    ],
    heads,
  )
  expect(() => parseSvg(drawn.svg)).not.toThrow()
  expect(tile(drawn.svg, 'way-A-vent')).toContain('>?<')
  expect(tile(drawn.svg, 'way-B-vent')).not.toContain('>?<')
  for (const column of ['lettering', 'code', 'dimples']) {
    expect(tile(drawn.svg, `way-A-${column}`)).not.toContain('>?<')
    expect(tile(drawn.svg, `way-B-${column}`)).not.toContain('>?<')
  }
  const place = (row: string) => tile(drawn.svg, `way-${row}-code`)
  expect(place('A').replaceAll(/\d+(\.\d+)?/g, '0')).not.toBe(place('B').replaceAll(/\d+(\.\d+)?/g, '0'))
  expect(JSON.stringify(drawn.about)).toMatch(/one/)
})
