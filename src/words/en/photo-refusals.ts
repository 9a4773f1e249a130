// English for photos that are not taken: each one sentence that says what to change.
export const photoRefusals = {
  'photo-refusal.too-many':
    'These are {count, number} photos; at most {most, number} are taken at once. Choose those that show what you are unsure about.',
  'photo-refusal.too-big':
    '“{name}” is larger than {megabytes, number} MiB. Save it smaller. Take it again only if you need neither touch the cell nor go near it.',
  'photo-refusal.too-many-pixels':
    '“{name}” has more than {megapixels, number} million pixels, or more than {side, number} on one side. Save it smaller. Take it again only if you need neither touch the cell nor go near it.',
  'photo-refusal.kind-not-taken':
    '“{name}” is {looksLike, select, heic {a HEIC photo; save it as JPEG (phones call that “most compatible”) and send that} avif {an AVIF picture; save it as JPEG and send that} gif {a GIF; send a photo as JPEG, PNG or WebP} animation {a moving picture; send a still photo} svg {an SVG drawing; send a photo as JPEG, PNG or WebP} tiff {a TIFF picture; save it as JPEG and send that} bmp {a bitmap; save it as JPEG or PNG and send that} jxl {a JPEG XL picture; save it as JPEG and send that} pdf {a PDF; send the photo itself} zip {an archive; send the photo itself} video {a video; send a photo taken from it} program {a program and no photo; send a photo as JPEG, PNG or WebP} other {of a kind that is not taken; send a photo as JPEG, PNG or WebP}}.',
  'photo-refusal.not-a-picture': '“{name}” is not a picture that can be read here. Send a photo as JPEG, PNG or WebP.',
  'photo-refusal.broken':
    '“{name}” is damaged, empty or cut off and cannot be read. Save it again and send the new file. Take it again only if you need neither touch the cell nor go near it.',
  'photo-refusal.could-not-fetch': '“{name}” could not be fetched from Discord. Send the photo again.',
  'photo-refusal.not-attached': '“{name}” is not attached in Discord. Attach the photo itself instead of a link.',
  'photo-refusal.too-slow':
    'Fetching and reading the photos took too long and was stopped. Send fewer or smaller ones, or try again in a moment.',
  'photo-refusal.too-busy': 'Many people are sending photos right now. Try again in a minute.',
} as const
