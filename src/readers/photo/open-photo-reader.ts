// Cleans photos: only from hosts that serve attachments, two people's at a time, each in a process of its own that may be ended.
import type { ChildProcess } from 'node:child_process'
import PQueue from 'p-queue'
import { isAllowedOrigin } from '../allowed-origin.ts'
import { runApart } from '../run-apart.ts'
import type { PixelBounds } from './clean-photo.ts'
import type { PhotoNews, PhotoWork } from './cleaner.ts'
import {
  type AskedPhoto,
  type CleanedPhotos,
  mostPhotos,
  type PhotoReader,
  type PhotoRefusal,
  type PhotoSize,
} from './photo-reader.ts'

export type PhotoBounds = {
  /** Of one file. */
  readonly mostBytes: number
  readonly pixels: PixelBounds
  /** For one file to arrive, and for everything from the moment work on it begins, in ms. */
  readonly fetchFor_ms: number
  readonly cleanFor_ms: number
  readonly atATime: number
  /** How many may wait for their turn. */
  readonly waiting: number
  /** The program of the process. */
  readonly cleaner: URL
}

/**
 * Discord takes files of 10 MiB from everybody and 25 MiB and more from some; cameras of phones have 12 to 50 million pixels.
 * A cleaner then takes 150 MB of memory, and 350 MB at worst (26 million pixels of 16 bits that come in passes); it is given back.
 */
const usual: PhotoBounds = {
  mostBytes: 25 * 1024 ** 2,
  pixels: { megapixels: 52, inPasses: 26, side: 9_999 },
  fetchFor_ms: 20_000,
  cleanFor_ms: 60_000,
  atATime: 2,
  waiting: 20,
  cleaner: new URL('./cleaner.ts', import.meta.url),
}

/** `origins`: scheme, host and port that attachments may come from, compared exactly. `changed`: other bounds than the usual. */
export function openPhotoReader(origins: readonly string[], changed: Partial<PhotoBounds> = {}): PhotoReader {
  const bounds = { ...usual, ...changed }
  const queue = new PQueue({ concurrency: bounds.atATime })
  return {
    async clean(photos, size) {
      const refusal = refusedUnseen(photos, origins, bounds)
      if (refusal) return { is: 'refused', refusal }
      if (photos.length === 0) return { is: 'cleaned', photos: [] }
      if (queue.size >= bounds.waiting) return { is: 'refused', refusal: { code: 'too-busy' } }
      return queue.add(() => cleanInProcess(photos, bounds, size))
    },
  }
}

/** What Discord already says of the files is enough to refuse these. */
function refusedUnseen(
  photos: readonly AskedPhoto[],
  origins: readonly string[],
  { mostBytes }: PhotoBounds,
): PhotoRefusal | undefined {
  if (photos.length > mostPhotos) return { code: 'too-many', count: photos.length, most: mostPhotos }
  for (const { name, url, bytes } of photos) {
    if (!isAllowedOrigin(origins, url)) return { code: 'not-attached', name }
    if (bytes > mostBytes) return { code: 'too-big', name, megabytes: mostBytes / 1024 ** 2 }
  }
  return undefined
}

function cleanInProcess(
  photos: readonly AskedPhoto[],
  { pixels, fetchFor_ms, cleanFor_ms, cleaner }: PhotoBounds,
  size: PhotoSize | undefined,
): Promise<CleanedPhotos> {
  const work: PhotoWork = { photos: photos.map(({ url, bytes }) => ({ url, bytes })), pixels, size, fetchFor_ms }
  return runApart(cleaner, work, child => newsFrom(child, photos, cleanFor_ms))
}

/** Resolves with what the process says in the end; a file that ends the process instead is as good as broken. */
function newsFrom(child: ChildProcess, photos: readonly AskedPhoto[], within_ms: number): Promise<CleanedPhotos> {
  const { promise, resolve, reject } = Promise.withResolvers<CleanedPhotos>()
  const nameOf = (photo: number) => photos[photo]?.name ?? ''
  const refused = (refusal: PhotoRefusal) => resolve({ is: 'refused', refusal })
  let at = 0
  const timer = setTimeout(() => refused({ code: 'too-slow' }), within_ms)
  child.on('message', (news: PhotoNews) => {
    if (news.is === 'at') at = news.photo
    else if (news.is === 'refused') refused({ ...news.refusal, name: nameOf(news.photo) })
    else resolve(news)
  })
  child.once('error', reject)
  child.once('exit', () => refused({ code: 'broken', name: nameOf(at) }))
  return promise.finally(() => clearTimeout(timer))
}
