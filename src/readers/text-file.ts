// Takes a small text file from where attachments lie: bounded in bytes and time, never redirected.
import { isAllowedOrigin } from './allowed-origin.ts'

export type TextFile =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: 'too-large' | 'out-of-reach' | 'not-text' }

export type TextReader = { read(link: string, mostBytes: number): Promise<TextFile> }

const patience = 8000

export const openTextReader = (origins: readonly string[]): TextReader => ({
  async read(link, most) {
    if (!isAllowedOrigin(origins, link)) return { ok: false, why: 'out-of-reach' }
    try {
      const answer = await fetch(link, { redirect: 'error', signal: AbortSignal.timeout(patience) })
      if (!answer.ok || !answer.body) return { ok: false, why: 'out-of-reach' }
      const pieces: Uint8Array[] = []
      let bytes = 0
      for await (const piece of answer.body) {
        bytes += piece.length
        // The rest is not taken: whoever says that a file is small may be wrong.
        if (bytes > most) return { ok: false, why: 'too-large' }
        pieces.push(piece)
      }
      const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(pieces))
      return { ok: true, text }
    } catch (error) {
      return {
        ok: false,
        why: error instanceof TypeError && /decode|encod/i.test(error.message) ? 'not-text' : 'out-of-reach',
      }
    }
  },
})
