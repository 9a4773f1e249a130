// The shipped constructions, read and checked, or remembered from an earlier start if no file has changed since.
import type { LoadedConstructions } from './load-constructions.ts'
import { code, type Memory, remembered, yamlReaders } from './remembered.ts'
import { shippedConstructions } from './shipped-rules.ts'
import { yamlFiles } from './yaml-files.ts'

/** The code that decides what their files mean: with other code, nothing is remembered. A test holds it complete. */
export const constructionReaders = code([
  ...yamlReaders,
  'packs/load-constructions.ts',
  'packs/shipped-rules.ts',
  'families/facts/facts-schema.ts',
])

export async function installedConstructions(memory: Memory): Promise<LoadedConstructions> {
  const files = await yamlFiles(shippedConstructions)
  // YAML and the schema are loaded only where constructions are read.
  return remembered(memory, [...constructionReaders, ...files], async () =>
    (await import('./load-constructions.ts')).loadConstructions(),
  )
}
