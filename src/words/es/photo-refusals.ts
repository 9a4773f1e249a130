// Spanish for photos that are not taken: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { photoRefusals as english } from '../en/photo-refusals.ts'

export const photoRefusals: InWordsOf<typeof english> = {
  'photo-refusal.too-many':
    'Son {count, number} fotos; se aceptan como máximo {most, number} a la vez. Elige las que muestran aquello de lo que dudas.',
  'photo-refusal.too-big':
    '«{name}» ocupa más de {megabytes, number} MiB. Guárdala más pequeña. Repite la foto solo si no tienes que tocar la celda ni acercarte a ella.',
  'photo-refusal.too-many-pixels':
    '«{name}» tiene más de {megapixels, number} millones de píxeles, o más de {side, number} en un lado. Guárdala más pequeña. Repite la foto solo si no tienes que tocar la celda ni acercarte a ella.',
  'photo-refusal.kind-not-taken':
    '«{name}» es {looksLike, select, heic {una foto HEIC; guárdala como JPEG (en los teléfonos, «más compatible») y envía esa} avif {una imagen AVIF; guárdala como JPEG y envía esa} gif {un GIF; envía una foto en JPEG, PNG o WebP} animation {una imagen animada; envía una foto fija} svg {un dibujo SVG; envía una foto en JPEG, PNG o WebP} tiff {una imagen TIFF; guárdala como JPEG y envía esa} bmp {un mapa de bits; guárdalo como JPEG o PNG y envía ese} jxl {una imagen JPEG XL; guárdala como JPEG y envía esa} pdf {un PDF; envía la foto misma} zip {un archivo comprimido; envía la foto misma} video {un vídeo; envía una foto sacada de él} program {un programa y no una foto; envía una foto en JPEG, PNG o WebP} other {de un tipo que no se acepta; envía una foto en JPEG, PNG o WebP}}.',
  'photo-refusal.not-a-picture': '«{name}» no es ninguna imagen conocida aquí. Envía una foto en JPEG, PNG o WebP.',
  'photo-refusal.broken':
    '«{name}» está dañada, vacía o cortada y no se puede leer. Guárdala de nuevo y envía el archivo nuevo. Repite la foto solo si no tienes que tocar la celda ni acercarte a ella.',
  'photo-refusal.could-not-fetch': 'No se pudo obtener «{name}» de Discord. Envía la foto otra vez.',
  'photo-refusal.not-attached':
    '«{name}» no es un archivo adjunto de Discord. Adjunta la foto misma en lugar de un enlace.',
  'photo-refusal.too-slow':
    'Obtener y leer las fotos tardó demasiado y se detuvo. Envía menos o más pequeñas, o prueba otra vez dentro de un momento.',
  'photo-refusal.too-busy': 'Ahora mismo hay muchas personas enviando fotos. Prueba otra vez dentro de un minuto.',
}
