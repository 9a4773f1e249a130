// German for the weekly note to moderators, and for turning it on.
import type { InWordsOf } from '../catalogue.ts'
import type { weeklyNote as english } from '../en/weekly-note.ts'

export const weeklyNote: InWordsOf<typeof english> = {
  'setup.open.note': 'Wochennotiz',
  'setup.part.note': 'Wochennotiz',
  'setup.short.note': 'Einmal in der Woche eine leise Nachricht für die Moderation im Kanal für Berichte.',
  'setup.long.note':
    'Einmal in der Woche, nachdem sie gezählt ist, eine Nachricht im Kanal für Berichte: wie viele Prüfungen, welche Ergebnisse, welche Funde auf eine Entscheidung warten, welche Modelle auf eine zweite Person aus der Moderation warten, und wie viele Links sich seit einem halben Jahr niemand angesehen hat. Niemand wird angepingt. Zahlen gehen auch dort in Fünferschritten.',
  'setup.now.note': '{on, select, yes {eine in der Woche} other {keine}}',
  'setup.note.on': 'Einmal in der Woche posten',
  'setup.note.off': 'Keine Wochennotiz',
  'setup.note.no-channel': 'Es gibt keinen Kanal für Berichte, also erscheint die Wochennotiz nirgends. Wähl einen.',
  'note.title': 'Die Woche vom {week}',
  'note.no-counts': 'Für diese Woche wurde nichts gezählt.',
  'note.findings.label': 'Funde:',
  'note.findings':
    '{open, plural, =0 {Keiner wartet auf eine Entscheidung} one {# wartet auf eine Entscheidung} other {# warten auf eine Entscheidung}}{watching, plural, =0 {} one {, # wird beobachtet} other {, # werden beobachtet}}.',
  'note.reviews.label': 'Modelle, die auf eine zweite Person aus der Moderation warten:',
  'note.reviews': '{count, plural, =0 {keine} other {{names}}}{more, plural, =0 {} other { und # weitere}}.',
  'note.links.label': 'Die Links:',
  'note.links':
    '{count, plural, =0 {Jeder wurde im letzten halben Jahr angesehen.} one {# wurde zuletzt vor mehr als einem halben Jahr angesehen.} other {# wurden zuletzt vor mehr als einem halben Jahr angesehen.}}',
}
