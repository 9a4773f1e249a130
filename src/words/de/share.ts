// German for a verdict that its person shows in a channel.

import type { InWordsOf } from '../catalogue.ts'
import type { share as english } from '../en/share.ts'

export const share: InWordsOf<typeof english> = {
  'share.see': 'Hier zeigen',
  'share.beforehand': 'Das sehen alle in diesem Kanal, mit deinem Namen. Niemand wird angepingt.',
  'share.post': 'Hier posten',
  'share.one-cell':
    'Eine einzelne Zelle, von außen geprüft von der Person, die sie hat. Hier steht, was an dieser Zelle gesehen und gemessen wurde, und nichts darüber, wer sie gemacht oder verkauft hat.',
  'share.by': 'Gezeigt von {who}.',
  'share.remove': 'Wieder entfernen',
  'share.removed': 'Es ist entfernt.',
}
