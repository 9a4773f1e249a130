// The editors' JSON Schemas of a rule pack and its parts, generated from the zod schemas; run as a script it writes them.
import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'
import { lettersSchema, packSchema, packWordsSchema, partSchema } from '../engine/pack/schema.ts'
import { shippedRules } from './shipped-rules.ts'

/** The schemas by the file they are kept in, below `rules/`. */
export function packJsonSchemas(): Record<string, unknown> {
  return {
    'pack.schema.json': { title: 'Cellwary rule pack', ...z.toJSONSchema(packSchema, { io: 'input' }) },
    'part.schema.json': { title: 'Part of a Cellwary rule pack', ...z.toJSONSchema(partSchema, { io: 'input' }) },
    'words.schema.json': {
      title: 'A Cellwary rule pack in another language',
      ...z.toJSONSchema(packWordsSchema, { io: 'input' }),
    },
    'letters.schema.json': {
      title: 'What letters to a seller say of a Cellwary rule pack',
      ...z.toJSONSchema(lettersSchema, { io: 'input' }),
    },
  }
}

if (import.meta.main)
  for (const [name, schema] of Object.entries(packJsonSchemas()))
    await writeFile(join(shippedRules, name), `${JSON.stringify(schema, null, 2)}\n`)
