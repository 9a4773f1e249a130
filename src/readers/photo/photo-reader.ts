// What the Discord room needs of whoever fetches photos and makes them clean before a moderator sees them.

/** An attachment as Discord resolved it; `bytes` is the size that Discord says it has. */
export type AskedPhoto = { readonly name: string; readonly url: string; readonly bytes: number }

/** How large a photo may be that comes out: its longest side in pixels, and its bytes. */
export type PhotoSize = { readonly side: number; readonly bytes: number }

/** A JPEG made anew: nothing in it but the picture, upright, and within the size that was asked for. */
export type CleanedPhoto = {
  /** photo-1.jpg and so on, in the order in which they were asked for. */
  readonly name: string
  readonly bytes: Uint8Array
  readonly width: number
  readonly height: number
}

/** What a file looks like that is a picture of a kind we do not take, or no picture at all but known. */
export type OtherKind =
  | 'heic'
  | 'avif'
  | 'gif'
  | 'animation'
  | 'svg'
  | 'tiff'
  | 'bmp'
  | 'jxl'
  | 'pdf'
  | 'zip'
  | 'video'
  | 'program'

/** Why no photo of a message was taken; `name` is the file's as the person's device called it. */
export type PhotoRefusal =
  | { readonly code: 'too-many'; readonly count: number; readonly most: number }
  | { readonly code: 'too-big'; readonly name: string; readonly megabytes: number }
  | { readonly code: 'too-many-pixels'; readonly name: string; readonly megapixels: number; readonly side: number }
  | { readonly code: 'kind-not-taken'; readonly name: string; readonly looksLike: OtherKind }
  | { readonly code: 'not-a-picture' | 'broken' | 'could-not-fetch' | 'not-attached'; readonly name: string }
  | { readonly code: 'too-slow' | 'too-busy' }

export type CleanedPhotos =
  | { readonly is: 'cleaned'; readonly photos: readonly CleanedPhoto[] }
  | { readonly is: 'refused'; readonly refusal: PhotoRefusal }

export type PhotoReader = {
  /**
   * Fetches the photos and makes each anew, away from this process, within bounds of time, bytes and pixels. All of them or
   * none: the first that cannot be taken says why. Never rejects for the photos' sake. `size`: at most 2048 pixels and 2 MiB each
   * where it is left out.
   */
  clean(photos: readonly AskedPhoto[], size?: PhotoSize): Promise<CleanedPhotos>
}

/** Discord's most in one message, and in one field of a form. */
export const mostPhotos = 10
