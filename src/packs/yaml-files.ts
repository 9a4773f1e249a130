// The YAML files of a folder.
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'

/** By name; none if there is no such folder. */
export async function yamlFiles(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => [])
  return names
    .filter(name => name.endsWith('.yaml'))
    .sort()
    .map(name => join(folder, name))
}
