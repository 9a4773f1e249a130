// Reading picture parameters from a pack: what is allowed passes, what is not is named.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { choices, counts, parts, switches, usualCell, views } from '../../src/pictures/cell/parameters.ts'
import { allowedValues, readCellParameters } from '../../src/pictures/cell/read-cell-parameters.ts'

const refusal = (raw: Record<string, string | number | boolean>) => {
  const read = readCellParameters(raw)
  if (read.ok) throw new Error('was accepted')
  return read.refusal
}

describe('picture parameters of a pack', () => {
  it('fills an empty record with the ordinary cell', () => {
    expect(readCellParameters({})).toEqual({ ok: true, params: usualCell })
  })

  it('takes a format written as a number, as YAML reads it', () => {
    const read = readCellParameters({ format: 21700 })
    expect(read.ok && read.params.format).toBe('21700')
  })

  it('names a misspelt key and all keys there are', () => {
    const { code, key, allowed } = refusal({ leg: 3 })
    expect({ code, key }).toEqual({ code: 'unknown-parameter', key: 'leg' })
    expect(allowed).toEqual(expect.arrayContaining(['legs', 'pointAt', 'wet', 'view']))
  })

  it.each([
    ['legs', 7, '6'],
    ['legs', '3', '3'],
    ['legs', 2.5, '3'],
    ['legs', Number.NaN, '3'],
    ['vent', 'round', 'button'],
    ['wet', 'yes', 'true'],
    ['pointAt', 'knees', 'legs'],
    ['view', 'bottom', 'side'],
    ['format', '18651', '18650'],
  ])('refuses %s: %s and names what may stand there', (key, value, one) => {
    const { code, key: named, allowed } = refusal({ [key]: value })
    expect({ code, named }).toEqual({ code: 'value-not-allowed', named: key })
    expect(allowed).toContain(one)
  })

  it('refuses to point at what the view cannot show, and names what it can', () => {
    const { code, allowed } = refusal({ view: 'side', pointAt: 'legs' })
    expect(code).toBe('part-not-in-view')
    expect(allowed).toEqual(['none', ...parts.side])
  })

  it('knows nothing of what objects carry by birth', () => {
    expect(refusal({ constructor: 'x' }).code).toBe('unknown-parameter')
    expect(refusal({ toString: 1 }).code).toBe('unknown-parameter')
  })

  it('accepts every record made of allowed values', () => {
    const typed = (key: string, text: string): string | number | boolean =>
      Object.hasOwn(counts, key) ? Number(text) : (switches as readonly string[]).includes(key) ? text === 'true' : text
    const keys = [...Object.keys(choices), ...Object.keys(counts), ...switches].filter(key => key !== 'view')
    const record = fc.record(
      Object.fromEntries(
        keys.map(key => [key, fc.constantFrom(...(allowedValues(key) ?? [])).map(text => typed(key, text))]),
      ),
      { requiredKeys: [] },
    )
    const seen = fc
      .constantFrom(...views)
      .chain(view => fc.record({ view: fc.constant(view), pointAt: fc.constantFrom('none', ...parts[view]) }))
    fc.assert(
      fc.property(record, seen, (some, look) => {
        const read = readCellParameters({ ...some, ...look })
        expect(read).toEqual({ ok: true, params: { ...usualCell, ...some, ...look } })
      }),
    )
  })
})
