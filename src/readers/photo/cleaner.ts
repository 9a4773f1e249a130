// A process that fetches photos and makes them anew, so that whatever a file does to a decoder, it does it here.
import { workApart } from '../work-apart.ts'
import { cleanPhoto, type PixelBounds, type Unclean } from './clean-photo.ts'
import type { CleanedPhoto, CleanedPhotos, PhotoSize } from './photo-reader.ts'

export type PhotoWork = {
  readonly photos: readonly { readonly url: string; readonly bytes: number }[]
  readonly pixels: PixelBounds
  readonly size?: PhotoSize | undefined
  readonly fetchFor_ms: number
}

/** Which photo is being worked on, then what came of them all. */
export type PhotoNews =
  | { readonly is: 'at'; readonly photo: number }
  | { readonly is: 'cleaned'; readonly photos: Extract<CleanedPhotos, { is: 'cleaned' }>['photos'] }
  | { readonly is: 'refused'; readonly photo: number; readonly refusal: Unclean | { readonly code: FetchFailure } }

type FetchFailure = 'could-not-fetch' | 'too-slow'

async function cleanAll(work: PhotoWork): Promise<PhotoNews> {
  const photos: CleanedPhoto[] = []
  for (const [photo, { url, bytes }] of work.photos.entries()) {
    tell({ is: 'at', photo })
    const fetched = await fetchPhoto(url, bytes, work.fetchFor_ms)
    if (typeof fetched === 'string') return { is: 'refused', photo, refusal: { code: fetched } }
    const cleaned = await cleanPhoto(fetched, work.pixels, work.size)
    if ('refusal' in cleaned) return { is: 'refused', photo, refusal: cleaned.refusal }
    photos.push({ name: `photo-${photo + 1}.jpg`, ...cleaned })
  }
  return { is: 'cleaned', photos }
}

/** The file, if it comes whole, in time, and with no more bytes than Discord said it has. */
async function fetchPhoto(url: string, size: number, within_ms: number): Promise<Uint8Array | FetchFailure> {
  const signal = AbortSignal.timeout(within_ms)
  try {
    // A redirect would lead to a host that nobody has checked.
    const response = await fetch(url, { redirect: 'error', signal })
    if (!response.ok || !response.body) return 'could-not-fetch'
    const chunks: Uint8Array[] = []
    let bytes = 0
    for await (const chunk of response.body) {
      bytes += chunk.length
      if (bytes > size) return 'could-not-fetch'
      chunks.push(chunk)
    }
    return Buffer.concat(chunks)
  } catch {
    return signal.aborted ? 'too-slow' : 'could-not-fetch'
  }
}

function tell(news: PhotoNews): void {
  process.send?.(news)
}

workApart(async (work: PhotoWork) => tell(await cleanAll(work)))
