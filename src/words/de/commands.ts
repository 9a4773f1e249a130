// German for commands and their options, as Discord lists them (descriptions at most 100 characters).

import type { InWordsOf } from '../catalogue.ts'
import type { commands as english } from '../en/commands.ts'

export const commands: InWordsOf<typeof english> = {
  'command.check': 'Prüfen, ob eine Lithium-Ionen-Zelle das ist, wofür sie ausgegeben wird',
  'command.check.start': 'Eine Zelle, oder zusammen gekaufte Zellen, Schritt für Schritt prüfen',
  'command.check.start.family':
    'Als was sie verkauft wurde; weglassen, wenn es nicht in der Liste steht oder du es nicht weißt',
  'command.check.start.depth': 'Kurz stellt die wenigen Fragen, die am meisten verraten; gründlich geht bis zum Ende',
  'command.check.start.depth.quick': 'Kurz: die wenigen Fragen, die am meisten verraten',
  'command.check.start.depth.full': 'Gründlich: alles, was noch etwas ändern kann',
  'command.check.start.cells':
    'Wie viele Zellen du zusammen gekauft hast (geantwortet wird für die, die am schlechtesten aussieht)',
  'command.check.resume': 'Mit einer begonnenen Prüfung weitermachen',
  'command.check.list': 'Deine offenen und fertigen Prüfungen sehen, mit Ergebnis',
  'command.check.close': 'Eine Prüfung schließen, ohne weiterzumachen',
  'command.check.which': 'Welche Prüfung; weglassen für die neueste',
  'family.choice': '{name} ({maker})',
  'family.none': 'Steht nicht in der Liste, oder ich weiß es nicht',
  'check.choice':
    '{what}, begonnen am {date}, {count, plural, =0 {noch keine Antwort} one {# Antwort} other {# Antworten}}',
}
