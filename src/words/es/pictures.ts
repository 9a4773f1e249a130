// Spanish for words that stand in pictures.

import type { InWordsOf } from '../catalogue.ts'
import type { pictures as english } from '../en/pictures.ts'

export const pictures: InWordsOf<typeof english> = {
  'picture.side': 'De lado',
  'picture.top': 'Extremo positivo',
  'picture.top-dimples': 'Extremo positivo, hoyuelos: {count, plural, =0 {ninguno} other {#}}',
  'picture.vent': 'Disco bajo el contacto positivo',
  'picture.lettering.can': 'Letras: en la carcasa, bajo la funda',
  'picture.lettering.second-wrap': 'Letras: en una funda transparente debajo',
  'picture.code.can': 'Código cuadrado: en la carcasa',
  'picture.lettering': 'Letras pequeñas',
  'picture.code': 'Código cuadrado de puntos',
  'picture.dimples': 'Hoyuelos, bajo el anillo',
}
