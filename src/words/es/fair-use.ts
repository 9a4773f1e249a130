// Spanish for those who are asked to wait: how long, and that nothing is lost.

import type { InWordsOf } from '../catalogue.ts'
import type { fairUse as english } from '../en/fair-use.ts'

export const fairUse: InWordsOf<typeof english> = {
  'refusal.too-fast':
    'Vas demasiado rápido. Tu próxima pulsación vuelve a contar <t:{at}:R>; no se pierde nada de lo que respondiste.',
  'refusal.too-many-files': 'Acabas de enviar varios archivos. Envía el siguiente <t:{at}:R>.',
  'refusal.too-many-posts': 'Acabas de hacer publicar varios mensajes. Podrás publicar el siguiente <t:{at}:R>.',
  'refusal.server-too-fast':
    'Demasiadas personas de este servidor están pulsando a la vez. Prueba otra vez <t:{at}:R>; no se pierde nada de lo que respondiste.',
  'refusal.channel-too-fast': 'En este canal se acaban de publicar varios mensajes. Podrás publicar este <t:{at}:R>.',
}
