// The page's two lines to the stand-in: acts go out, news comes in.
import type { WireAct, WireNews, WireOutcome, WireUpload } from '../wire.ts'

/** Sends an act and gives back what came of it; a broken line comes back as words too. */
export async function act(what: WireAct): Promise<WireOutcome> {
  try {
    const response = await fetch('/act', {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-practice': 'act' },
      body: JSON.stringify(what),
    })
    if (response.ok) return (await response.json()) as WireOutcome
    return { kind: 'trouble', words: await response.text() }
  } catch {
    return { kind: 'trouble', words: 'The practice room does not answer. Is it still running?' }
  }
}

/** Listens to the news of one person in one place; the returned function hangs up. */
export function listen(
  you: string | null,
  place: string | null,
  hear: (news: WireNews) => void,
  lost: () => void,
): () => void {
  const query = new URLSearchParams({ ...(you ? { you } : {}), ...(place ? { place } : {}) })
  const source = new EventSource(`/live?${query}`)
  source.addEventListener('message', event => hear(JSON.parse(event.data) as WireNews))
  source.addEventListener('error', lost)
  return () => source.close()
}

/** A picked file, ready to be sent. */
export async function readUpload(file: File): Promise<WireUpload> {
  const bytes = new Uint8Array(await file.arrayBuffer())
  let text = ''
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
  return { name: file.name, base64: btoa(text) }
}
