// The shipped pack that holds every question, read once for the tests of this folder.
import { join } from 'node:path'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

const loading = await loadPacks(join(shippedRules, 'any-cell'), { cases: false })
const [loaded] = loading.packs
if (!loaded || loading.problems.length > 0) throw new Error('any-cell does not load')
export const anyCell = loaded.pack
