// German for photos that are not taken: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { photoRefusals as english } from '../en/photo-refusals.ts'

export const photoRefusals: InWordsOf<typeof english> = {
  'photo-refusal.too-many':
    'Das sind {count, number} Fotos; höchstens {most, number} werden auf einmal angenommen. Wähl die aus, auf denen man sieht, wobei du unsicher bist.',
  'photo-refusal.too-big':
    '„{name}“ ist größer als {megabytes, number} MiB. Speichere das Foto kleiner. Nimm es nur noch einmal auf, wenn du die Zelle dafür weder berühren noch nah herangehen musst.',
  'photo-refusal.too-many-pixels':
    '„{name}“ hat mehr als {megapixels, number} Millionen Pixel, oder mehr als {side, number} auf einer Seite. Speichere das Foto kleiner. Nimm es nur noch einmal auf, wenn du die Zelle dafür weder berühren noch nah herangehen musst.',
  'photo-refusal.kind-not-taken':
    '„{name}“ ist {looksLike, select, heic {ein HEIC-Foto; speichere es als JPEG (auf Handys heißt das „maximale Kompatibilität“) und schick das} avif {ein AVIF-Bild; speichere es als JPEG und schick das} gif {ein GIF; schick ein Foto als JPEG, PNG oder WebP} animation {ein bewegtes Bild; schick ein Foto, das stillsteht} svg {eine SVG-Zeichnung; schick ein Foto als JPEG, PNG oder WebP} tiff {ein TIFF-Bild; speichere es als JPEG und schick das} bmp {eine Bitmap; speichere sie als JPEG oder PNG und schick das} jxl {ein JPEG-XL-Bild; speichere es als JPEG und schick das} pdf {ein PDF; schick das Foto selbst} zip {ein Archiv; schick das Foto selbst} video {ein Video; schick ein Foto daraus} program {ein Programm und kein Foto; schick ein Foto als JPEG, PNG oder WebP} other {von einer Art, die nicht angenommen wird; schick ein Foto als JPEG, PNG oder WebP}}.',
  'photo-refusal.not-a-picture':
    '„{name}“ ist kein Bild, das hier bekannt ist. Schick ein Foto als JPEG, PNG oder WebP.',
  'photo-refusal.broken':
    '„{name}“ ist beschädigt, leer oder abgeschnitten und nicht lesbar. Speichere das Foto noch einmal, und schick die neue Datei. Nimm es nur noch einmal auf, wenn du die Zelle dafür weder berühren noch nah herangehen musst.',
  'photo-refusal.could-not-fetch': '„{name}“ konnte nicht von Discord geholt werden. Schick das Foto noch einmal.',
  'photo-refusal.not-attached': '„{name}“ ist kein Discord-Anhang. Häng das Foto selbst an, keinen Link.',
  'photo-refusal.too-slow':
    'Die Fotos zu holen und zu lesen hat zu lange gedauert und wurde abgebrochen. Schick weniger oder kleinere, oder versuch es gleich noch einmal.',
  'photo-refusal.too-busy': 'Gerade schicken viele Leute Fotos. Versuch es in einer Minute noch einmal.',
}
