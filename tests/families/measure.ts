// Measures how long one family takes from facts to a program; run by hand on a quiet machine: node tests/families/measure.ts
import { compile } from '../../src/engine/compile.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { anyCell } from './base.ts'
import { inventedFamilies, unnamedFamilies } from './known-families.ts'

const median = (list: number[]): number => list.sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN
const all = [...Object.values(unnamedFamilies), ...Object.values(inventedFamilies)]
const [derived, compiled, whole] = [[], [], []] as [number[], number[], number[]]
for (let round = 0; round < 12; round++)
  for (const facts of all) {
    const start = performance.now()
    const result = derive(facts, anyCell)
    if (!result.ok) throw new Error('does not derive')
    const between = performance.now()
    compile([anyCell, result.pack], anyCell.written, result.pack.id)
    const end = performance.now()
    if (round < 2) continue
    derived.push(between - start)
    compiled.push(end - between)
    whole.push(end - start)
  }
console.log(
  `medians in ms: derive ${median(derived).toFixed(1)}, compile ${median(compiled).toFixed(1)}, both ${median(whole).toFixed(1)}`,
)
