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
    'In diesem Text wurde keine Angabe über eine Zelle gefunden. Nenn die Größe, die Kapazität, den Strom oder die Masse so, wie sie im Angebot stehen, zum Beispiel „18650 3000 mAh 20 A continuous“.',
  'claim.cut': 'Nur die ersten {most, number} Zeichen wurden gelesen.',
  'claim.impossible': 'Unmöglich',
  'claim.high': 'Mehr, als bekannt ist, aber nicht als falsch bewiesen',
  'claim.contradiction': 'Widerspricht sich selbst',
  'claim.low': 'Verdächtig niedrig',
  'claim.not-comparable': 'Lässt sich mit nichts vergleichen',
  'claim.nothing':
    'Keine dieser Angaben ist unmöglich. Das zeigt nichts: Eine bescheidene Angabe ist auf jede Zelle leicht gedruckt.',
  'claim.start': 'Eine Zelle mit diesen Angaben prüfen',
  'claim.add': 'Zu meiner Prüfung hinzufügen: {what}',
  'fact.format': 'Größe: {format}',
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
    'Kapazität: {value, number} mAh{grade, select, minimum { (Mindestwert genannt)} typical { (typischer Wert genannt)} other {}}',
  'fact.energy': 'Energie: {value, number} Wh',
  'fact.current':
    'Strom: {value, number} A {sort, select, continuous {dauerhaft} pulse {als Puls} max {„max“} charge {zum Laden} other {ohne ein Wort dazu}}{seconds, select, none {} other {, für {seconds} s}}',
  'fact.rate':
    'Strom: das {value, number}-Fache der Kapazität je Stunde {sort, select, continuous {(dauerhaft)} pulse {(als Puls)} max {(„max“)} charge {(zum Laden)} other {(ohne ein Wort dazu)}}',
  'fact.mass': 'Masse: {value, number} g',
  'fact.voltage': 'Spannung: {value, number} V',
  'fact.resistance': 'Innenwiderstand: {value, number} mΩ',
  'fact.protection': '{has, select, yes {Mit} other {Ohne}} Schutzschaltung',
  'fact.count': '{cells, plural, one {# Zelle} other {# Zellen}}',
  'fact.unclear': '„{typed}“ kann man als {readings} lesen',
  'weighed.capacity':
    '{value, number} mAh in dieser Größe{cells, plural, one {} other { für jede Zelle}}: Die besten bekannten fassen etwa {best, number} mAh{density, select, none {} other {. Dafür bräuchte es {density} Wh in jedem Liter}}.',
  'weighed.energy-per-volume':
    '{value, number} Wh in jedem Liter, bei der {size, select, measured {gemessenen} other {angegebenen}} Größe: Die besten bekannten erreichen etwa {best, number}.',
  'weighed.energy-per-mass':
    '{value, number} Wh in jedem Kilogramm, bei der {size, select, measured {gemessenen} other {angegebenen}} Masse: Die besten bekannten erreichen etwa {best, number}.',
  'weighed.continuous-current':
    '{value, number} A ohne Pause: Die besten bekannten dieser Größe geben etwa {best, number} A. Belaste nie eine Zelle nach so einer Zahl.',
  'weighed.capacity-and-current':
    '{capacity, number} mAh zusammen mit {current, number} A ohne Pause: Mehr vom einen kostet etwas vom anderen; Zellen dieser Größe mit mehr als {pairCapacity, number} mAh geben nicht mehr als etwa {pairCurrent, number} A.',
  'weighed.mass': '{value, number} g: Bloße Zellen dieser Größe wiegen mindestens etwa {lightest, number} g.',
  'weighed.energy-and-capacity':
    '{energy, number} Wh passen nicht zu dieser Kapazität, die bei ihrer üblichen Spannung etwa {fromCapacity, number} Wh ergibt. Eins von beiden stimmt nicht.',
  'weighed.two-formats': 'Es nennt mehrere Größen: {formats}. Eine Zelle hat eine.',
  'weighed.charge-current':
    '{value, number} A ist ein Strom zum Laden; er sagt nichts darüber, was die Zelle abgeben kann.',
  'weighed.pulse-undefined':
    '{value, number} A als Puls sagen ohne Zeit und Temperatur nichts. Das ist kein Dauerstrom; belaste nie eine Zelle danach.',
  'weighed.max-undefined':
    '{value, number} A „max“ sagen ohne Zeit und Temperatur nichts. Das ist kein Dauerstrom; belaste nie eine Zelle danach.',
  'weighed.sort-unsaid':
    '{value, number} A ohne ein „continuous“ (dauerhaft) daneben können ein Pulswert sein. Belaste nie eine Zelle danach.',
  'weighed.no-format': '{value, number} mAh lassen sich nur zusammen mit der Größe der Zelle beurteilen.',
  'weighed.format-unknown': '{value, number} mAh: Für diese Größe ist hier kein Bestwert bekannt.',
  'weighed.unclear-figure':
    'Eine Zahl kann man auf zwei Arten lesen ({readings}). Sieh nach und tipp sie mit ihrer Einheit ein.',
  'weighed.out-of-date': '{says} (Der Vergleichswert ist über sein Datum hinaus und zählt eine Stufe weniger.)',
  'weighed.sources':
    'Errechnet aus Datenblättern bis 2026 und veröffentlichten Energiedichten; die Zahlen gelten bis {date}. Preise blieben außen vor.',
}
