// German for a verdict that its person shows in a channel.

import type { InWordsOf } from '../catalogue.ts'
import type { share as english } from '../en/share.ts'

export const share: InWordsOf<typeof english> = {
  'share.see': 'Hier posten',
  'share.beforehand': 'Das sehen alle in diesem Kanal, mit deinem Namen. Niemand wird angepingt.',
  'share.post': 'Jetzt posten',
  'share.one-cell':
    'Eine einzelne Zelle, von außen geprüft von der Person, die sie hat. Hier steht, was an dieser Zelle gesehen und gemessen wurde, und nichts darüber, wer sie gebaut oder verkauft hat.',
  'share.by': 'Gepostet von {who}.',
  'share.remove': 'Wieder entfernen',
  'share.removed': 'Es ist entfernt.',
}
