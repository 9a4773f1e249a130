// The editors' JSON Schema of a rule pack, generated from the zod schema; run as a script it writes rules/pack.schema.json.
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import { packSchema } from '../engine/pack/schema.ts'
import { shippedRules } from './shipped-rules.ts'

export function packJsonSchema(): unknown {
  return { title: 'Cellwary rule pack', ...z.toJSONSchema(packSchema, { io: 'input' }) }
}

if (import.meta.main)
  await writeFile(join(shippedRules, 'pack.schema.json'), `${JSON.stringify(packJsonSchema(), null, 2)}\n`)
