// Reads the page's own files; scripts are TypeScript and leave with their types stripped.
import { readFile } from 'node:fs/promises'
import { stripTypeScriptTypes } from 'node:module'

const contentTypes: Record<string, string> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  ts: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
}

const pageFolder = new URL('../page/', import.meta.url)

export type PageFile = {
  readonly kind: string
  readonly text: string
}

const stripped = new Map<string, PageFile>()

/** A file of the page by its plain name, or null; scripts are stripped once and kept. */
export async function pageFile(name: string): Promise<PageFile | null> {
  const ending = name.split('.').at(-1) ?? ''
  const known = stripped.get(name)
  if (known !== undefined) return known
  const text = await readFile(new URL(name, pageFolder), 'utf8').catch(() => null)
  if (text === null) return null
  const file = { kind: contentTypes[ending] ?? 'text/plain', text: ending === 'ts' ? stripTypeScriptTypes(text) : text }
  if (ending === 'ts') stripped.set(name, file)
  return file
}
