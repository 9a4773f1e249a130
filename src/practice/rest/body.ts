// Reads a request's body: JSON, or multipart with `payload_json` and `files[n]`.
import type { IncomingMessage } from 'node:http'
import type { Json } from '../world/raw.ts'
import type { SentFile } from '../world/write-message.ts'

/** Discord refuses requests above 25 MiB. */
const mostBytes = 25 * 1024 * 1024

export type Body =
  | {
      readonly ok: true
      readonly json: Json
      readonly list: readonly unknown[] | null
      readonly files: readonly SentFile[]
    }
  | { readonly ok: false; readonly why: 'too-large' | 'not-json' }

const emptyBody: Body = { ok: true, json: {}, list: null, files: [] }

/** The whole body of a request, or why it cannot be read. */
export async function readBody(request: IncomingMessage): Promise<Body> {
  if (request.method === 'GET') return emptyBody
  const bytes = await readBytes(request, mostBytes)
  if (bytes === null) return { ok: false, why: 'too-large' }
  if (bytes.length === 0) return emptyBody
  const type = request.headers['content-type'] ?? ''
  return type.startsWith('multipart/form-data') ? readParts(bytes, type) : readJson(bytes.toString('utf8'), [])
}

/** The bytes of a request, or null when there are more than `most`. */
export async function readBytes(request: IncomingMessage, most: number): Promise<Buffer | null> {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length
    if (size <= most) chunks.push(chunk)
  }
  return size > most ? null : Buffer.concat(chunks)
}

function readJson(text: string, files: readonly SentFile[]): Body {
  try {
    const value: unknown = JSON.parse(text)
    if (Array.isArray(value)) return { ok: true, json: {}, list: value, files }
    if (typeof value === 'object' && value !== null) return { ok: true, json: value as Json, list: null, files }
    return { ok: false, why: 'not-json' }
  } catch {
    return { ok: false, why: 'not-json' }
  }
}

async function readParts(bytes: Buffer, type: string): Promise<Body> {
  let form: FormData
  try {
    form = await new Response(new Uint8Array(bytes), { headers: { 'content-type': type } }).formData()
  } catch {
    return { ok: false, why: 'not-json' }
  }
  const files: SentFile[] = []
  for (const [name, value] of form) {
    const field = /^files\[(\d+)\]$/.exec(name)?.[1]
    if (field === undefined || typeof value === 'string') continue
    files.push({ field, name: value.name, bytes: new Uint8Array(await value.arrayBuffer()) })
  }
  const payload = form.get('payload_json')
  return typeof payload === 'string' ? readJson(payload, files) : { ok: true, json: {}, list: null, files }
}
