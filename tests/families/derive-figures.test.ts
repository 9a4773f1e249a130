// Each figure and the very rule that is made of it: what it asks, how much it tells, what it says, and the answers that prove it.
import { describe, expect, test } from 'vitest'
import { deriveFigures } from '../../src/families/derive/derive-figures.ts'
import { capacityLimit, currentLimits, massBands } from '../../src/families/derive/figure-limits.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { bare, id } from './bare-family.ts'
import { anyCell } from './base.ts'

const r = (reading: number) => ({ reading, u: 0 })

describe('figures', () => {
  const rulesOf = (figures: Facts['figures'], kind: 'bare' | 'protected' = 'bare') =>
    Object.fromEntries(
      deriveFigures({ ...bare, identity: { ...bare.identity, kind }, figures }, anyCell).rules.map(
        ({ id: name, says: _says, letter: _letter, ...rule }) => [name, rule],
      ),
    )
  const described = { source: 'described', holdsBack: false }
  const saying = (figures: Facts['figures'], name: string) => {
    const rule = deriveFigures({ ...bare, figures }, anyCell).rules.find(one => one.id === id(name))
    return [rule?.says.en, rule?.says.de, rule?.says.es, rule?.letter?.en, rule?.letter?.de, rule?.letter?.es]
  }

  test('a capacity: more than 4 % above the typical one rules out, less than the least is a sign', () => {
    expect(rulesOf({ capacity: { typical: 2500, least: 2450 } })).toEqual({
      [id('capacity-above')]: {
        ...{ ...described, enough: true, weight: { kind: 'must', means: 'another-cell' } },
        when: { 'claimed-capacity': { above: 2600 } },
        fires: [{ 'claimed-capacity': r(2601) }],
        quiet: { 'claimed-capacity': r(2500) },
        unknown: { 'claimed-capacity': 'cant-tell' },
      },
      [id('capacity-below')]: {
        ...{ ...described, enough: true, weight: { kind: 'sign', strength: 'moderate' } },
        when: { 'claimed-capacity': { below: 2450 } },
        fires: [{ 'claimed-capacity': r(2449) }],
        quiet: { 'claimed-capacity': r(2500) },
        unknown: { 'claimed-capacity': 'cant-tell' },
      },
    })
    expect(capacityLimit({ typical: 2500, limit: 2510 })).toBe(2510)
    expect(rulesOf({ capacity: { typical: 2500, limit: 2510 } })[id('capacity-above')]).toMatchObject({
      ...{ when: { 'claimed-capacity': { above: 2510 } }, fires: [{ 'claimed-capacity': r(2511) }] },
    })
    // A limit under the typical figure leaves quiet what is at the limit.
    expect(rulesOf({ capacity: { typical: 2500, limit: 2400 } })[id('capacity-above')]?.quiet).toEqual({
      'claimed-capacity': r(2400),
    })
    expect(rulesOf({ capacity: { typical: 50_000, limit: 50_000 } })[id('capacity-above')]?.fires).toEqual([
      { 'claimed-capacity': r(50_000) },
    ])
    expect(Object.keys(rulesOf({ capacity: { typical: 2500, least: 2500 } }))).toHaveLength(2)
  })
  test('currents: above the highest, and above the highest without a limit of temperature', () => {
    const currents: Facts['figures']['currents'] = [
      { amps: 20, cutOff: 'none' },
      { amps: 30, cutOff: 75 },
    ]
    const rule = (amps: number, strength: string) => ({
      ...{ ...described, enough: false, weight: { kind: 'sign', strength } },
      when: { 'claimed-current': { above: amps }, 'current-word': 'continuous' },
      fires: [{ 'claimed-current': r(amps + 0.5), 'current-word': 'continuous' }],
      quiet: { 'claimed-current': r(amps), 'current-word': 'continuous' },
      unknown: { 'claimed-current': 'cant-tell', 'current-word': 'continuous' },
    })
    expect(rulesOf({ currents })).toEqual({
      ...{ [id('current-above')]: rule(30, 'moderate'), [id('current-uncut')]: rule(20, 'weak') },
    })
    expect(Object.keys(rulesOf({ currents: [{ amps: 30, cutOff: 75 }] }))).toEqual([id('current-above')])
    expect(currentLimits([{ amps: 20, cutOff: 'not-said' }, ...currents])).toEqual({ highest: 30, uncut: 20 })
    expect(currentLimits([...currents, { amps: 35, cutOff: 'none' }])).toEqual({ highest: 35, uncut: 35 })
  })
  test('a mass: off and far off, and no sign of a bare one that was sold protected', () => {
    const mass: Facts['figures']['mass'] = { middle: 45, cells: 1, from: 'sheet' }
    const rule = (low: number, high: number, strength: string, sold: object, unless: object) => ({
      ...{ ...described, enough: false, weight: { kind: 'sign', strength } },
      when: { any: [{ mass: { below: low } }, { mass: { above: high } }], ...unless },
      fires: [
        { mass: r(Math.round((low - 0.2) * 1000) / 1000), ...sold },
        { mass: r(Math.round((high + 0.2) * 1000) / 1000), ...sold },
      ],
      quiet: { mass: r(45), ...sold },
      unknown: { mass: 'cant-tell', ...sold },
    })
    const plain = { 'sold-as': 'new-bare' }
    const unless = { 'sold-as': { unless: 'new-protected' } }
    const excepted = { 'sold-as': 'new-protected' }
    expect(rulesOf({ mass })).toEqual({
      [id('mass-off')]: rule(43.918, 46.082, 'weak', plain, unless),
      [id('mass-far-off')]: rule(42.75, 47.25, 'strong', plain, unless),
      [id('mass-x')]: {
        ...{ source: 'described', holdsBack: true, enough: false, weight: { kind: 'no-bearing' } },
        when: { any: [{ mass: { below: 43.918 } }, { mass: { above: 46.082 } }], ...excepted },
        fires: [{ mass: r(46.282), ...excepted }],
        quiet: { mass: r(45), ...excepted },
        unknown: { mass: 'cant-tell', ...excepted },
      },
    })
    expect(rulesOf({ mass }, 'protected')).toEqual({
      [id('mass-off')]: rule(43.918, 46.082, 'weak', {}, {}),
      [id('mass-far-off')]: rule(42.75, 47.25, 'strong', {}, {}),
    })
    // What a sheet says stands for one cell, however many it names; far off is never nearer than off.
    expect(massBands({ middle: 45, cells: 9, from: 'sheet' })).toEqual(massBands({ ...mass }))
    expect(massBands({ middle: 45, cells: 9, from: 'references' }).near.low).toBeGreaterThan(43.918)
  })
  test('a size, each way apart; a resistance, twice as much, with four wires at room temperature', () => {
    const off = (part: string, low: number, middle: number, high: number) => ({
      ...{ ...described, enough: false, weight: { kind: 'sign', strength: 'weak' } },
      when: { any: [{ [part]: { below: low } }, { [part]: { above: high } }] },
      fires: [{ [part]: r(Math.round((low - 0.2) * 10) / 10) }, { [part]: r(Math.round((high + 0.2) * 10) / 10) }],
      quiet: { [part]: r(middle) },
      unknown: { [part]: 'cant-tell' },
    })
    expect(rulesOf({ size: { diameter: 18.3, length: 65 } })).toEqual({
      [id('diameter-off')]: off('diameter', 17.9, 18.3, 18.7),
      [id('length-off')]: off('length', 64.2, 65, 65.8),
    })
    const sides = { 'resistance-meter': 'four-wire', 'room-temperature': r(22), 'sold-as': 'new-bare' }
    expect(rulesOf({ resistance: { usual: 12 } })).toEqual({
      [id('resistance-off')]: {
        ...{ ...described, enough: false, weight: { kind: 'sign', strength: 'weak' } },
        when: {
          ...{ 'ac-resistance': { above: 24 }, 'resistance-meter': 'four-wire' },
          'sold-as': ['new-bare', 'new-rewrap'],
          all: [{ 'room-temperature': { above: 18 } }, { 'room-temperature': { below: 27 } }],
        },
        fires: [{ 'ac-resistance': r(25), ...sides }],
        quiet: { 'ac-resistance': r(12), ...sides },
        unknown: { 'ac-resistance': 'cant-tell', ...sides },
      },
    })
  })
  test.each<[string, Facts['figures'], object[], string[]]>([
    [
      'a least above the typical one',
      { capacity: { typical: 2400, least: 2450 } },
      [{ code: 'least-above-typical', least: 2450, typical: 2400 }],
      ['capacity-above'],
    ],
    [
      'a least that nothing can be under',
      { capacity: { typical: 60, least: 50 } },
      [{ code: 'figure-out-of-range', figure: 'capacity', value: 50, least: 50, most: 100_000 }],
      ['capacity-above'],
    ],
    [
      'a limit that nothing can be above',
      { capacity: { typical: 2500, limit: 100_000 } },
      [{ code: 'figure-out-of-range', figure: 'capacity', value: 100_000, least: 50, most: 100_000 }],
      [],
    ],
    [
      'a current of a tenth',
      { currents: [{ amps: 0.1, cutOff: 'none' }] },
      [{ code: 'figure-out-of-range', figure: 'current', value: 0.1, least: 0.1, most: 1000 }],
      [],
    ],
    [
      'a mass next to nothing',
      { mass: { middle: 5, cells: 1, from: 'sheet' } },
      [{ code: 'figure-out-of-range', figure: 'mass', value: 4.88, least: 5, most: 600 }],
      [],
    ],
    [
      'a diameter that is too small',
      { size: { diameter: 5.2, length: 65 } },
      [{ code: 'figure-out-of-range', figure: 'size', value: 4.8, least: 5, most: 60 }],
      ['length-off'],
    ],
    [
      'a resistance that is too large',
      { resistance: { usual: 1000 } },
      [{ code: 'figure-out-of-range', figure: 'resistance', value: 2000, least: 0.5, most: 2000 }],
      [],
    ],
  ])('%s is a problem', (_, figures, problems, rules) => {
    const derived = deriveFigures({ ...bare, figures }, anyCell)
    expect(derived.problems).toEqual(problems)
    expect(derived.rules.map(one => one.id)).toEqual(rules.map(id))
  })
  test('none give no rule, nor does a question the project does not ask', () => {
    expect(deriveFigures(bare, anyCell)).toEqual({ rules: [], problems: [] })
    const none = { ...anyCell, questions: [] }
    const figures: Facts['figures'] = { capacity: { typical: 2500 }, mass: { middle: 45, cells: 1, from: 'sheet' } }
    expect(deriveFigures({ ...bare, figures }, none)).toEqual({ rules: [], problems: [] })
    const options = anyCell.questions.map(one =>
      one.id === 'mass' ? { ...one, answer: anyCell.questions[0]!.answer } : one,
    )
    expect(
      deriveFigures({ ...bare, figures: { mass: figures.mass } }, { ...anyCell, questions: options }).rules,
    ).toEqual([])
  })

  test.each<[string, Facts['figures'], string[]]>([
    [
      'capacity-above',
      { capacity: { typical: 12500.25 } },
      [
        'It is sold with 12,500.3 mAh. With a clearly higher figure on it, it is not this model.',
        'Sie wird mit 12.500,3 mAh verkauft. Mit einer deutlich höheren Angabe ist sie nicht dieses Modell.',
        'Se vende con 12.500,3 mAh. Con una cifra claramente mayor no es este modelo.',
        'This model is sold with 12,500.3 mAh.',
        'Dieses Modell wird mit 12.500,3 mAh verkauft.',
        'Este modelo se vende con 12.500,3 mAh.',
      ],
    ],
    [
      'capacity-below',
      { capacity: { typical: 2500, least: 2450 } },
      [
        'The figure on it is below the 2450 mAh that this model has at least.',
        'Die Angabe darauf liegt unter den 2450 mAh, die dieses Modell mindestens hat.',
        'La cifra que lleva está por debajo de los 2450 mAh que este modelo tiene como mínimo.',
        'This model has 2450 mAh at least.',
        'Dieses Modell hat mindestens 2450 mAh.',
        'Este modelo tiene 2450 mAh como mínimo.',
      ],
    ],
    [
      'current-above',
      { currents: [{ amps: 30, cutOff: 'none' }] },
      [
        'This model is given 30 A at most as a continuous current.',
        'Für dieses Modell sind höchstens 30 A Dauerstrom angegeben.',
        'Para este modelo se dan como mucho 30 A en descarga continua.',
        'This model is given 30 A at most as a continuous current.',
        'Für dieses Modell sind höchstens 30 A Dauerstrom angegeben.',
        'Para este modelo se dan como mucho 30 A de corriente continua.',
      ],
    ],
    [
      'current-uncut',
      {
        currents: [
          { amps: 20, cutOff: 'none' },
          { amps: 30, cutOff: 75 },
        ],
      },
      [
        'More than 20 A holds only with a limit of temperature for this model.',
        'Mehr als 20 A gelten bei diesem Modell nur mit einer Temperaturgrenze.',
        'En este modelo, más de 20 A solo vale con un límite de temperatura.',
        'This model is given 20 A at most as a continuous current.',
        'Für dieses Modell sind höchstens 20 A Dauerstrom angegeben.',
        'Para este modelo se dan como mucho 20 A de corriente continua.',
      ],
    ],
    [
      'mass-off',
      { mass: { middle: 45.5, cells: 1, from: 'sheet' } },
      [
        'This model weighs about 45.5 g; this one is somewhat off that.',
        'Dieses Modell wiegt etwa 45,5 g; diese Zelle liegt etwas daneben.',
        'Este modelo pesa unos 45,5 g; esta celda se aparta algo de eso.',
        'This model weighs about 45.5 g.',
        'Dieses Modell wiegt etwa 45,5 g.',
        'Este modelo pesa unos 45,5 g.',
      ],
    ],
    [
      'mass-far-off',
      { mass: { middle: 45.5, cells: 1, from: 'sheet' } },
      [
        'This model weighs about 45.5 g; this one is far off that.',
        'Dieses Modell wiegt etwa 45,5 g; diese Zelle liegt weit daneben.',
        'Este modelo pesa unos 45,5 g; esta celda se aparta mucho de eso.',
        'This model weighs about 45.5 g.',
        'Dieses Modell wiegt etwa 45,5 g.',
        'Este modelo pesa unos 45,5 g.',
      ],
    ],
    [
      'length-off',
      { size: { diameter: 18.3, length: 65 } },
      [
        'This model is 18.3 × 65 mm; this one is another size.',
        'Dieses Modell misst 18,3 × 65 mm; diese Zelle ist anders groß.',
        'Este modelo mide 18,3 × 65 mm; esta celda tiene otro tamaño.',
        'This model is 18.3 × 65 mm.',
        'Dieses Modell misst 18,3 × 65 mm.',
        'Este modelo mide 18,3 × 65 mm.',
      ],
    ],
    [
      'resistance-off',
      { resistance: { usual: 12 } },
      [
        'New ones of this model have about 12 mΩ; this one has more than twice as much.',
        'Neue Zellen dieses Modells haben etwa 12 mΩ; diese hat mehr als doppelt so viel.',
        'Las nuevas de este modelo tienen unos 12 mΩ; esta tiene más del doble.',
        'New cells of this model have about 12 mΩ.',
        'Neue Zellen dieses Modells haben etwa 12 mΩ.',
        'Las celdas nuevas de este modelo tienen unos 12 mΩ.',
      ],
    ],
  ])('%s says so in each language, and in a letter', (name, figures, said) => {
    expect(saying(figures, name)).toEqual(said)
  })
})
