// The shipped pack that holds every question, read once for the tests of this folder, and derived packs compiled beside it.
import { join } from 'node:path'
import type { Compiling } from '../../src/engine/compile.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

const loading = await loadPacks(join(shippedRules, 'any-cell'), { cases: false })
const [loaded] = loading.packs
if (!loaded || loading.problems.length > 0) throw new Error('any-cell does not load')
export const anyCell = loaded.pack

const programs = openPrograms([anyCell])
/** A derived pack as the bot compiles it: on what every cell is asked, which is there already. */
export const compileFamily = (pack: Pack): Compiling => programs.compileBeside(pack, anyCell.written)
