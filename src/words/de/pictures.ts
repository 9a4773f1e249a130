// German for words that stand in pictures.

import type { InWordsOf } from '../catalogue.ts'
import type { pictures as english } from '../en/pictures.ts'

export const pictures: InWordsOf<typeof english> = {
  'picture.side': 'Von der Seite',
  'picture.top': 'Pluspol',
  'picture.top-dimples': 'Pluspol, Vertiefungen: {count, plural, =0 {keine} other {#}}',
  'picture.vent': 'Berstscheibe unter dem Pluskontakt',
  'picture.lettering.can': 'Beschriftung: auf dem Zellbecher, unter der Hülle',
  'picture.lettering.second-wrap': 'Beschriftung: auf einer klaren Hülle darunter',
  'picture.code.can': 'Quadratischer Code: auf dem Zellbecher',
  'picture.lettering': 'Kleine Beschriftung',
  'picture.code': 'Quadratischer Code',
  'picture.dimples': 'Vertiefungen unter dem Ring',
}
