// What is drawn: counts, places, and that a parameter changes its own part and no other.
import { describe, expect, it } from 'vitest'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions, optionLetter } from '../../src/pictures/cell/draw-options.ts'
import type { CellParameters } from '../../src/pictures/cell/parameters.ts'
import { optionSets, showsOf } from './gallery.ts'
import { parseSvg, partsNamed, partTexts, shapesIn, walk } from './svg-tree.ts'

type Show = Partial<CellParameters>
const tree = (show: Show) => parseSvg(drawCell(show).svg)

const centre = (d: string): { x: number; y: number } => {
  const numbers = [...d.matchAll(/-?\d+(?:\.\d+)?/g)].map(m => Number(m[0]))
  const xs = numbers.filter((_, i) => i % 2 === 0)
  const ys = numbers.filter((_, i) => i % 2 === 1)
  return { x: xs.reduce((a, b) => a + b, 0) / xs.length, y: ys.reduce((a, b) => a + b, 0) / ys.length }
}

describe('the top', () => {
  it.each([2, 3, 4, 5, 6])('stands on %i legs, evenly around the middle', legs => {
    const paths = partsNamed(tree({ view: 'top', legs }), 'legs').flatMap(node => node.children)
    expect(paths).toHaveLength(legs)
    const middle = { x: 180, y: 106 }
    const angles = paths
      .map(path => centre(path.attributes['d'] ?? ''))
      .map(p => Math.atan2(p.y - middle.y, p.x - middle.x))
      .sort((a, b) => a - b)
    const steps = angles.map((angle, i) => ((angles[(i + 1) % legs] as number) - angle + 2 * Math.PI) % (2 * Math.PI))
    for (const step of steps) expect(step).toBeCloseTo((2 * Math.PI) / legs, 1)
  })

  it.each([3, 5])('shows all %i legs at an angle as well', legs => {
    expect(shapesIn(tree({ view: 'top-angle', legs }), 'legs')).toBe(legs)
  })

  it('has no legs when the contact is closed', () => {
    expect(partsNamed(tree({ view: 'top', contact: 'closed' }), 'legs')).toHaveLength(0)
  })

  it('hides dimples under the ring, and shows them when they are pointed at', () => {
    const ring = (pointAt: 'none' | 'dimples') => partsNamed(tree({ view: 'top', dimples: 2, pointAt }), 'ring')[0]
    const solid = (node: ReturnType<typeof ring>) =>
      node?.children.every(path => path.attributes['fill-opacity'] === undefined)
    expect(solid(ring('none'))).toBe(true)
    expect(solid(ring('dimples'))).toBe(false)
  })

  it.each([0, 1, 2, 3, 4])('has %i dimples', dimples => {
    expect(shapesIn(tree({ view: 'top', dimples, pointAt: 'dimples' }), 'dimples')).toBe(dimples)
  })

  it.each([2, 4, 6])('has %i radial lines on the vent disc', ventLines => {
    expect(shapesIn(tree({ view: 'top', vent: 'lines', ventLines, pointAt: 'vent' }), 'vent')).toBe(ventLines)
  })

  it('has a smooth vent disc without any line, and small weld marks by number', () => {
    expect(partsNamed(tree({ view: 'top', vent: 'smooth', pointAt: 'vent' }), 'vent')).toHaveLength(0)
    expect(shapesIn(tree({ view: 'top', weldMarks: 2 }), 'weld-marks')).toBe(2)
  })

  it('has no ring, one, or two', () => {
    const rings = (ring: CellParameters['ring']) =>
      ['ring', 'second-ring'].map(name => partsNamed(tree({ view: 'top', ring }), name).length)
    expect(rings('missing')).toEqual([0, 0])
    expect(rings('whole')).toEqual([1, 0])
    expect(rings('second')).toEqual([1, 1])
  })
})

describe('print that shows through the wrap', () => {
  const opacities = (show: Show) =>
    partsNamed(tree({ view: 'side', pointAt: 'lettering', ...show }), 'peel')
      .flatMap(peel => partsNamed(peel, 'lettering'))
      .map(part => [
        ...new Set(
          walk(part)
            .filter(one => one.name === 'text')
            .map(one => Number(one.attributes['fill-opacity'])),
        ),
      ])
  const shines = (show: Show) => partsNamed(tree({ view: 'side', ...show }), 'sheen').length

  it('is pale where the wrap covers it, and whole where it is laid back: the edge of the wrap cuts across it', () => {
    for (const lettering of ['can', 'second-wrap'] as const) {
      const [bare, covered] = opacities({ lettering })
      expect(bare).toEqual([1])
      expect(Math.max(...(covered ?? [1]))).toBeLessThan(0.5)
    }
    expect(opacities({ lettering: 'wrap' })).toEqual([[1]])
  })
  it('has the sheen of the wrap over it, which print on the wrap or on a bare can has not', () => {
    for (const lettering of ['can', 'second-wrap'] as const) expect(shines({ lettering })).toBe(1)
    expect(shines({ lettering: 'wrap', code: 'wrap' })).toBe(0)
    expect(shines({ lettering: 'can', code: 'can', wrap: 'missing' })).toBe(0)
    expect(shines({ lettering: 'can', wrapColour: 'clear' })).toBe(0)
  })
})

