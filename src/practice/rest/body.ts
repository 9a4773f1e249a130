// Reads a request's body: JSON, or multipart with `payload_json` and `files[n]`.
import type { IncomingMessage } from 'node:http'
import type { Json } from '../world/raw.ts'
import type { SentFile } from '../world/write-message.ts'

/** Discord refuses requests above 25 MiB. */
const mostBytes = 25 * 1024 * 1024

/** `list` is a body that is an array. */
export type Body = {
  readonly json: Json
  readonly list: readonly unknown[] | null
  readonly files: readonly SentFile[]
}

/** The whole body of a request, an absent one as empty; or why it cannot be read. */
export async function readBody(request: IncomingMessage): Promise<Body | 'too-large' | 'not-json'> {
  const bytes = await readBytes(request, mostBytes)
  if (bytes === null) return 'too-large'
  const type = request.headers['content-type'] ?? ''
  try {
    const form = type.startsWith('multipart/form-data') ? await formOf(bytes, type) : null
    const files: SentFile[] = []
    for (const [name, value] of form ?? []) {
      const field = /^files\[(\d+)\]$/.exec(name)?.[1]
      if (field === undefined || typeof value === 'string') continue
      files.push({ field, name: value.name, bytes: new Uint8Array(await value.arrayBuffer()) })
    }
    const text = form === null ? bytes.toString('utf8') : String(form.get('payload_json') ?? '')
    const value: unknown = text === '' ? {} : JSON.parse(text)
    if (typeof value !== 'object' || value === null) return 'not-json'
    return Array.isArray(value) ? { json: {}, list: value, files } : { json: value as Json, list: null, files }
  } catch {
    return 'not-json'
  }
}

/** The bytes of a request, or null when there are more than `most`; those too are read, so that the answer is heard. */
export async function readBytes(request: IncomingMessage, most: number): Promise<Buffer | null> {
  const chunks: Buffer[] = []
  let size = 0
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length
    if (size <= most) chunks.push(chunk)
  }
  return size > most ? null : Buffer.concat(chunks)
}

const formOf = (bytes: Buffer, type: string): Promise<FormData> =>
  new Response(new Uint8Array(bytes), { headers: { 'content-type': type } }).formData()
