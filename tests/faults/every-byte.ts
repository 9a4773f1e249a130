// Every byte of every file below a folder, to look for what must not be there.
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'

/** As text that keeps each byte as a character of its own. */
export async function everyByte(folder: string): Promise<string> {
  const files = (await readdir(folder, { withFileTypes: true, recursive: true })).filter(one => one.isFile())
  const parts = await Promise.all(files.map(one => readFile(join(one.parentPath, one.name), 'latin1')))
  return parts.join('\n')
}
