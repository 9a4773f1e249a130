// German for those who are asked to wait: how long, and that nothing is lost.

import type { InWordsOf } from '../catalogue.ts'
import type { fairUse as english } from '../en/fair-use.ts'

export const fairUse: InWordsOf<typeof english> = {
  'refusal.too-fast':
    'Das ging sehr schnell. Dein nächster Knopfdruck zählt wieder <t:{at}:R>; nichts, was du geantwortet hast, ist verloren.',
  'refusal.too-many-files': 'Du hast gerade mehrere Dateien geschickt. Schick die nächste <t:{at}:R>.',
  'refusal.too-many-posts': 'Du hast gerade mehrere Nachrichten posten lassen. Die nächste geht <t:{at}:R>.',
  'refusal.server-too-fast':
    'Gerade drücken sehr viele Leute auf diesem Server gleichzeitig Knöpfe. Versuch es <t:{at}:R> noch einmal; nichts, was du geantwortet hast, ist verloren.',
  'refusal.channel-too-fast':
    'In diesem Kanal wurden gerade mehrere Nachrichten gepostet. Diese kannst du <t:{at}:R> posten.',
}
