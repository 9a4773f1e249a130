// German for refusals (the member's doing), trouble (the world's) and faults (ours): each says what to do next.

import type { InWordsOf } from '../catalogue.ts'
import type { refusals as english } from '../en/refusals.ts'

export const refusals: InWordsOf<typeof english> = {
  'refusal.not-yours': 'Antworten kann nur, wer diese Prüfung gerade hat. Beginne deine eigene mit /prüfung start.',
  'refusal.gone': 'Diese Prüfung wird nicht mehr aufbewahrt. Beginne eine neue mit /prüfung start.',
  'refusal.expired':
    'An dieser Prüfung hat sich zwei Wochen lang nichts getan, darum ist sie abgelaufen. Beginne eine neue mit /prüfung start.',
  'refusal.closed':
    'Diese Prüfung ist geschlossen, und mit ihr wurden die Antworten gelöscht; wieder öffnen lässt sie sich nicht. Beginne eine neue mit /prüfung start.',
  'refusal.changed-meanwhile':
    'Jemand war schneller. Von dir wurde nichts geändert. Sieh nach, wie es jetzt steht, und entscheide dann.',
  'refusal.not-now':
    'Das geht an dieser Stelle nicht. Nimm die Knöpfe der neuesten Nachricht, oder sieh mit /prüfung fortsetzen nach, wo du bist.',
  'refusal.another-question': 'Die Prüfung ist jetzt bei einer anderen Frage. Du siehst sie mit /prüfung fortsetzen.',
  'refusal.another-consent': 'Die Prüfung ist jetzt bei einem anderen Schritt. Du siehst ihn mit /prüfung fortsetzen.',
  'refusal.unknown-option': 'Diese Antwort gehört nicht zu dieser Frage. Nimm eine von denen, die gezeigt werden.',
  'refusal.reading-out-of-range':
    '{value, number} {unit} kann hier nicht stimmen: Es muss zwischen {least, number} und {most, number} {unit} liegen. Miss noch einmal, oder antworte „Kann ich nicht sagen“.',
  'refusal.not-a-number': 'Das ist keine Zahl. Tipp den abgelesenen Wert mit seiner Einheit ein.',
  'refusal.nothing-to-go-back-to': 'Es gibt keine frühere Antwort, zu der man zurückgehen könnte.',
  'refusal.too-many-cells': 'Eine Prüfung kann für 1 bis {most, number} Zellen stehen, nicht für {cells, number}.',
  'refusal.too-many-today':
    'Du hast binnen eines Tages {most, number} Prüfungen begonnen; mehr werden für eine Person nicht gespeichert. Mach mit einer davon weiter oder beginne die nächste morgen. Benutze und lade bis dahin keine Zelle, bei der du unsicher bist.',
  'refusal.too-many-open':
    'Du hast {count, number} offene Prüfungen, mehr gehen nicht. Schließ zuerst eine mit /prüfung schließen.',
  'refusal.unknown-family': 'Hier gibt es kein Modell „{name}“. Nimm eines aus der Liste, oder lass das Feld weg.',
  'refusal.no-such-check': 'So eine offene Prüfung hast du nicht. Deine siehst du mit /prüfung liste.',
  'refusal.unknown-click': 'Dieser Knopf ist nicht von dieser Version des Bots. Mach weiter mit /prüfung fortsetzen.',
  'refusal.unknown-command': 'Diesen Befehl gibt es hier nicht mehr. Tipp /, um zu sehen, welche es gibt.',
  'refusal.log-forgotten': 'Diese Frage ist zu alt. Häng das Protokoll noch einmal mit /protokoll an.',
  'typed.nothing-typed': '{field}: Da steht nichts. Tipp den abgelesenen Wert mit seiner Einheit ein.',
  'typed.too-long': '{field}: Das ist zu lang. Tipp einen Wert mit Einheit ein, höchstens {longest, number} Zeichen.',
  'typed.not-a-number': '{field}: Darin ist keine Zahl. Tipp den abgelesenen Wert mit seiner Einheit ein.',
  'typed.several-numbers': '{field}: Darin sind mehrere Zahlen. Tipp nur eine ein.',
  'typed.range':
    '{field}: „{typed}“ ist ein Bereich. Tipp eine einzige Zahl ein: von einem aufgedruckten Bereich die kleinere, von einer Anzeige die, bei der sie stehen bleibt.',
  'typed.unknown-unit': '{field}: Die Einheit „{unit}“ ist hier nicht bekannt. Nimm eine von {accepted}.',
  'typed.unit-does-not-fit': '{field}: „{unit}“ passt hier nicht. Nimm eine von {accepted}.',
  'typed.ambiguous':
    '{field}: Das kann {readings} heißen. Tipp es noch einmal ein, mit Einheit und ohne Tausendertrennzeichen.',
  'typed.rate-without-capacity':
    '{field}: „{typed}“ ist ein Vielfaches der Kapazität, und die ist hier nicht bekannt. Multiplizier es mit der Kapazität in Ah (10C bei 2,5 Ah sind 25 A), und gib die Ampere ein.',
  'typed.negative': '{field}: Das kann nicht unter null liegen. Prüf das Vorzeichen.',
  'typed.out-of-range':
    '{field}: {value, number} {unit} kann nicht stimmen; es sollte zwischen {lowest, number} und {highest, number} {unit} liegen. Miss noch einmal.{meant, select, none {} other { War {meant} gemeint?}}',
  'trouble.unreadable':
    'Was hier gespeichert ist, kann die Version des Bots, die gerade läuft, nicht lesen. Nichts wurde geändert, nichts ist verloren. Nenn jemandem von der Moderation dieses Kennzeichen: {reference}; wer den Bot betreibt, findet den Grund im Protokoll.',
  'trouble.try-again':
    'Beim Bot hat etwas nicht geklappt. Dein letzter Schritt ist vielleicht nicht gespeichert: /prüfung fortsetzen zeigt dir, wo du bist. Wenn es immer wieder passiert, nenn jemandem von der Moderation dieses Kennzeichen: {reference}.',
  'refusal.bot-not-here':
    'Der Bot ist kein Mitglied dieses Servers. Deshalb kann er weder Einstellungen für ihn aufbewahren noch hier etwas schreiben. Wer den Server verwalten darf, kann ihn einladen: <{link}>',
  'refusal.not-moderator':
    'Das kann nur die Moderation dieses Servers sehen oder tun. Wenn du dazugehörst, bitte die Person, die den Bot eingerichtet hat, deine Rolle zu nennen.',
  'refusal.no-release':
    'Es gibt noch keine Auswertung. Die erste kommt nach der Woche, in der ein fünftes Mitglied eine Prüfung beendet hat, die gezählt wird.',
  'refusal.nothing-counted':
    'Dieser Server lässt seine Prüfungen nicht zählen, also gibt es nichts zu zeigen. Wer ihn verwaltet, kann das mit /einrichten einschalten.',
  'refusal.not-pooling':
    'Nur Server, die ihre Zahlen zusammenlegen, sehen die gemeinsamen. Wer diesen Server verwalten darf, kann es mit /einrichten einschalten.',
  'refusal.small-pool':
    'Bisher legen weniger als {least, plural, other {# Server}} ihre Zahlen zusammen, und von zweien könnte jeder die Zahlen des anderen ausrechnen. Gezeigt wird es, sobald es {least} sind.',
  'refusal.damaged-release':
    'Diese Auswertung ist beschädigt. Sag es der Person, die den Bot betreibt; vielleicht ist sie in einer Sicherungskopie noch heil.',
  'refusal.no-finding': 'Das wird nicht mehr aufbewahrt. Das Neueste siehst du mit /trends.',
  'refusal.long-warning':
    'Diese Warnung hat {length, number} Zeichen, und über dem Sicherheitshinweis ist nur Platz für {most, number}. Es wurde nichts gepostet. Kürze sie und poste sie noch einmal.',
  'refusal.may-not-post': 'In diesem Kanal darfst du selbst nicht schreiben. Wähl einen, in dem du schreiben darfst.',
  'refusal.nothing-to-change': 'Diese Frage ist noch nicht beantwortet, es gibt also nichts zu ändern.',
}