describe('a parameter changes its own part only', () => {
  const cases: readonly [Show, Show, readonly string[]][] = [
    [{ view: 'top' }, { legs: 5 }, ['legs']],
    [{ view: 'top' }, { vent: 'button' }, ['vent']],
    [{ view: 'top' }, { weldMarks: 2 }, ['weld-marks']],
    [{ view: 'top' }, { ring: 'torn' }, ['ring']],
    [{ view: 'top' }, { welds: 'scars' }, ['welds']],
    [{ view: 'top' }, { terminal: 'ground' }, ['ground']],
    [{ view: 'top', pointAt: 'dimples' }, { dimples: 2 }, ['dimples']],
    [{ view: 'top-angle' }, { legs: 4 }, ['legs']],
    [{ view: 'side', lettering: 'wrap' }, { lettering: 'none' }, ['lettering']],
    [{ view: 'side' }, { code: 'wrap' }, ['code']],
    // What shows through the wrap has the sheen of the wrap over it.
    [{ view: 'side' }, { code: 'can' }, ['code', 'sheen']],
    [{ view: 'side', lettering: 'wrap' }, { lettering: 'can' }, ['lettering', 'sheen']],
    [{ view: 'side' }, { seam: true }, ['seam']],
    [{ view: 'side' }, { wet: true }, ['wet']],
    [{ view: 'side' }, { rust: 'bottom' }, ['rust']],
    [{ view: 'side' }, { scorched: true }, ['scorch']],
    [{ view: 'cut-away' }, { vent: 'button' }, ['vent']],
    [{ view: 'cut-away' }, { dimples: 2 }, ['can']],
    [{ view: 'cut-away' }, { ring: 'missing' }, ['ring']],
  ]
  it.each(cases)('%j then %j', (base, change, expected) => {
    const before = partTexts(tree(base))
    const after = partTexts(tree({ ...base, ...change }))
    const names = new Set([...before.keys(), ...after.keys()])
    expect([...names].filter(name => before.get(name) !== after.get(name))).toEqual(expected)
  })
})

describe('options side by side', () => {
  it('are lettered in order, up to three in a row', () => {
    const root = parseSvg(drawOptions([3, 4, 5].map(legs => ({ show: { view: 'top', legs } }))).svg)
    const tiles = ['A', 'B', 'C'].map(sign => partsNamed(root, `option-${sign}`)[0])
    expect(
      tiles.map(
        tile =>
          walk(tile!)
            .filter(node => node.name === 'text')
            .map(node => node.text)[0],
      ),
    ).toEqual(['A', 'B', 'C'])
    const at = (i: number) => ({
      x: Number(tiles[i]?.children[0]?.attributes['x']),
      y: Number(tiles[i]?.children[0]?.attributes['y']),
    })
    expect([at(1).y, at(2).y]).toEqual([at(0).y, at(0).y])
    expect(at(0).x).toBeLessThan(at(1).x)
    expect(at(1).x).toBeLessThan(at(2).x)
    expect(tiles.map(tile => shapesIn(tile!, 'legs'))).toEqual([3, 4, 5])
  })

  it('are never taller than a third of a small phone, 640 px high, up to six of them', () => {
    for (let many = 2; many <= 6; many++) {
      const options = Array.from({ length: many }, () => ({
        show: { view: 'side' as const },
        label: 'A label of some length',
      }))
      const height = Number(parseSvg(drawOptions(options).svg).attributes['height'])
      expect(height, `${many} options`).toBeLessThanOrEqual(640 / 3)
    }
  })

  it('go on past Z', () => {
    expect([0, 25, 26, 27, 51, 52].map(optionLetter)).toEqual(['A', 'Z', 'AA', 'AB', 'AZ', 'BA'])
  })

  it('all differ from each other within their question', () => {
    for (const set of optionSets) {
      const drawn = showsOf(set).map(show => drawOptions([{ show }]).svg)
      expect(new Set(drawn).size, `${String(set.key)} of ${set.base.pointAt}`).toBe(drawn.length)
    }
  })

  it('keep one scale when sizes are compared', () => {
    const height = (format: CellParameters['format']) => {
      const root = parseSvg(drawOptions([{ show: { format, pointAt: 'length' } }]).svg)
      const d = walk(partsNamed(root, 'measures')[0]!).find(node => node.name === 'path')?.attributes['d'] ?? ''
      const [, y1, y2] = /^M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(d) ?? []
      return Number(y2) - Number(y1)
    }
    // Bare lengths 50 and 65 mm; both lines also hold a contact that stands out by about a millimetre.
    expect(height('14500') / height('18650')).toBeCloseTo(50 / 65, 1)
    expect(height('26650')).toBeCloseTo(height('18650'), -1)
  })
})
