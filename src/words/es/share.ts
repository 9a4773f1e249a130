// Spanish for a verdict that its person shows in a channel.

import type { InWordsOf } from '../catalogue.ts'
import type { share as english } from '../en/share.ts'

export const share: InWordsOf<typeof english> = {
  'share.see': 'Mostrarlo aquí',
  'share.beforehand': 'Lo verá todo el mundo en este canal, con tu nombre. No se notifica a nadie.',
  'share.post': 'Publicarlo aquí',
  'share.one-cell':
    'Una sola celda, comprobada por fuera por quien la tiene. Dice lo que se vio y se midió en esta celda, y nada de quién la hizo o la vendió.',
  'share.by': 'Lo muestra {who}.',
  'share.remove': 'Quitarlo',
  'share.removed': 'Ya no está aquí.',
}
