// German for discharge logs: figures, traps, what a test tells, what is asked about a file.

import type { InWordsOf } from '../catalogue.ts'
import type { logs as english } from '../en/logs.ts'
import { safety } from './safety.ts'

export const logs: InWordsOf<typeof english> = {
  'command.log': 'Sehen, was ein Entladeprotokoll (CSV oder TSV) wirklich zeigt',
  'command.log.file': 'Das Protokoll, wie das Ladegerät oder die Last es geschrieben hat',
  'command.log.label': 'Aufgedruckte Kapazität, etwa 3000 mAh',
  'command.log.current': 'Angegebener Dauerstrom, etwa 20 A',
  'command.log.cutoff': 'Spannung, bis zu der die Angabe gemeint ist, etwa 2,5 V',
  'command.log.room': 'Raumtemperatur, etwa 21 °C',
  'command.log.instrument': 'Womit das Protokoll aufgenommen wurde',
  'command.log.wires': 'Wie die Zelle angeschlossen war',
  'command.log.chemistry': 'Welche Art von Zelle es ist',
  'log.wires.four-wire': 'Vier Leitungen: Strom und Spannung getrennt',
  'log.wires.two-wire': 'Zwei Leitungen, eine Halterung, oder nicht sicher',
  'log.chemistry.usual': 'Nickel oder Kobalt (3,6 bis 3,7 V)',
  'log.chemistry.iron-phosphate': 'Eisenphosphat, LiFePO4 (3,2 V)',
  'log.title': 'Was das Protokoll zeigt',
  'log.caution': `${safety['safety.test']} ${safety['safety.turns']} Wiederhole nie einen Test mit mehr Strom, um mehr zu erfahren, und teste nie eine Zelle, an der du zweifelst. Ein Test, den die Zelle besteht, beweist nichts.`,
  'log.figures': 'Werte (± die erweiterte Unsicherheit, k = 2)',
  'log.danger': 'Gefahr',
  'log.traps': 'Beachte',
  'log.findings': 'Was es über die Angabe sagt',
  'log.no-claim':
    'Ohne die Kapazität auf dem Aufdruck lässt sich über eine Angabe nichts sagen. Drück „Aufdruck angeben“ und tipp sie ein.',
  'log.give-label': 'Aufdruck angeben',
  'log.form.label': 'Kapazität auf dem Aufdruck',
  'log.form.cutoff': 'Entladeschlussspannung der Angabe',
  'log.form.current': 'Angegebener Strom',
  'log.form.room': 'Raumtemperatur',
  'log.found':
    'Gelesen als: {rows, plural, one {# Zeile} other {# Zeilen}}; {columns}; {time, select, clock {Zeiten als h:mm:ss} stamp {Zeiten als Datum} other {Zeiten in {time}}}, Spannungen in {voltage}, Ströme in {current}{broken, plural, =0 {} one {, # Zeile ausgelassen} other {, # Zeilen ausgelassen}}.',
  'log.runs':
    '{count, plural, other {Die Datei enthält # Entladungen; das ist Nummer {number}, die mit der meisten Ladung.}}',
  'log.run': 'Entladung {number}: {capacity}',
  'log.start': 'Die Zelle mit diesem Ergebnis prüfen',
  'log.add': 'Zu meiner Prüfung hinzufügen: {what}',
  'log.asks': 'Eins sagt die Datei nicht',
  'log.rows': 'Die ersten Zeilen der Datei:',
  'log.choose': 'Wähl',
  'log.ask.time': 'Welche Spalte ist die Zeit?',
  'log.ask.voltage': 'Welche Spalte ist die Spannung der Zelle?',
  'log.ask.current': 'Welche Spalte ist der Strom?',
  'log.ask.unit': 'In welcher Einheit ist {label}?',
  'log.ask.counter':
    'Der eigene Zähler der Datei zeigt das {factor, number}-Fache der Ladung, die sich aus {label} ergibt. In welcher Einheit steht {label}?',
  'log.ask.clock': 'Was bedeuten die zwei Zahlen von {label}?',
  'log.ask.swapped': 'Die Spalte {voltage} sieht wie ein Strom aus, oder {current} wie eine Spannung. Was stimmt?',
  'log.ask.same-values':
    'Die Spalten {voltage} und {current} enthalten dieselben Werte. Sind es wirklich Spannung und Strom?',
  'log.column': 'Spalte {number}',
  'log.column.named': 'Spalte {number}: {label}',
  'log.clock.h-mm': 'Stunden und Minuten',
  'log.clock.m-ss': 'Minuten und Sekunden',
  'log.as-they-stand': 'Sie stimmen so, wie sie sind',
  'log.swap': 'Andersherum nehmen',
  'log.unit.ms': 'Millisekunden',
  'log.unit.s': 'Sekunden',
  'log.unit.min': 'Minuten',
  'log.unit.h': 'Stunden',
  'log.unit.d': 'Tage',
  'log.unit.V': 'Volt',
  'log.unit.mV': 'Millivolt',
  'log.unit.A': 'Ampere',
  'log.unit.mA': 'Milliampere',
  'log.unit.10mA': 'Einheiten zu zehn Milliampere (100 heißt 1 A)',
  'log.unit.100mA': 'Zehntelampere (10 heißt 1 A)',
  'figure.plain': '{value} ± {u} {unit}',
  'figure.at-least': 'mindestens {value} {unit} (± {u} {unit})',
  'figure.between': 'zwischen {from} und {to} {unit} (± {u} {unit} an jedem Ende)',
  'figure.capacity': 'Kapazität: {figure}',
  'figure.energy': 'Energie: {figure}',
  'figure.meanVoltage': 'Mittlere Spannung: {figure}',
  'figure.meanCurrent': 'Mittlerer Strom: {figure}',
  'figure.duration': 'Entladedauer: {figure}',
  'figure.endVoltage': 'Spannung am Ende der Entladung: {figure}',
  'figure.startRestVoltage': 'Ruhespannung vor der Entladung: {figure}',
  'figure.resistance': 'Gleichstrom-Innenwiderstand, aus einem Stromsprung: {figure}',
  'figure.settledVoltage': 'Spannung, auf die sie sich danach einpendeln würde: {figure}',
  'figure.startTemperature': 'Temperatur am Anfang: {figure}',
  'figure.temperatureRise': 'Anstieg der Temperatur: {figure}',
  'figure.to-cutoff': '{says} (bis {cutoff, number} V)',
  'figure.no-cutoff':
    '{says} (bis {end, number} V, wo die Entladung endete; eine Entladeschlussspannung war nicht angegeben)',
  'trap.stopped-above-cutoff':
    'Die Entladung endete bei {endVoltage_V, number} V, über der Entladeschlussspannung von {cutoff_V, number} V: Die Zelle fasst mehr, als entnommen wurde.',
  'trap.wrong-cutoff':
    'Die Entladung lief bis {endVoltage_V, number} V weiter, unter {cutoff_V, number} V. Was die Anzeige zählt, ist mehr, als die Angabe meint; hier wurde bis {countedTo_V, number} V gezählt.',
  'trap.not-full-at-start':
    'Vor der Entladung hatte sie in Ruhe {startVoltage_V, number} V, wo eine volle Zelle etwa {full_V, number} V zeigt: Sie war nicht voll, also fasst sie mindestens, was entnommen wurde.',
  'trap.starts-under-load':
    'Das Protokoll beginnt mitten in der Entladung ({firstVoltage_V, number} V): Nichts zeigt, ob die Zelle voll war oder wie lange sie schon entladen wurde.',
  'trap.short-rest': 'Sie ruhte vor der Entladung nur {rest_s}; üblich wären etwa {wanted_s}.',
  'trap.over-discharged':
    'Die Spannung fiel auf {lowest_V, number} V. Unter {line_V, number} V ist eine Zelle innen beschädigt: Benutze und lade sie nicht wieder.',
  'trap.gaps':
    'Das Protokoll hat {gaps, plural, one {# Lücke} other {# Lücken}} von zusammen {seconds}{bridged, select, yes {; sie sind überbrückt, weil die Last den Strom konstant hält} other {; was dort geschah, ist unbekannt}}.',
  'trap.two-wire-resistance':
    'Der Innenwiderstand wurde über zwei Leitungen gemessen: Leitungen und Kontakte bringen etwa {from, number} bis {to, number} mΩ dazu, so viel, wie eine Zelle hat. Er lässt sich nicht mit einem Datenblatt vergleichen.',
  'trap.cold-room':
    'Der Raum war kalt ({room_C, number} °C; üblich sind {from_C, number} bis {to_C, number} °C): Jede Zelle liefert dann weniger.',
  'trap.warm-room':
    'Der Raum war warm ({room_C, number} °C; üblich sind {from_C, number} bis {to_C, number} °C): Jede Zelle liefert dann mehr.',
  'trap.temperature-missing':
    'Nichts sagt, wie warm die Zelle oder der Raum war; die Werte sind also weniger sicher, als sie aussehen.',
  'trap.too-hot': `Die Zelle erreichte {highest_C, number} °C. Brich einen Test bei {line_C, number} °C ab. Benutze und lade diese Zelle nicht wieder, und wiederhole den Test nicht. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'trap.temperature-hardly-moved':
    'Sie erwärmte sich um {rise_K, number} K, wo etwa {expected_K, number} K zu erwarten wären. War der Fühler an der Zelle?',
  'trap.current-too-low':
    '{current_A, number} A ist eine so leichte Last, dass fast jede Zelle gut aussieht; unter etwa {wanted_A, number} A sagt ein bestandener Test nichts aus.',
  'trap.current-not-constant': 'Der Strom blieb nicht konstant: Er ging von {from_A, number} bis {to_A, number} A.',
  'trap.counter-disagrees':
    'Der eigene Zähler der Datei zeigt das {factor, number}-Fache der Ladung, die sich aus ihren Strömen ergibt; deren Einheit ist also zweifelhaft. Dieses Protokoll zählt nicht gegen die Zelle.',
  'trap.coarse-sampling':
    'Es gibt nur {samples, number} Messpunkte während der Entladung, einen alle {interval_s}: Die Werte sind ungenau.',
  'told.far-below-label':
    'Weniger als die Hälfte der aufgedruckten {label_mAh, number} mAh (höchstens {share}). Selbst stark gealtert ist so eine Zelle nicht das, als was sie verkauft wird.',
  'told.below-label':
    'Deutlich weniger als die aufgedruckten {label_mAh, number} mAh (höchstens {share}): Sie ist falsch beschrieben oder gealtert.',
  'told.label-undecided':
    'Bei der Unsicherheit dieses Tests lässt sich nicht sagen, ob sie unter den aufgedruckten {label_mAh, number} mAh bleibt.',
  'told.label-reached':
    'Sie lieferte mindestens {share} der aufgedruckten {label_mAh, number} mAh. Das sagt nichts: Fälschungen werden so ausgesucht, dass sie einen langsamen Test bestehen, und auch eine minderwertige oder gealterte Zelle besteht ihn.',
  'told.label-not-comparable':
    'Sie lieferte weniger als die aufgedruckten {label_mAh, number} mAh, aber unter Bedingungen, bei denen auch eine einwandfreie Zelle weniger liefert: {because}.',
  'told.only-a-lower-bound':
    'Die Entladung war nicht vollständig; sie kann also nicht zeigen, dass die Zelle weniger fasst als die aufgedruckten {label_mAh, number} mAh.',
  'told.below-minimum':
    'Weniger als die {minimum_mAh, number} mAh, die ihr Hersteller unter den genannten Bedingungen mindestens zusagt.',
  'told.meets-minimum':
    'Sie erreicht die {minimum_mAh, number} mAh, die ihr Hersteller mindestens zusagt. Das sagt nichts darüber, was sie ist.',
  'told.minimum-undecided':
    'Bei der Unsicherheit dieses Tests lässt sich nicht sagen, ob sie unter den zugesagten {minimum_mAh, number} mAh bleibt.',
  'told.minimum-not-comparable': 'Sie lässt sich nicht mit dem Mindestwert ihres Herstellers vergleichen: {because}.',
  'told.too-hot-at-claimed-current': `Bei {current_A, number} A wurde sie zu heiß ({highest_C, number} °C), obwohl {claimed_A, number} A Dauerstrom angegeben sind. Benutze und lade sie nicht wieder, und wiederhole den Test nicht. ${safety['safety.cold']} ${safety['safety.cold.keep']} ${safety['safety.cold.call']}`,
  'told.gives-out-at-claimed-current':
    'Bei {current_A, number} A lieferte sie weniger als die Hälfte der aufgedruckten Kapazität, obwohl {claimed_A, number} A Dauerstrom angegeben sind.',
  'told.holds-claimed-current':
    'Sie hielt {current_A, number} A durch. Das sagt nichts darüber, wer sie gebaut hat, und heißt nicht, dass man sie so belasten darf.',
  'because.other-current': 'der Strom war {measured_A, number} A, nicht {stated_A, number} A',
  'because.other-cutoff': 'die Entladeschlussspannung war nicht {stated_V, number} V',
  'because.other-temperature': 'der Raum hatte {measured_C, number} °C, nicht {stated_C, number} °C',
  'because.temperature-unknown': 'die Temperatur ist nicht bekannt',
  'because.current-not-constant': 'der Strom blieb nicht konstant',
  'because.cold-room': 'der Raum hatte {room_C, number} °C, weniger als {least_C, number} °C',
  'because.rate-too-high': 'der Strom war das {rate_It, number}-Fache der aufgedruckten Kapazität pro Stunde',
  'curve.title': 'Entladung',
  'curve.capacity': 'entnommene Ladung (mAh)',
  'curve.voltage': 'Spannung (V)',
  'curve.temperature': 'Temperatur (°C)',
  'curve.cut-off': 'Entladeschluss',
  'curve.end': 'Ende der Entladung',
  'curve.result': 'Ergebnis, mit Unsicherheit',
  'curve.minimum': 'zugesagter Mindestwert',
  'curve.label': 'laut Aufdruck',
  'curve.gap': 'keine Messwerte',
}
