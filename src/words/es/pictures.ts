// Spanish for words that stand in pictures.

import type { InWordsOf } from '../catalogue.ts'
import type { pictures as english } from '../en/pictures.ts'

export const pictures: InWordsOf<typeof english> = {
  'picture.side': 'De lado',
  'picture.top': 'Extremo positivo',
  'picture.vent': 'Disco bajo el contacto positivo',
  'picture.lettering': 'Letras pequeñas',
  'picture.code': 'Código cuadrado de puntos',
  'picture.dimples': 'Hoyuelos, bajo el anillo',
}
