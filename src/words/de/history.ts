// German for what was changed about a server's settings and links: who, when, from what to what, and the way back.
import type { InWordsOf } from '../catalogue.ts'
import type { history as english } from '../en/history.ts'

export const history: InWordsOf<typeof english> = {
  'history.title': 'Was hier geändert wurde',
  'history.title.links': 'Was an den Links geändert wurde',
  'history.intro':
    'Das Neueste zuerst. Jede Änderung lässt sich zurücknehmen, solange niemand danach dasselbe geändert hat. Aufbewahrt werden die letzten {most, number} Änderungen, jede ein Jahr lang.',
  'history.none': 'Es wurde noch nichts geändert, oder es ist mehr als ein Jahr her.',
  'history.open': 'Was geändert wurde',
  'history.made': '{when}, {who}:',
  'history.undid': '{when}, {who} hat die Änderung vom {of} zurückgenommen:',
  'history.undone': 'Zurückgenommen von {who}, {when}.',
  'history.part': '**{part}:** {was} → {is}',
  'history.more': '{count, plural, one {und # weitere} other {und # weitere}}',
  'history.link.added': '**Link hinzugefügt:** {host} · {title}',
  'history.link.removed': '**Link entfernt:** {host} · {title}',
  'history.link.address': '**Adresse von „{title}“:** {was} → {is}',
  'history.link.title': '**Titel des Links zu {host}:** {was} → {title}',
  'history.link.looked': '**Angesehen und weiterhin gut:** {host} · {title}',
  'history.undo': 'Zurücknehmen',
  'history.done': '✓ Zurückgenommen. So ist es jetzt.',
  'history.done-gone':
    '✓ Zurückgenommen. So ist es jetzt. Was inzwischen nicht aufgezeichnet oder gelöscht wurde, kommt nicht zurück.',
  'history.sure.title': 'Diese Änderung zurücknehmen?',
  'history.sure.fewer':
    'Dann werden aufgezeichnete Prüfungen, die älter sind als {weeks, plural, one {# Woche} other {# Wochen}}, innerhalb einer Viertelstunde gelöscht, und niemand kann sie zurückholen.',
  'history.sure.stop':
    'Dann wird von keiner Prüfung mehr etwas aufgezeichnet. Was schon aufgezeichnet ist, bleibt, bis seine Zeit um ist.',
  'history.sure.yes': 'Zurücknehmen',
  'history.sure.no': 'So lassen',
  'history.no.change-forgotten':
    'Diese Änderung wird nicht mehr aufbewahrt und lässt sich nicht zurücknehmen. Es wurde nichts geändert.',
  'history.no.undone-already': '{who} hat das schon zurückgenommen, {when}. Es wurde nichts geändert.',
  'history.no.changed-since':
    'Das lässt sich nicht zurücknehmen: {who} hat danach dasselbe geändert, {when}. Nimm zuerst das zurück, oder stell es neu ein.',
  'history.no.changed-since.unknown':
    'Das lässt sich nicht zurücknehmen: Danach wurde dasselbe geändert. Stell es stattdessen neu ein.',
  'history.no.pooling-since':
    'Das lässt sich nicht zurücknehmen: Danach wurde das Zusammenlegen eingeschaltet, und das braucht die Aufzeichnung. Beende zuerst das Zusammenlegen.',
  'history.no.too-many-links':
    'Das lässt sich nicht zurücknehmen: Es sind inzwischen {most, number} Links, und mehr passen nicht. Entferne zuerst einen.',
  'history.no.link-there':
    'Das lässt sich nicht zurücknehmen: Dieselbe Adresse steht inzwischen wieder hier, als „{title}“.',
}
