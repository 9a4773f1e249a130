// Spanish for the page that a host links as privacy policy and terms of use.

import type { InWordsOf } from '../catalogue.ts'
import type { policy as english } from '../en/policy.ts'

export const policy: InWordsOf<typeof english> = {
  'policy.title': 'Cellwary en Discord: privacidad y condiciones de uso',
  'policy.run-by': 'Quién gestiona este bot',
  'policy.delete.title': 'Qué puedes hacer',
  'policy.delete':
    'Escribe /privacidad al bot: muestra lo que se guarda con tu ID, lo borra en el acto y te deja decir que no se te cuente.',
  'policy.terms.title': 'Condiciones de uso',
  'policy.terms.unproven':
    'El bot ayuda a reconocer celdas falsificadas por lo que se puede ver y medir. No dice nada de quien vendió una celda y se ofrece sin ninguna garantía.',
  'policy.terms.fair': 'No uses el bot para acusar ni molestar a nadie, ni intentes que los demás no puedan usarlo.',
}
