// Files people and the bot send: their kind, their picture size and the links under which they are served.
import type { StoredFile, World } from './world.ts'

const contentTypes: Record<string, string> = {
  png: 'image/png',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  gif: 'image/gif',
  webp: 'image/webp',
  svg: 'image/svg+xml',
  csv: 'text/csv; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  md: 'text/markdown; charset=utf-8',
  json: 'application/json; charset=utf-8',
  yaml: 'application/yaml',
  yml: 'application/yaml',
  pdf: 'application/pdf',
}

const daySeconds = 86_400

/** All kept files together. */
const mostBytes = 256 * 1024 * 1024

/** A file a person picks; `contentType` is guessed from the name when left out, as Discord's clients do. */
export type Upload = {
  readonly name: string
  readonly bytes: Uint8Array
  readonly contentType?: string
}

/** Whether a value is an upload. */
export function isUpload(value: unknown): value is Upload {
  return typeof value === 'object' && value !== null && 'bytes' in value && 'name' in value
}

/** The content type Discord would guess from a file's name. */
function kindOfName(name: string): string {
  return contentTypes[name.split('.').at(-1)?.toLowerCase() ?? ''] ?? 'application/octet-stream'
}

/** Keeps a file and gives it an id; characters Discord replaces in names are replaced. */
export function keepFile(world: World, channelId: string, folder: StoredFile['folder'], upload: Upload): StoredFile {
  const name = upload.name.replace(/[^\p{L}\p{N}._-]+/gu, '_') || 'unnamed'
  const file: StoredFile = {
    id: world.newId(),
    channelId,
    folder,
    name,
    contentType: upload.contentType ?? kindOfName(name),
    bytes: upload.bytes,
    ...pictureSize(upload.bytes),
  }
  world.files.set(file.id, file)
  world.fileBytes += file.bytes.length
  // The oldest files make room, so that a long run does not fill the memory.
  for (const [id, old] of world.files) {
    if (world.fileBytes <= mostBytes || id === file.id) break
    dropFile(world, old)
  }
  return file
}

/** Forgets a file; its links answer 404 from then on. */
export function dropFile(world: World, file: StoredFile): void {
  if (world.files.delete(file.id)) world.fileBytes -= file.bytes.length
}

/** Width and height of a PNG (its IHDR chunk); nothing for other files. */
function pictureSize(bytes: Uint8Array): { width: number; height: number } | Record<string, never> {
  const png = bytes.length > 24 && bytes[0] === 0x89 && bytes[1] === 0x50 && bytes[2] === 0x4e && bytes[3] === 0x47
  if (!png) return {}
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  return { width: view.getUint32(16), height: view.getUint32(20) }
}

/** The file's link, valid for a day like Discord's (`ex` is the end in hexadecimal seconds). */
export function linkOf(world: World, file: StoredFile): string {
  const end = Math.floor(world.clock.now() / 1000) + daySeconds
  return `${world.origin}/cdn/${file.folder}/${file.channelId}/${file.id}/${encodeURIComponent(file.name)}?ex=${end.toString(16)}`
}

/** The file behind one of the stand-in's own links; null for any other link. */
export function fileOfLink(world: World, link: string): StoredFile | null {
  if (!link.startsWith(`${world.origin}/cdn/`)) return null
  return world.files.get(link.slice(world.origin.length).split('/')[4] ?? '') ?? null
}
