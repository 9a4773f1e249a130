// German for logs that cannot be read: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { logRefusals as english } from '../en/log-refusals.ts'

export const logRefusals: InWordsOf<typeof english> = {
  'log-refusal.empty': 'Die Datei ist leer. Speichere das Protokoll noch einmal und schick die neue Datei.',
  'log-refusal.not-text':
    'Das ist {looksLike, select, zip {ein Zip-Archiv; entpack es und schick die CSV-Datei daraus} spreadsheet {eine Tabellendatei (etwa Excel); speichere sie als CSV und schick diese Datei} image {ein Bild; schick das Protokoll selbst als CSV oder TSV} pdf {ein PDF; schick das Protokoll selbst als CSV oder TSV} compressed {eine komprimierte Datei; entpack sie und schick die CSV-Datei daraus} other {keine Textdatei; exportier das Protokoll als CSV oder TSV}}.',
  'log-refusal.nul-bytes':
    'Die Datei enthält NUL-Bytes (das erste an Stelle {at, number}), sie wurde also beim Schreiben abgeschnitten oder beschädigt. Exportier das Protokoll noch einmal.',
  'log-refusal.row-too-long':
    'Zeile {row, number} ist länger als {longest, number} Zeichen. Das ist keine Tabelle; exportier das Protokoll als CSV oder TSV.',
  'log-refusal.too-many-columns':
    'Die Tabelle hat {columns, number} Spalten; höchstens {most, number} werden gelesen. Behalte nur Zeit, Spannung, Strom und Temperatur.',
  'log-refusal.too-many-rows':
    'Das Protokoll hat mehr als {most, number} Zeilen. Dünn es aus, oder schick nur die Entladung.',
  'log-refusal.unterminated-quote':
    'Ein Anführungszeichen, das in Zeile {row, number} beginnt, wird nie geschlossen. Nimm es weg oder schließ es.',
  'log-refusal.no-table':
    'Es wurde keine Tabelle mit Messwerten gefunden; die Datei beginnt mit „{firstLine}“. Schick eine CSV- oder TSV-Datei mit Zeit, Spannung und Strom.',
  'log-refusal.comma-means-two-things':
    'In „{line}“ trennt ein Komma zugleich die Spalten und die Dezimalstellen. Exportier mit Semikolons oder Tabulatoren, oder mit Dezimalpunkten.',
  'log-refusal.mixed-decimal-marks':
    'Dezimalzahlen sind auf zwei Arten geschrieben („{first}“ und „{second}“). Exportier das Protokoll noch einmal mit einer davon.',
  'log-refusal.formula':
    'In Zeile {row, number}, Spalte {column, number} steht eine Formel („{text}“). Speichere die Werte, keine Formeln.',
  'log-refusal.broken-rows':
    '{broken, number} von {rows, number} Zeilen sind nicht als Zahlen lesbar{example, select, none {} other {; die erste ist Zeile {row, number}, {label}: „{text}“}}. Berichtige oder entferne sie.',
  'log-refusal.too-few-rows':
    'Es gibt nur {rows, number} Zeilen mit Messwerten; mindestens {least, number} sind nötig. Schick das ganze Protokoll.',
  'log-refusal.time-backwards':
    'In Zeile {row, number} läuft die Zeit rückwärts (von {from_s, number} auf {to_s, number} s). Sortier die Zeilen, oder schick immer nur einen Durchlauf.',
  'log-refusal.time-stands-still':
    'Die Zeit ändert sich über {rows, number} Zeilen nie. Sieh nach, welche Spalte die Zeit ist, und exportier sie mit Sekunden.',
  'log-refusal.voltage-not-one-cell':
    'Die Spannung beim Entladen ist etwa {typical_V, number} V, und das ist nicht die einer einzelnen Lithiumzelle. Schick das Protokoll einer einzelnen Zelle, in Volt oder Millivolt.',
  'log-refusal.current-implausible':
    'Der Strom ist etwa {typical_A, number} A; so viel liefert keine einzelne Zelle. Prüf Spalte und Einheit.',
  'log-refusal.no-load':
    'Es wurde keine Entladung gefunden: Der Strom geht nie über {highest_A, number} A. Prüf Spalte und Einheit, oder schick das Protokoll einer Entladung.',
  'log-refusal.charge-only': 'Das Protokoll zeigt nur einen Ladevorgang. Schick das Protokoll einer Entladung.',
  'log-refusal.file-foreign': 'Dateien werden nur als Discord-Anhänge angenommen. Häng das Protokoll an den Befehl an.',
  'log-refusal.file-gone': 'Discord hat diese Datei nicht mehr. Häng das Protokoll noch einmal an.',
  'log-refusal.file-slow':
    'Diese Datei zu lesen hat zu lange gedauert und wurde abgebrochen. Schick ein kürzeres Protokoll, oder nur die Entladung.',
  'log-refusal.file-failed': 'Die Datei konnte nicht von Discord geholt werden. Versuch es gleich noch einmal.',
  'log-refusal.file-large':
    'Die Datei ist größer als {megabytes, number} MiB. Dünn das Protokoll aus, oder schick nur die Entladung.',
}
