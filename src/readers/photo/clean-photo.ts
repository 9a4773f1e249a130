// Makes one photo anew: decoded, turned upright, made small, and written again as a JPEG that holds nothing but its pixels.
import sharp from 'sharp'
import { kindOfFile } from './kind-of-file.ts'
import type { CleanedPhoto, PhotoRefusal, PhotoSize } from './photo-reader.ts'

export type PixelBounds = {
  /** Of the whole picture, in millions; it is decoded only within this. */
  readonly megapixels: number
  /** The same for a picture that comes in passes (progressive, interlaced), which has to be held in memory as a whole. */
  readonly inPasses: number
  /** Of each side, in pixels. */
  readonly side: number
}

/** A refusal whose file the caller can name. */
export type Unclean = PhotoRefusal extends infer Refusal
  ? Refusal extends { name: string }
    ? Omit<Refusal, 'name'>
    : never
  : never
export type Cleaning = Omit<CleanedPhoto, 'name'> | { readonly refusal: Unclean }

// Of libvips' many readers only these three are ever run, whatever a file pretends to be.
sharp.block({ operation: ['VipsForeignLoad'] })
sharp.unblock({ operation: ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp'] })
sharp.cache(false)
sharp.concurrency(1)

/** Ten photos then fit into one request of 25 MiB (Discord's reference, “Uploading Files”). */
const usualSize: PhotoSize = { side: 2048, bytes: 2 * 1024 ** 2 }
/** The first is hardly told from the original; at the last even pure noise fits the usual size. */
const qualities = [85, 70, 50] as const
/** Where it does not fit, the picture is made smaller by these. */
const shares = [1, 0.7, 0.5, 0.35] as const

/** Never rejects for the file's sake. */
export async function cleanPhoto(bytes: Uint8Array, bounds: PixelBounds, size = usualSize): Promise<Cleaning> {
  if (bytes.length === 0) return { refusal: { code: 'broken' } }
  const kind = kindOfFile(bytes)
  if (kind === undefined) return { refusal: { code: 'not-a-picture' } }
  if (kind !== 'jpeg' && kind !== 'png' && kind !== 'webp')
    return { refusal: { code: 'kind-not-taken', looksLike: kind } }
  try {
    // Only the head is read here. The limit is given to the decoder as well, should it find more than the head said.
    const { width, height, isProgressive } = await sharp(bytes, { limitInputPixels: false }).metadata()
    const megapixels = isProgressive ? bounds.inPasses : bounds.megapixels
    const tooMany: Unclean = { code: 'too-many-pixels', megapixels, side: bounds.side }
    if (width * height > megapixels * 1e6 || Math.max(width, height) > bounds.side) return { refusal: tooMany }
    const photo = sharp(bytes, { limitInputPixels: megapixels * 1e6, failOn: 'error' })
    for (const share of shares) {
      const side = Math.round(size.side * share)
      const upright = photo
        .clone()
        .autoOrient()
        .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
        .flatten({ background: 'white' })
        .toColourspace('srgb')
      for (const quality of qualities) {
        const { data, info } = await upright.clone().jpeg({ quality }).toBuffer({ resolveWithObject: true })
        if (data.length <= size.bytes) return { bytes: data, width: info.width, height: info.height }
      }
    }
    return { refusal: tooMany }
  } catch {
    return { refusal: { code: 'broken' } }
  }
}
