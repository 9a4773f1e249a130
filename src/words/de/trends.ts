// German for outcomes and trends: what is counted of a check, and what moderators see of the counts.

import type { InWordsOf } from '../catalogue.ts'
import type { trends as english } from '../en/trends.ts'

export const trends: InWordsOf<typeof english> = {
  'counts.outcome':
    'Wenn diese Prüfung endet, werden ihr Ergebnis, die Antworten und die nicht bestandenen Prüfpunkte ohne deinen Namen gezählt. Die Moderation sieht nur Zahlen, die für mindestens fünf Personen stehen. Du kannst diese Prüfung auslassen, oder alle deine mit /prüfung zählung.',
  'counts.declined': 'Diese Prüfung wird nicht mitgezählt.',
  'command.check.counting': 'Sehen, was von deinen Prüfungen gezählt wird, und sagen, ob sie gezählt werden',
  'counting.title': 'Was von deinen Prüfungen gezählt wird',
  'counting.what':
    'Wo die Verwaltung eines Servers es eingeschaltet hat, hinterlässt eine beendete Prüfung dort ihr Ergebnis, ihre Antworten in groben Stufen, die nicht bestandenen Prüfpunkte, wo die Zelle gekauft wurde, und die Woche. Kein Name, kein Text, kein Foto und keine Uhrzeit geht mit. Innerhalb eines Vierteljahres zählst du für ein Modell einmal, unter einem Code, dessen Schlüssel danach vernichtet wird. Prüfungen der Moderation und neuer Konten werden nie gezählt.',
  'counting.now.out': 'Deine Prüfungen werden gezählt.',
  'counting.now.in': 'Deine Prüfungen werden nicht gezählt.',
  'counting.out': 'Meine nicht zählen',
  'counting.in': 'Meine wieder zählen',
  'counting.forget': 'Löschen, was von mir gezählt wurde',
  'counting.forgotten':
    '{count, plural, =0 {Aus diesem Vierteljahr ist nichts von dir aufbewahrt.} one {# Eintrag von dir wurde gelöscht.} other {# Einträge von dir wurden gelöscht.}} Was ältere Vierteljahre aufbewahrt haben, lässt sich zu niemandem zurückverfolgen, auch nicht zu dir.',
  'counting.published':
    'Löschen ändert die künftigen Zahlen. Schon veröffentlichte bleiben: Eine, die um eins fiele, würde auf dich zeigen.',
  'button.leave-nothing': 'Nicht mitzählen',
  'trends.title': 'Gezählte Prüfungen bis zur Woche vom {week}',
  'trends.title.pool': 'Gezählte Prüfungen auf allen Servern, die ihre Zahlen zusammenlegen, bis zur Woche vom {week}',
  'trends.checks':
    '{checks, plural, =0 {Bisher Prüfungen von weniger als fünf Personen zu jedem Modell: Es gibt noch nichts zu zeigen.} one {Bisher # Prüfung, {more, plural, =0 {keine neue: weniger als fünf weitere Personen} other {davon # neu in dieser Woche}}.} other {Bisher # Prüfungen, {more, plural, =0 {keine neue: weniger als fünf weitere Personen} other {davon # neu in dieser Woche}}.}}',
  'trends.verdict.danger': 'Gefahr',
  'trends.verdict.ruled-out': 'Widerlegt',
  'trends.verdict.doubtful': 'Zweifelhaft',
  'trends.verdict.open': 'Ungeklärt',
  'trends.verdict.nothing-found': 'Nichts gefunden',
  'trends.count': '{name}: {checks, number}{more, plural, =0 {} other {, # neu}}',
  'trends.count.share':
    '{name}: {checks, number}{more, plural, =0 {} other {, # neu}} ({share, number, percent}; könnten {low, number, percent} bis {high, number, percent} sein)',
  'trends.weeks': 'Prüfungen mit schlechtem Ergebnis, die der Bericht jeder Woche neu brachte',
  'trends.weeks.failed': 'Gefahr, widerlegt oder zweifelhaft; manche sind aus früheren Wochen',
  'trends.weeks.alarm':
    'Anstieg eines Modells oder eines Grundes, also auch über einem niedrigen Balken aller; was zusammenkommt, ist bei seinem Fund markiert',
  'trends.weeks.withheld': 'Keine Auswertung',
  'trends.fives':
    'Zahlen heißen „mindestens“ und steigen in Fünferschritten; was für weniger als fünf Personen steht, wird nicht gezeigt. Sie beschreiben nur, wer hier geprüft hat, nicht den Markt.',
  'trends.fives.pool':
    'Zahlen heißen „mindestens“ und steigen in Fünferschritten; was für weniger als fünf Personen steht, wird nicht gezeigt. Sie beschreiben nur, was auf den Servern geprüft wurde, die ihre Zahlen zusammenlegen, nie auf welchem, und nicht den Markt.',
  'trends.verdicts': 'Ergebnisse',
  'trends.families': 'Modelle',
  'trends.families.none': 'Noch kein Modell wurde von fünf Personen geprüft.',
  'trends.rises': 'Steigend',
  'trends.noticeable':
    'Was hier auffallen würde: Bei etwa {checks, plural, one {# Prüfung} other {# Prüfungen}} in der Woche fallen {more, number} schlechte Ergebnisse mehr in der Woche bei einem Modell in 9 von 10 Fällen innerhalb von {weeks, number} Wochen auf (simuliert). Ein kleinerer Anstieg kann unbemerkt bleiben.',
  'trends.rises.none': 'Kein Anstieg über das Übliche hinaus.',
  'trends.rises.too-early': 'Ob etwas steigt, lässt sich sagen, sobald 13 Wochen gezählt sind.',
  'trends.rise':
    '{family}: Mehr Prüfungen gehen schlecht aus, als die Zahl der Prüfungen erklärt (bemerkt in der Woche vom {week}{sure, select, yes {; fällt unter allen Modellen auf} other {}})',
  'trends.rise.rule':
    '{family}: Ein Grund wird öfter genannt, als die Zahl der Prüfungen erklärt (bemerkt in der Woche vom {week}{sure, select, yes {; fällt unter allen Gründen auf} other {}}): {rule}',
  'trends.spikes': 'Nur in dieser Woche mehr als üblich, was weniger sicher ist',
  'trends.spike': '{family}: Prüfungen mit schlechtem Ergebnis',
  'trends.spike.rule': '{family}: {rule}',
  'trends.patterns': 'Gründe, die zusammen auftreten',
  'trends.patterns.none': 'Keine Gründe und Antworten treten öfter zusammen auf als vorher.',
  'trends.pattern':
    '{family}: {items}. {recent, number} von {recentOf, number} Prüfungen der letzten 8 Wochen, gegenüber {earlier, plural, =0 {weniger als fünf in jedem Vierteljahr des Jahres davor} other {# im Jahr davor}}, von {earlierOf, plural, =0 {zu wenigen, um sie zu zeigen} other {#}}{growth, plural, =0 {} other {; mindestens #-mal so häufig}}.',
  'trends.unknown-family': 'Zellen keines aufgeführten Modells',
  'trends.gone-family': '{id} (das Regelpaket ist nicht mehr installiert)',
  'trends.gone-rule': '{id} (ein Prüfpunkt eines Regelpakets, das nicht mehr installiert ist)',
  'trends.gone-answer': '{question}: {option} (aus einem Regelpaket, das nicht mehr installiert ist)',
  'trends.answer': '{question} {option}',
  'trends.from': 'gekauft: {place}',
  'trends.place-not-said': 'niemand sagte, wo',
  'trends.week.before': 'Woche davor ({week})',
  'trends.week.after': 'Woche danach ({week})',
  'trends.export.csv': 'Diese Woche als CSV',
  'trends.export.weeks': 'Alle Wochen als CSV',
  'trends.export.json': 'Diese Woche als JSON',
  'trends.export.schema': 'Was das JSON bedeutet',
  'trends.exported':
    'Die Auswertungen, wie sie gespeichert wurden, in den Codes der Regelpakete. Eine Zeile für jede Woche und Sache.',
  'trends.exported.json': 'Die Auswertung, wie sie gespeichert wurde, in den Codes der Regelpakete.',
  'trends.exported.schema': 'Ein JSON-Schema: jedes Feld des JSON-Exports mit dem, was es bedeutet.',
  'trends.exported.columns':
    'Spalten: **week**, eine ISO-Woche · **what**: all (alle), family (Modell), verdict (Ergebnis), rule (ein nicht bestandener Prüfpunkt), bought (gekauft), rise (Anstieg), spike (nur diese Woche), pattern-recent (die letzten 8 Wochen), pattern-earlier (das Jahr davor) · **family** und **name**: Kennungen der Regelpakete, leer, wo es um alle geht · **checks**: mindestens so viele, in Fünferschritten, von der ersten Woche an · **more**: neu in der Woche · **of**, **share**, **low**, **high**: Anteil an so vielen Prüfungen, mit seinem 95-%-Bereich · **noticed**: die Woche, in der ein Anstieg auffiel · **stands-out**: yes, wo es unter allem Beobachteten auffällt.',
  'trends.chart': 'Ergebnisse der gezählten Prüfungen',
  'trends.chart.interval': 'wo der Anteil liegen kann (95 %)',
  'trends.chart.withheld': 'zu wenige',
  'command.trends': 'Sehen, was die gezählten Prüfungen dieses Servers ergeben (Moderation)',
  'trends.view.overview': 'Überblick',
  'trends.view.families': 'Modelle',
  'trends.view.rises': 'Anstiege',
  'trends.view.patterns': 'Muster',
  'trends.to.pool': 'Zusammengelegte Zahlen',
  'trends.to.release': 'Nur dieser Server',
  quoted: '„{text}“',
}
