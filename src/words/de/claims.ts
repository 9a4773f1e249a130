// German for what a listing claims, and what its claims weigh.

import type { InWordsOf } from '../catalogue.ts'
import type { claims as english } from '../en/claims.ts'

export const claims: InWordsOf<typeof english> = {
  'command.claim': 'Sehen, welche Angaben eines Angebots oder Aufdrucks unmöglich sind',
  'command.claim.text': 'Der Text des Angebots oder Aufdrucks, etwa „18650 9900mAh 30A 38g“',
  'command.read-claims': 'Angaben lesen',
  'claim.title': 'Was dieser Text angibt',
  'claim.read': 'Was gelesen wurde',
  'claim.none':
    'In diesem Text wurde keine Angabe über eine Zelle gefunden. Nenn die Größe, die Kapazität, den Strom oder das Gewicht so, wie sie im Angebot stehen, zum Beispiel „18650 3000 mAh 20 A continuous“.',
  'claim.cut': 'Nur die ersten {most, number} Zeichen wurden gelesen.',
  'claim.impossible': 'Unmöglich',
  'claim.high': 'Hoch: Frag nach dem Datenblatt des Herstellers',
  'claim.contradiction': 'Widerspricht sich selbst',
  'claim.low': 'Verdächtig niedrig',
  'claim.not-comparable': 'Lässt sich mit nichts vergleichen',
  'claim.nothing':
    'Keine dieser Angaben ist unmöglich. Das sagt nichts aus: Eine bescheidene Angabe ist auf jede Zelle leicht gedruckt.',
  'claim.start': 'Eine Zelle mit diesen Angaben prüfen',
  'claim.add': 'Zu meiner Prüfung hinzufügen: {what}',
  'fact.format': 'Größe: {format}{doubled, select, yes { (eine Ziffer steht doppelt da)} other {}}',
  'fact.designation':
    'Bezeichnung nach IEC 61960-3: höchstens {diameter, number} mm breit und {height, number} mm lang{format, select, none {} other {, im Handel {format} genannt}}',
  'fact.chemistry': 'Zellchemie: {chemistry}',
  'chemistry.ICR': 'ICR, Lithium-Kobalt',
  'chemistry.INR': 'INR, Lithium-Nickel',
  'chemistry.IMR': 'IMR, Lithium-Mangan',
  'chemistry.NCR': 'NCR, Lithium-Nickel-Kobalt',
  'chemistry.IFR': 'IFR, Lithium-Eisenphosphat',
  'chemistry.iron-phosphate': 'Lithium-Eisenphosphat',
  'chemistry.lithium-ion': 'Lithium-Ionen, mehr steht nicht da',
  'fact.capacity':
    'Kapazität: {value, number} mAh{grade, select, minimum { (Mindestwert genannt)} typical { (typischer Wert genannt)} other {}}{assumed, select, yes { (ohne Einheit geschrieben, als mAh gelesen)} other {}}',
  'fact.energy': 'Energie: {value, number} Wh{milli, select, yes { (in mWh geschrieben)} other {}}',
  'fact.current':
    'Strom: {value, number} A {sort, select, continuous {dauerhaft} pulse {als Puls} max {„max“} charge {zum Laden} other {ohne Zusatz}}{seconds, select, none {} other {, für {seconds} s}}{limit, select, none {} other {, bis {limit} °C}}',
  'fact.rate':
    'Strom: das {value, number}-Fache der Kapazität pro Stunde {sort, select, continuous {(dauerhaft)} pulse {(als Puls)} max {(„max“)} charge {(zum Laden)} other {(ohne Zusatz)}}',
  'fact.mass': 'Gewicht: {value, number} g',
  'fact.voltage': 'Spannung: {value, number} V',
  'fact.resistance': 'Innenwiderstand: {value, number} mΩ',
  'fact.protection': '{has, select, yes {Mit} other {Ohne}} Schutzschaltung',
  'fact.count': '{cells, plural, one {# Zelle} other {# Zellen}}',
  'fact.unclear': '„{typed}“ kann {readings} heißen',
  'weighed.capacity':
    '{value, number} mAh{assumed, select, yes { (ohne Einheit geschrieben, als mAh gelesen)} other {}} in dieser Größe{cells, plural, one {} other { für jede Zelle}}: Die besten bekannten fassen etwa {best, number} mAh{density, select, none {} other {. Die Angabe würde {density} Wh pro Liter erfordern}}.{weight, select, high { Zellen dieser Klasse sind neu und schwer: Frag nach einem Datenblatt ab 2024, das auch den Mindestwert nennt, und wieg die Zelle.} other {}}',
  'weighed.energy-per-volume':
    '{value, number} Wh pro Liter, bei der {size, select, measured {gemessenen} other {angegebenen}} Größe: Die besten bekannten erreichen etwa {best, number}.',
  'weighed.energy-per-mass':
    '{value, number} Wh pro Kilogramm, bei dem {size, select, measured {gemessenen} other {angegebenen}} Gewicht: Die besten bekannten erreichen etwa {best, number}.',
  'weighed.continuous-current':
    '{value, number} A Dauerstrom{upTo, select, temperature { bis zu einer Temperatur} other {}}: Die besten bekannten dieser Größe liefern etwa {best, number} A{upTo, select, temperature {} other { ohne Temperaturgrenze}}.{weight, select, high { Mehr gibt es nur bis zu einer Temperatur, bei der die Last abschaltet, und hier ist keine genannt.} other {}} Verlass dich beim Belasten einer Zelle nie auf so eine Zahl.',
  'weighed.capacity-and-current':
    '{capacity, number} mAh zusammen mit {current, number} A Dauerstrom: Mehr vom einen kostet etwas vom anderen; Zellen dieser Größe mit mehr als {pairCapacity, number} mAh liefern nicht mehr als etwa {pairCurrent, number} A.',
  'weighed.mass':
    '{value, number} g: Zellen dieser Größe ohne Schutzschaltung wiegen mindestens etwa {lightest, number} g.',
  'weighed.energy-and-capacity':
    '{energy, number} Wh passen nicht zu dieser Kapazität, die bei {volts, number} V etwa {fromCapacity, number} Wh ergibt. Eins von beiden stimmt nicht.',
  'weighed.two-formats': 'Hier stehen mehrere Größen: {formats}. Eine Zelle hat nur eine.',
  'weighed.charge-current': '{value, number} A ist ein Ladestrom; er sagt nichts darüber, was die Zelle liefern kann.',
  'weighed.pulse-undefined':
    '{value, number} A als Puls sagen ohne Zeit und Temperatur nichts. Das ist kein Dauerstrom; verlass dich beim Belasten einer Zelle nie darauf.',
  'weighed.max-undefined':
    '{value, number} A „max“ sagen ohne Zeit und Temperatur nichts. Das ist kein Dauerstrom; verlass dich beim Belasten einer Zelle nie darauf.',
  'weighed.sort-unsaid':
    '{value, number} A ohne das Wort „Dauerstrom“ oder „continuous“ daneben können ein Pulswert sein. Verlass dich beim Belasten einer Zelle nie darauf.',
  'weighed.no-format': '{value, number} mAh lassen sich nur zusammen mit der Größe der Zelle beurteilen.',
  'weighed.unclear-figure':
    'Eine Zahl lässt sich auf zwei Arten lesen ({readings}). Sieh nach und tipp sie mit ihrer Einheit ein.',
  'weighed.energy': '{value, number} Wh in dieser Größe: Die besten bekannten fassen etwa {best, number} Wh.',
  'weighed.converter':
    '{value, number} mAh neben 1,5 V: In so einer Zelle steckt ein Wandler, und ihre mAh gelten bei 1,5 V. Die Grenzen für mAh gelten für sie nicht; vergleich ihre Wh.',
  'weighed.connection-unsaid':
    '{value, number} mAh einer Batterie aus mehreren Zellen: Wie sie verbunden sind, steht nicht da, also folgt daraus nichts für jede Zelle. Frag, wie viele in Reihe und wie viele parallel liegen, etwa 3S2P.',
  'weighed.battery-current':
    '{value, number} A einer Batterie aus mehreren Zellen: Wie sie verbunden sind, steht nicht da, also folgt daraus nichts für jede Zelle. Verlass dich beim Belasten einer Batterie nie auf so eine Zahl.',
  'weighed.milliwatt-hours':
    '{value, number} mWh sind eine Energie und keine Kapazität: Bei {volts, number} V sind es etwa {capacity, number} mAh.',
  'claim.beyond': 'Mehr, als ein glaubhaftes Datenblatt nennt',
  'claim.many':
    'Nur die ersten {most, number} Angaben wurden gelesen. Schick den Teil des Textes, in dem es um eine einzelne Zelle geht.',
  'claim.nothing-compared':
    'Nichts davon ließ sich mit dem vergleichen, was von solchen Zellen bekannt ist; das spricht also weder dafür noch dagegen.',
  'chemistry.sodium-ion': 'Natrium-Ionen',
  'chemistry.titanate': 'Lithium-Titanat',
  'fact.battery':
    'Batterie aus mehreren Zellen{how, select, both {: {series, number} in Reihe, {parallel, number} parallel} parallel {: {parallel, number} parallel} voltage {, nach ihrer Spannung} other {}}',
  'weighed.out-of-date': '{says} (Der Vergleichswert ist veraltet und zählt eine Stufe weniger.)',
  'weighed.sources':
    'Errechnet aus Datenblättern bis 2026 und veröffentlichten Energiedichten{date, select, none {} other {; die Zahlen gelten bis {date}}}. Preise blieben außen vor.',
}
